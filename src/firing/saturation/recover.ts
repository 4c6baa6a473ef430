import {
  type Arguments,
  choice,
  fromSiArray,
  fromSiValue,
  instance,
  MeopError,
  optional,
  printable,
  procedure,
  ratio,
  speed,
  unitOf,
  type Values,
} from '../../units';
import { ambientSi } from '../ambient';
import { type AnalysedRecord, analysedRecord } from '../analysis/analysed-record';
import { analysedTrace } from '../analysis/analysed-trace';
import { step } from '../cleaning/step';
import { type Firing, firingInput, firingOf } from '../firing';
import { ambientPressure, expansionRatio, propellantMass, ranges, throatDiameter } from '../motor-inputs';
import { boundsWithoutSecondChannel } from './bounds-without-second-channel';
import { isClipping } from './clipping';
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

// Data beyond the record. More data give a narrower interval.
const recoverInputs = {
  clipping: optional(
    instance('clipping of the channel; found in the record unless specified', 'a Clipping', isClipping),
  ),
  ranges,
  ambientPressure: optional(ambientPressure),
  throatDiameter: optional(throatDiameter),
  expansionRatio: optional(expansionRatio),
  throatGrowth: optional(
    choice('growth of the throat area: fitted, about 1 % or less, or none', ['fit', 'little', 'none']),
    'little',
  ),
  propellantMass: optional(propellantMass),
  characteristicVelocity: optional(
    speed('c*', 'delivered characteristic velocity, for the mass balance', { above: 0, example: '900 m/s' }),
  ),
  massBalanceUncertainty: optional(
    ratio('u_m', 'relative standard deviation of the mass balance', { above: 0, example: 0.03 }),
    0.03,
  ),
  prediction: optional(firingInput),
};
/** Options of {@link recoverPressure} and {@link recoverThrust}. */
export type RecoverOptions = Arguments<typeof recoverInputs>;
type RecoverValues = Values<typeof recoverInputs>;

const source =
  'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 3 (thrust of a nozzle that flows full is linear in p; quoted from memory, not verified)';

/**
 * Reconstructs a clipped chamber pressure. With thrust, it uses the line between thrust and pressure, fitted where both
 * channels are valid; its slope combines efficiency, thrust coefficient and throat area. Without thrust, the mass
 * balance of the throat, the shape of a prediction, and a parabola through the shoulders bound the peak.
 *
 * The result has a 95 % confidence interval from the covariance of the fit, the scatter of the other channel and the
 * extrapolation. The returned record contains the reconstructed values, with a caution.
 *
 * @example ((t) => recoverPressure(firing({ origin: 'measured', time: series(t, 's'), pressure: series(t.map((v) => Math.min(3, 0.1 + 5 * Math.max(0, Math.sin(v)))), 'MPa'), thrust: series(t.map((v) => 300 * Math.max(0, Math.sin(v))), 'N') }), { ambientPressure: '0.1 MPa' }).peak.value.in('MPa').toFixed(1))(Array.from({ length: 600 }, (_, i) => i / 100 - 1)) // => '5.1'
 */
export const recoverPressure = /* @__PURE__ */ procedure({
  name: 'recoverPressure',
  title: 'Reconstruction of a clipped chamber pressure',
  source,
  subject: firingInput,
  inputs: recoverInputs,
  gives: 'the record with the reconstructed pressure, its peak and its 95 % confidence interval',
  example:
    "((t) => recoverPressure(firing({ origin: 'measured', time: series(t, 's'), pressure: series(t.map((v) => Math.min(3, 0.1 + 5 * Math.max(0, Math.sin(v)))), 'MPa'), thrust: series(t.map((v) => 300 * Math.max(0, Math.sin(v))), 'N') }), { ambientPressure: '0.1 MPa' }))(Array.from({ length: 600 }, (_, i) => i / 100 - 1))",
  run: (record, options): Recovery<'absolute pressure'> =>
    recover(record, 'pressure', 'absolute pressure', options),
});

