import { customThread, threadGeometry } from '../../structures';
import { fromSiValue, type Quantity, unitOf } from '../../units';
import { checkAxialBolts, checkTightening } from './axial-bolt-checks';
import { type FaceSealPart, retentionMethods, type SealPart } from './closure-inputs';
import { checkShape } from './closure-shape-checks';
import type { Partly } from './document-types';
import { both, type Findings, mm, si } from './fit-check';
import type { MotorParts } from './motor-schema';
import type { Path } from './problems';
import { checkRingSizes } from './ring-checks';

/** The space in the case for a closure. */
export interface ClosureSpace {
  readonly outside: number | undefined;
  readonly wall: number | undefined;
  readonly bore: number | undefined;
  /** Length of the case beyond the chamber. */
  readonly beyond: number | undefined;
}

type Closure = Partly<NonNullable<NonNullable<MotorParts['closures']>['head']>>;
type Part<F extends keyof Closure> = NonNullable<Closure[F]>;

const methods = ['joint', 'retainingRing', 'thread', 'axialBolts'] as const;
const ways = Object.entries(retentionMethods)
  .map(([field, meaning]) => `${field} (${meaning})`)
  .join(', ');

/** Checks that a closure, its retention and its seals fit the case. */
export function checkClosure(
  closure: Closure,
  end: 'head' | 'aft',
  found: Findings,
  room: ClosureSpace,
): void {
  const at: Path = ['closures', end];
  const { need } = found;
  checkRetention(at, found);
  need(
    both(si(closure.opening), room.bore, (o, b) => o < b),
    [...at, 'opening'],
    `less than the bore of the case (${mm(room.bore)})`,
  );
  checkShape(closure, at, found, room.bore);
  const { joint, retainingRing, thread, axialBolts, layout, seals = [] } = closure;
  if (joint) checkBolts(joint, [...at, 'joint'], found, room);
  if (joint) checkTightening([...at, 'joint'], found);
  if (retainingRing) checkRing(retainingRing, [...at, 'retainingRing'], found, room);
  if (thread) checkThread(thread, [...at, 'thread'], found, room);
  if (axialBolts)
    checkAxialBolts(axialBolts, [...at, 'axialBolts'], found, room, si(layout?.shoulder?.thickness));
  seals.forEach((seal, i) => {
    const own: Path = [...at, 'seals', i];
    if (seal === undefined) return;
    if (isRadial(seal)) checkRadialSeal(seal, own, found, room);
    else checkFaceSeal(seal, closure, own, at, found, room);
  });
}

/** A closure has exactly one retention. */
function checkRetention(at: Path, { isGiven, note }: Findings): void {
  const [kept, ...more] = methods.filter((field) => isGiven([...at, field]));
  if (kept === undefined)
    note([...at, 'joint'], {
      code: 'missing-field',
      expected: `retention of the closure, one of ${ways}`,
    });
  for (const field of more)
    note([...at, field], {
      code: 'contradiction',
      problem: `${field} and ${kept} are mutually exclusive; give one retention, one of ${ways}`,
    });
}

function withinEnd(
  size: number | undefined,
  path: Path,
  why: string,
  { need }: Findings,
  room: ClosureSpace,
): void {
  need(
    both(size, room.beyond, (given, most) => given < most),
    path,
    `less than the length of the case beyond the chamber (${mm(room.beyond)})`,
    why,
  );
}

function checkBolts(joint: Part<'joint'>, at: Path, found: Findings, room: ClosureSpace): void {
  const { need } = found;
  const hole = si(joint.holeDiameter);
  const edge = si(joint.edgeDistance);
  need(
    both(edge, hole, (e, d) => e > d / 2),
    [...at, 'edgeDistance'],
    `more than the radius of the holes (${mm(hole && hole / 2)})`,
    'It is measured from their centres',
  );
  withinEnd(edge, [...at, 'edgeDistance'], 'The bolts go through the closure', found, room);
  const bolt = joint.thread === undefined ? undefined : threadGeometry(joint.thread).majorDiameter.si;
  need(
    both(hole, bolt, (d, b) => d >= b * 0.999),
    [...at, 'holeDiameter'],
    `at least the diameter of the bolt (${mm(bolt)})`,
  );
  const { count } = joint;
  need(
    count === undefined ? undefined : both(hole, room.outside, (d, o) => count * d < Math.PI * o),
    [...at, 'count'],
    `smaller: holes of ${mm(hole)} leave no material of the case between them`,
    'Use fewer or smaller bolts',
  );
}

