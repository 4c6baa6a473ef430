import { fromSiValue, MeopError, type Quantity, type QuantityInput, unitOf } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { readPositive } from '../../units/refusal';
import { breakingFactors, type RopeTable, ropeGrades, ropeTables } from './wire-rope-table';

/** Which steel wire rope. */
export interface WireRopeInput {
  readonly diameter: QuantityInput<'length'>;
  /** `'7x19'`, `'7x7'`, `'6x19 FC'` (fibre core), `'6x19 IWRC'` (steel core), and others. */
  readonly construction: string;
  /** `'aircraft carbon'`, `'aircraft stainless'`, `'improved plow'`, or a rope grade 1570, 1770 or 1960 in N/mm². */
  readonly grade: string | number;
}

/** A steel wire rope: the least load at which a new one breaks, without its ends. */
export interface WireRope {
  readonly diameter: Quantity<'length'>;
  readonly construction: string;
  readonly grade: string;
  readonly breakingForce: Quantity<'force'>;
  readonly source: string;
  readonly cautions: readonly string[];
}

const name = 'wireRope';
const sixtyFourth = 0.0254 / 64;

const wireRopeFields: FieldsOf<WireRopeInput> = {
  diameter: 'required',
  construction: 'required',
  grade: 'required',
};

/**
 * The minimum breaking force of a steel wire rope. Ropes of one construction and diameter differ by a quarter with
 * their grade: aircraft cable and general rope are not to be exchanged.
 *
 * @throws MeopError `unknown-name` for a construction, grade or diameter that is in no table
 * @example wireRope({ diameter: '1/8 in', construction: '7x19', grade: 'aircraft carbon' }).breakingForce.in('lbf') // => 2000
 */
export function wireRope(options: WireRopeInput): WireRope {
  requireFields('wireRope', options, wireRopeFields);
  const { diameter, grade } = options;
  const construction = String(options.construction).replace(/ fib(?:re|er) core$/i, ' FC');
  const { si, unit } = readPositive('length', 'diameter', diameter, name);
  const shown = { diameter: fromSiValue<'length'>(si, 'length', unit), construction, grade: String(grade) };
  const number = Number(grade);
  if (Number.isFinite(number)) {
    const factor = breakingFactors[construction];
    if (factor === undefined) throw unknown('construction', construction, Object.keys(breakingFactors));
    if (!ropeGrades.includes(number)) throw unknown('grade', grade, ropeGrades.map(String));
    return {
      ...shown,
      breakingForce: fromSiValue(factor * si * si * number * 1e6, 'force', unitOf('kN')),
      source: `EN 12385-4, minimum breaking force factor ${factor}`,
      cautions: [],
    };
  }
  const tables = ropeTables.filter((table) => table.construction === construction);
  if (tables.length === 0)
    throw unknown('construction', construction, [...new Set(ropeTables.map((table) => table.construction))]);
  const table = tables.find((row) => row.grade === grade);
  if (!table) throw unknown('grade', grade, [...tables.map((row) => row.grade), ...ropeGrades.map(String)]);
  const sizes = sizesOf(table);
  const size = sizes.find(({ diameter: known }) => Math.abs(known - si) <= 0.005 * known);
  if (!size)
    throw unknown(
      'diameter',
      diameter,
      sizes.map(({ sixtyFourths }) => `${inchText(sixtyFourths)} in`),
    );
  return {
    ...shown,
    breakingForce: fromSiValue(size.lbf * unitOf('lbf').factor, 'force', unitOf('lbf')),
    source: table.source,
    cautions: size.fromMemory
      ? [`the strength of ${construction} ${inchText(size.sixtyFourths)} in is from memory`]
      : [],
  };
}

interface Size {
  readonly sixtyFourths: number;
  readonly diameter: number;
  readonly lbf: number;
  readonly fromMemory: boolean;
}

function sizesOf({ sizes }: RopeTable): readonly Size[] {
  return sizes.split(' ').map((text) => {
    const [sixtyFourths, lbf] = text.split(/[:?]/).map(Number);
    return { sixtyFourths, lbf, diameter: sixtyFourths * sixtyFourth, fromMemory: text.includes('?') };
  });
}

function inchText(sixtyFourths: number): string {
  let [top, bottom] = [sixtyFourths, 64];
  while (top % 2 === 0 && bottom > 1) [top, bottom] = [top / 2, bottom / 2];
  return `${top}/${bottom}`;
}

function unknown(field: string, value: unknown, known: readonly string[]): MeopError {
  return new MeopError(
    'unknown-name',
    `${name}: ${field}: no '${String(value)}'; known are ${known.join(', ')}`,
    field,
    {
      value,
      expected: known.join(', '),
    },
  );
}
