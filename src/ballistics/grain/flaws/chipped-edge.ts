import { choice, length, procedure } from '../../../units';
import { inMillimetres, requireFit } from '../misfit';
import { ball } from '../surface';
import type { Flaw } from './flaw';
import { flawAngle } from './flaw-inputs';

const name = 'chippedEdge';

/** Modelled as a ball centred on the edge. */
export const chippedEdge = /* @__PURE__ */ procedure({
  name,
  title: 'Chip out of the edge between an end of the grain and its bore or wall',
  source: 'geometry',
  inputs: {
    end: choice('end with the chip', ['head', 'aft']),
    edgeRadius: length('r', 'distance of the edge from the axis', {
      min: 0,
      example: '8 mm',
      worse: 'neither',
    }),
    angle: flawAngle,
    depth: length('h', 'depth of the chip', { example: '3 mm', worse: 'neither' }),
  },
  gives: 'the flaw, for withFlaws',
  example: { end: 'aft', edgeRadius: '8 mm', angle: '30 deg', depth: '3 mm' },
  run: ({ end, edgeRadius, angle, depth }): Flaw => ({
    kind: 'chipped edge',
    label: `chipped ${end} edge`,
    cautions: [],
    place: ({ radius: wall, length: high, form }) => {
      requireFit(name, form === 'cylinder', 'end', end, 'a flat end of a cylindrical grain');
      requireFit(
        name,
        edgeRadius.si <= wall * (1 + 1e-9),
        'edgeRadius',
        edgeRadius,
        `at most the outer radius of the grain (${inMillimetres(wall)})`,
      );
      const r = Math.min(edgeRadius.si, wall);
      const [x, y] = [r * Math.cos(angle.si), r * Math.sin(angle.si)];
      const source = ball({ name, x, y, z: end === 'head' ? 0 : high, radius: depth.si });
      // A chip is open from the start because it lies in the end of the grain.
      return { source, open: true };
    },
  }),
});
