import { fromSiValue, MeopError, unitOf } from '../../units';
import { traceLag } from '../cleaning/align';
import { removeBaseline } from '../cleaning/baseline';
import { detectBurn } from '../cleaning/detect-burn';
import { lowPass } from '../cleaning/low-pass';
import { findResonance } from '../cleaning/resonance';
import { removeSpikes } from '../cleaning/spikes';
import { correctStandWeight } from '../cleaning/stand-weight';
import { type CleanedChannel, step } from '../cleaning/step';
import { type Firing, firing } from '../firing';
import type { Log } from '../log/log';
import type { Clipping } from '../saturation/clipping';
import { detectClipping } from '../saturation/detect-clipping';
import { recoverPressure, recoverThrust } from '../saturation/recover';
import type { Recovery } from '../saturation/recovery';
import { channelHealth } from './channel-health';
import { firingFromLog } from './firing-from-log';
import { motorNumbers } from './motor-numbers';
import { clippedIntegral, peakOf } from './peak-of';
import type { ReducedFiring } from './reduced-firing';
import { reducedText } from './reduced-text';
import { type ReductionInputs, readReductionInputs } from './reduction-inputs';
import { suddenEnds } from './sudden-end';
import { zeroError } from './zero-error';

/**
 * From a log to what the motor did, as a careful person would: spikes out, channels that are dead or damaged refused,
 * clipping looked for, zeros taken off (thrust by a line through both rests, pressure by the rest before), weight on a
 * vertical stand corrected, a clipped channel recovered from the other, then the numbers with their uncertainty. Nothing
 * is smoothed or moved in time unless asked. Every step is in the history of the record.
 *
 * @throws MeopError `missing-field`, `not-calibrated`, `too-short`
 * @example reduceFiring(firing({ origin: 'measured', time: series([0, 1, 2, 3, 4, 5, 6, 7, 8, 9], 's'), thrust: series([0, 0, 0, 90, 100, 80, 0, 0, 0, 0], 'N') }), { ambientPressure: '1 atm' }).motorClass.letter // => 'H'
 */
export function reduceFiring(log: Log | Firing, facts: ReductionInputs): ReducedFiring {
  const si = readReductionInputs(facts);
  const started = 'channels' in log ? firingFromLog(log, facts) : withFacts(log, facts);
  let record = removeSpikes(started);
  const ends = suddenEnds(record, si);
  if (ends?.burst)
    return noResult(
      record,
      Object.entries(ends.reasons).map(([channel, reason]) => `${channel}: ${reason}`),
    );
  const refused: string[] = [];
  for (const channel of ['pressure', 'thrust'] as const) {
    const values = record[channel]?.si;
    if (values === undefined) continue;
    const health = ends?.reasons[channel] ?? healthOf(record.time.si, values);
    if (health !== undefined) {
      refused.push(`${channel}: no result: ${health}`);
      record = without(record, channel, health);
    }
  }
  if (record.pressure === undefined && record.thrust === undefined) return noResult(record, refused);
  const ranges = { ...rangesOfLog(log, si.ambient), ...facts.ranges };
  const clipping = detectClipping(record, { ranges });
  if (clipping.pressure?.evidence === 'range' && record.thrust === undefined && refused.length > 0)
    return noResult(record, [
      ...refused,
      'pressure: it is beyond its range and there is no thrust to recover it from',
    ]);
  const zero = {
    thrust: zeroError(record, 'thrust', 0),
    pressure: zeroError(record, 'pressure', si.ambient),
  };
  const horizontal = (facts.stand ?? 'horizontal') === 'horizontal';
  if (record.thrust)
    record = removeBaseline(record, { channels: ['thrust'], mode: horizontal ? 'line' : 'before' });
  if (record.pressure) record = removeBaseline(record, { channels: ['pressure'], mode: 'before' });
  if (record.thrust && facts.stand && facts.stand !== 'horizontal' && si.propellantMass)
    record = correctStandWeight(record, { stand: facts.stand });
  const levelled = {
    ...relevelled(record, 'pressure', clipping.pressure),
    ...relevelled(record, 'thrust', clipping.thrust),
  };
  const resonance = record.thrust ? findResonance(record) : undefined;
  if (resonance) record = step(record, { cautions: [resonance.note] }, `spectrum: ${resonance.note}`);
  record = lagNoted(record);
  const recovery = recovered(record, levelled, facts);
  const inDoubt = recovery ? undefined : recovered(record, softOnly(levelled), facts);
  const uncertainRecovery = inDoubt && 'record' in inDoubt ? inDoubt : undefined;
  if (recovery && 'record' in recovery) record = recovery.record;
  else if (recovery) record = step(record, { cautions: [recovery.why] }, recovery.why);
  for (const doubt of clippingCautions(levelled, uncertainRecovery))
    record = step(record, { cautions: [doubt] }, doubt);
  if (facts.lowPass !== undefined) record = lowPass(record, { cutoff: facts.lowPass });
  record = detectBurn(record);
  const made = recovery && 'record' in recovery ? recovery : undefined;
  const peakPressure = peakOf(record, 'absolute pressure', si, levelled.pressure, made, uncertainRecovery);
  const peakThrust = peakOf(record, 'force', si, levelled.thrust, made, uncertainRecovery);
  const errors = {
    thrustZero: zero.thrust,
    pressureZero: zero.pressure,
    calibration: si.calibrationUncertainty,
    thrustClipped: clippedIntegral('thrust', levelled.thrust, peakThrust, made),
    pressureClipped: clippedIntegral('pressure', levelled.pressure, peakPressure, made),
  };
  const numbers = motorNumbers(record, si, errors, { peakPressure, peakThrust });
  const reduced: ReducedFiring = {
    ...numbers,
    status: 'reduced',
    record,
    clipping: levelled,
    recovery: made,
    peakPressureUpperBound:
      numbers.peakPressure &&
      fromSiValue(numbers.peakPressure.high.si - si.ambient, 'gauge pressure', unitOf('MPa')),
    resonance,
    cautions: [...record.cautions, ...numbers.cautions],
    toString: () => reducedText(reduced),
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: () => reducedText(reduced) },
  };
  return reduced;
}

