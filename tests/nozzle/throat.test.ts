// Expected: hand calculations written beside the checks, and what geometry demands.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as nozzle from '../../src/nozzle';
import { series, seriesOf } from '../../src/units';
import { errorOf } from '../error-code';

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
    const law = { law: 'cubic', rate: '1 mm/s' } as const;
    const call = () =>
      // @ts-expect-error: no such law
      nozzle.throatHistory({ throatDiameter: '12 mm', law, time, chamberPressure });
    expect(call).toThrowError(/unknown throat erosion law 'cubic'. Available: 'constant'/);
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

describe('throat laws', () => {
  const time = series([0, 1, 2], 's');
  const pressures = (first: number) => seriesOf('absolute pressure', [first, 5, 5], 'MPa');
  const law = {
    law: 'pressure power',
    referenceRate: '0.1 mm/s',
    referencePressure: '5 MPa',
    exponent: 0.8,
  } as const;

  test('a power of pressure after a heating time counts from there: 2·0.1 mm/s·1 s', () => {
    const { diameter } = nozzle.throatHistory({
      throatDiameter: '12 mm',
      law: { ...law, heatingTime: '1 s' },
      time,
      chamberPressure: pressures(0),
    });
    near(diameter.at(-1).in('mm'), 12.2, 1e-12);
  });

  test('a pressure that the law cannot raise to its power is named', () => {
    const error = errorOf(() =>
      nozzle.throatHistory({
        throatDiameter: '12 mm',
        law: { ...law, exponent: -0.5 },
        time,
        chamberPressure: pressures(0),
      }),
    );
    expect(error?.path).toBe('chamberPressure');
    expect(error?.message).toMatch(/power -0\.5/);
  });
});
