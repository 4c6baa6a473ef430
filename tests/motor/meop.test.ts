import { describe, expect, test } from 'vitest';
import { equilibriumPressure, equilibriumPressures } from '../../src/ballistics';
import { demoMotor, type MotorDocument, meop, parseMotor, predict } from '../../src/motor';
import { propellantOf } from '../../src/motor/document/propellant-of';
import { indexAtPercentile, sampleMotors } from '../../src/motor/meop/monte-carlo';
import { lnPeakPressure } from '../../src/motor/meop/peak-kernel';
import { lnPeakAt, peakResponse, workState } from '../../src/motor/meop/peak-response';
import { percentileRanks } from '../../src/motor/meop/percentile-ranks';
import { placedValues, withValues } from '../../src/motor/varied-motor';

const found = meop(demoMotor());
const base = demoMotor();

describe('meop', () => {
  test('the nominal case is the prediction', () => {
    const predicted = predict(base);
    expect(found.nominal.peakPressure.si).toBe(predicted.peakPressure.si);
    // At the head end: the pressure that drives the nozzle times what the momentum of the port adds, less 101.3 kPa.
    const atHead = predicted.peakHeadPressure.si;
    expect(found.nominal.pressure.si).toBeCloseTo(atHead - 101300, 6);
    expect(atHead).toBeGreaterThan(predicted.peakPressure.si);
  });

  test('an allowance raises the thrust, too: in vacuum by as much as the absolute pressure', () => {
    const raised = meop({ ...base, meop: { samples: 100, seed: 1, allowance: 1.2 } });
    const { worstCase } = raised;
    expect(raised.pressure.si).toBeCloseTo(1.2 * worstCase.pressure.si, 6);
    // F + p_a·A_e goes with the absolute chamber pressure: Sutton & Biblarz 7th ed., thrust equation, choked and full-flowing.
    const onExit = 101300 * (Math.PI / 4) * 0.026 ** 2;
    const absolute = worstCase.peakPressure.si;
    const expected = (worstCase.peakThrust.si + onExit) * ((1.2 * (absolute - 101300) + 101300) / absolute);
    expect(raised.thrust.si).toBeCloseTo(expected - onExit, 6);
    expect(meop({ ...base, meop: { samples: 100, seed: 1 } }).thrust.si).toBe(worstCase.peakThrust.si);
  });

  test('a flaw that lowers the peak is not taken for the worst case', () => {
    // A bore that burns outwards peaks at burnout; what a crack burns early is gone by then.
    const progressive: MotorDocument = {
      ...base,
      grain: {
        segments: [
          {
            shape: 'internal-burning tube',
            outerDiameter: '48 mm',
            boreDiameter: '20 mm',
            length: '200 mm',
          },
        ],
        assumedFlaw: {
          segment: 1,
          flaw: {
            flaw: 'radial crack',
            innerRadius: '10 mm',
            outerRadius: '20 mm',
            from: '20 mm',
            to: '180 mm',
          },
        },
      },
      meop: { samples: 100, seed: 1 },
    };
    const { assumedFlaw: _, ...grain } = progressive.grain;
    const [flawed, sound] = [meop(progressive), meop({ ...progressive, grain })];
    expect(flawed.worstCase.pressure.si).toBe(sound.worstCase.pressure.si);
    expect(flawed.worstCase.flaws).toBe('as documented');
    expect(flawed.cautions.join()).toContain('The assumed flaw lowers the peak');
  });

  test('a thicker web is a greater peak where the grain is progressive', () => {
    const tube = (outerDiameter: unknown) =>
      parseMotor({
        ...base,
        grain: {
          segments: [
            { shape: 'internal-burning tube', outerDiameter, boreDiameter: '20 mm', length: '200 mm' },
          ],
        },
        meop: { samples: 100, seed: 1 },
      });
    const found = meop(tube({ value: '48 mm', plusMinus: '0.5 mm' }));
    const value = found.worstCase.values.find(({ input }) => input.endsWith('outerDiameter'));
    expect(value?.value.in('mm')).toBeCloseTo(48.5, 9);
  });

  test('nominal, percentile and worst case lie in this order, and the judged pressure is that of the basis', () => {
    expect(found.percentile.pressure.si).toBeGreaterThan(found.nominal.pressure.si);
    expect(found.worstCase.pressure.si).toBeGreaterThan(found.percentile.pressure.si);
    expect(found.basis).toBe('worst case');
    expect(found.pressure.si).toBe(found.worstCase.pressure.si);
    const byShare = meop({ ...base, meop: { basis: 'percentile', samples: 2000, seed: 1, allowance: 1.1 } });
    expect(byShare.pressure.si / byShare.percentile.pressure.si).toBeCloseTo(1.1, 12);
  });

  test('the worst corner has every value at an end, and moving any back lowers the peak', () => {
    const motor = parseMotor(base);
    const response = peakResponse(motor, 'with the assumed flaw', new Map());
    const work = workState(response);
    const placed = new Map(
      placedValues(motor, ['propellant', 'nozzle', 'grain']).map((one) => [one.name, one]),
    );
    const shares = Float64Array.from(response.inputs, (input) => {
      const at = found.worstCase.values.find((one) => one.input === input.name);
      const nominal = placed.get(input.name);
      expect(at, input.name).toBeDefined();
      return Math.round(((at?.value.si ?? 0) - (nominal?.value.si ?? 0)) / input.plusMinus);
    });
    const top = lnPeakAt(response, shares, 313.15, work);
    for (let i = 0; i < shares.length; i++) {
      expect(Math.abs(shares[i])).toBe(1);
      const moved = shares.slice();
      moved[i] = 0;
      expect(lnPeakAt(response, moved, 313.15, work)).toBeLessThan(top);
    }
  });

  test('quick pressures agree with full simulations of the same motors within 1 %', () => {
    const motor = parseMotor(base);
    const cache = new Map();
    const response = peakResponse(motor, 'none', cache);
    const work = workState(response);
    const none = new Float64Array(response.inputs.length);
    const nominal = predict(motor).peakPressure.si / Math.exp(lnPeakAt(response, none, 293.15, work));
    const drawn = sampleMotors(response, {
      samples: 6,
      seed: 3,
      distribution: 'uniform',
      temperatures: [293.15, 293.15],
    });
    for (let k = 0; k < 6; k++) {
      const width = response.inputs.length;
      const varied = withValues(
        motor,
        response.inputs.map((input, i) => ({
          path: input.path,
          si: input.value.si + drawn.shares[k * width + i] * input.plusMinus,
        })),
      );
      const quick = nominal * Math.exp(drawn.lnPeak[k]);
      expect(Math.abs(quick / predict(varied).peakPressure.si - 1)).toBeLessThan(0.01);
    }
    expect(Math.abs(found.percentile.checkDifference)).toBeLessThan(0.01);
  });

  test('the same seed gives the same motors; another seed others, with a percentile inside the band', () => {
    const small: MotorDocument = { ...base, meop: { samples: 3000, seed: 7 } };
    const [a, b] = [meop(small), meop(small)];
    expect([...a.percentile.peakPressure.si]).toEqual([...b.percentile.peakPressure.si]);
    const other = meop({ ...base, meop: { samples: 3000, seed: 8 } });
    expect(other.percentile.peakPressure.si[0]).not.toBe(a.percentile.peakPressure.si[0]);
    const [low, high] = a.percentile.band;
    expect(other.percentile.pressure.si).toBeGreaterThan(0.99 * low.si);
    expect(other.percentile.pressure.si).toBeLessThan(1.01 * high.si);
  });

  test('without tolerances, temperature range and assumed flaw all three are one', () => {
    const strip = (node: unknown): unknown =>
      Array.isArray(node)
        ? node.map(strip)
        : typeof node === 'object' && node !== null
          ? 'plusMinus' in node && 'value' in node
            ? node.value
            : Object.fromEntries(Object.entries(node).map(([key, value]) => [key, strip(value)]))
          : node;
    const bare: Record<string, unknown> = JSON.parse(JSON.stringify(base));
    delete bare.temperatureRange;
    const { assumedFlaw: _, ...grain } = bare.grain as Record<string, unknown>;
    const { propellant } = strip(bare) as { readonly propellant: object };
    // Omitted, a law of erosive burning is assumed with a tolerance.
    const erosiveBurning = { law: 'none' };
    const same = meop(
      parseMotor({
        ...(strip(bare) as object),
        propellant: { ...propellant, erosiveBurning },
        grain: strip(grain),
      }),
    );
    expect(same.worstCase.pressure.si).toBe(same.nominal.pressure.si);
    expect(same.percentile.pressure.si).toBeCloseTo(same.nominal.pressure.si, 6);
    expect(same.sensitivity).toEqual([]);
  });

  test('a tolerance of a temperature in degC is printed as the difference that it is', () => {
    const { burnLaw } = base.propellant;
    const referenceTemperature = { value: '20 degC', plusMinus: '2 delta_K' } as const; // as given: 2 K
    const { sensitivity } = meop({
      ...base,
      propellant: { ...base.propellant, burnLaw: { ...burnLaw, referenceTemperature } },
      meop: { samples: 100, seed: 1 },
    });
    const row = sensitivity.find(({ input }) => input === 'propellant.burnLaw.referenceTemperature');
    expect(row?.value).toBe('20 °C ± 2 °C');
  });

  test('sensitivities: the throat counts twice and amplified, shares of variance sum to about one', () => {
    const throat = found.sensitivity.find(({ input }) => input === 'nozzle.throatDiameter');
    // d ln p = −2/(1 − n) d ln d_t: equilibriumPressure differentiated, Sutton & Biblarz 7th ed. ch. 11; n = 0.32.
    expect(throat?.slope).toBeCloseTo(-2 / (1 - 0.32), 1);
    const rate = found.sensitivity.find(({ input }) => input === 'propellant.burnLaw.referenceRate');
    expect(rate?.slope).toBeCloseTo(1 / (1 - 0.32), 1);
    const heat = found.sensitivity.find(({ input }) => input === 'grain temperature');
    // π_K = σ_p/(1 − n), Sutton & Biblarz 7th ed. ch. 11.
    expect(heat?.slope).toBeCloseTo(0.0012 / (1 - 0.32), 6);
    const sum = found.sensitivity.reduce((total, { shareOfVariance }) => total + shareOfVariance, 0);
    expect(sum).toBeGreaterThan(0.95);
    expect(sum).toBeLessThan(1.05);
  });
});

