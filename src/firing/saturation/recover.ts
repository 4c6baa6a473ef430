import { fromSiArray, fromSiValue, MeopError, type QuantityInput, readInput, unitOf } from '../../units';
import { ambientSi } from '../ambient';
import { type AnalysedRecord, analysedRecord } from '../analysis/analysed-record';
import { analysedTrace } from '../analysis/analysed-trace';
import { step } from '../cleaning/step';
import { type Firing, firingOf } from '../firing';
import { boundsWithoutSecondChannel } from './bounds-without-second-channel';
import type { Clipping } from './clipping';
import { detectClipping } from './detect-clipping';
import { throughThrustLine } from './recover-through-line';
import {
  type ChannelOfKind,
  type Estimate,
  estimate,
  type RecoveredBand,
  type RecoverFacts,
  type Recovery,
  recoveryText,
} from './recovery';

/** Data beyond the record. More data give a narrower interval. */
export interface RecoverOptions {
  /** Clipping of the channel. Default: the result of {@link detectClipping}. */
  readonly clipping?: Clipping;
  /** Upper limit of the range of each channel. */
  readonly ranges?: {
    readonly pressure?: QuantityInput<'absolute pressure'>;
    readonly thrust?: QuantityInput<'force'>;
  };
  /** Pressure around the motor, required unless the record has it. Default: that of the record. */
  readonly ambientPressure?: QuantityInput<'absolute pressure'>;
  /** Throat diameter. Default: that of the record. */
  readonly throatDiameter?: QuantityInput<'length'>;
  /** Nozzle exit area/throat area. */
  readonly expansionRatio?: number;
  /** Growth of the throat area: fitted (`'fit'`), about 1 % or less (`'little'`, default), or `'none'`. */
  readonly throatGrowth?: 'fit' | 'little' | 'none';
  /** Mass of propellant burned. Default: the mass loaded. */
  readonly propellantMass?: QuantityInput<'mass'>;
  /** Delivered characteristic velocity, for the mass balance. */
  readonly characteristicVelocity?: QuantityInput<'speed'>;
  /** Relative standard deviation of the mass balance. Default 0.03. */
  readonly massBalanceUncertainty?: number;
  /** A predicted firing, whose shape the channel is assumed to have. */
  readonly prediction?: Firing;
}

/**
 * Reconstructs a clipped chamber pressure. With thrust, it uses the line between thrust and pressure, fitted where both
 * channels are valid; its slope combines efficiency, thrust coefficient and throat area. Without thrust, the mass
 * balance of the throat, the shape of a prediction, and a parabola through the shoulders bound the peak.
 *
 * The result has a 95 % confidence interval from the covariance of the fit, the scatter of the other channel and the
 * extrapolation. The returned record contains the reconstructed values, with a caution.
 *
 * Source: Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 3 (thrust of a nozzle that flows full is
 * linear in p; quoted from memory, not verified).
 *
 * @throws MeopError `missing-field`, `not-clipped`, `no-recovery`
 * @example ((t) => recoverPressure(firing({ origin: 'measured', time: series(t, 's'), pressure: series(t.map((v) => Math.min(3, 0.1 + 5 * Math.max(0, Math.sin(v)))), 'MPa'), thrust: series(t.map((v) => 300 * Math.max(0, Math.sin(v))), 'N') }), { ambientPressure: '0.1 MPa' }).peak.value.in('MPa').toFixed(1))(Array.from({ length: 600 }, (_, i) => i / 100 - 1)) // => '5.1'
 */
export function recoverPressure(record: Firing, options: RecoverOptions = {}): Recovery<'absolute pressure'> {
  return recover(record, 'pressure', 'absolute pressure', options);
}

/**
 * Reconstructs a clipped thrust from chamber pressure; see {@link recoverPressure}.
 *
 * @throws MeopError `missing-field`, `not-clipped`, `no-recovery`
 * @example ((t) => recoverThrust(firing({ origin: 'measured', time: series(t, 's'), pressure: series(t.map((v) => 0.1 + 5 * Math.max(0, Math.sin(v))), 'MPa'), thrust: series(t.map((v) => Math.min(200, 300 * Math.max(0, Math.sin(v)))), 'N') }), { ambientPressure: '0.1 MPa' }).peak.value.in('N').toFixed(0))(Array.from({ length: 600 }, (_, i) => i / 100 - 1)) // => '300'
 */
export function recoverThrust(record: Firing, options: RecoverOptions = {}): Recovery<'force'> {
  return recover(record, 'thrust', 'force', options);
}

