import { absolutePressure, formula, gaugePressure, length, ratio, speed, stress } from '../../src/units';

// Two formulas as the modules above write them, so that the tests of units need no higher floor.

export const hoopStress = formula({
  name: 'hoopStress',
  title: 'Hoop stress',
  equation: 'σ = p·r / t',
  source: 'made for these tests',
  inputs: {
    pressure: gaugePressure('p', 'internal pressure above ambient'),
    radius: length('r', 'mean radius'),
    wall: length('t', 'wall thickness'),
  },
  output: stress('σ', 'hoop stress'),
  example: { pressure: '1000 psi', radius: '38 mm', wall: '3.2 mm' },
  si: ({ pressure, radius, wall }) => (pressure * radius) / wall,
});

export const burnRate = formula({
  name: 'burnRate',
  title: 'Burning rate',
  equation: 'r = r_ref·(p / p_ref)^n',
  source: 'made for these tests',
  inputs: {
    referenceRate: speed('r_ref', 'rate at the reference pressure'),
    referencePressure: absolutePressure('p_ref', 'reference pressure'),
    exponent: ratio('n', 'pressure exponent', { below: 1 }),
    pressure: absolutePressure('p', 'chamber pressure'),
  },
  output: speed('r', 'burning rate'),
  example: { referenceRate: '8 mm/s', referencePressure: '1 MPa', exponent: 0.3, pressure: '5 MPa' },
  si: ({ referenceRate, referencePressure, exponent, pressure }) =>
    referenceRate * (pressure / referencePressure) ** exponent,
});
