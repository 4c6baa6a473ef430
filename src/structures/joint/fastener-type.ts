import { angle, type Conflict, choice, inputs, length, optional, type Values } from '../../units';

/** The type of the fasteners of a joint, and what is machined in the case for their heads. */
export const fastenerType = /* @__PURE__ */ inputs(
  {
    fastener: optional(
      choice(
        'type of the fasteners: screws with a socket head, screws with a countersunk head, or plain pins of the nominal diameter of the thread',
        ['socket head', 'countersunk', 'pin'],
      ),
      'socket head',
    ),
    headDiameter: optional(
      length('d_k', 'diameter at the surface of the countersink, or of the counterbore', {
        example: '10 mm',
        worse: 'high',
      }),
    ),
    headAngle: optional(
      angle(
        'α',
        'included angle of the countersunk head: 90° for ISO screws, 82° for unified screws, 100° in aerospace',
        { above: 0, below: Math.PI, example: '90 deg', worse: 'low' },
      ),
    ),
    countersinkAngle: optional(
      angle('α_s', 'included angle of the countersink; that of the head where omitted', {
        above: 0,
        below: Math.PI,
        example: '90 deg',
        worse: 'low',
      }),
    ),
    counterboreDepth: optional(
      length('h_c', 'depth of the counterbore for a socket head; no counterbore where omitted', {
        example: '1 mm',
        worse: 'high',
      }),
    ),
  },
  { meaning: 'type of the fasteners of a joint' },
);

/** The type of the fasteners, read. */
export type FastenerType = Values<typeof fastenerType.fields>;

/** What the head of a fastener takes from the wall [m, rad]. */
export type HeadSi =
  | { readonly kind: 'countersink'; readonly diameter: number; readonly angle: number }
  | { readonly kind: 'counterbore'; readonly diameter: number; readonly depth: number };

/** What the heads take from the wall; `undefined` where they lie on it, and for pins. */
export function headOf({
  fastener,
  headDiameter,
  headAngle,
  countersinkAngle,
  counterboreDepth,
}: FastenerType): HeadSi | undefined {
  if (headDiameter === undefined) return undefined;
  const angleSi = (countersinkAngle ?? headAngle)?.si;
  if (fastener === 'countersunk' && angleSi !== undefined)
    return { kind: 'countersink', diameter: headDiameter.si, angle: angleSi };
  return counterboreDepth === undefined
    ? undefined
    : { kind: 'counterbore', diameter: headDiameter.si, depth: counterboreDepth.si };
}

const needs: readonly (readonly [field: keyof FastenerType, of: FastenerType['fastener'], what: string])[] = [
  ['headDiameter', 'countersunk', 'the diameter of the head at the surface'],
  ['headAngle', 'countersunk', 'the included angle of the head'],
];
const belongs: readonly (readonly [field: keyof FastenerType, of: FastenerType['fastener']])[] = [
  ['headAngle', 'countersunk'],
  ['countersinkAngle', 'countersunk'],
  ['counterboreDepth', 'socket head'],
];

/** The fields that the type of the fasteners requires, and those of another type. */
export const fastenerConflicts: readonly ((given: FastenerType) => Conflict | undefined)[] = [
  ...needs.map(
    ([field, of, expected]) =>
      (given: FastenerType): Conflict | undefined =>
        given.fastener === of && given[field] === undefined
          ? { code: 'missing-field', path: field, expected: `${expected} of a ${of} screw` }
          : undefined,
  ),
  ...belongs.map(
    ([field, of]) =>
      (given: FastenerType): Conflict | undefined =>
        given.fastener !== of && given[field] !== undefined
          ? { path: field, given: given[field], expected: `omitted, since it belongs to fastener '${of}'` }
          : undefined,
  ),
  ({ counterboreDepth, headDiameter }) =>
    counterboreDepth !== undefined && headDiameter === undefined
      ? { code: 'missing-field', path: 'headDiameter', expected: 'the diameter of the counterbore' }
      : undefined,
];
