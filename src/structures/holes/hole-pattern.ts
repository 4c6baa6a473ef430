import {
  fromSiValue,
  MeopError,
  type Quantity,
  type QuantityInput,
  readInput,
  table,
  unitOf,
} from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { readPositive, refusal } from '../../units/refusal';

/** Where the holes for the radial bolts are to be. */
export interface HolePatternInput {
  /** Of the case. */
  readonly outsideDiameter: QuantityInput<'length'>;
  /** Of the case; gives the ligament in the bore, which is the smaller one. The outside alone where left out. */
  readonly wall?: QuantityInput<'length'>;
  /** Holes in a row; 1 or more. */
  readonly count: number;
  readonly holeDiameter: QuantityInput<'length'>;
  /** From the end of the case to the centres of the nearest row. */
  readonly edgeDistance: QuantityInput<'length'>;
  /** 1 or more; 1 where left out. */
  readonly rows?: number;
  /** Along the case, between rows; needed where there are several. */
  readonly rowSpacing?: QuantityInput<'length'>;
  /** Whether each second row stands between the holes of the first; it does unless told otherwise. */
  readonly staggered?: boolean;
  /** Of the first hole; 0 where left out. */
  readonly firstAngle?: QuantityInput<'angle'>;
}

/** One hole of a pattern. */
export interface Hole {
  /** From 1, the row nearest to the end of the case. */
  readonly row: number;
  /** From 1, in its row. */
  readonly number: number;
  readonly angle: Quantity<'angle'>;
  /** Arc on the outside from angle 0: where to mark it on a strip wrapped round the case. */
  readonly around: Quantity<'length'>;
  /** From the end of the case. */
  readonly along: Quantity<'length'>;
}

/** A pattern of holes and what it leaves between them. */
export interface HolePattern {
  readonly holes: readonly Hole[];
  readonly circumference: Quantity<'length'>;
  /** Between neighbours of a row. */
  readonly pitchAngle: Quantity<'angle'>;
  /** Straight distance on the outside between the centres of neighbours: what a caliper measures; 0 for a lone hole. */
  readonly chord: Quantity<'length'>;
  /** Distance between the centres of neighbours, wrapped flat: what a paper strip measures. */
  readonly arcSpacing: Quantity<'length'>;
  /** Least metal left between two holes anywhere, in the bore where the wall is known. */
  readonly ligament: Quantity<'length'>;
  /** Least metal between two rows; none for one row. */
  readonly rowLigament: Quantity<'length'> | undefined;
  readonly cautions: readonly string[];
  toString(): string;
}

const name = 'holePattern';

/** The fields of {@link HolePatternInput}, for the check that whatever is drawn from a pattern makes. */
export const holePatternFields: FieldsOf<HolePatternInput> = {
  outsideDiameter: 'required',
  wall: 'optional',
  count: 'required',
  holeDiameter: 'required',
  edgeDistance: 'required',
  rows: 'optional',
  rowSpacing: 'optional',
  staggered: 'optional',
  firstAngle: 'optional',
};

/**
 * Angles, arcs and ligaments of the holes for radial bolts.
 *
 * @throws MeopError `out-of-domain` where more holes are asked for than fit, rows clash, or a hole opens into the end
 * @example holePattern({ outsideDiameter: '76.2 mm', count: 8, holeDiameter: '6.4 mm', edgeDistance: '12 mm' }).arcSpacing.in('mm') // => 29.92367003
 */
