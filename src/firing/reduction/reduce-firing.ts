import { either, fromSiValue, MeopError, printable, procedure, unitOf } from '../../units';
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
import { exampleFiring, type Firing, firingInput, firingOf } from '../firing';
import { type Log, logInput } from '../log/log';
import type { Clipping } from '../saturation/clipping';
import { detectClipping } from '../saturation/detect-clipping';
import { channelHealth } from './channel-health';
import { type ClippedChannels, reconstructClipped } from './clipped-channels';
import { recordOf } from './firing-from-log';
import { motorNumbers } from './motor-numbers';
import { clippedIntegral, peakOf } from './peak-of';
import type { ReducedFiring } from './reduced-firing';
import { reducedText } from './reduced-text';
import { type ReductionFacts, type ReductionInputs, reductionFields, reductionSi } from './reduction-inputs';
import { suddenEnds } from './sudden-end';
import { zeroError } from './zero-error';

/**
 * Reduces a static-firing log to motor performance with uncertainties. Steps: remove spikes; reject dead or damaged
 * channels; detect clipping; subtract baselines (thrust by a line through the pre-fire and post-fire baselines,
 * pressure by the pre-fire one); correct for the weight on a vertical stand; reconstruct a clipped channel from the
 * other. Nothing is smoothed or shifted in time unless requested. Every step is in the history of the record.
 *
 * @example reduceFiring(firing({ origin: 'measured', time: series([0, 1, 2, 3, 4, 5, 6, 7, 8, 9], 's'), thrust: series([0, 0, 0, 90, 100, 80, 0, 0, 0, 0], 'N') }), { ambientPressure: '1 atm' }).motorClass.letter // => 'H'
 */
export const reduceFiring = /* @__PURE__ */ procedure({
  name: 'reduceFiring',
  title: 'Reduction of a static firing to motor performance',
  source:
    'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), definitions of I, I_s, c* and C_F; NFPA 1125 for the 5 % points (quoted from memory, not verified); uncertainties by JCGM 100:2008',
  subject: either('log of the firing, or its record', [logInput, firingInput]),
  inputs: reductionFields,
  gives: 'impulse, class, peaks, times and efficiencies with uncertainties, and the cleaned record',
  example: `reduceFiring(${exampleFiring}, { ambientPressure: '101.3 kPa' })`,
  run: (log, facts): ReducedFiring => reduced(log, facts),
});

function reduced(log: Log | Firing, facts: ReductionFacts): ReducedFiring {
  const si = reductionSi(facts);
  const started = 'channels' in log ? recordOf(log, facts, 'reduceFiring') : withFacts(log, facts);
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
  const known = rangesOfLog(log, si.ambient);
  const ranges = {
    pressure: facts.ranges?.pressure ?? known.pressure,
    thrust: facts.ranges?.thrust ?? known.thrust,
  };
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
  const horizontal = facts.stand === 'horizontal';
  if (record.thrust)
    record = analysedRecord(
      removeBaseline(record, { channels: ['thrust'], mode: horizontal ? 'line' : 'before' }),
    );
  if (record.pressure)
    record = analysedRecord(removeBaseline(record, { channels: ['pressure'], mode: 'before' }));
  if (record.thrust && facts.stand !== 'horizontal' && si.propellantMass)
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
  const found = {
    ...numbers,
    status: 'reduced' as const,
    record,
    clipping: levelled,
    recovery,
    peakPressureUpperBound:
      numbers.peakPressure &&
      fromSiValue<'gauge pressure'>(
        numbers.peakPressure.high.si - si.ambient,
        'gauge pressure',
        unitOf('MPa'),
      ),
    resonance,
    cautions: [...record.cautions, ...numbers.cautions],
  };
  return printable(found, () => reducedText(found));
}

/** Adds inputs that the record lacks. */
function withFacts(record: Firing, facts: ReductionFacts): Firing {
  return firingOf({
    ...record,
    ambientPressure: record.ambientPressure ?? facts.ambientPressure.to('kPa'),
    ...(facts.propellantMass && { loadedMass: facts.propellantMass.to('kg') }),
    ...(facts.throatDiameter && { initialThroatDiameter: facts.throatDiameter.to('mm') }),
  });
}

function healthOf(trace: AnalysedTrace): string | undefined {
  try {
    return channelHealth(trace).reason;
  } catch (error) {
    if (error instanceof MeopError) return error.statement;
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
  const nothing = {
    status: 'no result' as const,
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
    cautions: [...new Set([...record.cautions, ...reasons])],
  };
  return printable(nothing, () => reducedText(nothing));
}

function rangesOfLog(log: Log | Firing, ambient: number): NonNullable<ReductionInputs['ranges']> {
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
