import { customThread, threadGeometry } from '../../structures';
import { fromSiValue, MeopError, type Quantity, unitOf } from '../../units';
import { retentionMethods } from './closure-schema';
import { both, type FitCheck, mm, type Path } from './fit-check';
import { type DocumentProblem, pathText } from './problems';
import { rawAt, rawList } from './raw-value';

/** The space in the case for a closure. */
export interface ClosureSpace {
  readonly outside: number | undefined;
  readonly wall: number | undefined;
  readonly bore: number | undefined;
  /** Length of the case beyond the chamber. */
  readonly beyond: number | undefined;
}

/** Checks that a closure, its retention and its seals fit the case. */
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
    `must be less than the bore of the case (${mm(room.bore)}), got ${mm(length(...opening))}`,
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

/** A closure has exactly one retention. */
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
        message: `missing required field: the closure needs a retention, one of ${ways}`,
      },
    ];
  const [kept, ...more] = given;
  return more.map((field) => ({
    path: pathText([...at, field]),
    code: 'contradiction',
    message: `mutually exclusive with ${kept}; give one retention, one of ${ways}`,
    value: rawAt(json, [...at, field]),
  }));
}

function withinEnd(path: Path, what: string, { length, need }: FitCheck, { beyond }: ClosureSpace): void {
  need(
    both(length(...path), beyond, (given, most) => given < most),
    path,
    `must be less than the length of the case beyond the chamber (${mm(beyond)}), got ${mm(length(...path))}: ${what}`,
  );
}

function checkBolts(json: unknown, joint: Path, fit: FitCheck, room: ClosureSpace): void {
  const { length, need } = fit;
  const hole = length(...joint, 'holeDiameter');
  const edge = length(...joint, 'edgeDistance');
  need(
    both(edge, hole, (e, d) => e > d / 2),
    [...joint, 'edgeDistance'],
    `must be more than the radius of the holes, got ${mm(edge)}: it is measured from their centres`,
  );
  withinEnd([...joint, 'edgeDistance'], 'the bolts go through the closure', fit, room);
  const bolt = majorDiameter(rawAt(json, [...joint, 'thread']));
  need(
    both(hole, bolt, (d, b) => d >= b * 0.999),
    [...joint, 'holeDiameter'],
    `must be at least the diameter of the bolt (${mm(bolt)}), got ${mm(hole)}`,
  );
  const count = rawAt(json, [...joint, 'count']);
  need(
    typeof count === 'number' ? both(hole, room.outside, (d, o) => count * d < Math.PI * o) : undefined,
    [...joint, 'count'],
    `holes of ${mm(hole)} must be fewer or smaller, got ${String(count)}: they leave no material of the case between them`,
  );
}

function checkRing(ring: Path, fit: FitCheck, room: ClosureSpace): void {
  const { length, need } = fit;
  const depth = length(...ring, 'grooveDepth');
  need(
    both(depth, room.wall, (h, t) => h < t),
    [...ring, 'grooveDepth'],
    `must be less than the wall of the case (${mm(room.wall)}), got ${mm(depth)}`,
  );
  withinEnd([...ring, 'edgeMargin'], 'the ring is outside the closure', fit, room);
  withinEnd([...ring, 'thickness'], 'the ring is in the end of the case', fit, room);
}

function checkThread(json: unknown, thread: Path, fit: FitCheck, room: ClosureSpace): void {
  const { length, need } = fit;
  const { outside, bore } = room;
  const major = length(...thread, 'majorDiameter');
  const pitch = length(...thread, 'pitch');
  // Thread roots can be as deep as a sharp V: one eighth of the triangle height beyond the profile.
  const roots = both(major, pitch, (d, p) => d + (p * Math.sqrt(3)) / 8) ?? major;
  need(
    both(roots, outside, (d, o) => d < o),
    [...thread, 'majorDiameter'],
    `must be less than the outside diameter of the case (${mm(outside)}), got ${mm(major)} (roots up to ${mm(roots)}): the thread is machined in the case`,
  );
  const geometry = both(major, pitch, (d, p) => tried(json, thread, fit, d, p));
  need(
    both(geometry, bore, (d, b) => d > b),
    [...thread, 'majorDiameter'],
    `must be at least one pitch larger, got ${mm(major)}: the thread flanks are inside the bore of the case (${mm(bore)})`,
  );
  const relief: Path = [...thread, 'reliefDiameter'];
  need(
    both(length(...relief), major, (r, d) => r >= d),
    relief,
    `must be at least the diameter of the thread (${mm(major)}), got ${mm(length(...relief))}. Omit it if no groove is deeper than the thread.`,
  );
  need(
    both(length(...relief), outside, (r, o) => r < o),
    relief,
    `must be less than the outside diameter of the case (${mm(outside)}), got ${mm(length(...relief))}`,
  );
  withinEnd([...thread, 'engagement'], 'the closure screws into the end of the case', fit, room);
}

/** Pitch diameter of a custom thread; errors of its geometry are recorded. */
function tried(
  json: unknown,
  thread: Path,
  { problems }: FitCheck,
  major: number,
  pitch: number,
): number | undefined {
  if (!(major > 0 && pitch > 0)) return undefined; // reported by the schema
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
    `must be less than the bore of the case (${mm(bore)}), got ${mm(land)}`,
  );
  need(
    both(groove, land, (g, d) => g < d),
    [...seal, 'grooveDiameter'],
    `must be less than the adjacent closure diameter (${mm(land)}), got ${mm(groove)}`,
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
    `must be less than the outside diameter of the case (${mm(outside)}), got ${mm(outer)}: the face of the case closes the groove`,
  );
  need(
    both(inner, outer, (d, o) => d < o),
    [...seal, 'grooveInsideDiameter'],
    `must be less than the outside diameter of the groove (${mm(outer)}), got ${mm(inner)}`,
  );
  const opening = length(...closure, 'opening');
  need(
    both(inner, opening, (d, o) => d > o),
    [...seal, 'grooveInsideDiameter'],
    `must be more than the opening of the closure (${mm(opening)}), got ${mm(inner)}: the groove surrounds the opening`,
  );
  const plate = length(...closure, 'thickness');
  need(
    both(depth, plate, (d, t) => d < t),
    [...seal, 'grooveDepth'],
    `must be less than the thickness of the closure (${mm(plate)}), got ${mm(depth)}`,
  );
  const loose = (['joint', 'retainingRing'] as const).find(
    (field) => rawAt(json, [...closure, field]) !== undefined,
  );
  if (loose !== undefined && rawAt(json, [...seal, 'faceGap']) === undefined)
    problems.push({
      path: pathText([...seal, 'faceGap']),
      code: 'missing-field',
      message: `missing required field (movement of the closure under pressure until stopped by ${retentionMethods[loose]}, which opens the faces), for example '0.2 mm'`,
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
