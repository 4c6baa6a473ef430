import { customThread, threadGeometry } from '../../structures';
import { fromSiValue, MeopError, type Quantity, unitOf } from '../../units';
import { retentionMethods } from './closure-schema';
import { both, type FitCheck, mm, type Path } from './fit-check';
import { type DocumentProblem, pathText } from './problems';
import { rawAt, rawList } from './raw-value';

/** What a closure has to go into. */
export interface ClosureSpace {
  readonly outside: number | undefined;
  readonly wall: number | undefined;
  readonly bore: number | undefined;
  /** What the case has beyond the chamber. */
  readonly beyond: number | undefined;
}

/** Whether a closure, what holds it and its seals go together with the case. */
export function checkClosure(json: unknown, end: 'head' | 'aft', fit: FitCheck, room: ClosureSpace): void {
  const at: Path = ['closures', end];
  const closure = rawAt(json, at);
  if (typeof closure !== 'object' || closure === null || Array.isArray(closure)) return;
  fit.problems.push(...holdingProblems(json, at));
  const { length, need } = fit;
  const opening: Path = [...at, 'opening'];
  need(
    both(length(...opening), room.bore, (o, b) => o < b),
    opening,
    `${mm(length(...opening))} given; less than the bore of the case, ${mm(room.bore)}, is expected`,
  );
  checkBolts(json, [...at, 'joint'], fit, room);
  checkRing([...at, 'retainingRing'], fit, room);
  checkThread(json, [...at, 'thread'], fit, room);
  rawList(json, [...at, 'seals']).forEach((seal, i) => {
    const own: Path = [...at, 'seals', i];
    if (rawAt(seal, ['seal']) === 'face') checkFaceSeal(json, at, own, fit, room);
    else checkRadialSeal(own, fit, room);
  });
}

/** A closure is held in exactly one way. */
function holdingProblems(json: unknown, at: Path): DocumentProblem[] {
  const given = Object.keys(retentionMethods).filter((field) => rawAt(json, [...at, field]) !== undefined);
  const ways = Object.entries(retentionMethods)
    .map(([field, meaning]) => `${field} (${meaning})`)
    .join(', ');
  if (given.length === 0)
    return [
      {
        path: pathText([...at, 'joint']),
        code: 'missing-field',
        message: `missing; how the closure is held is expected, by one of ${ways}`,
      },
    ];
  const [kept, ...more] = given;
  return more.map((field) => ({
    path: pathText([...at, field]),
    code: 'contradiction',
    message: `given beside ${kept}; one way of holding the closure is expected, ${ways}: leave the others out`,
    value: rawAt(json, [...at, field]),
  }));
}

function withinEnd(path: Path, what: string, { length, need }: FitCheck, { beyond }: ClosureSpace): void {
  need(
    both(length(...path), beyond, (given, most) => given < most),
    path,
    `${mm(length(...path))} given; less than ${mm(beyond)}, what the case has beyond the chamber, is expected: ${what}`,
  );
}

function checkBolts(json: unknown, joint: Path, fit: FitCheck, room: ClosureSpace): void {
  const { length, need } = fit;
  const hole = length(...joint, 'holeDiameter');
  const edge = length(...joint, 'edgeDistance');
  need(
    both(edge, hole, (e, d) => e > d / 2),
    [...joint, 'edgeDistance'],
    `${mm(edge)} given; more than the radius of the holes is expected: it is measured from their centres`,
  );
  withinEnd([...joint, 'edgeDistance'], 'the bolts go through the closure', fit, room);
  const bolt = majorDiameter(rawAt(json, [...joint, 'thread']));
  need(
    both(hole, bolt, (d, b) => d >= b * 0.999),
    [...joint, 'holeDiameter'],
    `${mm(hole)} given; at least the diameter of the bolt, ${mm(bolt)}, is expected`,
  );
  const count = rawAt(json, [...joint, 'count']);
  need(
    typeof count === 'number' ? both(hole, room.outside, (d, o) => count * d < Math.PI * o) : undefined,
    [...joint, 'count'],
    `${String(count)} given; so many holes of ${mm(hole)} leave nothing of the case around: fewer or smaller ones are expected`,
  );
}

function checkRing(ring: Path, fit: FitCheck, room: ClosureSpace): void {
  const { length, need } = fit;
  const depth = length(...ring, 'grooveDepth');
  need(
    both(depth, room.wall, (h, t) => h < t),
    [...ring, 'grooveDepth'],
    `${mm(depth)} given; less than the wall of the case, ${mm(room.wall)}, is expected`,
  );
  withinEnd([...ring, 'edgeMargin'], 'the ring sits outside the closure', fit, room);
  withinEnd([...ring, 'thickness'], 'the ring sits in the end of the case', fit, room);
}