/** Facts that the record does not have yet. */
function withFacts(record: Firing, facts: ReductionInputs): Firing {
  const si = readReductionInputs(facts);
  return firing({
    ...record,
    ambientPressure:
      record.ambientPressure ??
      fromSiValue<'absolute pressure'>(si.ambient, 'absolute pressure', unitOf('kPa')),
    ...(si.propellantMass !== undefined && {
      loadedMass: fromSiValue<'mass'>(si.propellantMass, 'mass', unitOf('kg')),
    }),
    ...(si.throatArea !== undefined && {
      initialThroatDiameter: fromSiValue<'length'>(
        Math.sqrt((4 * si.throatArea) / Math.PI),
        'length',
        unitOf('mm'),
      ),
    }),
  });
}

function healthOf(time: Float64Array, values: Float64Array): string | undefined {
  try {
    return channelHealth(time, values).reason;
  } catch (error) {
    if (error instanceof MeopError) return error.message;
    throw error;
  }
}

function without(record: Firing, channel: CleanedChannel, reason: string): Firing {
  const { [channel]: dropped, ...rest } = record;
  void dropped;
  return firing({
    ...rest,
    cautions: [...record.cautions, `${channel}: no result: ${reason}`],
    history: [...record.history, `${channel} left out: ${reason}`],
  });
}

function noResult(record: Firing, reasons: readonly string[]): ReducedFiring {
  const nothing: ReducedFiring = {
    status: 'no result',
    record,
    clipping: {},
    recovery: undefined,
    peakPressureUpperBound: undefined,
    resonance: undefined,
    totalImpulse: undefined,
    motorClass: undefined,
    specificImpulse: undefined,
    averageThrust: undefined,
    peakThrust: undefined,
    burnTime: undefined,
    burnTime5: undefined,
    pressureIntegral: undefined,
    peakPressure: undefined,
    characteristicVelocity: undefined,
    thrustCoefficient: undefined,
    combustionEfficiency: undefined,
    nozzleEfficiency: undefined,
    cautions: [
      ...record.cautions,
      ...reasons.filter((reason) => !record.cautions.some((c) => c.includes(reason))),
    ],
    toString: () => reducedText(nothing),
  };
  return nothing;
}

function rangesOfLog(log: Log | Firing, ambient: number): ReductionInputs['ranges'] {
  if (!('channels' in log)) return {};
  const high = (measures: string): number | undefined => {
    const found = Object.values(log.channels).filter((c) => c.measures?.endsWith(measures) && c.range);
    return found.length === 0
      ? undefined
      : Math.min(...found.map((c) => (c.range?.high ?? 0) + (c.measures === 'gauge pressure' ? ambient : 0)));
  };
  const pressure = high('pressure');
  const thrust = high('force');
  return {
    ...(pressure !== undefined && {
      pressure: fromSiValue<'absolute pressure'>(pressure, 'absolute pressure', unitOf('MPa')),
    }),
    ...(thrust !== undefined && { thrust: fromSiValue<'force'>(thrust, 'force', unitOf('N')) }),
  };
}

