import { amplitudeSpectrum } from '../../numerics';
import { fromSiValue, optional, procedure, type Quantity, unitOf } from '../../units';
import { analysedRecord } from '../analysis/analysed-record';
import { firingInput } from '../firing';
import { channel as channelInput } from '../motor-inputs';
import { lowPassed } from './low-pass';
import { evenTimes, interpolated } from './resample';
import { baselineValue, traceOf } from './step';

/** A resonance of a channel. */
export interface Resonance {
  readonly frequency: Quantity<'frequency'>;
  /** Amplitude of the oscillation, SI of the channel. */
  readonly amplitude: number;
  /** Amplitude relative to the spectrum around it. */
  readonly prominence: number;
  /** Low-pass cutoff that removes it: one third of its frequency. */
  readonly cutoff: Quantity<'frequency'>;
  readonly note: string;
}

const maxSamples = 1 << 14;

/**
 * Searches the spectrum of the burn for a sharp line, such as a stand resonating on its load cell produces. The slow
 * variation of the burn is removed first. Undefined where there is none.
 *
 * @example ((t) => findResonance(firing({ origin: 'measured', time: series(t, 's'), thrust: series(t.map((v) => 100 + 10 * Math.sin(100 * Math.PI * v)), 'N') })).frequency.in('Hz').toFixed(0))(Array.from({ length: 1000 }, (_, i) => i / 500)) // => '50'
 */
export const findResonance = /* @__PURE__ */ procedure({
  name: 'findResonance',
  title: 'Resonance of the stand in a record',
  source:
    'amplitude spectrum; thrust features faster than about one third of the natural frequency of the stand are its resonance (engineering practice, no published source)',
  subject: firingInput,
  inputs: { channel: optional(channelInput, 'thrust') },
  gives: 'frequency and amplitude of a sharp line of the spectrum, or undefined where there is none',
  example:
    "((t) => findResonance(firing({ origin: 'measured', time: series(t, 's'), thrust: series(t.map((v) => 100 + 10 * Math.sin(100 * Math.PI * v)), 'N') })))(Array.from({ length: 1000 }, (_, i) => i / 500))",
  run: (given, { channel }): Resonance | undefined => {
    const record = analysedRecord(given);
    const trace = traceOf(record, channel, 'findResonance');
    const edges = trace.edges(0.1, baselineValue(record, channel, 'findResonance'));
    const span = edges.end - edges.start;
    const samples = edges.last - edges.first + 1;
    if (samples < 64) return undefined;
    const period = span / Math.min(samples - 1, maxSamples);
    const at = evenTimes(Float64Array.of(edges.start, edges.end), period);
    const values = interpolated(trace.time, trace.values, at);
    const rate = 1 / period;
    // Up to about ten periods per burn a variation is that of the burn, not a resonance.
    const slow = Math.min(10 / span, 0.2 * rate);
    const course = lowPassed(at, values, { cutoff: slow, order: 4, cutoffOf: 'result' });
    const rest = values.map((value, i) => value - course[i]);
    const { frequency, amplitude } = amplitudeSpectrum(rest, { sampleRate: rate, window: 'hann' });
    let best = -1;
    for (let i = 0; i < amplitude.length; i++)
      if (frequency[i] > 1.5 * slow && (best < 0 || amplitude[i] > amplitude[best])) best = i;
    if (best < 0) return undefined;
    // Wider than the line itself.
    const around = Float64Array.from(amplitude.subarray(Math.max(0, best - 60), best + 61)).sort();
    const floor = around[around.length >> 1];
    const prominence = floor > 0 ? amplitude[best] / floor : Number.MAX_VALUE;
    if (prominence < 8 || amplitude[best] < 0.002 * edges.peak) return undefined;
    const hertz = frequency[best];
    const quantityOf = (si: number): Quantity<'frequency'> => fromSiValue(si, 'frequency', unitOf('Hz'));
    return {
      frequency: quantityOf(hertz),
      amplitude: amplitude[best],
      prominence,
      cutoff: quantityOf(hertz / 3),
      note: `${channel}: resonance at ${hertz.toFixed(1)} Hz, ${((100 * amplitude[best]) / edges.peak).toFixed(1)} % of the peak. A peak value read from this trace is high by about that much.`,
    };
  },
});
