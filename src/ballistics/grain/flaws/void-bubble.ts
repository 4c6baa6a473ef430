import { length, procedure } from '../../../units';
import { endPosition } from '../grain-inputs';
import { requireFit } from '../misfit';
import { ball, outsideBy } from '../surface';
import { type Flaw, VOID_CAUTION } from './flaw';
import { flawAngle, open } from './flaw-inputs';

/** A buried void is assumed to ignite over its whole surface when the burning front first reaches it. */
export const voidBubble = /* @__PURE__ */ procedure({
  name: 'voidBubble',
  title: 'Spherical void',
  source: 'geometry',
  inputs: {
    diameter: length('d', 'diameter of the void', { example: '4 mm', worse: 'neither' }),
    distanceFromAxis: length('r', 'distance of its centre from the axis', {
      min: 0,
      example: '15 mm',
      worse: 'neither',
    }),
    angle: flawAngle,
    position: endPosition('position of its centre'),
    open,
  },
  gives: 'the flaw, for withFlaws',
  example: { diameter: '4 mm', distanceFromAxis: '15 mm', angle: '90 deg', position: '30 mm' },
  run: ({ diameter, distanceFromAxis: { si: r }, angle, position, open: burns }): Flaw => ({
    kind: 'void',
    label: `void of ${diameter}`,
    cautions: [VOID_CAUTION],
    place: (envelope) => {
      const [x, y, z] = [r * Math.cos(angle.si), r * Math.sin(angle.si), position.si];
      requireFit(
        'voidBubble',
        outsideBy(envelope, x, y, z) <= 0,
        'position',
        position,
        'a position at which the centre lies inside the grain',
      );
      return { source: ball({ name: 'void', x, y, z, radius: diameter.si / 2 }), open: burns };
    },
  }),
});
