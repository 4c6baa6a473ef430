import { describe, expect, expectTypeOf, it } from 'vitest';
import {
  type MeopError,
  type Quantity,
  type QuantityInput,
  q,
  quantity,
  series,
  seriesOf,
} from '../../src/units';
import { errorOf } from '../error-code';
import { compileErrors } from './compile';
import { burnRate, hoopStress } from './sample-formulas';

// The text that the compiler prints is part of the interface: it is pinned, at most two lines for a text and three
// for a quantity (TypeScript names the union, then its nearest member, then the kind; the first cannot be left out
// while a parameter takes both). And the same mistakes at run time, for plain JavaScript.

const head = `import { q, quantity, absolute, gauge, isClose, type Quantity } from '../../src/units';
import { burnRate, hoopStress } from './sample-formulas';
const p = q('1000 psi'), gaugeReading = q('50 psig'), absoluteReading = q('50 psia');
const area = q('2 in^2'), length = q('3 in'), time = q('5 s'), hot = q('100 degC');
const rest = { referenceRate: '8 mm/s', referencePressure: '1 MPa', exponent: 0.3 } as const;
export const used = [p, area, length, time, hot, gaugeReading, absoluteReading, rest, quantity, absolute, gauge, isClose, burnRate, hoopStress];
`;

const snippets = {
  'wrong kind': `hoopStress({ pressure: '1000 mm', radius: '38 mm', wall: '3.2 mm' });`,
  'wrong kind, as a quantity': `hoopStress({ pressure: length, radius: '38 mm', wall: '3.2 mm' });`,
  'gauge for absolute': `burnRate({ ...rest, pressure: '50 psig' });`,
  'gauge for absolute, as a quantity': `burnRate({ ...rest, pressure: gaugeReading });`,
  'bare number': `hoopStress({ pressure: 1000, radius: '38 mm', wall: '3.2 mm' });`,
  'unknown field': `hoopStress({ pressure: '1000 psi', radius: '38 mm', wall: '3.2 mm', thickness: '1 mm' });`,
  'missing field': `hoopStress({ pressure: '1000 psi', radius: '38 mm' });`,
  'misspelt unit': `hoopStress({ pressure: '1000 psi', radius: '38 mn', wall: '3.2 mm' });`,
  'length plus time': 'length.plus(time);',
  'gauge plus gauge': 'gaugeReading.plus(gaugeReading);',
  'temperature plus temperature': 'hot.plus(hot);',
  'gauge pressure as a ratio': 'gaugeReading.per(absoluteReading);',
  'a ratio to a gauge pressure': 'absoluteReading.per(gaugeReading);',
  'a length shown in psi': `length.in('psi');`,
  'an object for a quantity': `hoopStress({ pressure: { si: 5 }, radius: '38 mm', wall: '3.2 mm' });`,
  'a force for a pressure': `const f: Quantity<'pressure'> = p.times(area); export { f };`,
  'what compiles': `
    const force: Quantity<'force'> = p.times(area);
    const energy: Quantity<'energy'> = force.times(length);
    const speed: Quantity<'speed'> = length.per(time);
    const twice: Quantity<'length'> = length.times(2).plus(q('1 mm'));
    const square: Quantity<'area'> = length.pow(2);
    const rise: Quantity<'temperature difference'> = hot.minus(q('20 degC'));
    const change: Quantity<'pressure difference'> = gaugeReading.minus(q('20 psig'));
    const torque: Quantity<'torque'> = force.times(length).as('torque');
    const above: Quantity<'absolute pressure'> = absolute(gaugeReading, '1 atm');
    const size: number = length.in('mm');
    hoopStress({ pressure: p, radius: '3/8 in', wall: '0.125in' });
    export { energy, speed, twice, square, rise, change, torque, above, size };`,
};

