import { describe, expect, it } from 'vitest';
import { q, quantity, unitOf } from '../../src/units';
import { errorOf } from '../error-code';

// What people write and what it means; the sizes of the units themselves are checked in conversions.test.ts.

describe('accepted', () => {
  it.each<readonly [text: string, si: number, kind: string]>([
    ['1450 psi', 9997398.075094124, 'pressure'],
    ['0.125in', 0.003175, 'length'],
    ['3/8 in', 0.009525, 'length'],
    ['1 1/2 in', 0.0381, 'length'],
    ['-1 1/2 in', -0.0381, 'length'],
    ['1½ in', 0.0381, 'length'],
    ['1 ½ in', 0.0381, 'length'],
    ['⅜"', 0.009525, 'length'],
    ['-⅜ in', -0.009525, 'length'],
    ['\u221240 degF', 233.15, 'temperature'], // a minus sign, not a hyphen
    ['1e\u22123 m', 0.001, 'length'],
    ['63 µin', 1.6002e-6, 'length'],
    ['20 ºC', 293.15, 'temperature'], // the masculine ordinal, and below the ring above
    ['45 \u02da', Math.PI / 4, 'angle'],
    ['10 mK', 0.01, 'temperature'],
    ['12.5e-3 m', 0.0125, 'length'],
    ['12.5E-3 m', 0.0125, 'length'],
    ['.5 in', 0.0127, 'length'],
    ['5. mm', 0.005, 'length'],
    ['+5 mm', 0.005, 'length'],
    ['4.2 kg/m^3', 4.2, 'density'],
    ['4.2 kg·m⁻³', 4.2, 'density'],
    ['4.2 kg*m^-3', 4.2, 'density'],
    ['1 lbf/in²', 6894.757293168362, 'pressure'],
    ['3 N*s', 3, 'impulse'],
    ['3 N · s', 3, 'impulse'],
    ['5 µm', 5e-6, 'length'], // U+00B5
    ['5 μm', 5e-6, 'length'], // U+03BC
    ['5 um', 5e-6, 'length'],
    ['20 °C', 293.15, 'temperature'],
    ['20°C', 293.15, 'temperature'],
    ['20 ℃', 293.15, 'temperature'],
    ['0.3 in/s', 0.00762, 'speed'],
    ['5"', 0.127, 'length'],
    ['30°', Math.PI / 6, 'angle'],
    ['35 %', 0.35, 'dimensionless'],
    ['0.35', 0.35, 'dimensionless'],
    ['12e-6 1/K', 12e-6, 'reciprocal temperature'],
    ['350 J/(kg*K)', 350, 'specific heat'],
    ['350 J / (kg K)'.replace('g K', 'g*K'), 350, 'specific heat'],
    ['50 psig', 344737.8646584181, 'gauge pressure'],
    ['4 barg', 4e5, 'gauge pressure'],
    ['4 bara', 4e5, 'absolute pressure'],
    ['50 psia', 344737.8646584181, 'absolute pressure'],
    ['5 delta_K', 5, 'temperature difference'],
    ['5 Δ°C', 5, 'temperature difference'],
    ['3 cc', 3e-6, 'volume'],
    ['  5 mm ', 0.005, 'length'],
    ['5\u00a0mm', 0.005, 'length'],
    ['5\u202fmm', 0.005, 'length'],
    ['\t5 mm\n', 0.005, 'length'],
    ['2 MPa*m^0.5', 2e6, 'fracture toughness'],
    ['3 s^0', 3, 'dimensionless'],
    ['-0 mm', 0, 'length'],
    ['3\u20448 in', 0.009525, 'length'], // a fraction slash
    ['7000 grains', 0.45359237, 'mass'], // international yard and pound agreement (1959): a pound
    ['90 degrees', Math.PI / 2, 'angle'],
    ['2 hours', 7200, 'time'],
    ['12 ppm/K', 12e-6, 'reciprocal temperature'],
    ['1 lbmol', 453.59237, 'amount'], // as many grams' moles as a pound has grams
  ])('%j', (text, si, kind) => {
    expect(q(text).si).toBeCloseTo(si, 12 - Math.ceil(Math.log10(Math.abs(si) + 1)));
    expect(q(text).kind).toBe(kind);
  });

  it('as a number and a unit', () => {
    expect(q(1000, 'psi').si).toBe(q('1000 psi').si);
    expect(q(0.35).si).toBe(0.35);
    expect(q(0.35).kind).toBe('dimensionless');
  });

  it('with a meaning that the kind gives', () => {
    expect(quantity('specific impulse', '230 s').si).toBeCloseTo(230 * 9.80665, 9); // 3rd CGPM (1901)
    for (const second of ['sec', 'second', 'seconds'])
      expect(quantity('specific impulse', `230 ${second}`).si).toBe(quantity('specific impulse', '230 s').si);
    expect(quantity('time', '230 s').si).toBe(230);
    expect(quantity('temperature difference', '5 K').si).toBe(5);
    expect(quantity('temperature difference', '5 K').kind).toBe('temperature difference');
    expect(quantity('gauge pressure', '5 MPa').kind).toBe('gauge pressure');
    expect(quantity('torque', '5 N*m').kind).toBe('torque');
  });
});

