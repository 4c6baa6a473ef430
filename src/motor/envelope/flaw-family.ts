import { crack, debond, type Flaw, type Regression, regress, voidBubble, withFlaws } from '../../ballistics';
import { q } from '../../units';
import type { Motor } from '../document';
import { grainOf } from '../document/segment-grain';
import { flawAccuracy } from '../motor-grain';

/** Kinds of flaws in an envelope. */
export type FlawKind = 'crack' | 'debond' | 'void';

/** A flaw of given size. */
export interface FlawSize {
  /** Maximum area added at any depth [m²]. */
  readonly addedArea: number;
  /** Description of the flaw. */
  readonly words: string;
  /** Regression of a segment with the flaw, and the number of segments that have it. */
  readonly regression: Regression;
  readonly segments: number;
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
  const largest = ({ si }: Regression): number =>
    depth.reduce((most, w, k) => Math.max(most, si.areaAt(w) - baseArea[k]), 0);
  const radius = sound.outerDiameter.si / 2;
  const length = sound.length.si;
  const bore = 'boreDiameter' in segment ? segment.boreDiameter.value.si / 2 : 0;
  const web = radius - bore;
  const count = segment.count ?? 1;
  const flawedBy = (...flaws: Flaw[]): Regression =>
    regress(withFlaws(sound, { flaws }), { accuracy: flawAccuracy.variation });
  const size = (regression: Regression, words: string, segments = 1): FlawSize => ({
    addedArea: segments * largest(regression),
    words,
    regression,
    segments,
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
  const four = flawedBy(radial(0, 1), radial(90, 1), radial(180, 1), radial(270, 1));
  const ring = (share: number): Regression =>
    flawedBy(debond({ from: mm(length * (1 - share)), to: mm(length) }));
  const whole = ring(1);
  const more = Array.from({ length: Math.max(0, count - 1) }, (_, i) => i + 2);
  const bubble = (share: number): Regression =>
    flawedBy(
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
          size(flawedBy(radial(0, share)), `a crack of ${text(share * length)} length`),
        ),
        size(flawedBy(radial(0, 1), radial(180, 1)), 'two cracks along a segment'),
        size(four, 'four cracks along a segment'),
        ...more.map((n) => size(four, `four cracks along each of ${n} segments`, n)),
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
        ...more.map((n) => size(whole, `${n} segments fully debonded`, n)),
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
