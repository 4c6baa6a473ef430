import type { Quantity } from '../../units';
import { countersinkDepth, landThickness } from './countersink';
import { edgeDistanceRatio } from './edge-distance';
import type { FastenerType } from './fastener-type';
import type { BoltsSi, PartsSi } from './read-joint';

/** A check of a joint without a margin of safety. */
export interface JointCheck {
  readonly check: string;
  readonly passes: boolean;
  readonly value: Quantity | number;
  readonly limit: Quantity | number;
  /** Result in words. */
  readonly message: string;
  readonly source: string;
}

const memory = '(from memory)';
const practice = 'engineering practice, no published source';
const knifeEdge = 2 / 3;
const angleTolerance = Math.PI / 180; // rad, one degree

/** The checks of the heads of the fasteners in the wall. */
export function fastenerChecks(
  { given }: PartsSi,
  bolts: BoltsSi,
  type: FastenerType,
  length: (si: number) => Quantity<'length'>,
): readonly JointCheck[] {
  const { head, holeDiameter, edgeDistance, thread } = bolts;
  if (head === undefined) return [];
  const wall = given.tube.wall.si;
  const judged = (
    check: string,
    [value, limit]: readonly [Quantity | number, Quantity | number],
    passes: boolean,
    [required, remedy]: readonly [required: string, remedy: string],
    source: string,
  ): JointCheck => ({
    check,
    passes,
    value,
    limit,
    message: `${shown(value)} (${required})${passes ? '' : `. ${remedy}`}`,
    source,
  });
  if (head.kind === 'counterbore') {
    const left = landThickness.si({ wall, depth: head.depth });
    return [
      judged(
        'wall left under the counterbore',
        [length(left), length(wall / 2)],
        left >= (wall / 2) * (1 - 1e-9),
        [`required ≥ ${length(wall / 2)}, half of the wall`, 'Reduce the depth of the counterbore.'],
        practice,
      ),
    ];
  }
  const depth = countersinkDepth.si({ headDiameter: head.diameter, holeDiameter, headAngle: head.angle });
  const ratio = edgeDistanceRatio.si({ edgeDistance, diameter: thread.majorDiameter.si });
  const { headAngle, countersinkAngle } = type;
  return [
    judged(
      'depth of the countersink',
      [length(depth), length(knifeEdge * wall)],
      depth <= knifeEdge * wall * (1 + 1e-9),
      [
        `allowed ≤ ${length(knifeEdge * wall)}, 2/3 of the wall`,
        'The land is a knife edge without reliable bearing. Use smaller screws or socket heads.',
      ],
      `${practice} ${memory}`,
    ),
    judged(
      'edge distance of countersunk screws in diameters',
      [ratio, 2.5],
      ratio >= 2.5 * (1 - 1e-9),
      ['required ≥ 2.5', 'Increase the edge distance.'],
      `practice for flush heads ${memory}`,
    ),
    ...(headAngle !== undefined && countersinkAngle !== undefined
      ? [
          judged(
            'included angle of the countersink',
            [countersinkAngle, headAngle],
            Math.abs(countersinkAngle.si - headAngle.si) <= angleTolerance * (1 + 1e-9),
            [
              `required ${headAngle} ± 1°`,
              'Head and countersink touch only at an edge. Cut the countersink to the angle of the head.',
            ],
            practice,
          ),
        ]
      : []),
  ];
}

const shown = (value: Quantity | number): string =>
  typeof value === 'number' ? value.toFixed(2) : String(value);
