// Throat change, fits, sizing and profile: hand calculations written beside the checks, and what geometry demands.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as nozzle from '../../src/nozzle';
import { series, seriesOf } from '../../src/units';

const near = (found: number, wanted: number, rel: number): void =>
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(rel * Math.abs(wanted));
const time = series([0, 1, 2, 3, 4], 's');
const chamberPressure = seriesOf('absolute pressure', [4, 5, 6, 5, 4], 'MPa');

describe('throat change', () => {
  test('constant rate: the diameter grows at twice the rate', () => {
    const { diameter, areaGrowth } = nozzle.throatHistory({
      throatDiameter: '12 mm',
      law: { law: 'constant', rate: '0.1 mm/s' },
      time,
      chamberPressure,
    });
    near(diameter.at(-1).in('mm'), 12 + 2 * 0.1 * 4, 1e-14); // by hand
    near(areaGrowth, (12.8 / 12) ** 2 - 1, 1e-13);
  });
  test('rate ∝ p: the growth is twice the rate at the mean pressure times the time', () => {
    const { diameter } = nozzle.throatHistory({
      throatDiameter: '12 mm',
      law: { law: 'pressure power', referenceRate: '0.1 mm/s', referencePressure: '5 MPa', exponent: 1 },
      time,
      chamberPressure,
    });
    near(diameter.at(-1).in('mm'), 12 + 2 * 0.1 * (20 / 5), 1e-14); // ∫p dt = 20 MPa·s by trapezoids, exact for ∝ p
  });
  test('after heating: nothing before, the constant rate after, whichever step the threshold falls in', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 4, noNaN: true }), (heated) => {
        const { diameter } = nozzle.throatHistory({
          throatDiameter: '12 mm',
          law: { law: 'after heating', rate: '0.1 mm/s', heatingTime: series([heated], 's').at(0) },
          time,
          chamberPressure,
        });
        near(diameter.at(-1).in('mm'), 12 + 0.2 * (4 - heated), 1e-13);
        if (heated >= 1) expect(diameter.at(1).in('mm')).toBe(12);
      }),
    );
  });
  test('deposition narrows the throat; closing it is an error that says when', () => {
    const slag = (rate: '-0.1 mm/s' | '-2 mm/s') =>
      nozzle.throatHistory({
        throatDiameter: '12 mm',
        law: { law: 'constant', rate },
        time,
        chamberPressure,
      });
    expect(slag('-0.1 mm/s').areaGrowth).toBeLessThan(0);
    expect(() => slag('-2 mm/s')).toThrowError(/closes the throat at 3 s/); // 12 mm at 4 mm/s
  });
  test('an unknown law is named with those that exist', () => {
    // @ts-expect-error: no such law
    expect(() => nozzle.throatLawSi({ law: 'cubic', rate: '1 mm/s' })).toThrowError(
      /cubic given; 'constant'/,
    );
  });
});

