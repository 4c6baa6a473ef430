import { MeopError, optional, printable, procedure } from '../../units';
import { ambientSi } from '../ambient';
import { analysedRecord, type CleanedChannel } from '../analysis/analysed-record';
import type { RestingTrace } from '../analysis/analysed-trace';
import { exampleFiring, firingInput } from '../firing';
import { ambientPressure, ranges } from '../motor-inputs';
import { type Clipping, findClipping } from './clipping';
import { isClippedByOtherChannel } from './plateau';
import { findSoftLimit, type SoftLimit } from './soft-limit';

/** Clipping by channel; channels that are not clipped are omitted. */
export interface ClippingReport {
  readonly pressure?: Clipping;
  readonly thrust?: Clipping;
  toString(): string;
}

/**
 * Finds the saturated channels and intervals. Evidence: readings at the limit of a known range, a top at which samples
 * accumulate as in no smooth peak, or (with both channels) a channel that stops following the other.
 *
 * @example detectClipping(firing({ origin: 'measured', time: series([0, 1, 2, 3, 4, 5, 6, 7, 8], 's'), thrust: series([0, 20, 50, 50, 50, 50, 50, 30, 0], 'N') }), { ranges: { thrust: '50 N' } }).thrust.spans[0].from // => 2
 */
export const detectClipping = /* @__PURE__ */ procedure({
  name: 'detectClipping',
  title: 'Saturated channels of a record',
  source: 'engineering practice, no published source',
  subject: firingInput,
  inputs: { ambientPressure: optional(ambientPressure), ranges },
  gives: 'the clipped intervals of each channel, with the evidence',
  example: `detectClipping(${exampleFiring}, { ranges: { thrust: '50 N' } })`,
  run: (given, options): ClippingReport => {
    const record = analysedRecord(given);
    if (record.pressure === undefined && record.thrust === undefined)
      throw new MeopError({
        code: 'missing-field',
        procedure: 'detectClipping',
        path: 'pressure',
        problem: 'the record has neither pressure nor thrust',
      });
    const rest = {
      pressure: record.pressure ? ambientSi(record, options.ambientPressure, 'detectClipping') : 0,
      thrust: 0,
    };
    const resting = (channel: CleanedChannel): RestingTrace | undefined => {
      const trace = record.traces[channel];
      return trace && { trace, rest: rest[channel] };
    };
    const traces = { pressure: resting('pressure'), thrust: resting('thrust') };
    let pressure = traces.pressure && findClipping(traces.pressure, options.ranges?.pressure?.si);
    let thrust = traces.thrust && findClipping(traces.thrust, options.ranges?.thrust?.si);
    if (traces.pressure && traces.thrust) {
      const soft = pressure && thrust ? undefined : findSoftLimit(traces.pressure, traces.thrust);
      if (soft?.channel === 'pressure') pressure = softened(pressure, soft);
      if (soft?.channel === 'thrust') thrust = softened(thrust, soft);
      // A channel that is clipped itself cannot confirm the other.
      if (pressure?.evidence === 'flat top' && !thrust)
        pressure = confirmed(pressure, traces.pressure, traces.thrust);
      if (thrust?.evidence === 'flat top' && !pressure)
        thrust = confirmed(thrust, traces.thrust, traces.pressure);
    }
    const found = { ...(pressure && { pressure }), ...(thrust && { thrust }) };
    return printable(found, () => clippingText(found));
  },
});

/** A flat top with rounded shoulders is a soft limit: the readings on the shoulders are not valid either. */
function softened(flat: Clipping | undefined, { clipping: soft, gradual }: SoftLimit): Clipping {
  if (flat === undefined) return soft;
  if (!soft.certain) return flat;
  return { ...flat, certain: true, spans: gradual ? soft.spans : flat.spans };
}

const confirmed = (clipping: Clipping, ...traces: [RestingTrace, RestingTrace]): Clipping =>
  clipping.certain || !isClippedByOtherChannel(clipping, ...traces)
    ? clipping
    : { ...clipping, certain: true };

function clippingText(found: { readonly pressure?: Clipping; readonly thrust?: Clipping }): string {
  const lines = (['pressure', 'thrust'] as const).flatMap((channel) => {
    const clipping = found[channel];
    if (clipping === undefined) return [];
    const when = clipping.spans.map(({ from, to }) => `${from.toFixed(4)} to ${to.toFixed(4)} s`).join(', ');
    return [
      `${channel} clipped (${clipping.evidence}${clipping.certain ? '' : ', or a true plateau'}): ${when}`,
    ];
  });
  return lines.length === 0 ? 'no channel is clipped' : lines.join('\n');
}
