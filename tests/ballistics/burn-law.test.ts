import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { burnRate, convertBurnRateCoefficient, saintRobert } from '../../src/ballistics';
import { q, quantity } from '../../src/units';
import { checkValue } from '../cases/check-value';
import { caseOf, si, siList } from '../cases/read-case';
import { errorOf } from '../error-code';

// Expected values are those of tests/cases/ballistics.json, each with its source and provenance there.

const close = (value: number, expected: number, relTol: number): void =>
  expect(Math.abs(value / expected - 1)).toBeLessThanOrEqual(relTol);

describe('burning rate of published laws', () => {
  it.each(['burnrate-textbook-table-n04', 'burnrate-textbook-table-n09'])('%s', (id) => {
    const one = caseOf('ballistics', id);
    const { inputs } = one;
    const coefficient = Number.parseFloat(String(inputs.coefficient));
    const law = saintRobert({
      coefficient,
      rateUnit: 'in/s',
      pressureUnit: 'psi',
      exponent: si(inputs.exponent),
    });
    const rates = siList(inputs.pressure).map((p) => burnRate(law, { pressure: q(p, 'Pa') }).si);
    rates.forEach((rate, i) => {
      checkValue(one, `burnRate[${i}]`, rate);
    });
  });

  it('piecewise-law-evaluate', () => {
    const one = caseOf('ballistics', 'piecewise-law-evaluate');
    const { inputs } = one;
    const law = saintRobert({ bands: dextroseBands });
    siList(inputs.pressure).forEach((p, i) => {
      checkValue(one, `burnRate[${i}]`, burnRate(law, { pressure: q(p, 'Pa') }).si);
    });
  });

  it('two-point-fit', () => {
    const one = caseOf('ballistics', 'two-point-fit');
    const law = saintRobert({
      through: [
        { pressure: '2 MPa', rate: '6.0 mm/s' },
        { pressure: '6 MPa', rate: '8.5 mm/s' },
      ],
    });
    checkValue(one, 'exponent', law.bands[0].exponent);
    checkValue(one, 'coefficient', law.coefficient('mm/s', 'MPa'));
  });

  it('continuous-two-slope-law', () => {
    const one = caseOf('ballistics', 'continuous-two-slope-law');
    const { inputs } = one;
    const law = saintRobert({
      bands: [
        { from: '0.1 MPa', to: '3 MPa', referenceRate: '9 mm/s', referencePressure: '3 MPa', exponent: 0.45 },
        { from: '3 MPa', to: '10 MPa', referenceRate: '9 mm/s', referencePressure: '3 MPa', exponent: 0.2 },
      ],
    });
    checkValue(one, 'coefficientBelow', law.coefficient('mm/s', 'MPa', 0));
    checkValue(one, 'coefficientAbove', law.coefficient('mm/s', 'MPa', 1));
    siList(inputs.pressure).forEach((p, i) => {
      checkValue(one, `burnRate[${i}]`, burnRate(law, { pressure: q(p, 'Pa') }).si);
    });
  });
});

const mpa = { rateUnit: 'mm/s', pressureUnit: 'MPa' } as const;
const dextroseBands = [
  { from: '0.103 MPa', to: '0.779 MPa', coefficient: 8.875, exponent: 0.619, ...mpa },
  { from: '0.779 MPa', to: '2.572 MPa', coefficient: 7.553, exponent: -0.009, ...mpa },
  { from: '2.572 MPa', to: '5.93 MPa', coefficient: 3.841, exponent: 0.688, ...mpa },
  { from: '5.93 MPa', to: '8.502 MPa', coefficient: 17.2, exponent: -0.148, ...mpa },
  { from: '8.502 MPa', to: '11.2 MPa', coefficient: 4.775, exponent: 0.442, ...mpa },
] as const;

describe('coefficient conversion', () => {
  it.each([
    ['coefficient-inps-psi-to-mmps-mpa', 0.0665, 'in/s', 'psi', 'mm/s', 'MPa'],
    ['coefficient-mmps-mpa-to-cmps-bar', 8.26, 'mm/s', 'MPa', 'cm/s', 'bar'],
    ['coefficient-mmps-mpa-to-si', 7, 'mm/s', 'MPa', 'm/s', 'Pa'],
  ] as const)('%s', (id, coefficient, rate1, pressure1, rate2, pressure2) => {
    const one = caseOf('ballistics', id);
    const { inputs } = one;
    const converted = convertBurnRateCoefficient({
      coefficient,
      exponent: si(inputs.exponent),
      from: { rateUnit: rate1, pressureUnit: pressure1 },
      to: { rateUnit: rate2, pressureUnit: pressure2 },
    });
    checkValue(one, 'coefficient', converted);
  });

  it('the law gives the same rate from whichever unit pair it was made', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 50, noNaN: true }),
        fc.double({ min: -0.8, max: 0.95, noNaN: true }),
        fc.double({ min: 0.05, max: 20, noNaN: true }),
        (coefficient, exponent, pressure) => {
          const metric = saintRobert({ coefficient, exponent, ...mpa });
          const us = saintRobert({
            coefficient: metric.coefficient('in/s', 'psi'),
            rateUnit: 'in/s',
            pressureUnit: 'psi',
            exponent,
          });
          const at = { pressure: q(pressure, 'MPa') };
          close(burnRate(us, at).si, burnRate(metric, at).si, 1e-12);
        },
      ),
    );
  });
});

