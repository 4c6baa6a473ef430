import type { QuantityInput } from '../../../units';
import { type FieldsOf, requireFields } from '../../../units/known-fields';
import { readAngle, readLength, requireFit } from '../measure';
import { ball, outsideBy } from '../surface';
import { type Flaw, VOID_CAUTION } from './flaw';

const fields: FieldsOf<Parameters<typeof voidBubble>[0]> = {
  diameter: 'required',
  distanceFromAxis: 'required',
  angle: 'optional',
  position: 'required',
  open: 'optional',
};

/**
 * A spherical void. A buried void is assumed to ignite over its whole surface when the burning front first reaches
 * it.
 *
 * @throws MeopError `grain-measure` when its centre is not inside the grain
 * @example voidBubble({ diameter: '4 mm', distanceFromAxis: '15 mm', angle: '90 deg', position: '30 mm' }).kind // => 'void'
 */
export function voidBubble(options: {
  /** Diameter of the void [length, above zero]. */
  readonly diameter: QuantityInput<'length'>;
  /** Distance of its centre from the axis [length, zero or more]. */
  readonly distanceFromAxis: QuantityInput<'length'>;
  /** Direction of its centre from the axis [angle]. Default 0. */
  readonly angle?: QuantityInput<'angle'>;
  /** Axial position of its centre [length from the head end]. */
  readonly position: QuantityInput<'length'>;
  /**
   * True: burns from the start. False: buried until the front reaches it. Default: determined from the surfaces that
   * it meets.
   */
  readonly open?: boolean;
}): Flaw {
  const name = 'voidBubble';
  requireFields(name, options, fields);
  const radius = readLength(name, 'diameter', options.diameter) / 2;
  const r = readLength(name, 'distanceFromAxis', options.distanceFromAxis, 'zero');
  const angle = options.angle === undefined ? 0 : readAngle(name, 'angle', options.angle);
  const z = readLength(name, 'position', options.position);
  return {
    kind: 'void',
    label: `void of ${String(options.diameter)}`,
    cautions: [VOID_CAUTION],
    place: (envelope) => {
      const [x, y] = [r * Math.cos(angle), r * Math.sin(angle)];
      requireFit(
        outsideBy(envelope, x, y, z) <= 0,
        name,
        'position',
        options.position,
        'a position at which the centre lies inside the grain',
      );
      return { source: ball({ name: 'void', x, y, z, radius }), open: options.open };
    },
  };
}