const printed = compileErrors(
  Object.fromEntries(Object.entries(snippets).map(([name, text]) => [name, `${head}${text}`])),
);
/** The one error of a snippet, its list of units cut to the first two. */
function compileErrorOf(name: keyof typeof snippets): string {
  const errors = printed.get(name) ?? [];
  expect(errors).toHaveLength(1);
  return errors[0].replace(/(\| `[^`]*` \| `[^`]*` \|) `[^']*'/g, "$1 …'");
}

describe('what the compiler says', () => {
  it('to a length for a pressure', () => {
    expect(compileErrorOf('wrong kind')).toMatchInlineSnapshot(
      `"Type '"1000 mm"' is not assignable to type 'Quantity<"pressure" | "gauge pressure"> | \`\${number} psi\` | \`\${number} Pa\` | …'."`,
    );
    expect(compileErrorOf('wrong kind, as a quantity')).toMatchInlineSnapshot(`
      "Type 'Quantity<"length">' is not assignable to type 'Quantity<"pressure" | "gauge pressure"> | \`\${number} psi\` | \`\${number} Pa\` | …'.
        Type 'Quantity<"length">' is not assignable to type 'Quantity<"pressure" | "gauge pressure">'.
          Type '"length"' is not assignable to type '"pressure" | "gauge pressure"'."
    `);
  });
  it('to a gauge pressure for an absolute one', () => {
    expect(compileErrorOf('gauge for absolute')).toMatchInlineSnapshot(
      `"Type '"50 psig"' is not assignable to type 'Quantity<"pressure" | "absolute pressure"> | \`\${number} psi\` | \`\${number} Pa\` | …'."`,
    );
    expect(compileErrorOf('gauge for absolute, as a quantity')).toMatchInlineSnapshot(`
      "Type 'Quantity<"gauge pressure">' is not assignable to type 'Quantity<"pressure" | "absolute pressure"> | \`\${number} psi\` | \`\${number} Pa\` | …'.
        Type 'Quantity<"gauge pressure">' is not assignable to type 'Quantity<"pressure" | "absolute pressure">'.
          Type '"gauge pressure"' is not assignable to type '"pressure" | "absolute pressure"'."
    `);
  });
  it('to a bare number', () => {
    expect(compileErrorOf('bare number')).toMatchInlineSnapshot(
      `"Type 'number' is not assignable to type 'Quantity<"pressure" | "gauge pressure"> | \`\${number} psi\` | \`\${number} Pa\` | …'."`,
    );
  });
  it('to an unknown field', () => {
    expect(compileErrorOf('unknown field')).toMatchInlineSnapshot(
      `"Object literal may only specify known properties, and 'thickness' does not exist in type 'Arguments<{ readonly pressure: Parameter<"gauge pressure", "required", undefined>; readonly radius: Parameter<"length", "required", undefined>; readonly wall: Parameter<"length", "required", undefined>; }>'."`,
    );
  });
  it('to a missing field', () => {
    expect(compileErrorOf('missing field')).toMatchInlineSnapshot(`
      "Argument of type '{ pressure: "1000 psi"; radius: "38 mm"; }' is not assignable to parameter of type 'Arguments<{ readonly pressure: Parameter<"gauge pressure", "required", undefined>; readonly radius: Parameter<"length", "required", undefined>; readonly wall: Parameter<"length", "required", undefined>; }>'.
        Property 'wall' is missing in type '{ pressure: "1000 psi"; radius: "38 mm"; }' but required in type '{ readonly pressure: Quantity<"pressure" | "gauge pressure"> | \`\${number} psi\` | \`\${number} Pa\` | …'."
    `);
  });
  it('to a misspelt unit', () => {
    expect(compileErrorOf('misspelt unit')).toMatchInlineSnapshot(
      `"Type '"38 mn"' is not assignable to type 'Quantity<"length"> | \`\${number} m\` | \`\${number} mm\` | …'."`,
    );
  });
  it('to sums and ratios that mean nothing', () => {
    expect(compileErrorOf('length plus time')).toMatchInlineSnapshot(`
      "Argument of type 'Quantity<"time">' is not assignable to parameter of type 'Quantity<"length">'.
        Type '"time"' is not assignable to type '"length"'."
    `);
    expect(compileErrorOf('gauge plus gauge')).toMatchInlineSnapshot(`
      "Argument of type 'Quantity<"gauge pressure">' is not assignable to parameter of type 'Quantity<"pressure" | "pressure difference">'.
        Type '"gauge pressure"' is not assignable to type '"pressure" | "pressure difference"'."
    `);
    expect(compileErrorOf('temperature plus temperature')).toMatchInlineSnapshot(`
      "Argument of type 'Quantity<"temperature">' is not assignable to parameter of type 'Quantity<"temperature difference">'.
        Type '"temperature"' is not assignable to type '"temperature difference"'."
    `);
    expect(compileErrorOf('a length shown in psi')).toMatchInlineSnapshot(
      `"Argument of type '"psi"' is not assignable to parameter of type '"m" | "mm" | "cm" | "km" | "µm" | "um" | "in" | "ft" | "yd" | "mi" | "mil" | "thou" | "uin" | "nmi"'."`,
    );
    expect(compileErrorOf('a force for a pressure')).toMatchInlineSnapshot(`
      "Type 'Quantity<"force">' is not assignable to type 'Quantity<"pressure">'.
        Type '"force"' is not assignable to type '"pressure"'."
    `);
    expect(printed.get('gauge pressure as a ratio')).toHaveLength(1);
    expect(printed.get('a ratio to a gauge pressure')).toHaveLength(1);
    expect(printed.get('an object for a quantity')).toHaveLength(1);
  });
  it('nothing to what is right', () => expect(printed.get('what compiles')).toEqual([]));
  it('in two lines at most where a text is wrong, three where a quantity is', () => {
    for (const [name, errors] of printed)
      for (const error of errors)
        expect(error.split('\n').length, error).toBeLessThanOrEqual(/quantity|ratio/.test(name) ? 3 : 2);
  });
});

describe('what the same mistakes say at run time', () => {
  const call = (formula: unknown, values: unknown): MeopError | undefined =>
    errorOf(() => typeof formula === 'function' && Reflect.apply(formula, undefined, [values]));
  const sizes = { radius: '38 mm', wall: '3.2 mm' };
  const law = { referenceRate: '8 mm/s', referencePressure: '1 MPa', exponent: 0.3 };

  it('to a length for a pressure', () => {
    const error = call(hoopStress, { ...sizes, pressure: '1000 mm' });
    expect([error?.code, error?.path, error?.given, error?.expected]).toMatchInlineSnapshot(`
      [
        "wrong-kind",
        "pressure",
        "1000 mm",
        "a gauge pressure",
      ]
    `);
    expect(error?.message).toMatchInlineSnapshot(
      `"hoopStress: pressure must be a gauge pressure, got '1000 mm' (a length). Use a unit such as MPa or psi."`,
    );
    expect(call(hoopStress, { ...sizes, pressure: q('3 in') })?.message).toMatchInlineSnapshot(
      `"hoopStress: pressure must be a gauge pressure, got 3 in (a length). Use a unit such as MPa or psi."`,
    );
  });
  it('to a gauge pressure for an absolute one', () => {
    const error = call(burnRate, { ...law, pressure: '50 psig' });
    expect([error?.code, error?.path]).toEqual(['wrong-kind', 'pressure']);
    expect(error?.message).toMatchInlineSnapshot(
      `"burnRate: pressure must be an absolute pressure, got '50 psig' (a gauge pressure). Convert with absolute(p, ambient)."`,
    );
  });
  it('to a bare number', () => {
    const error = call(hoopStress, { ...sizes, pressure: 1000 });
    expect([error?.code, error?.path]).toEqual(['bare-number', 'pressure']);
    expect(error?.message).toMatchInlineSnapshot(
      `"hoopStress: pressure must be a gauge pressure with its unit, got 1000. Write '1000 MPa' or '1000 psi'."`,
    );
  });
  it('to an unknown field', () => {
    const error = call(hoopStress, { ...sizes, pressure: '1000 psi', thickness: '1 mm' });
    expect([error?.code, error?.path]).toEqual(['unknown-field', 'thickness']);
    expect(error?.message).toMatchInlineSnapshot(
      `"hoopStress: unknown field 'thickness'. Fields: pressure, radius, wall."`,
    );
  });
  it('to a missing field', () => {
    const error = call(hoopStress, { pressure: '1000 psi', radius: '38 mm' });
    expect([error?.code, error?.path]).toEqual(['missing-field', 'wall']);
    expect(error?.message).toMatchInlineSnapshot(
      `"hoopStress: missing required field wall (wall thickness)."`,
    );
    expect(
      call(hoopStress, { pressure: '1000 psi', radius: '38 mm', wal: '1 mm' })?.message,
    ).toMatchInlineSnapshot(
      `"hoopStress: unknown field 'wal'; did you mean 'wall'? Fields: pressure, radius, wall."`,
    );
  });
  it('to a length plus a time', () => {
    expect(call((t: Quantity<'length'>) => q('3 in').plus(t), q('5 s'))?.message).toMatchInlineSnapshot(
      `"3 in plus: the operand must be a length, got 5 s (a time). Use a unit such as mm or in."`,
    );
  });
});

describe('the types of arithmetic', () => {
  it('follow the kinds', () => {
    const p = q('1000 psi');
    expectTypeOf(p).toEqualTypeOf<Quantity<'pressure'>>();
    expectTypeOf(p.times(q('2 in^2'))).toEqualTypeOf<Quantity<'force'>>();
    expectTypeOf(q('2 kg').times(q('3 m/s^2'))).toEqualTypeOf<Quantity<'force'>>();
    expectTypeOf(q('2 N').per(q('3 mm^2'))).toEqualTypeOf<Quantity<'pressure'>>();
    expectTypeOf(q('2 N').times(q('3 s'))).toEqualTypeOf<Quantity<'impulse'>>();
    expectTypeOf(q('2 N').per(q('2 N'))).toEqualTypeOf<Quantity<'dimensionless'>>();
    expectTypeOf(q('1 rev').per(q('2 s'))).toEqualTypeOf<Quantity<'angular speed'>>();
    expectTypeOf(q('1 rev').times(q('2 Hz'))).toEqualTypeOf<Quantity<'angular speed'>>();
    expectTypeOf(q('50 psig').per(q('1 ksi').as('stress'))).toEqualTypeOf<Quantity<'dimensionless'>>();
    expectTypeOf(q('2 m').times(q('3 s'))).toEqualTypeOf<Quantity<'dimension 1,0,1,0,0'>>();
    expectTypeOf(q('2 mm').pow(2)).toEqualTypeOf<Quantity<'area'>>();
    expectTypeOf(q('2 mm').pow(3)).toEqualTypeOf<Quantity<'volume'>>();
    expectTypeOf(q('4 mm^2').root(2)).toEqualTypeOf<Quantity<'length'>>();
    expectTypeOf(q('21 degC').minus(q('20 degC'))).toEqualTypeOf<Quantity<'temperature difference'>>();
    expectTypeOf(q('21 psig').minus(q('20 psig'))).toEqualTypeOf<Quantity<'pressure difference'>>();
    expectTypeOf(quantity('specific impulse', '230 s')).toEqualTypeOf<Quantity<'specific impulse'>>();
    expectTypeOf(series([1], 'MPa').at(0)).toEqualTypeOf<Quantity<'pressure'>>();
    expectTypeOf(seriesOf('stress', [1], 'MPa').max()).toEqualTypeOf<Quantity<'stress'>>();
  });
  it('take the texts of a kind and no other', () => {
    expectTypeOf<'3/8 in'>().toExtend<QuantityInput<'length'>>();
    expectTypeOf<'0.125in'>().toExtend<QuantityInput<'length'>>();
    expectTypeOf<'1000 psi'>().toExtend<QuantityInput<'gauge pressure'>>();
    expectTypeOf<'1000 psi'>().toExtend<QuantityInput<'stress'>>();
    expectTypeOf<'50 psig'>().not.toExtend<QuantityInput<'absolute pressure'>>();
    expectTypeOf<'21 degC'>().not.toExtend<QuantityInput<'temperature difference'>>();
    expectTypeOf<'21 K'>().toExtend<QuantityInput<'temperature difference'>>();
    expectTypeOf<'230 s'>().toExtend<QuantityInput<'specific impulse'>>();
    expectTypeOf<'230 s'>().not.toExtend<QuantityInput<'speed'>>();
    expectTypeOf<{ readonly si: number }>().not.toExtend<Quantity>();
  });
});
