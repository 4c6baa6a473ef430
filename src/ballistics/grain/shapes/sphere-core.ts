import type { QuantityInput } from '../../../units';
import { type FieldsOf, requireFields } from '../../../units/known-fields';
import { readLength, requireFit } from '../measure';
import { ball } from '../surface';
import type { Core } from './core';

const sphereFields: FieldsOf<Parameters<typeof sphereCore>[0]> = {
  diameter: 'required',
  position: 'required',
};

/**
 * A ball on the axis, such as the widened end of a bore.
 *
 * @throws MeopError `grain-measure`
 * @example sphereCore({ diameter: '30 mm', position: '20 mm' }).name // => 'sphere core'
 */
export function sphereCore(options: {
  /** Diameter [length, above zero]. */
  readonly diameter: QuantityInput<'length'>;
  /** Its centre [length from the head end]. */
  readonly position: QuantityInput<'length'>;
}): Core {
  requireFields('sphereCore', options, sphereFields);
  const radius = readLength('sphereCore', 'diameter', options.diameter) / 2;
  const z = readLength('sphereCore', 'position', options.position, 'zero');
  return {
    name: 'sphere core',
    place: (envelope) => {
      requireFit(
        z <= envelope.length && radius < envelope.radius,
        'sphereCore',
        'position',
        options.position,
        'a ball inside the grain',
      );
      return ball({ name: 'sphere core', x: 0, y: 0, z, radius });
    },
  };
}
