import { threadGeometry } from '../../structures';
import type { ClosureSpace } from './closure-checks';
import type { Closure } from './closure-inputs';
import type { Partly } from './document-types';
import { both, type Findings, mm, si } from './fit-check';
import type { Path } from './problems';

type AxialBolts = Partly<NonNullable<Closure['axialBolts']>>;

/** Checks that bolts along the axis are within the metal of the end of the case, and that their preload is given once. */
export function checkAxialBolts(
  bolts: AxialBolts,
  at: Path,
  found: Findings,
  { outside, bore }: ClosureSpace,
  /** Thickness of the shoulder of the closure, where it has one. */
  shoulder: number | undefined,
): void {
  const { need, note, isGiven } = found;
  const major = bolts.thread === undefined ? undefined : threadGeometry(bolts.thread).majorDiameter.si;
  const circle = si(bolts.boltCircle);
  const flange = si(bolts.flange?.outsideDiameter);
  const edge = isGiven([...at, 'flange']) ? flange : outside;
  const within = 'The tapped holes are in the end of the case or its flange';
  need(
    both(
      circle,
      both(bore, major, (b, d) => b + d),
      (c, least) => c > least,
    ),
    [...at, 'boltCircle'],
    `more than the bore of the case and one bolt diameter (${mm(both(bore, major, (b, d) => b + d))})`,
    within,
  );
  need(
    both(
      circle,
      both(edge, major, (o, d) => o - d),
      (c, most) => c < most,
    ),
    [...at, 'boltCircle'],
    `less than the outside diameter of the end less one bolt diameter (${mm(both(edge, major, (o, d) => o - d))})`,
    within,
  );
  need(
    both(flange, outside, (f, o) => f > o),
    [...at, 'flange', 'outsideDiameter'],
    `more than the outside diameter of the case (${mm(outside)})`,
    'Omit the flange if the bolts are in the end face of the case',
  );
  need(
    both(si(bolts.engagement), si(bolts.flange?.thickness), (e, t) => e <= t),
    [...at, 'engagement'],
    `at most the thickness of the flange (${mm(si(bolts.flange?.thickness))})`,
  );
  need(
    both(si(bolts.clampedThickness), shoulder, (h, t) => h >= t),
    [...at, 'clampedThickness'],
    `at least the thickness of the shoulder of the closure (${mm(shoulder)})`,
    'The bolts clamp the shoulder, with washers',
  );
  const hole = si(bolts.holeDiameter);
  need(
    both(hole, major, (h, d) => h >= d * 0.999),
    [...at, 'holeDiameter'],
    `at least the diameter of the bolt (${mm(major)})`,
  );
  const face =
    si(bolts.headDiameter) ?? (isGiven([...at, 'headDiameter']) || !major ? undefined : 1.5 * major);
  need(
    both(face, hole, (f, h) => f > h),
    [...at, isGiven([...at, 'headDiameter']) ? 'headDiameter' : 'holeDiameter'],
    `such that the heads (${mm(face)}) are wider than their holes (${mm(hole)})`,
  );
  const { count } = bolts;
  need(
    count === undefined || major === undefined || circle === undefined
      ? undefined
      : count * major < Math.PI * circle,
    [...at, 'count'],
    `smaller: holes of ${mm(major)} leave no material between them`,
    'Use fewer or smaller bolts',
  );
  if (!isGiven([...at, 'preload']) && !isGiven([...at, 'torque']))
    note([...at, 'preload'], {
      code: 'missing-field',
      expected: "preload of each bolt, for example '6 kN', or its tightening torque",
    });
  checkTightening(at, found);
}

/** A bolt has a preload or a torque. */
export function checkTightening(at: Path, { isGiven, note }: Findings): void {
  if (isGiven([...at, 'preload']) && isGiven([...at, 'torque']))
    note([...at, 'torque'], {
      code: 'contradiction',
      problem: 'torque and preload are mutually exclusive',
      remedy: 'Give one of them',
    });
}