describe('the kernel of the scatter', () => {
  test('is the formula equilibriumPressure at the greatest area', () => {
    const motor = parseMotor(base);
    const response = peakResponse(motor, 'none', new Map());
    const { law, density, characteristicVelocity } = propellantOf(motor.propellant);
    const area = Math.max(...response.base.area);
    const throat = (Math.PI / 4) * 0.0106 ** 2;
    const byFormula = equilibriumPressure.si({
      density: density.si,
      characteristicVelocity: characteristicVelocity.si,
      burningAreaRatio: area / throat,
      referenceRate: law.bands[0].referenceRate,
      referencePressure: law.bands[0].referencePressure,
      exponent: law.bands[0].exponent,
    });
    expect(Math.exp(lnPeakPressure(response.base, response.frame, 293.15)) / byFormula).toBeCloseTo(1, 12);
  });

  test('a law of bands gives the lowest stable root that equilibriumPressures gives', () => {
    const banded: MotorDocument = {
      ...base,
      propellant: {
        ...base.propellant,
        burnLaw: {
          bands: [
            {
              from: '0.1 MPaa',
              to: '3 MPaa',
              referenceRate: '6.2 mm/s',
              referencePressure: '1 MPaa',
              exponent: 0.1,
            },
            {
              from: '3 MPaa',
              to: '9 MPaa',
              referenceRate: '7.2 mm/s',
              referencePressure: '4 MPaa',
              exponent: 0.4,
            },
          ],
          source: 'invented for this test',
        },
      },
    };
    const motor = parseMotor(banded);
    const response = peakResponse(motor, 'none', new Map());
    const made = propellantOf(motor.propellant);
    const roots = equilibriumPressures({
      propellant: made,
      burningAreaRatio: Math.max(...response.base.area) / ((Math.PI / 4) * 0.0106 ** 2),
      gasStorage: false,
    }).filter(({ stable }) => stable);
    const quick = Math.exp(lnPeakPressure(response.base, response.frame, 294.15));
    expect(quick / roots[0].pressure.si).toBeCloseTo(1, 6);
  });

  test('ranks and their band', () => {
    const values = Float64Array.from([3, 1, 2, 5, 4]);
    expect(indexAtPercentile(values, 0.8)).toBe(4);
    expect(indexAtPercentile(values, 1)).toBe(3);
    // Computed with SciPy 1.17.1: binom.ppf([0.025, 0.975], 1000, p) and one more for the upper rank.
    expect(percentileRanks(1000, 0.95)).toEqual({ low: 936, high: 964 });
    expect(percentileRanks(1000, 0.9)).toEqual({ low: 881, high: 919 });
    expect(percentileRanks(10_000, 0.9987)).toEqual({ low: 9980, high: 9995 });
  });
});
