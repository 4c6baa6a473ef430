import type { QuantityInput } from '../../../units';
import { type FieldsOf, requireFields } from '../../../units/known-fields';
import { readAngle, readChoice, readLength, requireFit } from '../measure';
import { circleOutline, prism } from '../surface';
import { type Core, type CoreExtent, clipped, extentFields, extentOf } from './core';

const cylinderFields: FieldsOf<Parameters<typeof cylinderCore>[0]> = {
  ...extentFields,
  diameter: 'required',
  offset: 'optional',
  angle: 'optional',
  inhibited: 'optional',
  burningSide: 'optional',
};

/**
 * A round core with flat ends, on the axis or off it. Any of its faces can be inhibited, the side also over part of
 * its length.
 *
 * @throws MeopError `grain-measure`
 * @example cylinderCore({ diameter: '16 mm', from: '20 mm' }).name // => 'cylinder core'
 */
export function cylinderCore(
  options: CoreExtent & {
    /** Diameter of the core [length, above zero]. */
    readonly diameter: QuantityInput<'length'>;
    /** Distance between the axes of core and grain [length, zero or more]. Default 0. */
    readonly offset?: QuantityInput<'length'>;
    /** Direction of the offset [angle]. Default 0. */
    readonly angle?: QuantityInput<'angle'>;
    /** Faces that do not burn. */
    readonly inhibited?: readonly ('side' | 'head' | 'aft')[];
    /** Stretch of the side that burns; the rest of the side is inhibited [lengths from the head end]. Default: the whole side. */
    readonly burningSide?: { readonly from: QuantityInput<'length'>; readonly to: QuantityInput<'length'> };
  },
): Core {
  const name = 'cylinder core';
  const context = 'cylinderCore';
  requireFields(context, options, cylinderFields);
  const radius = readLength(context, 'diameter', options.diameter) / 2;
  const offset = options.offset === undefined ? 0 : readLength(context, 'offset', options.offset, 'zero');
  const angle = options.angle === undefined ? 0 : readAngle(context, 'angle', options.angle);
  const inhibited = options.inhibited ?? [];
  inhibited.forEach((face, i) => {
    readChoice(context, `inhibited[${i}]`, face, ['side', 'head', 'aft']);
  });
  if (options.burningSide !== undefined)
    requireFields('cylinderCore: burningSide', options.burningSide, { from: 'required', to: 'required' });
  return {
    name,
    place: (envelope) => {
      const [from, to] = extentOf(context, options, envelope.length);
      const o = clipped(
        context,
        'offset',
        options.offset,
        circleOutline(radius, offset * Math.cos(angle), offset * Math.sin(angle)),
        envelope.radius,
      );
      const slack = 1e-9 * envelope.length;
      const whole = options.burningSide;
      const side: readonly [number, number] | undefined = inhibited.includes('side')
        ? undefined
        : whole === undefined
          ? [from, to]
          : [
              Math.max(from, readLength(context, 'burningSide.from', whole.from, 'zero')),
              Math.min(to, readLength(context, 'burningSide.to', whole.to)),
            ];
      requireFit(
        side === undefined || side[1] > side[0],
        context,
        'burningSide',
        options.burningSide,
        'a stretch within the length of the core',
      );
      return prism({
        name,
        outline: o,
        from,
        to,
        faces: {
          side,
          start: from <= slack ? 'through' : inhibited.includes('head') ? 'inhibited' : 'burning',
          end:
            to >= envelope.length - slack ? 'through' : inhibited.includes('aft') ? 'inhibited' : 'burning',
        },
        mirror: angle,
      });
    },
  };
}
