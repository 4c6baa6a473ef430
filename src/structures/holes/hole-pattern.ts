import {
  type Arguments,
  angle,
  flag,
  fromSiValue,
  MeopError,
  optional,
  printable,
  procedure,
  type Quantity,
  table,
  unitFor,
  unitOf,
  type Values,
} from '../../units';
import { radialBolts } from '../joint/radial-bolts';
import { tube } from '../shell/tube';

const { count, rows, rowSpacing, holeDiameter, edgeDistance } = radialBolts.fields;

/** The inputs of a hole pattern. */
export const holePatternInputs = {
  outsideDiameter: tube.fields.outsideDiameter,
  wall: optional(tube.fields.wall),
  count,
  holeDiameter,
  edgeDistance,
  rows,
  rowSpacing,
  staggered: optional(flag('whether every second row is offset by half a pitch', { example: true }), true),
  firstAngle: optional(angle('φ_1', 'angle of the first hole', { example: '0 deg' }), 0),
};

/** The positions of the holes for the radial bolts. */
export type HolePatternInput = Arguments<typeof holePatternInputs>;

/** One hole of a pattern. */
export interface Hole {
  /** Number of the row, from 1 at the end of the case. */
  readonly row: number;
  /** Number of the hole in its row, from 1. */
  readonly number: number;
  readonly angle: Quantity<'angle'>;
  /** Arc on the outside from angle 0: its position on a strip wrapped around the case. */
  readonly around: Quantity<'length'>;
  /** Distance from the end of the case. */
  readonly along: Quantity<'length'>;
}

/** A pattern of holes and the ligaments between them. */
export interface HolePattern {
  readonly holes: readonly Hole[];
  readonly circumference: Quantity<'length'>;
  /** Angle between adjacent holes of a row. */
  readonly pitchAngle: Quantity<'angle'>;
  /** Straight distance on the outside between the centres of adjacent holes, as measured by a caliper; 0 for a single hole. */
  readonly chord: Quantity<'length'>;
  /** Distance between the centres of adjacent holes along the arc, as measured by a paper strip. */
  readonly arcSpacing: Quantity<'length'>;
  /** Minimum ligament between any two holes, at the bore where the wall is given. */
  readonly ligament: Quantity<'length'>;
  /** Minimum ligament between two rows; `undefined` for one row. */
  readonly rowLigament: Quantity<'length'> | undefined;
  readonly cautions: readonly string[];
  toString(): string;
}

const refused = (path: string, given: unknown, expected: string, remedy?: string): MeopError =>
  new MeopError({ code: 'out-of-domain', procedure: 'holePattern', path, given, expected, remedy });

/**
 * Angles, arcs and ligaments of the holes for radial bolts.
 *
 * @example holePattern({ outsideDiameter: '76.2 mm', count: 8, holeDiameter: '6.4 mm', edgeDistance: '12 mm' }).arcSpacing.in('mm') // => 29.92367003
 */
export const holePattern = /* @__PURE__ */ procedure({
  name: 'holePattern',
  title: 'Pattern of the holes for radial bolts',
  source: 'Geometry',
  inputs: holePatternInputs,
  gives: 'the position of every hole, and the ligaments between them',
  example: { outsideDiameter: '76.2 mm', count: 8, holeDiameter: '6.4 mm', edgeDistance: '12 mm' },
  checks: [
    ({ rows, rowSpacing }) =>
      rows > 1 && rowSpacing === undefined
        ? {
            code: 'missing-field',
            path: 'rowSpacing',
            expected: `the distance between the ${rows} rows along the case`,
          }
        : undefined,
    ({ outsideDiameter, wall }) =>
      wall !== undefined && 2 * wall.si >= outsideDiameter.si
        ? {
            path: 'wall',
            given: wall,
            expected: `less than half the outside diameter (${outsideDiameter.times(0.5)})`,
          }
        : undefined,
    ({ edgeDistance, holeDiameter }) =>
      edgeDistance.si > holeDiameter.si / 2
        ? undefined
        : {
            path: 'edgeDistance',
            given: edgeDistance,
            expected: `more than the radius of a hole (${holeDiameter.times(0.5)})`,
          },
  ],
  run: (input): HolePattern => patternOf(input),
});

