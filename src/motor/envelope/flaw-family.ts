import {
  crack,
  debond,
  type Flaw,
  type Grain,
  type Regression,
  regress,
  voidBubble,
  withFlaws,
} from '../../ballistics';
import { q } from '../../units';
import type { Motor } from '../document';
import { grainOf } from '../document/segment-grain';
import { flawAccuracy } from '../motor-grain';

/** Kinds of flaws in an envelope. */
export type FlawKind = 'crack' | 'debond' | 'void';

/** A flaw of given size, as the areas by depth that it adds to the flaw-free grain. */
export interface FlawSize {
  /** Maximum area added at any depth [m²]. */
  readonly addedArea: number;
  /** Description of the flaw. */
  readonly words: string;
  /** Area added at each depth of the frame [m²]. */
  readonly added: Float64Array;
}

/** Flaws of one kind in increasing size, and the description of sizes between them. */
export interface FlawFamily {
  readonly kind: FlawKind;
  readonly sizes: readonly FlawSize[];
  /** Description of a size by its added area [m²]. */
  readonly describe: (addedArea: number) => string;
}

const mm = (si: number) => q(si * 1000, 'mm');
const text = (si: number): string => `${Number((si * 1000).toPrecision(3))} mm`;

/**
 * Cracks from bore to wall, circumferential debonds from the aft end, and voids at mid-web, in segments like the
 * first of the document. Their size increases until they fill the segment, and then further equal segments.
 */
export function flawFamilies(motor: Motor, depth: Float64Array): readonly FlawFamily[] {
  const [segment] = motor.grain.segments;
  const sound = grainOf(segment);
  const base = regress(sound);
  const baseArea = depth.map((w) => base.si.areaAt(w));
  const radius = sound.outerDiameter.si / 2;
  const length = sound.length.si;
  const bore = 'boreDiameter' in segment ? segment.boreDiameter.value.si / 2 : 0;
  const web = radius - bore;
  const count = segment.count ?? 1;
  const addedBy = (...flaws: Flaw[]): Float64Array =>
    difference(withFlaws(sound, { flaws: flaws }), baseArea, depth);
  const times = (added: Float64Array, factor: number): Float64Array => added.map((a) => a * factor);
  const size = (added: Float64Array, words: string): FlawSize => ({
    addedArea: Math.max(...added),
    words,
    added,
  });

  const radial = (angle: number, share: number): Flaw =>
    crack({
      plane: 'radial',
      angle: q(angle, 'deg'),
      innerRadius: mm(bore),
      outerRadius: mm(radius),
      from: mm((length * (1 - share)) / 2),
      to: mm((length * (1 + share)) / 2),
    });
  const four = addedBy(radial(0, 1), radial(90, 1), radial(180, 1), radial(270, 1));
  const ring = (share: number): Float64Array =>
    addedBy(debond({ from: mm(length * (1 - share)), to: mm(length) }));
  const whole = ring(1);
  const more = Array.from({ length: Math.max(0, count - 1) }, (_, i) => i + 2);
  const bubble = (share: number): Float64Array =>
    addedBy(
      voidBubble({
        diameter: mm(share * web),
        distanceFromAxis: mm((bore + radius) / 2),
        position: mm(length / 2),
      }),
    );
  return [
    {
      kind: 'crack',
      sizes: [
        ...[0.25, 0.5, 1].map((share) =>
          size(addedBy(radial(0, share)), `a crack of ${text(share * length)} length`),
        ),
        size(addedBy(radial(0, 1), radial(180, 1)), 'two cracks along a segment'),
        size(four, 'four cracks along a segment'),
        ...more.map((n) => size(times(four, n), `four cracks along each of ${n} segments`)),
      ],
      describe: (area) => {
        const total = area / (2 * web);
        return total <= length
          ? `a crack from bore to wall, ${text(total)} long`
          : `cracks from bore to wall, ${text(total)} total length (${(total / length).toFixed(1)} segments)`;
      },
    },
    {
      kind: 'debond',
      sizes: [
        ...[0.25, 0.5].map((share) => size(ring(share), `debonded over ${text(share * length)}`)),
        size(whole, 'one segment fully debonded'),
        ...more.map((n) => size(times(whole, n), `${n} segments fully debonded`)),
      ],
      describe: (area) =>
        `debonded around the circumference over a total length of ${text(area / (2 * Math.PI * radius))}`,
    },
    {
      kind: 'void',
      sizes: [0.3, 0.6, 0.9].map((share) => size(bubble(share), `a void of ${text(share * web)}`)),
      describe: (area) => `a void of ${text(Math.sqrt(area / Math.PI))}`,
    },
  ];
}

function difference(grain: Grain, baseArea: Float64Array, depth: Float64Array): Float64Array {
  const flawed: Regression = regress(grain, { accuracy: flawAccuracy.variation });
  return depth.map((w, k) => flawed.si.areaAt(w) - baseArea[k]);
}
