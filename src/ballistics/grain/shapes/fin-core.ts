import type { QuantityInput } from '../../../units';
import { type FieldsOf, requireFields } from '../../../units/known-fields';
import { inMillimetres, readAngle, readChoice, readCount, readLength, refused, requireFit } from '../measure';
import { finOutline } from '../surface';
import { type Core, type CoreExtent, clipped, extentFields, extentOf } from './core';
import { partialCore, throughCore } from './prism-core';

const finFields: FieldsOf<Parameters<typeof finCore>[0]> = {
  ...extentFields,
  count: 'required',
  thickness: 'required',
  tipDiameter: 'required',
  tip: 'optional',
  angle: 'optional',
};

/**
 * Fins or slots about the axis: any number, square or round tips, any axial extent.
 *
 * @throws MeopError `grain-measure`
 * @example finCore({ count: 6, thickness: '4 mm', tipDiameter: '44 mm', from: '100 mm' }).name // => 'fin core'
 */
export function finCore(
  options: CoreExtent & {
    /** Number of fins [whole, at least 1]. */
    readonly count: number;
    /** Thickness of a fin [length]. */
    readonly thickness: QuantityInput<'length'>;
    /** Twice the distance of the tips from the axis [length]; beyond the wall the fins are cut off. */
    readonly tipDiameter: QuantityInput<'length'>;
    /** Shape of the tip. Default square. */
    readonly tip?: 'square' | 'round';
    /** Direction of the first fin [angle]. Default 0. */
    readonly angle?: QuantityInput<'angle'>;
  },
): Core {
  const name = 'fin core';
  const context = 'finCore';
  requireFields(context, options, finFields);
  const form = readChoice(context, 'tip', options.tip ?? 'square', ['square', 'round']);
  const count = readCount(context, 'count', options.count, 1);
  const half = readLength(context, 'thickness', options.thickness) / 2;
  const tip = readLength(context, 'tipDiameter', options.tipDiameter) / 2;
  const angle = options.angle === undefined ? 0 : readAngle(context, 'angle', options.angle);
  requireFit(
    half < tip,
    context,
    'thickness',
    options.thickness,
    `less than the tip diameter (${inMillimetres(2 * tip)})`,
  );
  return {
    name,
    place: ({ radius, length }) => {
      const [from, to] = extentOf(context, options, length);
      const fins = finOutline(count, half, tip, form, angle);
      if (fins === undefined)
        throw refused(
          context,
          'thickness',
          options.thickness,
          'small enough to leave propellant between the fins',
        );
      const o = clipped(context, 'tipDiameter', options.tipDiameter, fins, radius);
      return from <= 0 && to >= length
        ? throughCore(name, o, length, angle)
        : partialCore(name, o, from, to, length, angle);
    },
  };
}
