import { describe, expect, test } from 'vitest';
import * as nozzle from '../../src/nozzle';

const near = (found: number, wanted: number, rel: number): void =>
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(rel * Math.abs(wanted));

describe('losses', () => {
  test('discharge tends to 1 as the throat straightens, and is lower the sharper it is', () => {
    let last = 0;
    for (const radius of [3, 6, 12, 60, 600, 6e6]) {
      const cd = nozzle.curvatureDischargeCoefficient.si({
        throatCurvatureRadius: radius,
        throatRadius: 6,
        gamma: 1.2,
      });
      expect(cd).toBeGreaterThan(last);
      last = cd;
    }
    near(last, 1, 1e-9);
  });
  test('friction falls as the 1/5 power of the pressure', () => {
    const at = (chamber: '2 MPa' | '8 MPa'): number =>
      nozzle.frictionThrustLoss({
        gamma: 1.13,
        gasConstant: '196 J/(kg*K)',
        temperature: '1700 K',
        chamberPressure: chamber,
        viscosity: '6e-5 Pa*s',
        throatDiameter: '12 mm',
        expansionRatio: 7,
        halfAngle: '12 deg',
      }).thrustCoefficient;
    near(at('2 MPa') / at('8 MPa'), 4 ** 0.2, 1e-12);
  });
  test('the efficiency is the product, and a firing calibrates what is left', () => {
    const known = nozzle.nozzleEfficiency({
      losses: [
        { name: 'friction', factor: 0.99, source: 'assumed' },
        { name: 'droplets', factor: 0.96, source: 'assumed' },
      ],
    });
    near(known.efficiency, 0.9504, 1e-15);
    const parts = { momentum: 1.55, pressure: 0.04, divergenceFactor: 0.989 };
    const measured = nozzle.deliveredThrustCoefficient({ ...parts, efficiency: known.efficiency });
    near(
      nozzle.deliveredThrustCoefficient.solveFor('efficiency', { result: measured, ...parts }),
      0.9504,
      1e-14,
    );
    expect(() =>
      nozzle.nozzleEfficiency({ losses: [{ name: 'friction', factor: 1.2, source: 'assumed' }] }),
    ).toThrowError(/losses\.0\.factor must be above 0 and at most 1, got 1\.2/);
  });
});
