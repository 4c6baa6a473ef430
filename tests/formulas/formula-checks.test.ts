import { describe, expect, it } from 'vitest';
import { angle, formula, gaugePressure, length, optional, ratio, stress, temperature } from '../../src/units';
import type { FormulaDeclaration } from '../../src/units/calculation/declaration';
import * as check from './formula-checks';
import { isFormula, type TestedFormula } from './found-formulas';
import * as reject from './rejection-checks';

// The checks that every formula is under must themselves fail: each is given a formula that is wrong in one way.

const inputs = {
  pressure: gaugePressure('p', 'internal pressure'),
  radius: length('r', 'radius'),
  wall: length('t', 'wall'),
};
const right = {
  name: 'right',
  title: 'Hoop stress',
  equation: 'σ = p·r / t',
  source: 'made for this test',
  inputs,
  output: stress('σ', 'stress'),
  example: { pressure: '1 MPa', radius: '40 mm', wall: '4 mm' },
  si: ({ pressure, radius, wall }) => (pressure * radius) / wall,
  solve: { wall: (sigma, { pressure, radius }) => (pressure * radius) / sigma },
} as const satisfies FormulaDeclaration<typeof inputs, 'stress'>;

function made(change: Partial<FormulaDeclaration<typeof inputs, 'stress'>>): TestedFormula {
  return tested(formula({ ...right, ...change }));
}
function tested(value: unknown): TestedFormula {
  if (!isFormula(value)) throw new Error('not a formula');
  return value;
}

const every = { ...check, ...reject };

describe('a formula that is right', () => {
  it.each(Object.entries(every))('passes %s', (_, test) => test(made({})));
});

describe('a formula that is wrong is caught', () => {
  it.each<[keyof typeof every, string, Partial<FormulaDeclaration<typeof inputs, 'stress'>>]>([
    [
      'checkHomogeneity',
      'a lost square',
      { si: ({ pressure, radius, wall }) => (pressure * radius ** 2) / wall },
    ],
    [
      'checkHomogeneity',
      'a hidden constant',
      { si: ({ pressure, radius, wall }) => (pressure * (radius + 0.001)) / wall },
    ],
    ['checkHomogeneity', 'a wrong output kind', { si: ({ radius, wall }) => radius / wall }],
    [
      'checkInverses',
      'a wrong inverse',
      { solve: { wall: (sigma, { pressure, radius }) => (2 * pressure * radius) / sigma } },
    ],
    ['checkInverses', 'no inverse', { solve: { wall: () => Number.NaN } }],
    ['checkEquationSymbols', 'an input left out', { equation: 'σ = p·r' }],
    ['checkEquationSymbols', 'an unexplained symbol', { equation: 'σ = η·p·r / t' }],
    ['checkEquationSymbols', 'an implicit product', { equation: 'σ = pr / t' }],
    ['checkEquationSymbols', 'another result', { equation: 'τ = p·r / t' }],
    ['checkIsDocumented', 'no source', { source: ' ' }],
    ['checkIsDocumented', 'no meaning', { inputs: { ...inputs, wall: length('t', '') } }],
    ['checkIsDocumented', 'one symbol twice', { inputs: { ...inputs, wall: length('r', 'wall') } }],
    ['checkExample', 'an example beyond its validity', { valid: [() => 'never valid'] }],
    ['checkFiniteNearExample', 'a pole', { si: ({ wall }) => (wall > 0.0041 ? Number.NaN : 1) }],
  ])('%s: %s', (name, _, change) => {
    const wrong = made(change);
    expect(() => every[name](wrong)).toThrow();
  });

  it('checkExplanation: a symbol that is not replaced', () => {
    const hoop = made({});
    const explanation = { ...hoop.explain(hoop.example), substitution: hoop.equation };
    expect(() => check.checkExplanation(Object.assign(hoop, { explain: () => explanation }))).toThrow();
  });

  it('an angle is no dimension, and a trap for degrees', () => {
    const degrees = formula({
      name: 'degrees',
      title: 'A sine that takes its angle in degrees',
      equation: 'y = sin(α)',
      source: 'made for this test',
      inputs: { tilt: angle('α', 'tilt') },
      output: ratio('y', 'sine'),
      example: { tilt: '30 deg' },
      si: ({ tilt }) => Math.sin(tilt),
    });
    expect(degrees({ tilt: '30 deg' })).toBeCloseTo(0.5, 12);
    expect(() => check.checkUnitInvariance(tested(degrees))).not.toThrow();
  });

  it('a constant with dimension belongs among the inputs', () => {
    const drop = (hidden: boolean) =>
      formula({
        name: 'thermalStrainLength',
        title: 'Length change at a fixed expansion',
        equation: 'ΔL = L·T / T_ref',
        source: 'made for this test',
        inputs: {
          size: length('L', 'length'),
          warm: temperature('T', 'temperature'),
          reference: optional(temperature('T_ref', 'reference temperature'), 300),
        },
        output: length('ΔL', 'length change'),
        example: { size: '1 m', warm: '350 K' },
        si: ({ size, warm, reference = 300 }) => (size * warm) / (hidden ? 300 : reference),
      });
    expect(() => check.checkHomogeneity(tested(drop(true)))).toThrow();
    expect(() => check.checkHomogeneity(tested(drop(false)))).not.toThrow();
  });
});
