import { threadGeometry } from '../../structures';
import { cavityDepth, closureMetal } from './closure-metal';
import type { Partly } from './document-types';
import { both, type Findings, mm, si } from './fit-check';
import type { MotorParts } from './motor-schema';
import type { Path } from './problems';

type Parts = Partly<MotorParts>;

/** Room for the nozzle: the bore of the case and the length of chamber that the grain leaves. */
export interface NozzleRoom {
  readonly bore: number | undefined;
  readonly outside: number | undefined;
  readonly free: number | undefined;
}

const insertAt: Path = ['nozzle', 'insert'];
const seatAt: Path = [...insertAt, 'seat'];
const retainerAt: Path = ['nozzle', 'retainer'];
const openingAt: Path = ['closures', 'aft', 'opening'];

/** Checks that the throat insert fits the case and its seat, and that something retains it. */
export function checkSeat({ nozzle, closures }: Parts, found: Findings, room: NozzleRoom): void {
  const { need, note, isGiven } = found;
  const insert = nozzle?.insert;
  const outer = si(insert?.outsideDiameter);
  need(
    both(outer, room.bore, (d, b) => d < b),
    [...insertAt, 'outsideDiameter'],
    `less than the bore of the case (${mm(room.bore)})`,
  );
  if (!isGiven(seatAt)) {
    if (isGiven(retainerAt))
      note(seatAt, { code: 'missing-field', expected: 'seat of the insert, required with nozzle.retainer' });
    return;
  }
  checkRetained(found);
  const seat = insert?.seat;
  const pocket = si(seat?.pocketDiameter);
  const depth = si(seat?.pocketDepth);
  const aft = closures?.aft;
  const plate = aft && closureMetal(aft);
  const opening = si(aft?.opening);
  const inside = seat?.insertedFrom === 'inside';
  need(
    both(pocket, outer, (p, d) => p >= d),
    [...seatAt, 'pocketDiameter'],
    `at least the outside diameter of the insert (${mm(outer)})`,
  );
  const grooves = (aft?.seals ?? []).flatMap((seal) =>
    seal === undefined || !('grooveDiameter' in seal)
      ? []
      : [si(seal.grooveDiameter) ?? Number.POSITIVE_INFINITY],
  );
  const metal = grooves.length === 0 ? room.bore : both(room.bore, Math.min(...grooves), Math.min);
  need(
    both(pocket, metal, (p, b) => p < b),
    [...seatAt, 'pocketDiameter'],
    `less than the diameter of the closure at its seals or the bore of the case (${mm(metal)})`,
  );
  need(
    both(depth, plate, (h, t) => (inside ? h < t : h <= t)),
    [...seatAt, 'pocketDepth'],
    `${inside ? 'less than' : 'at most'} the length of the closure there (${mm(plate)})`,
    inside ? 'The lip that is left retains the insert' : undefined,
  );
  need(
    both(opening, si(nozzle?.throatDiameter), (o, t) => o > t),
    openingAt,
    `more than the throat diameter (${mm(si(nozzle?.throatDiameter))})`,
  );
  const length = si(insert?.length);
  const space = room.free === undefined ? undefined : room.free + (aft ? cavityDepth(aft) : 0);
  if (inside) {
    need(
      both(opening, outer, (o, d) => o < d),
      openingAt,
      `less than the outside diameter of the insert (${mm(outer)})`,
      'The insert falls through its seat',
    );
    need(
      both(
        both(length, depth, (l, h) => l - h),
        room.free,
        (out, free) => out <= free * (1 + 1e-9),
      ),
      [...insertAt, 'length'],
      `at most the depth of its pocket and the chamber that the grain leaves (${mm(both(depth, space, (h, f) => h + f))})`,
      'The insert reaches the grain',
    );
  } else if (seat !== undefined) {
    need(
      both(opening, pocket, (o, p) => o <= p),
      openingAt,
      `at most the diameter of the pocket of the insert (${mm(pocket)})`,
    );
    need(
      both(length, depth, (l, h) => l <= h),
      [...insertAt, 'length'],
      `at most the depth of its pocket (${mm(depth)})`,
      'The retainer does not reach the closure',
    );
  }
  checkSealed(nozzle, found, opening);
  checkRetainer(nozzle, found, { ...room, pocket, outer, plate });
}

