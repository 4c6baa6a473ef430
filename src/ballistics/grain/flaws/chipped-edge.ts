import type { QuantityInput } from '../../../units';
import { type FieldsOf, requireFields } from '../../../units/known-fields';
import { inMillimetres, readAngle, readChoice, readLength, requireFit } from '../measure';
import { ball } from '../surface';
import type { Flaw } from './flaw';

const fields: FieldsOf<Parameters<typeof chippedEdge>[0]> = {
  end: 'required',
  edgeRadius: 'required',
  angle: 'optional',
  depth: 'required',
};

/**
 * A chip out of the edge between an end of the grain and its bore or wall, modelled as a ball centred on the edge.
 *
 * @throws MeopError `grain-measure`
 * @example chippedEdge({ end: 'aft', edgeRadius: '8 mm', angle: '30 deg', depth: '3 mm' }).kind // => 'chipped edge'
 */
export function chippedEdge(options: {
  /** End of the grain whose edge is chipped. */
  readonly end: 'head' | 'aft';
  /** Distance of the edge from the axis: radius of the bore or of the grain [length]. */
  readonly edgeRadius: QuantityInput<'length'>;
  /** Direction of the chip [angle]. Default 0. */
  readonly angle?: QuantityInput<'angle'>;
  /** Depth of the chip: radius of the ball [length, above zero]. */
  readonly depth: QuantityInput<'length'>;
}): Flaw {
  const name = 'chippedEdge';
  requireFields(name, options, fields);
  readChoice(name, 'end', options.end, ['head', 'aft']);
  const r = readLength(name, 'edgeRadius', options.edgeRadius, 'zero');
  const angle = options.angle === undefined ? 0 : readAngle(name, 'angle', options.angle);
  const radius = readLength(name, 'depth', options.depth);
  return {
    kind: 'chipped edge',
    label: `chipped ${options.end} edge`,
    cautions: [],
    place: ({ radius: wall, length, form }) => {
      requireFit(form === 'cylinder', name, 'end', options.end, 'a flat end of a cylindrical grain');
      requireFit(
        r <= wall * (1 + 1e-9),
        name,
        'edgeRadius',
        options.edgeRadius,
        `at most the outer radius of the grain (${inMillimetres(wall)})`,
      );
      const [x, y] = [Math.min(r, wall) * Math.cos(angle), Math.min(r, wall) * Math.sin(angle)];
      const source = ball({ name, x, y, z: options.end === 'head' ? 0 : length, radius });
      // A chip is open from the start because it lies in the end of the grain.
      return { source, open: true };
    },
  };
}
