import type { SimulatedFiring } from '../../ballistics';
import { fromSiValue, type Quantity, unitOf } from '../../units';
import type { Motor } from '../document';
import type { Meop } from '../meop/meop-result';
import type { MotorSettings } from '../settings';
import type { InstrumentReview, ReviewCheck } from './review-result';

type Instrument = NonNullable<Motor['instruments']>[number];

/** Every sensor of a motor at its worse ends against the worst case: whether it saturates, survives, and is fast enough. */
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
      check: 'head-room',
      value: headroom,
      limit: wanted,
      passes: headroom >= wanted,
      message:
        headroom < 1
          ? `SATURATES: ${expected} is expected and it reads to ${range}`
          : `reads to ${range}, ${headroom.toFixed(2)} times the ${expected} that is expected; ${wanted} times wanted`,
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
      message: `survives ${survives.value}, ${expected} expected`,
      source: 'the document',
    });
  const rise = one.measures === 'temperature' ? undefined : riseOf(firing, one.measures);
  const samples = rise && rise * one.sampleRate.value.si;
  if (rise !== undefined && samples !== undefined) {
    const time: Quantity = fromSiValue(rise, 'time', unitOf('ms'));
    checks.push({
      check: 'samples in the rise',
      value: samples,
      limit: limits.samplesPerRise,
      passes: samples >= limits.samplesPerRise,
      message: `${samples.toFixed(1)} samples in the ${time} from 10 % to 90 %, ${limits.samplesPerRise} wanted`,
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

/** Rise times add as their squares: a sensor a third as fast as the rise draws it out by 5 %. */
const sensorSpeed = (own: Quantity<'time'>, rise: Quantity): ReviewCheck => ({
  check: 'speed of the sensor',
  value: own,
  limit: fromSiValue(rise.si / 3, 'time', unitOf('ms')),
  passes: own.si <= rise.si / 3,
  message: `rises in ${own}; a third of the ${rise} of the motor wanted, which draws the rise out by 5 %`,
  source: 'rise times of filters in series add as their squares (engineering practice, no published source)',
});

function expectedOf(one: Instrument, motor: Motor, meop: Meop): Quantity | undefined {
  if (one.measures === 'thrust') return meop.thrust;
  if (one.measures === 'temperature') return (one.expected ?? motor.case.wallTemperature)?.value;
  // The worst case even where MEOP is less: what saturates is lost.
  const worst = meop.worstCase.pressure.si * meop.allowance;
  return fromSiValue(Math.max(meop.pressure.si, worst), 'gauge pressure', unitOf('MPa'));
}

function headroomOf(one: Instrument, range: Quantity, expected: Quantity, motor: Motor): number {
  if (one.measures !== 'temperature') return range.si / expected.si;
  // A temperature has its zero where it starts.
  const start = motor.ambient.temperature.value.si;
  return expected.si > start ? (range.si - start) / (expected.si - start) : Number.MAX_VALUE;
}

/** The time of the rise at ignition from 10 % to 90 % of the greatest value in the first tenth after it first reaches 90 %. */
function riseOf(firing: SimulatedFiring, channel: 'pressure' | 'thrust'): number | undefined {
  const { si } = firing[channel];
  const time = firing.time.si;
  const rest = si[0];
  // The first shoulder: where the steep rise ends, before the slow change of a progressive grain.
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
  const nyquist =
    one.riseTime !== undefined && one.sampleRate.value.si < (5 * 0.35) / one.riseTime.value.si
      ? [
          `${one.name}: ${one.sampleRate.value} is below five times the bandwidth of the sensor (0.35 over its rise time): filter before the converter`,
        ]
      : [];
  return [
    ...nyquist,
    ...(expected === undefined
      ? [`${one.name}: what to expect there is not given: its range is not judged`]
      : []),
  ];
}