function recover<K extends 'absolute pressure' | 'force'>(
  given: Firing,
  channel: ChannelOfKind[K],
  kind: K,
  options: RecoverOptions,
): Recovery<K> {
  const caller = channel === 'pressure' ? 'recoverPressure' : 'recoverThrust';
  const record = withAmbient(given, options, caller);
  const trace = record.traces[channel];
  if (trace === undefined)
    throw new MeopError('missing-field', `${caller}: missing required channel ${channel}`, channel);
  const found = detectClipping(record, options.ranges ? { ranges: options.ranges } : {});
  const clipping = options.clipping ?? found[channel];
  if (clipping === undefined || clipping.spans.length === 0)
    throw new MeopError(
      'not-clipped',
      `${caller}: ${channel} must be clipped, but no clipping was found. If it is clipped, specify { clipping } or { ranges: { ${channel}: … } }.`,
      channel,
    );
  const facts = readFacts(record, options, caller);
  const other = channel === 'pressure' ? found.thrust : found.pressure;
  const through = throughThrustLine(record, channel, clipping, other, facts);
  const bands = [
    ...(through ? [through] : []),
    ...boundsWithoutSecondChannel(trace, channel, clipping, facts),
  ];
  const best = bands[0];
  if (best === undefined)
    throw new MeopError(
      'no-recovery',
      `${caller}: not enough data to reconstruct the ${channel}. Give the other channel unclipped${channel === 'pressure' ? ', or propellantMass, characteristicVelocity and throatDiameter' : ''}, or a prediction.`,
      channel,
    );
  const { time, values } = trace;
  const filled = values.slice();
  const inside: number[] = [];
  for (const { first, last } of clipping.spans)
    for (let i = first; i <= last; i++) {
      filled[i] = Math.max(values[i], best.value[i]);
      inside.push(i);
    }
  const index = Int32Array.from(inside);
  const pick = (of: (i: number) => number): Float64Array => Float64Array.from(index, of);
  const seriesOf = (si: Float64Array) => fromSiArray<K>(kind, si);
  const bounds = bands.map(({ method, peak, note }) => ({
    method,
    peak: estimate(kind, peak.value, peak.low, peak.high),
    note,
  }));
  const cautions = [...best.cautions, ...disagreement(bands)];
  const peak: Estimate<K> = bounds[0].peak;
  const line = `${channel} reconstructed by ${best.method} where it was clipped (${clipping.evidence}): peak ${peak.value}, 95 % confidence interval ${peak.low} to ${peak.high}`;
  const recovery: Recovery<K> = {
    channel,
    record: step(
      record,
      {
        channels: { [channel]: analysedTrace(time, filled) },
        cautions: [
          `${channel}: the top was clipped. Its values there are reconstructed, not measured.`,
          ...cautions,
        ],
      },
      line,
    ),
    clipping,
    peak,
    band: {
      time: fromSiArray(
        'time',
        pick((i) => time[i]),
        's',
      ),
      value: seriesOf(pick((i) => filled[i])),
      low: seriesOf(pick((i) => Math.max(values[i], best.value[i] - best.deviation[i]))),
      high: seriesOf(pick((i) => Math.max(values[i], best.value[i] + best.deviation[i]))),
    },
    fit: best.fit,
    bounds,
    cautions,
    toString: () => recoveryText(recovery),
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: () => recoveryText(recovery) },
  };
  return recovery;
}

/** The record with the ambient pressure that all further steps use. */
function withAmbient(given: Firing, options: RecoverOptions, caller: string): AnalysedRecord {
  const record = analysedRecord(given);
  const ambient = ambientSi(record, options.ambientPressure, caller);
  const ambientPressure = fromSiValue<'absolute pressure'>(ambient, 'absolute pressure', unitOf('kPa'));
  return analysedRecord(firingOf<Firing>({ ...record, ambientPressure }), Object.values(record.traces));
}

/** Two methods whose intervals do not overlap: an assumption of one of them is wrong. */
function disagreement(bands: readonly RecoveredBand[]): readonly string[] {
  const [best, ...others] = bands;
  return others.flatMap(({ method, peak }) =>
    method !== 'parabola through the shoulders' && (peak.high < best.peak.low || peak.low > best.peak.high)
      ? [
          `The peak by ${method} and the peak by ${best.method} are inconsistent. Check mass, throat, c* and calibration.`,
        ]
      : [],
  );
}

function readFacts(record: Firing, options: RecoverOptions, caller: string): RecoverFacts {
  const { throatDiameter, expansionRatio, propellantMass, characteristicVelocity, prediction } = options;
  const throat =
    throatDiameter === undefined
      ? record.initialThroatDiameter?.si
      : readInput('length', 'throatDiameter', throatDiameter, caller).si;
  if (throat !== undefined && !(throat > 0))
    throw new MeopError(
      'out-of-domain',
      `${caller}: throatDiameter must be greater than 0, got ${String(throatDiameter)}`,
      'throatDiameter',
    );
  if (expansionRatio !== undefined && !(expansionRatio >= 1))
    throw new MeopError(
      'out-of-domain',
      `${caller}: expansionRatio must be 1 or more, got ${expansionRatio}`,
      'expansionRatio',
    );
  return {
    ambient: ambientSi(record, undefined, caller),
    throatArea: throat === undefined ? undefined : (Math.PI / 4) * throat * throat,
    expansionRatio,
    throatGrowth: options.throatGrowth ?? 'little',
    propellantMass:
      propellantMass === undefined
        ? record.loadedMass?.si
        : readInput('mass', 'propellantMass', propellantMass, caller).si,
    characteristicVelocity:
      characteristicVelocity === undefined
        ? undefined
        : readInput('speed', 'characteristicVelocity', characteristicVelocity, caller).si,
    massBalanceUncertainty: options.massBalanceUncertainty ?? 0.03,
    prediction,
  };
}
