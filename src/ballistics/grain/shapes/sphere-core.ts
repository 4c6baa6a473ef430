import type { QuantityInput } from '../../../units';
import { type FieldsOf, requireFields } from '../../../units/known-fields';
import { inMillimetres, readLength, requireFit } from '../measure';
import { ball } from '../surface';
import type { Core } from './core';

const sphereFields: FieldsOf<Parameters<typeof sphereCore>[0]> = {
  diameter: 'required',
  position: 'required',
};

/**
 * A spherical core on the axis, such as the enlarged end of a bore.
 *
 * @throws MeopError `grain-measure`
 * @example sphereCore({ diameter: '30 mm', position: '20 mm' }).name // => 'sphere core'
 */
export function sphereCore(options: {
  /** Diameter of the core [length, above zero]. */
  readonly diameter: QuantityInput<'length'>;
  /** Position of its centre [length from the head end]. */
  readonly position: QuantityInput<'length'>;
}): Core {
  requireFields('sphereCore', options, sphereFields);
  const radius = readLength('sphereCore', 'diameter', options.diameter) / 2;
  const z = readLength('sphereCore', 'position', options.position, 'zero');
  return {
    name: 'sphere core',
    place: (envelope) => {
      requireFit(
        radius < envelope.radius,
        'sphereCore',
        'diameter',
        options.diameter,
        `less than the outer diameter of the grain (${inMillimetres(2 * envelope.radius)})`,
      );
      requireFit(
        z <= envelope.length,
        'sphereCore',
        'position',
        options.position,
        `at most the length of the grain (${inMillimetres(envelope.length)})`,
      );
      return ball({ name: 'sphere core', x: 0, y: 0, z, radius });
    },
  };
}
