// Percentiles of MEOP against motors that are regressed and simulated one by one, every segment with values of its own.
import { describe, expect, test } from 'vitest';
import { simulate } from '../../src/ballistics';
import { demoMotor, type Motor, type MotorDocument, parseMotor } from '../../src/motor';
import { withAssumedErosion } from '../../src/motor/erosion-of';
import { lawAboutMiddle } from '../../src/motor/meop/burn-law-middle';
import { meopOf } from '../../src/motor/meop/meop';
import { binomialQuantile } from '../../src/motor/meop/percentile-ranks';
import { motorRegression } from '../../src/motor/motor-grain';
import { simulationInput } from '../../src/motor/simulation-input';
import { placedValues, withValues } from '../../src/motor/varied-motor';
import { randomStream } from '../../src/numerics';
import { fromSiValue, unitOf } from '../../src/units';

const motors = Number(process.env.MEOP_MOTORS ?? 150);
const share = 0.95;

type Segments = MotorDocument['grain']['segments'];

const withGrain = (segments: Segments, flaw: boolean): MotorDocument => {
  const { assumedFlaw, ...grain } = demoMotor().grain;
  return {
    ...demoMotor(),
    grain: { ...grain, segments, ...(flaw && assumedFlaw ? { assumedFlaw } : {}) },
    meop: { basis: 'percentile', percentile: share, samples: 10_000, seed: 5 },
  };
};
const body = { outerDiameter: '48 mm', length: { value: '150 mm', plusMinus: '0.5 mm' } } as const;
const grains: readonly (readonly [string, MotorDocument])[] = [
  [
    'six fins',
    withGrain(
      [
        {
          shape: 'slotted tube',
          count: 2,
          ...body,
          boreDiameter: { value: '16 mm', plusMinus: '0.2 mm' },
          slots: 6,
          slotWidth: { value: '3 mm', plusMinus: '0.1 mm' },
          slotDiameter: { value: '28 mm', plusMinus: '0.3 mm' },
        },
      ],
      false,
    ),
  ],
  [
    'offset bore',
    withGrain(
      [
        {
          shape: 'offset bore',
          count: 2,
          ...body,
          boreDiameter: { value: '20 mm', plusMinus: '0.2 mm' },
          offset: { value: '5 mm', plusMinus: '0.3 mm' },
        },
      ],
      false,
    ),
  ],
  ['with a crack', withGrain(demoMotor().grain.segments, true)],
];

/** The motor with each segment written on its own. */
const oneByOne = (motor: Motor): Motor => ({
  ...motor,
  grain: {
    ...motor.grain,
    segments: motor.grain.segments.flatMap(({ count, ...segment }) =>
      Array.from({ length: count ?? 1 }, () => segment),
    ),
  },
});

/** Peak pressure at the head end [Pa] of a motor of which every toleranced value is drawn anew. */
function drawnPeaks(document: MotorDocument, flaws: 'as documented' | 'with the assumed flaw'): number[] {
  const given = withAssumedErosion(parseMotor(document));
  const nominal = simulate(simulationInput(given, motorRegression(given))).peakPressure.si;
  const motor = oneByOne(lawAboutMiddle(given, nominal).motor);
  const { coldest, hottest } = motor.temperatureRange ?? {};
  const stream = randomStream(77);
  const values = placedValues(motor, ['propellant', 'nozzle', 'grain', 'ignition']).filter(
    ({ plusMinus, path }) => plusMinus > 0 && !path.includes('idealDensity'),
  );
  return Array.from({ length: motors }, () => {
    const varied = withValues(
      motor,
      values.map(({ path, value, plusMinus }) => ({
        path,
        si: value.si + plusMinus * (2 * stream.uniform() - 1),
      })),
    );
    const [low, high] = [coldest?.value.si ?? 293.15, hottest?.value.si ?? 293.15];
    const kelvin = fromSiValue<'temperature'>(
      low + stream.uniform() * (high - low),
      'temperature',
      unitOf('K'),
    );
    return simulate(simulationInput(varied, motorRegression(varied, flaws, new Map(), 5e-3), kelvin))
      .peakHeadPressure.si;
  });
}

describe('the percentile of MEOP', () => {
  test.each(grains)('%s: as many motors exceed it as it says', (name, document) => {
    const { percentile } = meopOf(parseMotor(document), new Map());
    const flaws = document.grain.assumedFlaw === undefined ? 'as documented' : percentile.checked.flaws;
    if (flaws === 'none') throw new Error('a motor of this test has its flaws');
    const ambient = 101_300;
    const peaks = drawnPeaks(document, flaws);
    const above = (pressure: { readonly si: number }): number =>
      peaks.filter((p) => p - ambient > pressure.si).length;
    const [low, high] = percentile.band;
    console.log(
      name,
      `${above(percentile.pressure)} of ${motors} above the percentile, ${above(low)} and ${above(high)} above the ends of its interval; ${percentile.fullRuns} full runs`,
    );
    // Exact binomial bounds: one run of this test in a thousand fails for either end if the percentile is right.
    expect(above(low)).toBeGreaterThanOrEqual(binomialQuantile(motors, 1 - share, 0.001));
    expect(above(high)).toBeLessThanOrEqual(binomialQuantile(motors, 1 - share, 0.999));
  });
});