/** The parts that a seat requires: a closure with an opening, and a retainer for an insert put in from the outside. */
function checkRetained({ note, isGiven }: Findings): void {
  // Without a closure at the aft end the review says so.
  if (isGiven(['closures', 'aft']) && !isGiven(openingAt))
    note(openingAt, {
      code: 'missing-field',
      expected: "diameter of the opening in the seat of the insert, for example '20 mm'",
    });
}

function checkSealed(nozzle: Parts['nozzle'], { need }: Findings, opening: number | undefined): void {
  const sealed = si(nozzle?.insert?.seat?.sealDiameter);
  const inner = nozzle?.insert?.seat?.insertedFrom === 'inside' ? opening : si(nozzle?.throatDiameter);
  need(
    both(sealed, inner, (s, o) => s > o),
    [...seatAt, 'sealDiameter'],
    `more than the opening that the insert covers (${mm(inner)})`,
  );
}

interface RetainerRoom extends NozzleRoom {
  readonly pocket: number | undefined;
  readonly outer: number | undefined;
  readonly plate: number | undefined;
}

function checkRetainer(nozzle: Parts['nozzle'], found: Findings, room: RetainerRoom): void {
  const { need, note, isGiven } = found;
  const from = nozzle?.insert?.seat?.insertedFrom;
  if (from === 'outside' && !isGiven(retainerAt))
    note(retainerAt, {
      code: 'missing-field',
      expected: 'plate that retains an insert put in from the outside',
      remedy: 'Describe the plate, or put the insert in from the inside',
    });
  if (from === 'inside' && isGiven(retainerAt))
    note(retainerAt, {
      code: 'contradiction',
      problem:
        'a retainer is for an insert put in from the outside; from the inside the lip of the closure retains it',
      remedy: "Omit it, or set nozzle.insert.seat.insertedFrom to 'outside'",
    });
  const retainer = nozzle?.retainer;
  if (from !== 'outside' || retainer === undefined) return;
  const throat = si(nozzle?.throatDiameter);
  const opening = si(retainer.opening);
  const edge = si(retainer.outsideDiameter);
  need(
    both(opening, throat, (o, t) => o > t),
    [...retainerAt, 'opening'],
    `more than the throat diameter (${mm(throat)})`,
  );
  need(
    both(opening, room.outer, (o, d) => o < d),
    [...retainerAt, 'opening'],
    `less than the outside diameter of the insert (${mm(room.outer)})`,
    'The insert falls through the retainer',
  );
  need(
    both(edge, room.outside, (d, o) => d <= o),
    [...retainerAt, 'outsideDiameter'],
    `at most the outside diameter of the case (${mm(room.outside)})`,
  );
  const { screws } = retainer;
  const screwsAt: Path = [...retainerAt, 'screws'];
  const screw = screws?.thread === undefined ? undefined : threadGeometry(screws.thread).majorDiameter.si;
  const circle = si(screws?.boltCircle);
  const inner = both(room.pocket, screw, (p, d) => p + d);
  need(
    both(circle, inner, (c, least) => c > least),
    [...screwsAt, 'boltCircle'],
    `more than the pocket of the insert and the diameter of a screw (${mm(inner)})`,
  );
  for (const [limit, what] of [
    [edge, 'the plate'],
    [room.bore, 'the closure'],
  ] as const) {
    const most = both(limit, screw, (d, s) => d - s);
    need(
      both(circle, most, (c, m) => c < m),
      [...screwsAt, 'boltCircle'],
      `less than the diameter of ${what} without that of a screw (${mm(most)})`,
    );
  }
  const tightened = (['preload', 'torque'] as const).filter((field) => isGiven([...screwsAt, field]));
  if (isGiven(screwsAt) && tightened.length !== 1)
    note([...screwsAt, tightened[1] ?? 'preload'], {
      code: tightened.length === 0 ? 'missing-field' : 'contradiction',
      expected: 'either preload or torque of the screws',
    });
  const { count } = screws ?? {};
  need(
    count === undefined ? undefined : both(circle, screw, (c, d) => c * Math.sin(Math.PI / count) > d),
    [...screwsAt, 'count'],
    'smaller: the holes of the screws overlap',
  );
  const deep = si(screws?.depth) ?? si(screws?.engagement);
  need(
    both(deep, room.plate, (h, t) => h < t),
    [...screwsAt, isGiven([...screwsAt, 'depth']) ? 'depth' : 'engagement'],
    `less than the length of the closure (${mm(room.plate)})`,
  );
}