export function holePattern(input: HolePatternInput): HolePattern {
  requireFields('holePattern', input, holePatternFields);
  const length = (field: string, value: unknown): number => readPositive('length', field, value, name).si;
  const outside = length('outsideDiameter', input.outsideDiameter);
  const hole = length('holeDiameter', input.holeDiameter);
  const edge = length('edgeDistance', input.edgeDistance);
  const wall = input.wall === undefined ? 0 : length('wall', input.wall);
  const first =
    input.firstAngle === undefined ? 0 : readInput('angle', 'firstAngle', input.firstAngle, name).si;
  const n = wholeNumber('count', input.count);
  const rows = wholeNumber('rows', input.rows ?? 1);
  if (rows > 1 && input.rowSpacing === undefined)
    throw new MeopError(
      'missing-field',
      `${name}: rowSpacing is needed for ${rows} rows: the distance between them along the case`,
      'rowSpacing',
      { expected: 'a length' },
    );
  const spacing = rows > 1 ? length('rowSpacing', input.rowSpacing) : 0;
  const staggered = input.staggered ?? true;
  if (2 * wall >= outside)
    throw refusal(name, 'wall', input.wall, `less than half of the outside diameter (${mm(outside / 2)})`);
  if (edge <= hole / 2)
    throw refusal(
      name,
      'edgeDistance',
      input.edgeDistance,
      `more than the radius of a hole (${mm(hole / 2)})`,
    );

  const shown = unitOf(readInput('length', 'outsideDiameter', input.outsideDiameter, name).unit.text);
  const pitch = (2 * Math.PI) / n;
  const inside = outside / 2 - wall;
  // Flat distances on the bore, where holes of parallel sides are nearest to each other.
  const between = inside * pitch - hole;
  const offset = staggered ? (inside * pitch) / 2 : 0;
  // Where rows are staggered, each third row stands in line with the first.
  const inLine = staggered && rows > 2 ? 2 * spacing : Number.POSITIVE_INFINITY;
  const betweenRows =
    rows > 1 ? Math.min(Math.hypot(offset, spacing), inLine) - hole : Number.POSITIVE_INFINITY;
  if (hole >= 2 * inside)
    throw refusal(
      name,
      'holeDiameter',
      input.holeDiameter,
      `less than the ${wall > 0 ? 'bore' : 'diameter'} of the case (${mm(2 * inside)})`,
    );
  if (n > 1 && between <= 0)
    throw refusal(
      name,
      'count',
      input.count,
      'a smaller number of bolts, or smaller ones, or a second row',
      `${Math.floor((2 * Math.PI * inside) / hole)} holes of ${mm(hole)} at most touch on this circle`,
    );
  if (betweenRows <= 0)
    throw refusal(
      name,
      'rowSpacing',
      input.rowSpacing,
      `more than ${mm(hole)} between centres`,
      `the rows clash${inLine < hole ? ', also rows one and three, which stand in line' : ''}`,
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
  const show = (si: number): Quantity<'length'> => fromSiValue(si, 'length', shown);
  const chord = n === 1 ? 0 : outside * Math.sin(pitch / 2); // a lone hole has no neighbour
  const ligament = Math.min(n > 1 ? between : 2 * Math.PI * inside - hole, betweenRows);
  const cautions = cautionsFor({ edge, hole, ligament });
  const text = (): string =>
    [
      `${n === 1 ? '1 hole' : `${n} holes`} of ${show(hole)} in ${rows === 1 ? 'one row' : `each of ${rows} rows`} on ${show(outside)}`,
      `arc ${show((pitch * outside) / 2)}, chord ${show(chord)}, least ligament ${show(ligament)}`,
      table(
        holes.map(({ row, number, angle, around, along }) => ({ row, hole: number, angle, around, along })),
      ),
      ...cautions.map((caution) => `caution: ${caution}`),
    ].join('\n');
  return {
    holes,
    circumference: show(Math.PI * outside),
    pitchAngle: fromSiValue(pitch, 'angle', unitOf('deg')),
    chord: show(chord),
    arcSpacing: show((pitch * outside) / 2),
    ligament: show(ligament),
    rowLigament: rows > 1 ? show(betweenRows) : undefined,
    cautions,
    toString: text,
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: text },
  };
}

const mm = (si: number): string => `${Number((si * 1000).toPrecision(4))} mm`;

function cautionsFor(p: {
  readonly edge: number;
  readonly hole: number;
  readonly ligament: number;
}): string[] {
  const cautions: string[] = [];
  if (p.edge < 1.5 * p.hole)
    cautions.push(
      'the edge distance is below 1.5 hole diameters: no handbook gives a bearing strength there',
    );
  if (p.ligament < p.hole)
    cautions.push(
      'less than one hole diameter of metal between holes: peak stresses of neighbours add up (engineering practice, no published source)',
    );
  return cautions;
}

function wholeNumber(field: string, value: number): number {
  if (Number.isInteger(value) && value >= 1) return value;
  throw refusal(name, field, value, 'a whole number from 1');
}
