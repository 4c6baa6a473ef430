import { amplitudeSpectrum } from '../../numerics';
import { fromSiValue, type Quantity, unitOf } from '../../units';
import { analysedRecord, type CleanedChannel } from '../analysis/analysed-record';
import type { Firing } from '../firing';
import { lowPassed } from './low-pass';
import { evenTimes, interpolated } from './resample';
import { baselineValue, traceOf } from './step';

/** A frequency at which a channel rings, and how strongly. */
export interface Resonance {
  readonly frequency: Quantity<'frequency'>;
  /** Amplitude of the ringing, SI of the channel. */
  readonly amplitude: number;
  /** How far it stands above the spectrum around it. */
  readonly prominence: number;
  /** A low-pass cutoff that takes it out: a third of it. */
  readonly cutoff: Quantity<'frequency'>;
  readonly note: string;
}

const mostSamples = 1 << 14;

/**
 * Looks in the spectrum of the burn for a sharp line that stands out, as a stand ringing on its load cell makes. The
 * slow course of the burn is taken off first. Undefined where nothing stands out.
 *
 * Thrust features faster than about a third of the stand's own frequency are ringing (engineering practice, no published source).
 * @example ((t) => findResonance(firing({ origin: 'measured', time: series(t, 's'), thrust: series(t.map((v) => 100 + 10 * Math.sin(100 * Math.PI * v)), 'N') })).frequency.in('Hz').toFixed(0))(Array.from({ length: 1000 }, (_, i) => i / 500)) // => '50'
 */
export function findResonance(
  firing: Firing,
  options: { readonly channel?: CleanedChannel } = {},
): Resonance | undefined {
  const { channel = 'thrust' } = options;
  const record = analysedRecord(firing);
  const trace = traceOf(record, channel, 'findResonance');
  const edges = trace.edges(0.1, baselineValue(record, channel, 'findResonance'));
  const span = edges.end - edges.start;
  const samples = edges.last - edges.first + 1;
  if (samples < 64) return undefined;
  const period = span / Math.min(samples - 1, mostSamples);
  const at = evenTimes(Float64Array.of(edges.start, edges.end), period);
  const values = interpolated(trace.time, trace.values, at);
  const rate = 1 / period;
  // Slower than some ten swings in the burn is its course, not ringing.
  const slow = Math.min(10 / span, 0.2 * rate);
  const course = lowPassed(at, values, { cutoff: slow, order: 4, cutoffOf: 'result' });
  const rest = values.map((value, i) => value - course[i]);
  const { frequency, amplitude } = amplitudeSpectrum(rest, { sampleRate: rate, window: 'hann' });
  let best = -1;
  for (let i = 0; i < amplitude.length; i++)
    if (frequency[i] > 1.5 * slow && (best < 0 || amplitude[i] > amplitude[best])) best = i;
  if (best < 0) return undefined;
  // Wide enough to see past the line's own width.
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
    note: `${channel} rings at ${hertz.toFixed(1)} Hz, ${((100 * amplitude[best]) / edges.peak).toFixed(1)} % of the peak: a peak read off it is high by about as much`,
  };
}