describe('a burn law', () => {
  const law = saintRobert({
    coefficient: 7,
    exponent: 0.32,
    ...mpa,
    characterisedFrom: '1 MPa',
    characterisedTo: '8 MPa',
    temperatureSensitivity: '0.002 1/K',
  });

  it('is the one-argument formula at its own coefficient', () => {
    const formula = burnRate({
      referenceRate: '7 mm/s',
      referencePressure: '1 MPa',
      exponent: 0.32,
      pressure: '5 MPa',
    });
    expect(burnRate(law, { pressure: '5 MPa' }).si).toBe(formula.si);
    expect(
      burnRate.explain({
        referenceRate: '7 mm/s',
        referencePressure: '1 MPa',
        exponent: 0.32,
        pressure: '5 MPa',
      }).value,
    ).toBe(formula.si);
    expect(burnRate.name).toBe('burnRate');
  });

  it('cautions outside the range it was characterised for, clamps or refuses when told to', () => {
    expect(burnRate(law, { pressure: '5 MPa' }).cautions).toEqual([]);
    expect(burnRate(law, { pressure: '12 MPa' }).cautions[0]).toMatch(/above the 8 MPa limit/);
    expect(burnRate(law, { pressure: '0.2 MPa' }).cautions[0]).toMatch(/below the 1 MPa limit/);
    const clamped = saintRobert({
      coefficient: 7,
      exponent: 0.32,
      ...mpa,
      characterisedTo: '8 MPa',
      outside: 'clamp',
    });
    expect(burnRate(clamped, { pressure: '12 MPa' }).si).toBe(burnRate(law, { pressure: '8 MPa' }).si);
    const strict = saintRobert({
      coefficient: 7,
      exponent: 0.32,
      ...mpa,
      characterisedTo: '8 MPa',
      outside: 'error',
    });
    expect(() => burnRate(strict, { pressure: '12 MPa' })).toThrow(
      expect.objectContaining({ code: 'out-of-range' }),
    );
  });

  it('scales with exp(σ_p·ΔT) at constant pressure (definition of σ_p)', () => {
    const reference = burnRate(law, { pressure: '5 MPa' }).si;
    const hot = burnRate(law, { pressure: '5 MPa', temperature: quantity('temperature', '51 degC') });
    close(hot.si / reference, Math.exp(0.06), 1e-12);
    const blind = saintRobert({ coefficient: 7, exponent: 0.32, ...mpa });
    expect(burnRate(blind, { pressure: '5 MPa', temperature: '51 degC' }).cautions[0]).toMatch(
      /no temperature sensitivity/,
    );
  });

  it('refuses an exponent of 1 or more, and its card has the reason', () => {
    expect(() => saintRobert({ coefficient: 7, exponent: 1, ...mpa })).toThrow(/exponent must be below 1/);
    expect(String(saintRobert)).toMatch(/no chamber pressure is stable/);
  });

  it('refuses bands that overlap or leave a gap', () => {
    const [first, second] = dextroseBands;
    expect(() => saintRobert({ bands: [first, { ...second, from: '0.8 MPa' }] })).toThrow(
      expect.objectContaining({ code: 'burn-law-bands' }),
    );
    expect(() => saintRobert({ bands: [] })).toThrow(expect.objectContaining({ code: 'burn-law-bands' }));
  });

  it('refuses a misspelt field, and two ways of quoting a law at once', () => {
    const whole = { coefficient: 7, exponent: 0.32, ...mpa };
    // A σ_p that is not heard would leave the pressure of a hot day unsaid.
    expect(errorOf(() => saintRobert({ ...whole, sigmaP: '0.002 1/K' } as never))).toMatchObject({
      code: 'unknown-field',
      path: 'sigmaP',
    });
    expect(
      errorOf(() => saintRobert({ bands: [{ ...whole, from: '1 MPa', upTo: '3 MPa' }] } as never)),
    ).toMatchObject({
      code: 'unknown-field',
      path: 'bands.0.upTo',
    });
    expect(errorOf(() => burnRate(law, { pressure: '5 MPa', temprature: '300 K' } as never))).toMatchObject({
      code: 'unknown-field',
    });
    expect(
      errorOf(() => saintRobert({ ...whole, referenceRate: '7 mm/s', referencePressure: '1 MPa' } as never)),
    ).toMatchObject({ code: 'inconsistent', path: 'coefficient' });
    expect(
      errorOf(() => convertBurnRateCoefficient({ coefficient: 7, exponent: 0.3, from: mpa } as never)),
    ).toMatchObject({ code: 'missing-field', path: 'to' });
  });
});
