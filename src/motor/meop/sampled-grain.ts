import { columnRegression, type Regression, regress } from '../../ballistics';
import { q } from '../../units';
import type { Motor } from '../document';
import { grainOf } from '../document/segment-grain';
import { type FlawSet, segmentRegressions } from '../motor-grain';
import type { RegressionCache } from '../regression-cache';

/** A segment of the nominal motor with its flaws, and the same without them. */
interface NominalSegment {
  readonly whole: Regression;
  readonly sound: Regression;
}

const coarse = { accuracy: 5e-3, steps: 120 } as const;

/**
 * Gives the column of any motor that differs from a nominal one in its dimensions: each kind of segment is regressed
 * anew without flaws; what a flaw adds at a depth is what it adds in the nominal segment.
 */
export function sampledGrain(
  nominal: Motor,
  flaws: FlawSet,
  cache: RegressionCache,
): (varied: Motor) => Regression {
  const kinds: readonly (readonly NominalSegment[])[] = segmentRegressions(nominal, flaws, cache).map(
    (copies, i) => {
      const sound = regress(grainOf(nominal.grain.segments[i]), coarse);
      return copies.map((whole) => ({ whole, sound }));
    },
  );
  return (varied) => {
    const spacing = varied.grain.spacing?.value.si ?? 0;
    let position = 0;
    const segments = varied.grain.segments.flatMap((segment, i) => {
      const grain = grainOf(segment);
      const sound = regress(grain, coarse);
      return kinds[i].map((known) => {
        const regression = known.whole.flawLighting.length === 0 ? sound : withFlawsOf(sound, known);
        const placed = { regression, position: q(position, 'm') };
        position += grain.length.si + spacing;
        return placed;
      });
    });
    return segments.length === 1 ? segments[0].regression : columnRegression({ segments });
  };
}

/** A sound segment with what the flaws of a nominal segment add to it, depth by depth. */
function withFlawsOf(sound: Regression, known: NominalSegment): Regression {
  const { si } = sound;
  const whole = known.whole.si;
  const plain = known.sound.si;
  const areaAt = (w: number): number => Math.max(0, si.areaAt(w) + whole.areaAt(w) - plain.areaAt(w));
  const volumeAt = (w: number): number => Math.max(0, si.volumeAt(w) + whole.volumeAt(w) - plain.volumeAt(w));
  const [nominalLayout] = known.whole.layout();
  return {
    ...sound,
    flawLighting: known.whole.flawLighting,
    si: { ...si, areaAt, volumeAt, area: si.depth.map(areaAt), volume: si.depth.map(volumeAt) },
    layout: () => sound.layout().map((one) => ({ ...one, flaw: nominalLayout?.flaw })),
  };
}
