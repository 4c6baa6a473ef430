import type { SimulatedFiring } from '../../ballistics';
import { fromSiValue, type Quantity, unitOf } from '../../units';
import type { Motor } from '../document';
import type { Meop } from '../meop/meop-result';
import type { MotorSettings } from '../settings';
import type { ReviewCheck } from './review-check';
import type { InstrumentReview } from './review-result';

type Instrument = NonNullable<Motor['instruments']>[number];

/**
 * Evaluates every instrument at its worst-case limits for the worst case: range, overload capacity, sampling and
 * response time.
 */
export function instrumentReviews(
  motor: Motor,
  meop: Meop,
  settings: MotorSettings,
): readonly InstrumentReview[] {
  return (motor.instruments ?? []).map((one) => instrumentReview(one, motor, meop, settings));
}

function instrumentReview(
  one: Instrument,
  motor: Motor,
  meop: Meop,
  { limits }: MotorSettings,
): InstrumentReview {
  const { firing } = meop.worstCase;
  const expected = expectedOf(one, motor, meop);
  const range: Quantity = one.range.value;
  const wanted = limits.headroom;
  const checks: ReviewCheck[] = [];
  const headroom = expected && headroomOf(one, range, expected, motor);
  if (expected !== undefined && headroom !== undefined)
    checks.push({
      check: 'range',
      value: headroom,
      limit: wanted,
      passes: headroom >= wanted,
      message:
        headroom < 1
          ? `saturates: expected maximum ${expected}, range ${range}`
          : `range ${range} is ${headroom.toFixed(2)} × the expected maximum of ${expected} (required ≥ ${wanted})`,
      source:
        motor.limits?.headroom === undefined ? 'engineering practice, no published source' : 'the document',
    });
  const survives =
    one.measures === 'pressure'
      ? one.proofPressure
      : one.measures === 'thrust'
        ? one.safeOverload
        : undefined;
  if (survives !== undefined && expected !== undefined)
    checks.push({
      check: 'overload',
      value: expected,
      limit: survives.value,
      passes: survives.value.si >= expected.si,
      message: `${one.measures === 'pressure' ? 'proof pressure' : 'safe overload'} ${survives.value}; expected maximum ${expected}`,
      source: 'the document',
    });
  const rise = one.measures === 'temperature' ? undefined : riseOf(firing, one.measures);
  const samples = rise && rise * one.sampleRate.value.si;
  if (rise !== undefined && samples !== undefined) {
    const time: Quantity = fromSiValue(rise, 'time', unitOf('ms'));
    checks.push({
      check: 'samples in rise',
      value: samples,
      limit: limits.samplesPerRise,
      passes: samples >= limits.samplesPerRise,
      message: `${samples.toFixed(1)} samples in the ${time} rise from 10 % to 90 % (required ≥ ${limits.samplesPerRise})`,
      source:
        motor.limits?.samplesPerRise === undefined
          ? 'engineering practice, no published source'
          : 'the document',
    });
    if (one.riseTime !== undefined) checks.push(sensorSpeed(one.riseTime.value, time));
  }
  return {
    name: one.name,
    measures: one.measures,
    range,
    expected,
    headroom,
    passes: checks.every(({ passes }) => passes),
    ...(rise !== undefined &&
      samples !== undefined && { rise: { time: fromSiValue(rise, 'time', unitOf('ms')), samples } }),
    checks,
    cautions: cautionsOf(one, expected),
  };
}

/** Rise times add as their squares: a sensor three times as fast as the signal lengthens its rise by 5 %. */
function sensorSpeed(own: Quantity<'time'>, rise: Quantity): ReviewCheck {
  const limit: Quantity = fromSiValue(rise.si / 3, 'time', unitOf('ms'));
  return {
    check: 'sensor rise time',
    value: own,
    limit,
    passes: own.si <= limit.si,
    message: `sensor rise time ${own}; limit ${limit} (one third of the ${rise} motor rise, which lengthens the measured rise by 5 %)`,
    source:
      'rise times of filters in series add as their squares (engineering practice, no published source)',
  };
}

function expectedOf(one: Instrument, motor: Motor, meop: Meop): Quantity | undefined {
  if (one.measures === 'thrust') return meop.thrust;
  if (one.measures === 'temperature') return (one.expected ?? motor.case.wallTemperature)?.value;
  // The worst case even where MEOP is lower, because a saturated record is lost.
  const worst = meop.worstCase.pressure.si * meop.allowance;
  return fromSiValue(Math.max(meop.pressure.si, worst), 'gauge pressure', unitOf('MPa'));
}

function headroomOf(one: Instrument, range: Quantity, expected: Quantity, motor: Motor): number {
  if (one.measures !== 'temperature') return range.si / expected.si;
  // A temperature is measured from its initial value.
  const start = motor.ambient.temperature.value.si;
  return expected.si > start ? (range.si - start) / (expected.si - start) : Number.MAX_VALUE;
}

/** Rise time at ignition from 10 % to 90 % of the maximum within the first tenth of the burn. */
function riseOf(firing: SimulatedFiring, channel: 'pressure' | 'thrust'): number | undefined {
  const { si } = firing[channel];
  const time = firing.time.si;
  const rest = si[0];
  // The first shoulder, where the steep rise ends, before the slow change of a progressive grain.
  const burnout = firing.burnoutTime?.si ?? time[time.length - 1];
  let top = rest;
  for (let k = 0; k < si.length && time[k] <= 0.1 * burnout; k++) top = Math.max(top, si[k]);
  const crossing = (share: number): number | undefined => {
    const level = rest + share * (top - rest);
    const k = si.findIndex((value) => value >= level);
    if (k <= 0) return undefined;
    return time[k - 1] + ((level - si[k - 1]) / (si[k] - si[k - 1])) * (time[k] - time[k - 1]);
  };
  const [low, high] = [crossing(0.1), crossing(0.9)];
  return low === undefined || high === undefined || high <= low ? undefined : high - low;
}

function cautionsOf(one: Instrument, expected: Quantity | undefined): readonly string[] {
  const bandwidth = one.riseTime && fromSiValue(0.35 / one.riseTime.value.si, 'frequency', unitOf('Hz'));
  const nyquist =
    bandwidth !== undefined && one.sampleRate.value.si < 5 * bandwidth.si
      ? [
          `${one.name}: the ${one.sampleRate.value} sample rate is less than five times the sensor bandwidth of ${bandwidth} (0.35/rise time). Fit an anti-aliasing filter ahead of the ADC.`,
        ]
      : [];
  return [
    ...nyquist,
    ...(expected === undefined
      ? [`${one.name}: expected maximum not specified; its range is not evaluated.`]
      : []),
  ];
}
