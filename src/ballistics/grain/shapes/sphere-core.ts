import { length, procedure } from '../../../units';
import { startPosition } from '../grain-inputs';
import { inMillimetres, requireFit } from '../misfit';
import { ball } from '../surface';
import type { Core } from './core';

export const sphereCore = /* @__PURE__ */ procedure({
  name: 'sphereCore',
  title: 'Spherical core on the axis, such as the enlarged end of a bore',
  source: 'geometry',
  inputs: {
    diameter: length('d', 'diameter of the core', { example: '30 mm' }),
    position: startPosition('position of its centre'),
  },
  gives: 'the core, for composedGrain',
  example: { diameter: '30 mm', position: '20 mm' },
  run: ({ diameter, position }): Core => {
    const name = 'sphere core';
    const radius = diameter.si / 2;
    return {
      name,
      place: (envelope) => {
        requireFit(
          'sphereCore',
          radius < envelope.radius,
          'diameter',
          diameter,
          `less than the outer diameter of the grain (${inMillimetres(2 * envelope.radius)})`,
        );
        requireFit(
          'sphereCore',
          position.si <= envelope.length,
          'position',
          position,
          `at most the length of the grain (${inMillimetres(envelope.length)})`,
        );
        return ball({ name, x: 0, y: 0, z: position.si, radius });
      },
    };
  },
});
