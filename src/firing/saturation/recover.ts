import { fromSiArray, fromSiValue, MeopError, type QuantityInput, readInput, unitOf } from '../../units';
import { ambientOf } from '../ambient';
import { type AnalysedRecord, analysedRecord } from '../analysis/analysed-record';
import { analysedTrace } from '../analysis/analysed-trace';
import { step } from '../cleaning/step';
import { type Firing, firing } from '../firing';
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

/** What is known beyond the record. The more of it, the narrower the band. */
export interface RecoverOptions {
  /** Where the channel is clipped. Default: as {@link detectClipping} finds. */
  readonly clipping?: Clipping;
  /** Largest value the channels can tell. */
  readonly ranges?: {
    readonly pressure?: QuantityInput<'absolute pressure'>;
    readonly thrust?: QuantityInput<'force'>;
  };
  /** Pressure around the motor. Default: that of the record; one of the two is needed. */
  readonly ambientPressure?: QuantityInput<'absolute pressure'>;
  /** Default: that of the record. */
  readonly throatDiameter?: QuantityInput<'length'>;
  /** Exit over throat area. */
  readonly expansionRatio?: number;
  /** Growth of the throat area: `'fit'` it from the record, allow a `'little'` (default; a per cent or so), or `'none'`. */
  readonly throatGrowth?: 'fit' | 'little' | 'none';
  /** Default: the mass loaded. */
  readonly propellantMass?: QuantityInput<'mass'>;
  /** Delivered characteristic velocity, for the mass balance. */
  readonly characteristicVelocity?: QuantityInput<'speed'>;
  /** Standard deviation of the mass balance as a share. Default 0.03. */
  readonly massBalanceUncertainty?: number;
  /** A predicted firing whose shape the channel should have. */
  readonly prediction?: Firing;
}

/**
 * Recovers a clipped chamber pressure. With thrust: through the line between thrust and pressure, fitted where both
 * channels are good (its slope is efficiency, thrust coefficient and throat area in one). Without: the mass that must
 * have flowed through the throat, the shape of a prediction, and a parabola through the shoulders bound the peak.
 *
 * The result is a band, not a line: 95 % intervals from the fit's covariance, the scatter of the other channel and the
 * distance drawn out. The record comes back with the clipped stretches filled in and labelled.
 *
 * Source: Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 3 (from memory) (thrust of a nozzle that flows full is linear in p).
 *
 * @throws MeopError `missing-field`, `not-clipped`, `no-recovery`
 * @example ((t) => recoverPressure(firing({ origin: 'measured', time: series(t, 's'), pressure: series(t.map((v) => Math.min(3, 0.1 + 5 * Math.max(0, Math.sin(v)))), 'MPa'), thrust: series(t.map((v) => 300 * Math.max(0, Math.sin(v))), 'N') }), { ambientPressure: '0.1 MPa' }).peak.value.in('MPa').toFixed(1))(Array.from({ length: 600 }, (_, i) => i / 100 - 1)) // => '5.1'
 */
export function recoverPressure(record: Firing, options: RecoverOptions = {}): Recovery<'absolute pressure'> {
  return recover(record, 'pressure', 'absolute pressure', options);
}

/**
 * Recovers a clipped thrust from chamber pressure; see {@link recoverPressure}.
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
    throw new MeopError('missing-field', `${caller}: the record has no ${channel}`, channel);
  const found = detectClipping(record, options.ranges ? { ranges: options.ranges } : {});
  const clipping = options.clipping ?? found[channel];
  if (clipping === undefined || clipping.spans.length === 0)
    throw new MeopError(
      'not-clipped',
      `${caller}: the ${channel} does not look clipped; if it is, say where: { clipping } or { ranges: { ${channel}: … } }`,
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
      `${caller}: nothing to recover the ${channel} from: it needs the other channel unclipped${channel === 'pressure' ? ', or propellantMass, characteristicVelocity and throatDiameter' : ''}, or a prediction`,
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
  const line = `${channel} recovered by ${best.method} where it was clipped (${clipping.evidence}): peak ${peak.value}, 95 % between ${peak.low} and ${peak.high}`;
  const recovery: Recovery<K> = {
    channel,
    record: step(
      record,
      {
        channels: { [channel]: analysedTrace(time, filled) },
        cautions: [`${channel}: clipped and recovered, not measured, at its top`, ...cautions],
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

/** The record with the ambient pressure that every step after rests on. */
function withAmbient(given: Firing, options: RecoverOptions, caller: string): AnalysedRecord {
  const record = analysedRecord(given);
  const ambient = ambientOf(record, options.ambientPressure, caller);
  const ambientPressure = fromSiValue<'absolute pressure'>(ambient, 'absolute pressure', unitOf('kPa'));
  return analysedRecord(firing({ ...record, ambientPressure }), Object.values(record.traces));
}

/** Two ways that exclude each other: one of their assumptions does not hold. */
function disagreement(bands: readonly RecoveredBand[]): readonly string[] {
  const [best, ...others] = bands;
  return others.flatMap(({ method, peak }) =>
    method !== 'parabola through the shoulders' && (peak.high < best.peak.low || peak.low > best.peak.high)
      ? [
          `the peak by ${method} and the peak by ${best.method} exclude each other: check mass, throat, c* and calibration`,
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
      `${caller}: throatDiameter: ${String(throatDiameter)} given; above 0 is expected`,
      'throatDiameter',
    );
  if (expansionRatio !== undefined && !(expansionRatio >= 1))
    throw new MeopError(
      'out-of-domain',
      `${caller}: expansionRatio: ${expansionRatio} given; 1 or more is expected`,
      'expansionRatio',
    );
  return {
    ambient: ambientOf(record, undefined, caller),
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