/** Code and message of the refusal of a text. */
function refusal(read: () => unknown): string {
  let value: unknown;
  const error = errorOf(() => {
    value = read();
  });
  return error ? `${error.code}: ${error.message}` : `accepted as ${String(value)}`;
}
const refused = (...texts: string[]): string =>
  texts.map((text) => `${JSON.stringify(text)} ${refusal(() => q(text))}`).join('\n');

describe('refused', () => {
  it('an unknown unit, with the nearest one', () => {
    expect(
      refused('5 mmm', '5 Mpa', '5 psI', '5 KN', '5 incch', '5 bars', '5 lpm', '5 mm furlong', '5 qqqqqqq'),
    ).toMatchInlineSnapshot(`
      ""5 mmm" unknown-unit: unknown unit 'mmm' (did you mean 'mm'?): '5 mmm' (character 3).
      "5 Mpa" unknown-unit: unknown unit 'Mpa' (did you mean 'MPa'?): '5 Mpa' (character 3).
      "5 psI" unknown-unit: unknown unit 'psI' (did you mean 'psi'?): '5 psI' (character 3).
      "5 KN" unknown-unit: unknown unit 'KN' (did you mean 'kN'?): '5 KN' (character 3).
      "5 incch" unknown-unit: unknown unit 'incch' (did you mean 'inch'?): '5 incch' (character 3).
      "5 bars" unknown-unit: unknown unit 'bars' (did you mean 'bar'?): '5 bars' (character 3).
      "5 lpm" unknown-unit: unknown unit 'lpm': '5 lpm' (character 3).
      "5 mm furlong" unit-syntax: put '*' or '·' between two units: '5 mm furlong' (character 6).
      "5 qqqqqqq" unknown-unit: unknown unit 'qqqqqqq': '5 qqqqqqq' (character 3)."
    `);
  });
  it('a missing number, NaN, infinity, nothing', () => {
    expect(
      refused('psi', '', '  ', 'NaN psi', 'Infinity psi', '-inf mm', '--5 mm', '1/0 in', '1e400 m'),
    ).toMatchInlineSnapshot(`
      ""psi" no-number: value must be a number and a unit, got 'psi'. Write for example '1000 psi' or '3/8 in'.
      "" no-number: value must be a number and a unit, got ''. Write for example '1000 psi' or '3/8 in'.
      "  " no-number: value must be a number and a unit, got '  '. Write for example '1000 psi' or '3/8 in'.
      "NaN psi" not-finite: value must be a finite number, got 'NaN psi'.
      "Infinity psi" not-finite: value must be a finite number, got 'Infinity psi'.
      "-inf mm" not-finite: value must be a finite number, got '-inf mm'.
      "--5 mm" no-number: value must be a number and a unit, got '--5 mm'. Write for example '1000 psi' or '3/8 in'.
      "1/0 in" not-finite: value must be a finite number, got '1/0 in'.
      "1e400 m" not-finite: value must be a finite number, got '1e400 m'."
    `);
  });
  it('trailing text', () => {
    expect(refused('5 mm,', '5 mm 3', '5 kg/m^3 about', '5 mm)', '5 mm; 6 mm')).toMatchInlineSnapshot(`
      ""5 mm," unit-syntax: ',' cannot follow 'mm': '5 mm,' (character 5).
      "5 mm 3" ambiguous-unit: 'mm3' could be meant twice: write mm^3: '5 mm 3' (character 6).
      "5 kg/m^3 about" unit-syntax: put '*' or '·' between two units: '5 kg/m^3 about' (character 10).
      "5 mm)" unit-syntax: ')' cannot follow 'mm': '5 mm)' (character 5).
      "5 mm; 6 mm" unit-syntax: ';' cannot follow 'mm': '5 mm; 6 mm' (character 5)."
    `);
  });
  it('what can be read two ways', () => {
    expect(
      refused(
        '5 J/kg*K',
        '5 J/kg·K',
        '5 J/kg/K',
        '5 J/kg K',
        '5 N m',
        '5 Nm',
        '5 ft-lb',
        '5 W/m²K',
        '1,450 psi',
        '1 450 psi',
        "1'450 psi",
        '1.2x10^3 N',
        '1-1/2 in',
        '5 W/mK',
        '5 J/kgK',
        '5 J/(kg K)',
        '5 mm2',
        '5 /K',
      ),
    ).toMatchInlineSnapshot(`
      ""5 J/kg*K" ambiguous-unit: a product after '/' reads two ways: write J/(kg*K) or J*K/kg: '5 J/kg*K' (character 7).
      "5 J/kg·K" ambiguous-unit: a product after '/' reads two ways: write J/(kg*K) or J*K/kg: '5 J/kg·K' (character 7).
      "5 J/kg/K" unit-syntax: put the whole divisor in brackets: '5 J/kg/K' (character 7).
      "5 J/kg K" unit-syntax: put '*' or '·' between two units: '5 J/kg K' (character 8).
      "5 N m" ambiguous-unit: 'Nm' could be meant twice: write N*m: '5 N m' (character 5).
      "5 Nm" ambiguous-unit: 'Nm' could be meant twice: write N*m: '5 Nm' (character 3).
      "5 ft-lb" ambiguous-unit: 'ftlb' could be meant twice: write ft*lbf: '5 ft-lb' (character 5).
      "5 W/m²K" unit-syntax: put '*' or '·' between two units: '5 W/m²K' (character 7).
      "1,450 psi" unit-syntax: write a number as 1450 or 1.45e3, a fraction as 1 1/2 in, a reciprocal as 2 1/K: '1,450 psi' (character 2).
      "1 450 psi" unit-syntax: write a number as 1450 or 1.45e3, a fraction as 1 1/2 in, a reciprocal as 2 1/K: '1 450 psi' (character 3).
      "1'450 psi" unit-syntax: write a number as 1450 or 1.45e3, a fraction as 1 1/2 in, a reciprocal as 2 1/K: '1'450 psi' (character 2).
      "1.2x10^3 N" unit-syntax: write a number as 1450 or 1.45e3, a fraction as 1 1/2 in, a reciprocal as 2 1/K: '1.2x10^3 N' (character 4).
      "1-1/2 in" unit-syntax: write a number as 1450 or 1.45e3, a fraction as 1 1/2 in, a reciprocal as 2 1/K: '1-1/2 in' (character 2).
      "5 W/mK" ambiguous-unit: 'mK' could be meant twice: write m*K: '5 W/mK' (character 5).
      "5 J/kgK" ambiguous-unit: 'kgK' could be meant twice: write kg*K: '5 J/kgK' (character 5).
      "5 J/(kg K)" unit-syntax: put '*' or '·' between two units: '5 J/(kg K)' (character 9).
      "5 mm2" ambiguous-unit: 'mm2' could be meant twice: write mm^2: '5 mm2' (character 3).
      "5 /K" unit-syntax: write a number as 1450 or 1.45e3, a fraction as 1 1/2 in, a reciprocal as 2 1/K: '5 /K' (character 3)."
    `);
  });
  it('the ambiguities of the trade, each with its reply', () => {
    expect(
      refused(
        '5 F',
        '5 C',
        '5 R',
        '5 Mm',
        '5 mPa',
        '5 lbs',
        '5 #',
        '5 cal',
        '5 ton',
        '5 gal',
        '5 bar g',
        '5 psi (gauge)',
        "5'",
        '5\'6"',
        '5 ft 6 in',
        '70 deg F',
        '70° C',
        '294 °K',
        '30 in Hg',
        '20 MPa·√m',
      ),
    ).toMatchInlineSnapshot(`
      ""5 F" ambiguous-unit: 'F' could be meant twice: write degF or °F: '5 F' (character 3).
      "5 C" ambiguous-unit: 'C' could be meant twice: write degC or °C: '5 C' (character 3).
      "5 R" ambiguous-unit: 'R' could be meant twice: write degR: '5 R' (character 3).
      "5 Mm" ambiguous-unit: 'Mm' could be meant twice: write mm (M is mega): '5 Mm' (character 3).
      "5 mPa" ambiguous-unit: 'mPa' could be meant twice: write MPa (m is milli), or Pa: '5 mPa' (character 3).
      "5 lbs" ambiguous-unit: 'lbs' could be meant twice: write lb (mass) or lbf (force): '5 lbs' (character 3).
      "5 #" ambiguous-unit: '#' could be meant twice: write lb (mass) or lbf (force): '5 #' (character 3).
      "5 cal" ambiguous-unit: 'cal' could be meant twice: write cal_th or cal_IT: '5 cal' (character 3).
      "5 ton" ambiguous-unit: 'ton' could be meant twice: write t, short_ton or long_ton: '5 ton' (character 3).
      "5 gal" ambiguous-unit: 'gal' could be meant twice: write US_gal or UK_gal: '5 gal' (character 3).
      "5 bar g" ambiguous-unit: write barg (gauge) or bara (absolute): '5 bar g' (character 7).
      "5 psi (gauge)" ambiguous-unit: write psig (gauge) or psia (absolute): '5 psi (gauge)' (character 7).
      "5'" ambiguous-unit: ''' could be meant twice: write ft or arcmin: '5'' (character 2).
      "5'6\\"" ambiguous-unit: ''6"' could be meant twice: write ft or arcmin: '5'6"' (character 2).
      "5 ft 6 in" unit-syntax: a quantity is one number and one unit: 5.5 ft, not 5 ft 6 in: '5 ft 6 in' (character 6).
      "70 deg F" unit-syntax: write degF: '70 deg F' (character 8).
      "70° C" unit-syntax: write °C: '70° C' (character 5).
      "294 °K" ambiguous-unit: 'degK' could be meant twice: write K: '294 °K' (character 5).
      "30 in Hg" unit-syntax: write inHg: '30 in Hg' (character 7).
      "20 MPa·√m" unit-syntax: write a root as m^0.5: '20 MPa·√m' (character 8)."
    `);
  });
  it('SI prefixes on inch, pound and psi', () => {
    expect(refused('5 kpsi', '5 min lb', '5 klb', '5 min.', '5 Mpsi', '5 kin')).toMatchInlineSnapshot(`
      ""5 kpsi" unknown-unit: unknown unit 'kpsi' (did you mean 'ksi'?): '5 kpsi' (character 3).
      "5 min lb" unit-syntax: put '*' or '·' between two units: '5 min lb' (character 7).
      "5 klb" unknown-unit: unknown unit 'klb': '5 klb' (character 3).
      "5 min." unit-syntax: '.' cannot follow 'min': '5 min.' (character 6).
      "5 Mpsi" unknown-unit: unknown unit 'Mpsi' (did you mean 'Msi'?): '5 Mpsi' (character 3).
      "5 kin" unknown-unit: unknown unit 'kin' (did you mean 'kn'?): '5 kin' (character 3)."
    `);
  });
  it('a broken unit', () => {
    expect(
      refused('5 m^', '5 m⁻', '5 m^9', '5 m^0.3', '5 J/(kg*K', '5 (m)', '5 m//s', '5 m/', '5 *m', '5 %^-999'),
    ).toMatchInlineSnapshot(`
      ""5 m^" unit-syntax: an exponent is a whole number or a half: '5 m^' (character 4).
      "5 m⁻" unit-syntax: an exponent is a whole number or a half: '5 m⁻' (character 4).
      "5 m^9" dimension-range: exponent of m must be whole or half, at most 7, got 9. Use plain SI numbers.
      "5 m^0.3" dimension-range: exponent of m must be whole or half, at most 7, got 0.3. Use plain SI numbers.
      "5 J/(kg*K" unit-syntax: the bracket after '/' is not closed: '5 J/(kg*K' (character 10).
      "5 (m)" unit-syntax: a unit is missing here: '5 (m)' (character 3).
      "5 m//s" unit-syntax: a unit is missing here: '5 m//s' (character 5).
      "5 m/" unit-syntax: a unit is missing here: '5 m/' (character 5).
      "5 *m" unit-syntax: a unit is missing here: '5 *m' (character 3).
      "5 %^-999" not-finite: unit must be within the range of a double, got '%^-999'."
    `);
  });
  it('a text that is no quantity by its length', () => {
    expect(refused('1'.repeat(201))).toContain('text-too-long: value must be at most 200 characters long');
  });
  it('names of JavaScript', () => {
    for (const name of ['__proto__', 'constructor', 'toString', 'hasOwnProperty'])
      expect(refusal(() => q(`5 ${name}`))).toMatch(/^unknown-unit/);
  });
  it('pointing at the character, where the text is long too', () => {
    const text = `5 ${'N*'.repeat(40)}Q`;
    expect(refusal(() => unitOf(text.slice(2)))).toContain('(character 81)');
    expect(refusal(() => q('5 mm*Q'))).toContain("'5 mm*Q' (character 6)");
    expect(refusal(() => quantity('specific impulse', '230 S'))).toContain("'230 S' (character 5)");
  });
});