describe('fit of the insert', () => {
  const seat = (plusMinus?: '0.05 mm') =>
    nozzle.insertFit({
      insert: {
        diameter: '40 mm',
        expansion: '4.5e-6 1/K',
        temperature: '1300 K',
        ...(plusMinus && { plusMinus }),
      },
      housing: {
        diameter: '40.2 mm',
        expansion: '23.6e-6 1/K',
        temperature: '400 K',
        ...(plusMinus && { plusMinus }),
      },
      roomTemperature: '300 K',
    });
  test('by hand: 40.2·(1 + 23.6e-6·100) − 40·(1 + 4.5e-6·1000) = 0.114872 mm', () => {
    near(seat().service.nominal.in('mm'), 0.114872, 1e-9);
    near(seat().room.nominal.in('mm'), 0.2, 1e-9);
    near(seat().bondLineInService.in('mm'), 0.057436, 1e-9);
  });
  test('tolerances widen it both ways and change the verdict', () => {
    const tight = seat('0.05 mm');
    near(tight.room.min.in('mm'), 0.1, 1e-9);
    near(tight.room.max.in('mm'), 0.3, 1e-9);
    expect(tight.service.min.si).toBeLessThan(seat().service.nominal.si);
    const pressed = nozzle.insertFit({
      insert: { diameter: '40.1 mm', expansion: '4.5e-6 1/K', temperature: '1300 K' },
      housing: { diameter: '40.2 mm', expansion: '12e-6 1/K', temperature: '300 K' },
      roomTemperature: '300 K',
    });
    expect(pressed.service.fit).toBe('interference');
    expect(pressed.cautions.some((caution) => caution.includes('press'))).toBe(true);
  });
  test('with nothing warm, service is room', () => {
    const same = nozzle.insertFit({
      insert: { diameter: '40 mm', expansion: '5e-6 1/K', temperature: '300 K' },
      housing: { diameter: '40.1 mm', expansion: '12e-6 1/K', temperature: '300 K' },
      roomTemperature: '300 K',
    });
    expect(same.service.nominal.si).toBe(same.room.nominal.si);
  });
});

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
    const known = nozzle.nozzleEfficiency([
      { name: 'friction', factor: 0.99, source: 'assumed' },
      { name: 'droplets', factor: 0.96, source: 'assumed' },
    ]);
    near(known.efficiency, 0.9504, 1e-15);
    const parts = { momentum: 1.55, pressure: 0.04, divergenceFactor: 0.989 };
    const measured = nozzle.deliveredThrustCoefficient({ ...parts, efficiency: known.efficiency });
    near(
      nozzle.deliveredThrustCoefficient.solveFor('efficiency', { result: measured, ...parts }),
      0.9504,
      1e-14,
    );
    expect(() =>
      nozzle.nozzleEfficiency([{ name: 'friction', factor: 1.2, source: 'assumed' }]),
    ).toThrowError(/what is left, not what is lost/);
  });
});

describe('sizing', () => {
  const common = {
    chamberPressure: '5 MPa',
    ambientPressure: '101325 Pa',
    gamma: 1.13,
    characteristicVelocity: '880 m/s',
    efficiency: 0.96,
  } as const;
  test('the nozzle delivers the thrust it was sized for, and is adapted unless told otherwise', () => {
    const sized = nozzle.sizeNozzle({ ...common, target: { thrust: '750 N' } });
    near(sized.thrust.si, 750, 1e-14);
    near(sized.exitPressure.si, 101325, 1e-12);
    near(sized.specificImpulse.si, 750 / sized.massFlow.si, 1e-14);
    near((sized.exitDiameter.si / sized.throatDiameter.si) ** 2, sized.expansionRatio, 1e-14);
  });
  test('from a burning surface the throat passes what burns', () => {
    const sized = nozzle.sizeNozzle({
      ...common,
      target: { burningArea: '300 cm^2', burnRate: '8 mm/s', propellantDensity: '1800 kg/m^3' },
      expansionRatio: 6,
    });
    near(sized.massFlow.si, 300e-4 * 8e-3 * 1800, 1e-13); // ṁ = A_b·r·ρ
  });
  test.each([
    [{ expansionRatio: 0.5 }, /at least 1: an exit is no smaller than the throat/],
    [{ gamma: 1 }, /gamma must be above 1, got 1/],
    [{ chamberPressure: '0.1 MPa', expansionRatio: 4 }, /where the throat chokes/],
    [{ ambientPressure: '0 Pa' }, /optimum in a vacuum is infinite/],
    [{ inletDiameter: '2 mm' }, /above the throat diameter/],
    [{ halfAngle: '95 deg' }, /below 90 deg/],
  ] as const)('refuses %o', (change, message) => {
    expect(() => nozzle.sizeNozzle({ ...common, target: { thrust: '750 N' }, ...change })).toThrowError(
      message,
    );
  });
});
