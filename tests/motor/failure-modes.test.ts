import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { demoMotor, parseMotor, review } from '../../src/motor';
import { type FailureMargin, reviewJoint, reviewShell, ropeRestraint } from '../../src/structures';
import { evaluate, rightSide } from '../structures/arithmetic';

// The working of every margin, done again by a small evaluator of written arithmetic: what is shown must come to the number.

const motors = {
  'the demo motor': demoMotor(),
  'the motor with a ring and a thread': parseMotor(readFileSync('examples/motors/plover-50.json', 'utf8')),
};
/** The plate of the head closure of that motor in another shape. */
const shaped = (shape: unknown): readonly FailureMargin[] => {
  const json = JSON.parse(readFileSync('examples/motors/plover-50.json', 'utf8'));
  const { opening, ...closure } = json.closures.head;
  const { form } = Object(shape);
  json.closures.head = { ...closure, shape, ...(form === 'stepped' && { opening }) };
  return review(parseMotor(json)).margins.filter(({ part }) => part === 'head-closure');
};
const others: readonly FailureMargin[] = [
  // What neither motor has: oval tube, all of a restraint, misplaced bolts with a gap, two rows, holes beyond the seal.
  ...reviewShell({
    tube: { material: '6061-T6 drawn tube', outsideDiameter: '3.5 in', wall: '0.25 in' },
    meop: '1000 psi',
    ovality: '0.2 mm',
    strainHardening: 0.05,
  }).margins,
  ...ropeRestraint({
    thrust: '2 kN',
    slack: '5 mm',
    ropeLength: '1 m',
    rope: { diameter: '5/16 in', construction: '6x19 IWRC', grade: 1770 },
    termination: 'clips',
    legs: 2,
    legAngle: '20 deg',
    shackle: '5 kN',
    anchor: { count: 2, thread: 'M10', boltClass: '8.8', pullAngle: '30 deg' },
  }).margins,
  ...shaped({ form: 'stepped', ringThickness: '8 mm', hubDiameter: '28 mm' }),
  ...shaped({ form: 'dished', crownRadius: '38 mm', knuckleRadius: '4 mm' }),
  ...shaped({ form: 'ellipsoidal', depth: '9.5 mm' }),
  ...reviewJoint({
    pressure: '6 MPa',
    tube: { outsideDiameter: '76 mm', wall: '3 mm', material: '6061-T6 drawn tube' },
    closureMaterial: '6061-T6 bar',
    gap: '0.1 mm',
    thread: 'M6',
    boltClass: '8.8',
    count: 10,
    rows: 2,
    rowSpacing: '7 mm',
    edgeDistance: '14 mm',
    holeDiameter: '6.1 mm',
    positionTolerance: '0.01 mm',
    preload: '3 kN',
    sealToHoles: '10 mm',
  }).modes,
];
const margins: readonly (readonly [string, FailureMargin])[] = [
  ...Object.entries(motors).flatMap(([name, motor]) =>
    review(motor).margins.map((one) => [`${name}, ${one.part}: ${one.mode}`, one] as const),
  ),
  ...others.map((one) => [`${one.part}: ${one.mode}`, one] as const),
];
const near = (found: number, wanted: number, relative: number, why: string): void =>
  expect(Math.abs(found - wanted), why).toBeLessThanOrEqual(relative * Math.abs(wanted));

describe.each(margins)('%s', (_, margin) => {
  const explanation = margin.explain();
  const text = String(explanation);

  test('the last line of its working comes to its number', () => {
    const last = text.split('\n').at(-1) ?? '';
    expect(last).toMatch(/^MS = .* \/ \(.*·.*\) − 1 = /);
    const [, sum, result] = last.split('=').map((side) => side.replace(/\s(?:MPa|psi|k?N|lbf)\b/g, ''));
    // One is taken off: an error of the quotient, of seven figures, is one of the margin.
    expect(Math.abs(evaluate(sum) - margin.marginOfSafety)).toBeLessThan(
      1e-6 * (1 + Math.abs(margin.marginOfSafety)),
    );
    near(Number(result.replace('−', '-')), margin.marginOfSafety, 1e-6, last);
  });

  test('each step comes to the result that it states', () => {
    // Seven figures go in; differences of nearly equal numbers lose up to two of them.
    for (const { substitution, value, title } of explanation.steps)
      expect(Math.abs(evaluate(rightSide(substitution)) - value), `${title}: ${substitution}`).toBeLessThan(
        2e-5 * Math.max(Math.abs(value), title === 'Margin of safety' ? 1 : 0),
      );
  });

  test('its steps feed each other and end in its stress and its margin', () => {
    const values = explanation.steps.map(({ value }) => value);
    expect(values.at(-1)).toBe(margin.marginOfSafety);
    // A pressure that is applied as it is, and a strength from a handbook, need no step.
    const last = new Set([margin.applied.si, margin.allowable.si]);
    const chain = explanation.steps.slice(0, -1);
    if (chain.length > 0) expect(last.has(chain[chain.length - 1].value)).toBe(true);
    const { formulas, sources } = explanation;
    expect(new Set(explanation.steps.map(({ source }) => source)).size).toBeLessThanOrEqual(
      sources.length + 1,
    );
    expect(formulas.length).toBeLessThanOrEqual(explanation.steps.length);
    for (const source of margin.source.split('; strength: ')[0].split(/; strength: /))
      expect(source).not.toBe('');
    expect(text).not.toMatch(/NaN|undefined|\[object/);
    expect(explanation.toHtml()).toContain(explanation.substitution);
  });
});

describe('a failure mode', () => {
  test('has an identifier that no other mode of its part has', () => {
    for (const motor of Object.values(motors)) {
      const keys = review(motor).margins.map(({ part, id }) => `${part} ${id}`);
      expect(new Set(keys).size).toBe(keys.length);
    }
  });
  test('knows what it reaches: every mode judged by a yield strength is one of yield', () => {
    const all = Object.values(motors).flatMap((motor) => review(motor).margins);
    for (const { mode, limit } of all) expect(limit === 'yield', mode).toBe(mode.includes('yield'));
  });
});