describe('refused where a kind is expected', () => {
  const asked = (kind: Parameters<typeof quantity>[0], ...values: (string | number)[]): string =>
    values.map((value) => `${JSON.stringify(value)} ${refusal(() => quantity(kind, value))}`).join('\n');

  it('a mass for a force, a force for a mass, an ounce for a volume', () => {
    expect(asked('force', '5 lb', '5 kg', '5 oz')).toMatchInlineSnapshot(`
      ""5 lb" wrong-kind: value must be a force, got '5 lb' (a mass). Write lbf, kgf or N.
      "5 kg" wrong-kind: value must be a force, got '5 kg' (a mass). Write lbf, kgf or N.
      "5 oz" wrong-kind: value must be a force, got '5 oz' (a mass). Write lbf, kgf or N."
    `);
    expect(asked('mass', '5 lbf', '5 N')).toMatchInlineSnapshot(`
      ""5 lbf" wrong-kind: value must be a mass, got '5 lbf' (a force). Write kg, lb or oz.
      "5 N" wrong-kind: value must be a mass, got '5 N' (a force). Write kg, lb or oz."
    `);
    expect(asked('volume', '5 oz')).toMatchInlineSnapshot(
      `""5 oz" wrong-kind: value must be a volume, got '5 oz' (a mass). Write US_fl_oz."`,
    );
  });
  it('the wrong reference of a pressure', () => {
    expect(asked('absolute pressure', '50 psig', '4 barg')).toMatchInlineSnapshot(`
      ""50 psig" wrong-kind: value must be an absolute pressure, got '50 psig' (a gauge pressure). Convert with absolute(p, ambient).
      "4 barg" wrong-kind: value must be an absolute pressure, got '4 barg' (a gauge pressure). Convert with absolute(p, ambient)."
    `);
    expect(asked('gauge pressure', '50 psia', '4 bara')).toMatchInlineSnapshot(`
      ""50 psia" wrong-kind: value must be a gauge pressure, got '50 psia' (an absolute pressure). Convert with gauge(p, ambient).
      "4 bara" wrong-kind: value must be a gauge pressure, got '4 bara' (an absolute pressure). Convert with gauge(p, ambient)."
    `);
    expect(asked('stress', '50 psig')).toMatchInlineSnapshot(
      `""50 psig" wrong-kind: value must be a stress, got '50 psig' (a gauge pressure). Use a unit such as MPa or psi."`,
    );
  });
  it('a pound where its weight is meant', () => {
    expect(asked('pressure', '5 lb/in^2', '5 kg/cm²')).toMatchInlineSnapshot(`
      ""5 lb/in^2" wrong-kind: value must be a pressure, got '5 lb/in^2' (in m^-2*kg). Write lbf or kgf, since lb and kg are masses.
      "5 kg/cm²" wrong-kind: value must be a pressure, got '5 kg/cm²' (in m^-2*kg). Write lbf or kgf, since lb and kg are masses."
    `);
    expect(asked('torque', '5 ft*lb')).toMatchInlineSnapshot(
      `""5 ft*lb" wrong-kind: value must be a torque, got '5 ft*lb' (in m*kg). Write lbf or kgf, since lb and kg are masses."`,
    );
    expect(asked('length', '5 N*s^2')).toMatchInlineSnapshot(
      `""5 N*s^2" wrong-kind: value must be a length, got '5 N*s^2' (in m*kg). Use a unit such as mm or in."`,
    );
  });
  it('a temperature for a difference and the other way round', () => {
    expect(asked('temperature difference', '21 degC', '70 °F')).toMatchInlineSnapshot(`
      ""21 degC" wrong-kind: value must be a temperature difference, got '21 degC' (a temperature). Write delta_degC, delta_degF or delta_K.
      "70 °F" wrong-kind: value must be a temperature difference, got '70 °F' (a temperature). Write delta_degC, delta_degF or delta_K."
    `);
    expect(asked('temperature', '5 delta_K')).toMatchInlineSnapshot(
      `""5 delta_K" wrong-kind: value must be a temperature, got '5 delta_K' (a temperature difference). Write degC, degF or K."`,
    );
  });
  it('a bare number', () => {
    expect(asked('length', 5, '5')).toMatchInlineSnapshot(`
      "5 bare-number: quantity: value must be a length with its unit, got 5. Write '5 mm' or '5 in'.
      "5" wrong-kind: value must be a length, got '5' (a plain number). Use a unit such as mm or in."
    `);
    expect(quantity('dimensionless', 5).si).toBe(5);
  });
});
