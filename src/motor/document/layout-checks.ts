import { type EndLayout, endLayout } from '../layout/end-layout';
import { tiny } from '../layout/metal';
import { boreOf } from './case-size';
import type { ClosureParts } from './closure-inputs';
import { type Findings, mm, type ReadDocument, si } from './fit-check';
import type { PlacedEnd } from './layout-end';
import { checkGrooves } from './layout-groove-checks';
import { checkRetentionPlace } from './layout-retention-checks';
import type { Insert } from './nozzle-inputs';
import type { Path } from './problems';
import { sizedClosure } from './ring-size';

/** Checks that the layouts of the closures are possible: their features are in metal, do not overlap and leave the chamber. */
export function checkLayouts(document: ReadDocument, found: Findings): void {
  const { parts, isSound } = document;
  const { case: tube, closures, nozzle } = parts;
  const inside = tube && boreOf(tube);
  const [bore, outside] = [si(inside), si(tube?.outsideDiameter)];
  if (
    !isSound(['case']) ||
    inside === undefined ||
    bore === undefined ||
    outside === undefined ||
    bore >= outside
  )
    return;
  const [head, aft] = (['head', 'aft'] as const).map((end): EndLayout | undefined => {
    if (closures?.[end]?.layout === undefined || !isSound(['closures', end])) return undefined;
    if (found.problems.some(({ path }) => path.startsWith(`closures.${end}.retainingRing`))) return undefined;
    const closure = sizedClosure(closures[end] as ClosureParts, inside); // valid: nothing of it was rejected
    if (closure === undefined) return undefined;
    const insert = end === 'aft' && isSound(['nozzle', 'insert']) ? (nozzle?.insert as Insert) : undefined; // valid: likewise
    const { layout: given } = closure;
    const layout = endLayout({ end: 'head', closure, bore, caseLength: 0, insert });
    if (given === undefined || layout === undefined) return undefined;
    const placed: PlacedEnd = {
      at: ['closures', end],
      closure: { ...closure, layout: given },
      layout,
      bore,
      outside,
    };
    checkBody(placed, found);
    checkSpaces(placed, insert, found);
    checkRetentionPlace(placed, found);
    checkGrooves(placed, found);
    return layout;
  });
  checkChamber(document, [head, aft], found);
}

/** Case, closures and chamber are one chain of dimensions. */
function checkChamber(
  { parts: { case: tube, closures } }: ReadDocument,
  [head, aft]: readonly (EndLayout | undefined)[],
  { need }: Findings,
): void {
  const { length, chamberLength } = tube ?? {};
  if (length === undefined || chamberLength === undefined) return;
  const faces = [closures?.head?.layout?.innerFace, closures?.aft?.layout?.innerFace];
  const slack = [length, chamberLength, ...faces].reduce((sum, one) => sum + (one?.plusMinus ?? 0), 0);
  if (head !== undefined && aft !== undefined) {
    const left = length.value.si - head.innerFace - aft.innerFace;
    need(
      Math.abs(left - chamberLength.value.si) <= slack + 0.05e-3,
      ['case', 'chamberLength'],
      `${mm(left)}, what the inner faces of the closures leave of the length of the case`,
    );
    return;
  }
  const [end, one] = head === undefined ? (['aft', aft] as const) : (['head', head] as const);
  const most = length.value.si - chamberLength.value.si;
  need(
    one === undefined || one.innerFace <= most + slack,
    ['closures', end, 'layout', 'innerFace'],
    `at most the length of the case beyond the chamber (${mm(most)})`,
  );
}

/** Pitches between the nominal and the basic minor diameter of a thread. */
const threadHeight = (5 / 8) * Math.sqrt(3);

function checkBody({ at, closure, layout, bore }: PlacedEnd, { need }: Findings): void {
  const own: Path = [...at, 'layout'];
  const { diameter } = layout.closure;
  const { thread } = closure;
  const minor = thread && thread.majorDiameter.value.si - threadHeight * thread.pitch.value.si;
  // A closure on a thread may be wider than the bore: it lies in the part of the case that is bored for the thread.
  if (minor !== undefined)
    need(
      diameter < minor,
      [...own, 'diameter'],
      `less than the minor diameter of the thread (${mm(minor)})`,
      'The closure passes through the thread of the case',
    );
  else need(diameter < bore, [...own, 'diameter'], `less than the bore of the case (${mm(bore)})`);
  const loosest = bore - (0.02 * bore + 0.2e-3);
  need(
    diameter >= loosest,
    [...own, 'diameter'],
    `at least ${mm(loosest)}: a looser closure tilts in the bore of ${mm(bore)}`,
  );
  const { shoulder, outerFace } = layout;
  if (shoulder === undefined) return;
  const within = Math.max(bore, thread?.majorDiameter.value.si ?? 0);
  need(
    shoulder.diameter > within,
    [...own, 'shoulder', 'diameter'],
    `more than the bore of the case (${mm(within)})`,
    'The shoulder rests on the end face of the case',
  );
  need(
    outerFace <= shoulder.span.from + tiny,
    [...own, 'length'],
    `at least the distance to the inner face and the thickness of the shoulder (${mm(closure.layout.innerFace.value.si - shoulder.span.from)})`,
  );
}

function checkSpaces(
  { at, closure, layout }: PlacedEnd,
  insert: Insert | undefined,
  { need }: Findings,
): void {
  const own: Path = [...at, 'layout'];
  const { cavity, recess, opening, pocket } = layout;
  const length = layout.closure.span.to - layout.closure.span.from;
  const depthOf = (one: { readonly span: { from: number; to: number } } | undefined): number =>
    one === undefined ? 0 : one.span.to - one.span.from;
  for (const [field, one] of [
    ['cavity', cavity],
    ['recess', recess],
  ] as const) {
    if (one === undefined) continue;
    need(
      one.diameter < layout.closure.diameter,
      [...own, field, 'diameter'],
      `less than the diameter of the closure (${mm(layout.closure.diameter)})`,
    );
    need(
      opening === undefined || one.diameter > opening.diameter,
      [...own, field, 'diameter'],
      `more than the opening of the closure (${mm(opening?.diameter)})`,
      `Omit the ${field}: the opening contains it`,
    );
    need(
      depthOf(one) < length,
      [...own, field, 'depth'],
      `less than the length of the closure (${mm(length)})`,
    );
  }
  const solid = length - depthOf(cavity) - depthOf(recess);
  need(
    closure.thickness.value.si <= solid + tiny,
    [...at, 'thickness'],
    `at most what cavity and recess leave of the length of the closure (${mm(solid)})`,
  );
  if (pocket === undefined || insert?.seat === undefined) return;
  const seat: Path = ['nozzle', 'insert', 'seat'];
  need(
    depthOf(pocket) < solid,
    [...seat, 'pocketDepth'],
    `less than what cavity and recess leave of the length of the closure (${mm(solid)})`,
  );
  const entry = pocket.insertedFrom === 'inside' ? cavity : recess;
  need(
    entry === undefined || pocket.diameter <= entry.diameter,
    [...seat, 'pocketDiameter'],
    `at most the diameter of the ${pocket.insertedFrom === 'inside' ? 'cavity' : 'recess'} (${mm(entry?.diameter)})`,
    'The insert passes through it',
  );
  need(
    pocket.diameter < layout.closure.diameter,
    [...seat, 'pocketDiameter'],
    `less than the diameter of the closure (${mm(layout.closure.diameter)})`,
  );
}