/** Clipping was found before the zero was taken off: its level moves with it. */
function relevelled(
  record: Firing,
  channel: CleanedChannel,
  clipping: Clipping | undefined,
): { readonly [K in CleanedChannel]?: Clipping } {
  const values = record[channel]?.si;
  if (clipping === undefined || values === undefined) return {};
  let level = Number.NEGATIVE_INFINITY;
  for (const { first, last } of clipping.spans)
    for (let i = first; i <= last; i++) level = Math.max(level, values[i]);
  return { [channel]: { ...clipping, level } };
}

function lagNoted(record: Firing): Firing {
  if (!record.pressure || !record.thrust) return record;
  const time = record.time.si;
  const rest = record.ambientPressure?.si ?? 0;
  const { lag, startLag, endLag } = traceLag(
    { time, values: record.pressure.si, rest },
    { time, values: record.thrust.si },
  );
  const line = `thrust lags pressure by ${(1000 * lag).toFixed(1)} ms (start ${(1000 * startLag).toFixed(0)} ms, end ${(1000 * endLag).toFixed(0)} ms); not moved`;
  const cautions =
    Math.abs(startLag) > 0.05 && Math.abs(startLag - endLag) > 0.05
      ? [`thrust starts ${startLag.toFixed(2)} s after pressure: friction or slack in the stand`]
      : [];
  return step(record, { cautions }, line);
}

/** Tops that clipping or the motor itself may have made: they are told, and left as they are. */
function clippingCautions(
  clipping: { readonly pressure?: Clipping; readonly thrust?: Clipping },
  uncertainRecovery: Recovery<'absolute pressure'> | Recovery<'force'> | undefined,
): readonly string[] {
  return (['pressure', 'thrust'] as const).flatMap((channel) => {
    const found = clipping[channel];
    if (found === undefined || found.certain) return [];
    const when = found.spans.map(({ from, to }) => `${from.toFixed(3)} to ${to.toFixed(3)} s`).join(', ');
    const looks =
      found.evidence === 'soft limit'
        ? 'falls short of its line with the other channel, as an amplifier near its end or a throat that changes makes it'
        : 'has a flat top, as clipping or a true plateau makes it';
    const then =
      uncertainRecovery?.channel === channel
        ? `; its peak would then be ${uncertainRecovery.peak.value}`
        : '';
    return [
      `${channel} ${looks} (${when})${then}: not recovered; if the channel was at its end, say so: { ranges: { ${channel}: … } }`,
    ];
  });
}

/** A limit in doubt, taken for certain: what the peak would be then. */
function softOnly(clipping: { readonly pressure?: Clipping; readonly thrust?: Clipping }): {
  readonly pressure?: Clipping;
  readonly thrust?: Clipping;
} {
  const { pressure, thrust } = clipping;
  const soft = (found: Clipping | undefined): boolean => found?.evidence === 'soft limit' && !found.certain;
  return {
    ...(pressure && soft(pressure) && { pressure: { ...pressure, certain: true } }),
    ...(thrust && soft(thrust) && { thrust: { ...thrust, certain: true } }),
  };
}

type Recovered = Recovery<'absolute pressure'> | Recovery<'force'> | { readonly why: string } | undefined;

function recovered(
  record: Firing,
  clipping: { readonly pressure?: Clipping; readonly thrust?: Clipping },
  facts: ReductionInputs,
): Recovered {
  const { pressure, thrust } = clipping;
  const known = {
    throatGrowth: 'little' as const,
    ...(facts.expansionRatio !== undefined && { expansionRatio: facts.expansionRatio }),
    ...(facts.idealCharacteristicVelocity !== undefined && {
      characteristicVelocity: facts.idealCharacteristicVelocity,
      massBalanceUncertainty: 0.05,
    }),
    ...(facts.prediction && { prediction: facts.prediction }),
  };
  try {
    if (pressure?.certain) return recoverPressure(record, { ...known, clipping: pressure });
    if (thrust?.certain) return recoverThrust(record, { ...known, clipping: thrust });
  } catch (error) {
    if (error instanceof MeopError && error.code === 'no-recovery')
      return { why: `clipped, and ${error.message}` };
    throw error;
  }
  return undefined;
}