function patternOf(input: Values<typeof holePatternInputs>): HolePattern {
  const { outsideDiameter, wall, count: n, rows, rowSpacing, staggered, firstAngle } = input;
  const [outside, hole, edge] = [outsideDiameter.si, input.holeDiameter.si, input.edgeDistance.si];
  const spacing = rows > 1 ? (rowSpacing?.si ?? 0) : 0;
  const first = firstAngle.si;
  const shown = unitFor('length', outsideDiameter.unit);
  const show = (si: number): Quantity<'length'> => fromSiValue(si, 'length', shown);
  const pitch = (2 * Math.PI) / n;
  const inside = outside / 2 - (wall?.si ?? 0);
  // Flat distances on the bore, where holes of parallel sides are closest to each other.
  const between = inside * pitch - hole;
  const offset = staggered ? (inside * pitch) / 2 : 0;
  // Where rows are staggered, every third row is in line with the first.
  const inLine = staggered && rows > 2 ? 2 * spacing : Number.POSITIVE_INFINITY;
  const betweenRows =
    rows > 1 ? Math.min(Math.hypot(offset, spacing), inLine) - hole : Number.POSITIVE_INFINITY;
  if (hole >= 2 * inside)
    throw refused(
      'holeDiameter',
      input.holeDiameter,
      `less than the ${wall === undefined ? 'diameter' : 'bore'} of the case (${show(2 * inside)})`,
    );
  if (n > 1 && between <= 0)
    throw refused(
      'count',
      n,
      `less than ${Math.floor((2 * Math.PI * inside) / hole) + 1} for holes of ${show(hole)} in one row`,
      'Use fewer or smaller bolts, or add a row',
    );
  if (betweenRows <= 0)
    throw refused(
      'rowSpacing',
      rowSpacing,
      inLine < hole
        ? `more than ${show(hole / 2)}, since the first and third rows are in line`
        : 'such that the rows do not overlap',
      `Holes of ${show(hole)} in adjacent rows must not touch`,
    );

  const holes = Array.from({ length: rows * n }, (_, i): Hole => {
    const row = Math.floor(i / n);
    const turn = first + ((i % n) + (staggered && row % 2 === 1 ? 0.5 : 0)) * pitch;
    const angle = ((turn % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
    return {
      row: row + 1,
      number: (i % n) + 1,
      angle: fromSiValue(angle, 'angle', unitOf('deg')),
      around: fromSiValue((angle * outside) / 2, 'length', shown),
      along: fromSiValue(edge + row * spacing, 'length', shown),
    };
  });
  const chord = n === 1 ? 0 : outside * Math.sin(pitch / 2); // a single hole has no neighbour
  const ligament = Math.min(n > 1 ? between : 2 * Math.PI * inside - hole, betweenRows);
  const cautions = cautionsFor({ edge, hole, ligament });
  return printable(
    {
      holes,
      circumference: show(Math.PI * outside),
      pitchAngle: fromSiValue<'angle'>(pitch, 'angle', unitOf('deg')),
      chord: show(chord),
      arcSpacing: show((pitch * outside) / 2),
      ligament: show(ligament),
      rowLigament: rows > 1 ? show(betweenRows) : undefined,
      cautions,
    },
    () =>
      [
        `${n === 1 ? '1 hole' : `${n} holes`} of ${show(hole)} in ${rows === 1 ? 'one row' : `each of ${rows} rows`} on ${show(outside)}`,
        `arc ${show((pitch * outside) / 2)}, chord ${show(chord)}, minimum ligament ${show(ligament)}`,
        table(
          holes.map(({ row, number, angle, around, along }) => ({ row, hole: number, angle, around, along })),
        ),
        ...cautions.map((caution) => `caution: ${caution}`),
      ].join('\n'),
  );
}

function cautionsFor(p: {
  readonly edge: number;
  readonly hole: number;
  readonly ligament: number;
}): string[] {
  const cautions: string[] = [];
  if (p.edge < 1.5 * p.hole)
    cautions.push('The edge distance is less than 1.5 hole diameters, the minimum of practice for tear-out.');
  if (p.ligament < p.hole)
    cautions.push(
      'The ligament between holes is less than one hole diameter of metal: peak stresses of adjacent holes add up (engineering practice, no published source).',
    );
  return cautions;
}
