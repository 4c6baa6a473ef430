import {
  either,
  fromSiValue,
  MeopError,
  procedure,
  type Quantity,
  ratio,
  unitOf,
  type Values,
} from '../../units';
import { rope } from './restraint-groups';
import { breakingFactors, type RopeTable, ropeGrades, ropeTables } from './wire-rope-table';

/** A steel wire rope with its minimum breaking force when new, without terminations. */
export interface WireRope {
  readonly diameter: Quantity<'length'>;
  readonly construction: string;
  readonly grade: string;
  readonly breakingForce: Quantity<'force'>;
  readonly source: string;
  readonly cautions: readonly string[];
}

/** Whether a value is a wire rope with its strength. */
export const isWireRope = (value: unknown): value is WireRope =>
  typeof value === 'object' && value !== null && 'breakingForce' in value && 'construction' in value;

const name = 'wireRope';
const sixtyFourth = 0.0254 / 64;

/** The inputs of a wire rope. */
export const wireRopeInputs = {
  ...rope.fields,
  grade: either(
    rope.fields.grade.meaning,
    [rope.fields.grade, ratio('R', 'rope grade in N/mm²: 1570, 1770 or 1960')],
    { example: 'aircraft carbon' },
  ),
};

/**
 * The minimum breaking force of a steel wire rope. Ropes of one construction and diameter differ by 25 % with
 * their grade: aircraft cable and general rope are not interchangeable.
 *
 * @throws MeopError `unknown-name` for a construction, grade or diameter that is in no table
 * @example wireRope({ diameter: '1/8 in', construction: '7x19', grade: 'aircraft carbon' }).breakingForce.in('lbf') // => 2000
 */
export const wireRope = /* @__PURE__ */ procedure({
  name,
  title: 'Minimum breaking force of a steel wire rope',
  source: 'EN 12385-4 for rope grades in N/mm²; the table of each construction and grade otherwise',
  inputs: wireRopeInputs,
  gives: 'the rope with its minimum breaking force',
  example: { diameter: '1/8 in', construction: '7x19', grade: 'aircraft carbon' },
  run: (given) => wireRopeOf(given),
});

/** The same from values that are read. */
export function wireRopeOf({ diameter, grade, construction: text }: Values<typeof wireRopeInputs>): WireRope {
  const construction = text.replace(/ fib(?:re|er) core$/i, ' FC');
  const { si } = diameter;
  const shown = { diameter, construction, grade: String(grade) };
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
      String(diameter),
      sizes.map(({ sixtyFourths }) => `${inchText(sixtyFourths)} in`),
    );
  return {
    ...shown,
    breakingForce: fromSiValue(size.lbf * unitOf('lbf').factor, 'force', unitOf('lbf')),
    source: table.source,
    cautions: size.fromMemory
      ? [
          `The strength of ${construction} ${inchText(size.sixtyFourths)} in is quoted from memory, not verified.`,
        ]
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

const unknown = (field: string, given: unknown, known: readonly string[]): MeopError =>
  new MeopError({
    code: 'unknown-name',
    procedure: name,
    path: field,
    given: String(given),
    note: field,
    expected: known.join(', '),
  });
