import { type Grain, withFlaws } from '../../ballistics';
import { flawDirection, longitudinalSection } from '../../ballistics/inputs';
import type { Motor } from '../document';
import { flawOf } from '../document/flaw-inputs';
import { grainOf } from '../document/segment-grain';
import type { MotorLayout, SegmentPlace } from '../layout';
import { turned, type View, xOf, yOf } from './section-view';

/** The grain column, cut through the first flaw; documented and assumed flaws are marked. */
export function grainColumn(view: View, motor: Motor, { segments }: MotorLayout): string {
  const grains = segments.map((place) => flawedGrain(motor, place));
  const towards = grains.map((grain) => grain && flawDirection(grain)).find((one) => one !== undefined) ?? 0;
  return segments.map((place, i) => segmentSection(view, motor, place, grains[i], towards)).join('\n');
}

/** The segment with its flaws; undefined where it has none. */
function flawedGrain({ grain }: Motor, { index, copy }: SegmentPlace): Grain | undefined {
  const { flaws = [] } = grain.segments[index];
  const { assumedFlaw } = grain;
  const all = copy === 1 ? [...flaws, ...(assumedFlaw?.segment === index + 1 ? [assumedFlaw.flaw] : [])] : [];
  return all.length === 0 ? undefined : withFlaws(grainOf(grain.segments[index]), { flaws: all.map(flawOf) });
}

function segmentSection(
  view: View,
  motor: Motor,
  { index, span, outerDiameter, bore }: SegmentPlace,
  flawed: Grain | undefined,
  towards: number,
): string {
  const { from, to } = span;
  const outer = outerDiameter / 2;
  if (flawed === undefined && bore !== undefined)
    return turned(
      view,
      [
        [from, outer],
        [to, outer],
        [to, bore.aft / 2],
        [from, bore.head / 2],
      ],
      'grain',
    );
  const { port, flaws } = longitudinalSection(flawed ?? grainOf(motor.grain.segments[index]), {
    left: xOf(view, from),
    top: yOf(view, outer),
    scale: view.scale,
    towards,
  });
  const blank = turned(
    view,
    [
      [from, outer],
      [to, outer],
      [to, 0],
      [from, 0],
    ],
    'grain',
  );
  return [blank, port, flaws].join('\n');
}
