// The worst case must not depend on the pressure at which a burn law happens to be quoted.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitBurnLaw } from '../../src/ballistics';
import { demoMotor, type MotorDocument, meop, motorProblems, parseMotor } from '../../src/motor';
import { propellantOf } from '../../src/motor/document/propellant-of';
import { lawAboutMiddle } from '../../src/motor/meop/burn-law-middle';

type Law = MotorDocument['propellant']['burnLaw'];
const base = demoMotor();
const withLaw = (law: Partial<Law>): MotorDocument => ({
  ...base,
  meop: { samples: 100, seed: 1 },
  propellant: { ...base.propellant, burnLaw: { ...base.propellant.burnLaw, ...law } },
});
/** The law of the demo motor, 7.2 mm/s at 4 MPa with n = 0.32, quoted at another pressure. */
const quotedAt = (mpa: number, rest: Partial<Law> = {}): MotorDocument =>
  withLaw({
    referencePressure: `${mpa} MPaa`,
    referenceRate: { value: `${7.2 * (mpa / 4) ** 0.32} mm/s`, plusMinus: '4 %' },
    exponent: { value: 0.32, plusMinus: 0.02 },
    ...rest,
  });
const unmeasured = { characterisedFrom: undefined, characterisedTo: undefined };
const psi = 0.006894757293168; // MPa; exact by definition

describe('one burn law, quoted at several pressures', () => {
  test.each([
    ['with characterised pressures', {}],
    ['without', unmeasured],
  ])('%s: 1 psia and 580 psia give one worst case and one percentile', (_, rest) => {
    const [low, high] = [psi, 580 * psi].map((mpa) => meop(quotedAt(mpa, rest)));
    // Closer than the solver's own tolerance changes nothing that is printed.
    expect(low.worstCase.pressure.si / high.worstCase.pressure.si - 1).toBeCloseTo(0, 4);
    expect(low.percentile.pressure.si / high.percentile.pressure.si - 1).toBeCloseTo(0, 4);
  });

  test('bands: the middle of each', () => {
    const banded = (mpa: number) =>
      meop(
        withLaw({
          referenceRate: undefined,
          referencePressure: undefined,
          exponent: undefined,
          bands: [
            {
              from: '0.1 MPaa',
              to: '3 MPaa',
              referenceRate: '6.5 mm/s',
              referencePressure: '3 MPaa',
              exponent: 0.3,
            },
            {
              from: '3 MPaa',
              to: '20 MPaa',
              referencePressure: `${mpa} MPaa`,
              referenceRate: `${6.5 * (mpa / 3) ** 0.34} mm/s`,
              exponent: { value: 0.34, plusMinus: 0.02 },
            },
          ],
        }),
      ).worstCase.pressure.si;
    expect(banded(0.1) / banded(15) - 1).toBeCloseTo(0, 4);
  });

  test('the exponent turns the law about the middle: the rate there does not move, and the law is the same', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.005, max: 50, noNaN: true }),
        fc.double({ min: 0.2, max: 5, noNaN: true }),
        fc.double({ min: 1.2, max: 10, noNaN: true }),
        (mpa, from, ratio) => {
          const motor = parseMotor(
            quotedAt(mpa, { characterisedFrom: `${from} MPaa`, characterisedTo: `${from * ratio} MPaa` }),
          );
          const about = lawAboutMiddle(motor, 5e6).motor;
          const { referencePressure, referenceRate } = about.propellant.burnLaw;
          // Geometric mean: where ln r and n of a straight line fitted to evenly spread points are uncorrelated.
          expect(referencePressure?.value.in('MPa')).toBeCloseTo(from * Math.sqrt(ratio), 9);
          expect((referenceRate?.plusMinus ?? 0) / (referenceRate?.value.si ?? 1)).toBeCloseTo(0.04, 9);
          const [a, b] = [motor, about].map((one) =>
            propellantOf(one.propellant).law.coefficient('m/s', 'Pa'),
          );
          expect(b / a).toBeCloseTo(1, 12);
        },
      ),
      { numRuns: 20 },
    );
  });

  test('what was assumed is told', () => {
    expect(meop(quotedAt(4, unmeasured)).assumptions.join()).toContain(
      'characterisedFrom and propellant.burnLaw.characterisedTo not specified; the uncertainty of rate and exponent is taken about',
    );
    expect(meop(quotedAt(4)).assumptions.join()).toContain(
      'about 4 MPaa, the geometric mean of the characterised',
    );
    expect(meop(withLaw({ exponent: 0.32 })).assumptions.join()).not.toContain('geometric mean');
  });
});

describe('covariance of a fitted law', () => {
  const points = [1, 1.6, 2.5, 4, 6, 8].map((mpa, i) => ({
    pressure: `${mpa} MPa` as const,
    rate: `${7.2 * (mpa / 4) ** 0.32 * (1 + (i % 2 === 0 ? 0.02 : -0.02))} mm/s` as const,
  }));
  const fit = fitBurnLaw({ points });
  const fitted: Partial<Law> = {
    referenceRate: '7.2 mm/s',
    exponent: 0.32,
    covariance: [...fit.covariance],
  };

  test('is the error at the mean of the points, where fitBurnLaw states it, and that of the exponent', () => {
    const { motor } = lawAboutMiddle(parseMotor(withLaw(fitted)), 5e6);
    const { referencePressure, referenceRate, exponent } = motor.propellant.burnLaw;
    expect((referencePressure?.value.si ?? 0) / fit.referencePressure.si).toBeCloseTo(1, 6);
    expect((referenceRate?.plusMinus ?? 0) / (referenceRate?.value.si ?? 1)).toBeCloseTo(
      2 * fit.referenceRateError,
      9,
    );
    expect(exponent?.plusMinus).toBeCloseTo(2 * fit.exponentError, 12);
  });

  test('raises MEOP; contradictions and other units are refused', () => {
    const [exact, fuzzy] = [{ ...fitted, covariance: undefined }, fitted].map((law) => meop(withLaw(law)));
    expect(fuzzy.worstCase.pressure.si).toBeGreaterThan(exact.worstCase.pressure.si * 1.005);
    expect(exact.assumptions.join()).not.toContain('covariance');
    const problem = (law: Partial<Law>): string => JSON.stringify(motorProblems(withLaw(law)));
    const [a, both, n] = fit.covariance;
    expect(problem({ covariance: [...fit.covariance] })).toContain('mutually exclusive');
    expect(problem({ ...fitted, covariance: [a, both] })).toContain('three numbers');
    expect(problem({ ...fitted, covariance: [a, both, -n] })).toContain('positive variances');
    // ln a in mm/s and MPa: the covariance moves by var n · ln 10⁶, so that the middle would be 2.8 Pa.
    const shift = Math.log(1e6);
    const inMpa = [a + 2 * shift * both + shift ** 2 * n, both + shift * n, n];
    expect(problem({ ...fitted, covariance: inMpa })).toContain('as fitBurnLaw returns them');
  });
});
