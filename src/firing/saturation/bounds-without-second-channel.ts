import { analysedRecord } from '../analysis/analysed-record';
import type { AnalysedTrace } from '../analysis/analysed-trace';
import type { Clipping } from './clipping';
import { peakFromMassBalance } from './mass-balance';
import type { RecoveredBand, RecoverFacts } from './recovery';
import { peakFromShape } from './shape-match';
import { peakFromShoulders } from './shoulders';

/**
 * Upper limit of a clipped peak that cannot be reconstructed, as a multiple of the clipping level: channels are seldom
 * clipped below 40 % of the peak (engineering judgement of this library).
 */
export const maxOverrangeFactor = 2.5;

type Peak = { readonly value: number; readonly low: number; readonly high: number };

/** Computes the bounds of a clipped peak that need no other channel, the most reliable first. */
export function boundsWithoutSecondChannel(
  trace: AnalysedTrace,
  channel: 'pressure' | 'thrust',
  clipping: Clipping,
  facts: RecoverFacts,
): readonly RecoveredBand[] {
  const { time, values } = trace;
  const rest = channel === 'pressure' ? facts.ambient : 0;
  const bands: RecoveredBand[] = [];
  const add = (
    method: RecoveredBand['method'],
    peak: Peak,
    note: string,
    cautions: readonly string[],
  ): void => {
    bands.push({ method, peak, note, cautions, ...dome(time, values, clipping, peak) });
  };
  const { propellantMass, characteristicVelocity, throatArea, massBalanceUncertainty, prediction } = facts;
  if (channel === 'pressure' && propellantMass && characteristicVelocity && throatArea) {
    const edges = trace.edges(0.02, rest);
    const peak = peakFromMassBalance(time, values, clipping, {
      ambient: facts.ambient,
      propellantMass,
      characteristicVelocity,
      throatArea,
      uncertainty: massBalanceUncertainty,
      from: edges.start,
      to: edges.end,
    });
    if (peak)
      add(
        'mass balance',
        peak,
        `${(100 * peak.missingShare).toFixed(1)} % of the pressure integral is above the clipping level`,
        [
          'The height of the peak above the clipping level depends on its shape. The interval covers shapes from a plateau to a triangle.',
          ...(peak.missingShare < 2 * massBalanceUncertainty
            ? [
                'The missing part of the pressure integral is within the uncertainty of mass, c* and throat area. The mass balance gives only an upper bound of the peak.',
              ]
            : []),
        ],
      );
  }
  const predicted = prediction && analysedRecord(prediction).traces[channel];
  if (prediction && predicted) {
    const good = new Uint8Array(time.length).fill(1);
    for (const { first, last } of clipping.spans) good.fill(0, Math.max(0, first - 1), last + 2);
    const shape = peakFromShape(
      { trace, good, rest },
      {
        trace: predicted,
        rest: channel === 'pressure' ? (prediction.ambientPressure?.si ?? facts.ambient) : 0,
      },
      clipping.level,
    );
    if (shape) {
      const spread = 2 * shape.scatter * clipping.level + 0.1 * (shape.value - clipping.level);
      add(
        'shape of a prediction',
        {
          value: shape.value,
          low: Math.max(clipping.level, shape.value - spread),
          high: shape.value + spread,
        },
        `the prediction fits the unclipped part within ${(100 * shape.scatter).toFixed(1)} %`,
        [
          'The peak is that of the prediction. A flaw that acts only above the clipping level is not included.',
        ],
      );
    }
  }
  const parabola = shoulders(time, values, clipping);
  if (parabola !== undefined)
    add(
      'parabola through the shoulders',
      {
        value: parabola,
        low: clipping.level,
        // The shoulders give no bound: the interval is that of a peak of which only the clipping level is known.
        high: Math.max(
          clipping.level + 2.5 * (parabola - clipping.level),
          rest + maxOverrangeFactor * (clipping.level - rest),
        ),
      },
      'fitted to the samples adjacent to the clipped interval',
      ['The parabola through the shoulders is an estimate of the peak, not a measurement.'],
    );
  return bands;
}

/** A parabola with the height of the peak over each clipped interval, with its confidence interval, for the record. */
function dome(
  time: Float64Array,
  values: Float64Array,
  clipping: Clipping,
  peak: Peak,
): { readonly value: Float64Array; readonly deviation: Float64Array } {
  const value = values.slice();
  const deviation = new Float64Array(values.length);
  const longest = clipping.spans.reduce((most, { from, to }) => Math.max(most, to - from), 0);
  const above = Math.max(peak.high - peak.value, peak.value - peak.low);
  for (const { from, to, first, last } of clipping.spans) {
    // A shorter interval rises less, in proportion to the square of its length, as for a parabola.
    const part = longest > 0 ? ((to - from) / longest) ** 2 : 1;
    for (let i = first; i <= last; i++) {
      const x = to > from ? (2 * (time[i] - from)) / (to - from) - 1 : 0;
      const height = part * (1 - x * x);
      value[i] = clipping.level + height * (peak.value - clipping.level);
      deviation[i] = height * above;
    }
  }
  return { value, deviation };
}

function shoulders(time: Float64Array, values: Float64Array, clipping: Clipping): number | undefined {
  let best: number | undefined;
  for (const { from, to, first, last } of clipping.spans) {
    const reach = 0.6 * (to - from);
    let a = first;
    while (a > 0 && time[a - 1] >= from - reach) a--;
    let b = last;
    while (b < time.length - 1 && time[b + 1] <= to + reach) b++;
    if (first - a < 3 || b - last < 3) continue;
    const ends = [...range(a, first), ...range(last + 1, b + 1)];
    const found = peakFromShoulders(
      ends.map((i) => time[i]),
      ends.map((i) => values[i]),
    );
    if (found && found.peak > clipping.level) best = Math.max(best ?? 0, found.peak);
  }
  return best;
}

const range = (from: number, to: number): number[] => Array.from({ length: to - from }, (_, i) => from + i);