/**
 * Reconstructs a clipped thrust from chamber pressure; see {@link recoverPressure}.
 *
 * @example ((t) => recoverThrust(firing({ origin: 'measured', time: series(t, 's'), pressure: series(t.map((v) => 0.1 + 5 * Math.max(0, Math.sin(v))), 'MPa'), thrust: series(t.map((v) => Math.min(200, 300 * Math.max(0, Math.sin(v)))), 'N') }), { ambientPressure: '0.1 MPa' }).peak.value.in('N').toFixed(0))(Array.from({ length: 600 }, (_, i) => i / 100 - 1)) // => '300'
 */
export const recoverThrust = /* @__PURE__ */ procedure({
  name: 'recoverThrust',
  title: 'Reconstruction of a clipped thrust',
  source,
  subject: firingInput,
  inputs: recoverInputs,
  gives: 'the record with the reconstructed thrust, its peak and its 95 % confidence interval',
  example:
    "((t) => recoverThrust(firing({ origin: 'measured', time: series(t, 's'), pressure: series(t.map((v) => 0.1 + 5 * Math.max(0, Math.sin(v))), 'MPa'), thrust: series(t.map((v) => Math.min(200, 300 * Math.max(0, Math.sin(v)))), 'N') }), { ambientPressure: '0.1 MPa' }))(Array.from({ length: 600 }, (_, i) => i / 100 - 1))",
  run: (record, options): Recovery<'force'> => recover(record, 'thrust', 'force', options),
});

function recover<K extends 'absolute pressure' | 'force'>(
  given: Firing,
  channel: ChannelOfKind[K],
  kind: K,
  options: RecoverValues,
): Recovery<K> {
  const caller = channel === 'pressure' ? 'recoverPressure' : 'recoverThrust';
  const record = withAmbient(given, options, caller);
  const trace = record.traces[channel];
  if (trace === undefined)
    throw new MeopError({
      code: 'missing-field',
      procedure: caller,
      path: channel,
      expected: 'the clipped channel',
    });
  const found = detectClipping(record, { ranges: options.ranges });
  const clipping = options.clipping ?? found[channel];
  if (clipping === undefined || clipping.spans.length === 0)
    throw new MeopError({
      code: 'not-clipped',
      procedure: caller,
      path: channel,
      problem: 'must be clipped, but no clipping was found',
      remedy: `If it is clipped, specify { clipping } or { ranges: { ${channel}: … } }`,
    });
  const facts = readFacts(record, options, caller);
  const other = channel === 'pressure' ? found.thrust : found.pressure;
  const through = throughThrustLine(record, channel, clipping, other, facts);
  const bands = [
    ...(through ? [through] : []),
    ...boundsWithoutSecondChannel(trace, channel, clipping, facts),
  ];
  const best = bands[0];
  if (best === undefined)
    throw new MeopError({
      code: 'no-recovery',
      procedure: caller,
      path: channel,
      problem: 'not enough data to reconstruct the channel',
      remedy: `Give the other channel unclipped${channel === 'pressure' ? ', or propellantMass, characteristicVelocity and throatDiameter' : ''}, or a prediction`,
    });
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
  const recovery = {
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
  };
  return printable(recovery, () => recoveryText(recovery));
}

/** The record with the ambient pressure that all further steps use. */
function withAmbient(given: Firing, options: RecoverValues, caller: string): AnalysedRecord {
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

function readFacts(record: Firing, options: RecoverValues, caller: string): RecoverFacts {
  const throat = (options.throatDiameter ?? record.initialThroatDiameter)?.si;
  return {
    ambient: ambientSi(record, undefined, caller),
    throatArea: throat === undefined ? undefined : (Math.PI / 4) * throat * throat,
    expansionRatio: options.expansionRatio,
    throatGrowth: options.throatGrowth,
    propellantMass: (options.propellantMass ?? record.loadedMass)?.si,
    characteristicVelocity: options.characteristicVelocity?.si,
    massBalanceUncertainty: options.massBalanceUncertainty,
    prediction: options.prediction,
  };
}