function checkRing(ring: Part<'retainingRing'>, at: Path, found: Findings, room: ClosureSpace): void {
  const { edgeMargin, thickness } = checkRingSizes(ring, at, found, room);
  const place = (field: string): Path => [...at, found.isGiven([...at, field]) ? field : 'ring'];
  withinEnd(edgeMargin, place('edgeMargin'), 'The ring is outside the closure', found, room);
  withinEnd(thickness, place('thickness'), 'The ring is in the end of the case', found, room);
}

function checkThread(thread: Part<'thread'>, at: Path, found: Findings, room: ClosureSpace): void {
  const { need } = found;
  const { outside, bore } = room;
  const major = si(thread.majorDiameter);
  const pitch = si(thread.pitch);
  // Thread roots can be as deep as a sharp V: one eighth of the triangle height beyond the profile.
  const roots = both(major, pitch, (d, p) => d + (p * Math.sqrt(3)) / 8) ?? major;
  need(
    both(roots, outside, (d, o) => d < o),
    [...at, 'majorDiameter'],
    `less than the outside diameter of the case (${mm(outside)})`,
    `The thread, with roots at up to ${mm(roots)}, is machined in the case`,
  );
  const flanks = both(major, pitch, (d, p) => pitchDiameter(at, found, d, p));
  need(
    both(flanks, bore, (d, b) => d > b),
    [...at, 'majorDiameter'],
    'at least one pitch larger',
    `The thread flanks are inside the bore of the case (${mm(bore)})`,
  );
  const relief = si(thread.reliefDiameter);
  need(
    both(relief, major, (r, d) => r >= d),
    [...at, 'reliefDiameter'],
    `at least the diameter of the thread (${mm(major)})`,
    'Omit it if no groove is deeper than the thread',
  );
  need(
    both(relief, outside, (r, o) => r < o),
    [...at, 'reliefDiameter'],
    `less than the outside diameter of the case (${mm(outside)})`,
  );
  withinEnd(
    si(thread.engagement),
    [...at, 'engagement'],
    'The closure screws into the end of the case',
    found,
    room,
  );
}

/** Pitch diameter of a user-defined thread; errors of its geometry are recorded. */
function pitchDiameter(at: Path, found: Findings, major: number, pitch: number): number | undefined {
  const length = (size: number): Quantity<'length'> => fromSiValue<'length'>(size, 'length', unitOf('mm'));
  let diameter: number | undefined;
  found.tried(at, () => {
    diameter = customThread({ majorDiameter: length(major), pitch: length(pitch) }).pitchDiameter.si;
  });
  return diameter;
}

type Radial = Partly<Exclude<SealPart, FaceSealPart>>;

/** A seal without `seal` is radial. */
const isRadial = (seal: Partly<SealPart>): seal is Radial => seal.seal !== 'face';

function checkRadialSeal(seal: Radial, at: Path, { need }: Findings, { bore }: ClosureSpace): void {
  const land = si(seal.closureDiameter);
  need(
    both(land, bore, (d, b) => d < b),
    [...at, 'closureDiameter'],
    `less than the bore of the case (${mm(bore)})`,
  );
  need(
    both(si(seal.grooveDiameter), land, (g, d) => g < d),
    [...at, 'grooveDiameter'],
    `less than the adjacent closure diameter (${mm(land)})`,
  );
}

function checkFaceSeal(
  seal: Partly<FaceSealPart>,
  closure: Closure,
  at: Path,
  end: Path,
  { need, note, isGiven }: Findings,
  { outside }: ClosureSpace,
): void {
  const outer = si(seal.grooveOutsideDiameter);
  const inner = si(seal.grooveInsideDiameter);
  need(
    both(outer, outside, (d, o) => d < o),
    [...at, 'grooveOutsideDiameter'],
    `less than the outside diameter of the case (${mm(outside)})`,
    'The face of the case closes the groove',
  );
  need(
    both(inner, outer, (d, o) => d < o),
    [...at, 'grooveInsideDiameter'],
    `less than the outside diameter of the groove (${mm(outer)})`,
  );
  const opening = si(closure.opening);
  need(
    both(inner, opening, (d, o) => d > o),
    [...at, 'grooveInsideDiameter'],
    `more than the opening of the closure (${mm(opening)})`,
    'The groove surrounds the opening',
  );
  const plate = si(closure.thickness);
  need(
    both(si(seal.grooveDepth), plate, (d, t) => d < t),
    [...at, 'grooveDepth'],
    `less than the thickness of the closure (${mm(plate)})`,
  );
  const loose = (['joint', 'retainingRing'] as const).find((field) => isGiven([...end, field]));
  if (loose !== undefined && !isGiven([...at, 'faceGap']))
    note([...at, 'faceGap'], {
      code: 'missing-field',
      expected: `movement of the closure under pressure until stopped by ${retentionMethods[loose]}, which opens the faces; for example '0.2 mm'`,
    });
}
