import type { QuantityInput } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { ball } from './ball';
import type { Flaw } from './flaw';
import { readAngle, readChoice, readLength, requireFit } from './measure';

const fields: FieldsOf<Parameters<typeof chippedEdge>[0]> = {
  end: 'required',
  edgeRadius: 'required',
  angle: 'optional',
  depth: 'required',
};

/**
 * A bite out of the edge between an end of the grain and its bore or wall, as a ball centred on the edge.
 *
 * @throws MeopError `grain-measure`
 * @example chippedEdge({ end: 'aft', edgeRadius: '8 mm', angle: '30 deg', depth: '3 mm' }).kind // => 'chipped edge'
 */
export function chippedEdge(options: {
  readonly end: 'head' | 'aft';
  /** Distance of the edge from the axis: the bore's radius, or the grain's [length]. */
  readonly edgeRadius: QuantityInput<'length'>;
  /** Direction of the chip [angle]. Default 0. */
  readonly angle?: QuantityInput<'angle'>;
  /** How deep the bite goes [length, above zero]. */
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
      requireFit(form === 'cylinder', name, 'end', options.end, 'a grain with flat ends');
      requireFit(
        r <= wall * (1 + 1e-9),
        name,
        'edgeRadius',
        options.edgeRadius,
        'no more than the outer radius of the grain',
      );
      const [x, y] = [Math.min(r, wall) * Math.cos(angle), Math.min(r, wall) * Math.sin(angle)];
      const source = ball({ name, x, y, z: options.end === 'head' ? 0 : length, radius });
      // A chip is open where it is: the piece has come off the end.
      return { source, open: true };
    },
  };
}