function checkThread(json: unknown, thread: Path, fit: FitCheck, room: ClosureSpace): void {
  const { length, need } = fit;
  const { outside, bore } = room;
  const major = length(...thread, 'majorDiameter');
  const pitch = length(...thread, 'pitch');
  // Its roots may be as deep as a sharp V: an eighth of the triangle's height beyond the profile.
  const roots = both(major, pitch, (d, p) => d + (p * Math.sqrt(3)) / 8) ?? major;
  need(
    both(roots, outside, (d, o) => d < o),
    [...thread, 'majorDiameter'],
    `${mm(major)} given, with roots at up to ${mm(roots)}; less than the outside diameter of the case, ${mm(outside)}, is expected: it is cut in the case`,
  );
  const geometry = both(major, pitch, (d, p) => tried(json, thread, fit, d, p));
  need(
    both(geometry, bore, (d, b) => d > b),
    [...thread, 'majorDiameter'],
    `${mm(major)} given; its flanks lie within the bore of the case, ${mm(bore)}, where there is no metal: a thread that is greater by a pitch or more is expected`,
  );
  const relief: Path = [...thread, 'reliefDiameter'];
  need(
    both(length(...relief), major, (r, d) => r >= d),
    relief,
    `${mm(length(...relief))} given; at least the diameter of the thread, ${mm(major)}, is expected; leave it out where no groove is deeper`,
  );
  need(
    both(length(...relief), outside, (r, o) => r < o),
    relief,
    `${mm(length(...relief))} given; less than the outside diameter of the case, ${mm(outside)}, is expected`,
  );
  withinEnd([...thread, 'engagement'], 'the closure screws into the end of the case', fit, room);
}

/** The pitch diameter of a thread of one's own; what its geometry refuses is noted. */
function tried(
  json: unknown,
  thread: Path,
  { problems }: FitCheck,
  major: number,
  pitch: number,
): number | undefined {
  if (!(major > 0 && pitch > 0)) return undefined; // the schema says so
  const length = (si: number): Quantity<'length'> => fromSiValue<'length'>(si, 'length', unitOf('mm'));
  try {
    return customThread({ majorDiameter: length(major), pitch: length(pitch) }).pitchDiameter.si;
  } catch (error) {
    if (!(error instanceof MeopError)) throw error;
    const path = [...thread, error.path ?? 'pitch'];
    const message = error.message.replace(/^\w+: (?:\w+: )?/, '');
    problems.push({ path: pathText(path), code: error.code, message, value: rawAt(json, path) });
    return undefined;
  }
}

function checkRadialSeal(seal: Path, { length, need }: FitCheck, { bore }: ClosureSpace): void {
  const land = length(...seal, 'closureDiameter');
  const groove = length(...seal, 'grooveDiameter');
  need(
    both(land, bore, (d, b) => d < b),
    [...seal, 'closureDiameter'],
    `${mm(land)} given; less than the bore of the case, ${mm(bore)}, is expected`,
  );
  need(
    both(groove, land, (g, d) => g < d),
    [...seal, 'grooveDiameter'],
    `${mm(groove)} given; less than the closure beside it, ${mm(land)}, is expected`,
  );
}

function checkFaceSeal(
  json: unknown,
  closure: Path,
  seal: Path,
  { problems, length, need }: FitCheck,
  { outside }: ClosureSpace,
): void {
  const outer = length(...seal, 'grooveOutsideDiameter');
  const inner = length(...seal, 'grooveInsideDiameter');
  const depth = length(...seal, 'grooveDepth');
  need(
    both(outer, outside, (d, o) => d < o),
    [...seal, 'grooveOutsideDiameter'],
    `${mm(outer)} given; less than the outside diameter of the case, ${mm(outside)}, is expected: its face closes the groove`,
  );
  need(
    both(inner, outer, (d, o) => d < o),
    [...seal, 'grooveInsideDiameter'],
    `${mm(inner)} given; less than the outside diameter of the groove, ${mm(outer)}, is expected`,
  );
  const opening = length(...closure, 'opening');
  need(
    both(inner, opening, (d, o) => d > o),
    [...seal, 'grooveInsideDiameter'],
    `${mm(inner)} given; more than the opening of the closure, ${mm(opening)}, is expected: the groove runs around it`,
  );
  const plate = length(...closure, 'thickness');
  need(
    both(depth, plate, (d, t) => d < t),
    [...seal, 'grooveDepth'],
    `${mm(depth)} given; less than the thickness of the closure, ${mm(plate)}, is expected`,
  );
  const loose = (['joint', 'retainingRing'] as const).find(
    (field) => rawAt(json, [...closure, field]) !== undefined,
  );
  if (loose !== undefined && rawAt(json, [...seal, 'faceGap']) === undefined)
    problems.push({
      path: pathText([...seal, 'faceGap']),
      code: 'missing-field',
      message: `missing; expected is how far the pressure moves the closure before ${retentionMethods[loose]} stops it, such as '0.2 mm': the faces open by that`,
    });
}

function majorDiameter(thread: unknown): number | undefined {
  if (typeof thread !== 'string') return undefined;
  try {
    return threadGeometry(thread).majorDiameter.si;
  } catch (error) {
    if (error instanceof MeopError) return undefined;
    throw error;
  }
}
