import { fromSiValue, MeopError, unitOf } from '../../units';
import { type AnalysedRecord, analysedRecord, type CleanedChannel } from '../analysis/analysed-record';
import type { AnalysedTrace } from '../analysis/analysed-trace';
import { detectBurn } from '../cleaning/detect-burn';
import { lowPass } from '../cleaning/low-pass';
import { removeBaseline } from '../cleaning/remove-baseline';
import { findResonance } from '../cleaning/resonance';
import { removeSpikes } from '../cleaning/spikes';
import { correctStandWeight } from '../cleaning/stand-weight';
import { step } from '../cleaning/step';
import { lagBetween } from '../cleaning/trace-lag';
import { type Firing, firingOf } from '../firing';
import type { Log } from '../log/log';
import type { Clipping } from '../saturation/clipping';
import { detectClipping } from '../saturation/detect-clipping';
import { channelHealth } from './channel-health';
import { type ClippedChannels, reconstructClipped } from './clipped-channels';
import { firingFromLog } from './firing-from-log';
import { motorNumbers } from './motor-numbers';
import { clippedIntegral, peakOf } from './peak-of';
import type { ReducedFiring } from './reduced-firing';
import { reducedText } from './reduced-text';
import { type ReductionInputs, readReductionInputs } from './reduction-inputs';
import { suddenEnds } from './sudden-end';
import { zeroError } from './zero-error';

/**
 * Reduces a static-firing log to motor performance with uncertainties. Steps: remove spikes; reject dead or damaged
 * channels; detect clipping; subtract baselines (thrust by a line through the pre-fire and post-fire baselines,
 * pressure by the pre-fire one); correct for the weight on a vertical stand; reconstruct a clipped channel from the
 * other. Nothing is smoothed or shifted in time unless requested. Every step is in the history of the record.
 *
 * @throws MeopError `missing-field`, `not-calibrated`, `too-short`
 * @example reduceFiring(firing({ origin: 'measured', time: series([0, 1, 2, 3, 4, 5, 6, 7, 8, 9], 's'), thrust: series([0, 0, 0, 90, 100, 80, 0, 0, 0, 0], 'N') }), { ambientPressure: '1 atm' }).motorClass.letter // => 'H'
 */
export function reduceFiring(log: Log | Firing, facts: ReductionInputs): ReducedFiring {
  const si = readReductionInputs(facts);
  const started = 'channels' in log ? firingFromLog(log, facts) : withFacts(log, facts);
  let record = analysedRecord(removeSpikes(started));
  const ends = suddenEnds(record, si);
  if (ends?.burst)
    return noResult(
      record,
      Object.entries(ends.reasons).map(([channel, reason]) => `${channel}: ${reason}`),
    );
  const refused: string[] = [];
  for (const channel of ['pressure', 'thrust'] as const) {
    const trace = record.traces[channel];
    if (trace === undefined) continue;
    const health = ends?.reasons[channel] ?? healthOf(trace);
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
      'pressure: the signal is beyond its range, and there is no thrust for a reconstruction.',
    ]);
  const zero = {
    thrust: record.traces.thrust ? zeroError({ trace: record.traces.thrust, rest: 0 }) : 0,
    pressure: record.traces.pressure ? zeroError({ trace: record.traces.pressure, rest: si.ambient }) : 0,
  };
  const horizontal = (facts.stand ?? 'horizontal') === 'horizontal';
  if (record.thrust)
    record = analysedRecord(
      removeBaseline(record, { channels: ['thrust'], mode: horizontal ? 'line' : 'before' }),
    );
  if (record.pressure)
    record = analysedRecord(removeBaseline(record, { channels: ['pressure'], mode: 'before' }));
  if (record.thrust && facts.stand && facts.stand !== 'horizontal' && si.propellantMass)
    record = analysedRecord(correctStandWeight(record, { stand: facts.stand }));
  const levelled = {
    ...relevelled(record, 'pressure', clipping.pressure),
    ...relevelled(record, 'thrust', clipping.thrust),
  };
  const resonance = record.thrust ? findResonance(record) : undefined;
  if (resonance) record = step(record, { cautions: [resonance.note] }, `spectrum: ${resonance.note}`);
  record = lagNoted(record);
  const reconstruction = reconstructClipped(record, levelled, facts);
  const { recovery, uncertain } = reconstruction;
  record = reconstruction.record;
  if (facts.lowPass !== undefined) record = analysedRecord(lowPass(record, { cutoff: facts.lowPass }));
  record = analysedRecord(detectBurn(record));
  const peakPressure = peakOf(record, 'absolute pressure', si, levelled.pressure, recovery, uncertain);
  const peakThrust = peakOf(record, 'force', si, levelled.thrust, recovery, uncertain);
  const errors = {
    thrustZero: zero.thrust,
    pressureZero: zero.pressure,
    calibration: si.calibrationUncertainty,
    thrustClipped: clippedIntegral('thrust', levelled.thrust, peakThrust, recovery),
    pressureClipped: clippedIntegral('pressure', levelled.pressure, peakPressure, recovery),
  };
  const numbers = motorNumbers(record, si, errors, { peakPressure, peakThrust });
  const reduced: ReducedFiring = {
    ...numbers,
    status: 'reduced',
    record,
    clipping: levelled,
    recovery,
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

/** Adds inputs that the record lacks. */
function withFacts(record: Firing, facts: ReductionInputs): Firing {
  const si = readReductionInputs(facts);
  return firingOf({
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

function healthOf(trace: AnalysedTrace): string | undefined {
  try {
    return channelHealth(trace).reason;
  } catch (error) {
    if (error instanceof MeopError) return error.message;
    throw error;
  }
}

function without(record: AnalysedRecord, channel: CleanedChannel, reason: string): AnalysedRecord {
  const { [channel]: dropped, ...rest } = record;
  void dropped;
  const kept = firingOf<Firing>({
    ...rest,
    cautions: [...record.cautions, `${channel}: no result: ${reason}`],
    history: [...record.history, `${channel} omitted: ${reason}`],
  });
  return analysedRecord(kept, Object.values(record.traces));
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

/** Clipping is detected before the baseline is subtracted. Returns it at the new level. */
function relevelled(
  record: Firing,
  channel: CleanedChannel,
  clipping: Clipping | undefined,
): ClippedChannels {
  const values = record[channel]?.si;
  if (clipping === undefined || values === undefined) return {};
  let level = Number.NEGATIVE_INFINITY;
  for (const { first, last } of clipping.spans)
    for (let i = first; i <= last; i++) level = Math.max(level, values[i]);
  return { [channel]: { ...clipping, level } };
}

function lagNoted(record: AnalysedRecord): AnalysedRecord {
  const { pressure, thrust } = record.traces;
  if (!pressure || !thrust) return record;
  const { lag, startLag, endLag } = lagBetween(
    { trace: pressure, rest: record.ambientPressure?.si ?? 0 },
    { trace: thrust, rest: 0 },
  );
  const line = `thrust lags pressure by ${(1000 * lag).toFixed(1)} ms (start ${(1000 * startLag).toFixed(0)} ms, end ${(1000 * endLag).toFixed(0)} ms); not moved`;
  const cautions =
    Math.abs(startLag) > 0.05 && Math.abs(startLag - endLag) > 0.05
      ? [
          `thrust: it starts ${startLag.toFixed(2)} s after pressure. Check for friction or slack in the stand.`,
        ]
      : [];
  return step(record, { cautions }, line);
}
