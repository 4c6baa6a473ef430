import type { Motor } from '../document';
import type { Closure } from '../document/closure-inputs';
import { closureMetal } from '../document/closure-metal';
import type { Insert } from '../document/nozzle-inputs';

/** The seat of the insert and what retains it, in SI, at the limits of the motor. */
export interface SeatGeometry {
  readonly insertedFrom: 'inside' | 'outside';
  readonly insertDiameter: number;
  readonly insertLength: number;
  readonly throatDiameter: number;
  readonly pocketDiameter: number;
  readonly pocketDepth: number;
  /** Opening through which the insert would be pushed out: of the closure, or of the retainer. */
  readonly opening: number;
  readonly sealDiameter: number;
  readonly thicknessAtOpening: number;
  /** Thickness of the metal that the insert bears on: the lip of the closure, or the retainer. */
  readonly lipThickness: number;
}

/** A seat with the widest and with the narrowest bores that the tolerances allow: each failure mode has its own worst. */
export interface SeatLimits {
  readonly widest: SeatGeometry;
  readonly narrowest: SeatGeometry;
}

/** The limits of a seat; undefined where the closure or the retainer that carries the insert is not described. */
export function seatLimits(
  { nozzle }: Motor,
  insert: Insert,
  seat: NonNullable<Insert['seat']>,
  aft: Closure,
): SeatLimits | undefined {
  const { retainer, throatDiameter } = nozzle;
  const inside = seat.insertedFrom === 'inside';
  const opening = inside ? aft.opening : retainer?.opening;
  const metal = closureMetal(aft) ?? aft.thickness.value.si;
  const lipThickness = inside ? metal - seat.pocketDepth.value.si : retainer?.thickness.value.si;
  if (opening === undefined || lipThickness === undefined) return undefined;
  const pocketDiameter = seat.pocketDiameter.value.si;
  const insertLength = insert.length.value.si;
  const of = (hole: number, throat: number): SeatGeometry => ({
    insertedFrom: seat.insertedFrom,
    insertDiameter: insert.outsideDiameter.value.si,
    insertLength,
    throatDiameter: throat,
    pocketDiameter,
    pocketDepth: seat.pocketDepth.value.si,
    opening: hole,
    // Without a seal gas reaches the wall of the pocket, and under a plate its screws.
    sealDiameter:
      seat.sealDiameter?.value.si ??
      (inside ? pocketDiameter : (retainer?.screws.boltCircle.value.si ?? pocketDiameter)),
    // An entrance of 45° that ends at the throat leaves this much at the diameter of the opening.
    thicknessAtOpening: seat.thicknessAtOpening?.value.si ?? Math.min(insertLength, (hole - throat) / 2),
    lipThickness,
  });
  // Both are at their upper limit in the motor that is reviewed.
  const [hole, throat] = [opening, throatDiameter].map(({ value, plusMinus }) => value.si - 2 * plusMinus);
  return { widest: of(opening.value.si, throatDiameter.value.si), narrowest: of(hole, throat) };
}
