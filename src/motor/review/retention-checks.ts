import { type PartId, threadGeometry } from '../../structures';
import { seatOverlap } from '../../structures/retention/seat-formulas';
import { fromSiValue, type Quantity, unitOf } from '../../units';
import type { Motor } from '../document';
import { type Closure, isFaceSeal } from '../document/closure-inputs';
import { cavityDepth } from '../document/closure-metal';
import { closureHeat } from './closure-heat';
import type { PartCheck } from './part-review';
import type { SeatGeometry, SeatLimits } from './seat-geometry';
import { weakestCase } from './worst-sizes';

const practice = 'engineering practice, no published source';

const length = (si: number): Quantity<'length'> => fromSiValue<'length'>(si, 'length', unitOf('mm'));
const shown = (si: number): string => `${Number((si * 1e3).toFixed(2))} mm`;

interface Least {
  readonly part: PartId;
  readonly check: string;
  readonly value: number;
  readonly limit: number;
  readonly limitSays?: string;
  readonly remedy: string;
}

/** A check of a length with a minimum. */
function atLeast({ part, check, value, limit, limitSays, remedy }: Least): PartCheck {
  const passes = value >= limit * (1 - 1e-9);
  const required = `required ≥ ${shown(limit)}${limitSays === undefined ? '' : `, ${limitSays}`}`;
  return {
    part,
    check,
    value: length(value),
    limit: length(limit),
    passes,
    message: `${shown(value)} (${required})${passes ? '' : `. ${remedy}`}`,
    source: practice,
  };
}

/** Checks that the insert cannot fall through its seat, that its pocket holds it, and that the jet leaves freely. */
export function seatChecks(
  motor: Motor,
  { widest: seat, narrowest }: SeatLimits,
  aft: Closure,
): readonly PartCheck[] {
  const { insertDiameter, pocketDiameter, pocketDepth, opening, insertLength, insertedFrom } = seat;
  const part = 'throat-insert';
  const opener = insertedFrom === 'inside' ? 'closures.aft.opening' : 'nozzle.retainer.opening';
  return [
    atLeast({
      part,
      check: 'overlap of insert and seat',
      value: seatOverlap.si({
        insertDiameter,
        pocketDiameter,
        opening,
        growth: growthOf(motor, aft, opening),
        erosion: motor.nozzle.insert?.seat?.erosion?.value.si ?? 0,
      }),
      limit: Math.max(1e-3, 0.03 * insertDiameter),
      limitSays: '1 mm and 3 % of the diameter of the insert',
      remedy: `The insert may fall through. Use a smaller ${opener} or a larger insert`,
    }),
    atLeast({
      part,
      check: 'length of the insert in its pocket',
      value: Math.min(insertLength, pocketDepth),
      limit: insertLength / 2,
      limitSays: 'half of the length of the insert',
      remedy: 'The insert may tilt. Use a deeper pocket or a shorter insert',
    }),
    ...exitCheck(motor, narrowest),
    ...radialLigament(motor, seat, aft),
  ];
}

/** Growth of the opening in diameter by heat; that of the insert, which reduces it, is not credited. */
function growthOf(motor: Motor, aft: Closure, opening: number): number {
  const heat = closureHeat(motor, aft)?.si;
  const expansion = aft.material.thermalExpansion?.value.si ?? 0;
  return heat === undefined
    ? 0
    : Math.max(0, opening * expansion * (heat - motor.ambient.temperature.value.si));
}

/** The cone of the nozzle at the seat, with the throat at the front face of the insert at the furthest. */
function exitCheck({ nozzle }: Motor, { throatDiameter, insertLength, opening }: SeatGeometry): PartCheck[] {
  const angle = nozzle.divergenceHalfAngle?.value.si ?? (15 * Math.PI) / 180;
  const cone = Math.min(nozzle.exitDiameter.value.si, throatDiameter + 2 * insertLength * Math.tan(angle));
  return [
    atLeast({
      part: 'throat-insert',
      check: 'opening behind the exit cone of the insert',
      value: opening,
      limit: cone,
      limitSays: 'the diameter of the exit cone at the rear face of the insert',
      remedy: 'The jet meets the seat. Use a larger opening or a shorter insert',
    }),
  ];
}

/** The metal between the tapped holes of radial bolts and the pocket, or the opening where the layout has the pocket elsewhere. */
function radialLigament(motor: Motor, seat: SeatGeometry, aft: Closure): PartCheck[] {
  const { joint, seals } = aft;
  if (joint === undefined) return [];
  const bolt = threadGeometry(joint.thread).majorDiameter.si;
  const radial = seals.flatMap((seal) => (isFaceSeal(seal) ? [] : [seal.closureDiameter.value.si]));
  const closure = Math.min(weakestCase(motor).bore.si, ...radial);
  const pocket = isLevel(seat, aft, bolt);
  const inside = pocket ? seat.pocketDiameter : (aft.opening?.value.si ?? 0);
  return [
    atLeast({
      part: 'aft-closure',
      check: `ligament between the ${pocket ? 'pocket of the insert' : 'opening'} and the tapped holes of the radial bolts`,
      value: closure / 2 - joint.engagement.value.si - inside / 2,
      limit: bolt / 2,
      limitSays: 'half the diameter of the bolts; one diameter is usual',
      remedy: `Use a narrower ${pocket ? 'pocket' : 'opening'} or a shorter closures.aft.joint.engagement`,
    }),
  ];
}

/** True where a row of radial bolts is within a bolt diameter of the pocket along the axis, or its layout is not specified. */
function isLevel(
  { insertedFrom, pocketDepth }: SeatGeometry,
  { layout, joint }: Closure,
  bolt: number,
): boolean {
  if (layout === undefined || joint === undefined) return true;
  const first = joint.edgeDistance.value.si;
  const last = first + ((joint.rows ?? 1) - 1) * (joint.rowSpacing?.value.si ?? 0);
  const inner = layout.innerFace.value.si - cavityDepth({ layout });
  const outer = layout.innerFace.value.si - layout.length.value.si + (layout.recess?.depth.value.si ?? 0);
  return insertedFrom === 'inside' ? last + bolt > inner - pocketDepth : first - bolt < outer + pocketDepth;
}

/** Ligaments of the tapped holes of a retainer plate. */
export function retainerChecks(motor: Motor, { pocketDiameter }: SeatGeometry): readonly PartCheck[] {
  const { retainer } = motor.nozzle;
  if (retainer === undefined) return [];
  const { thread, count, boltCircle } = retainer.screws;
  const screw = threadGeometry(thread).majorDiameter.si;
  const circle = boltCircle.value.si;
  const check = (what: string, value: number, times: number, remedy: string): PartCheck =>
    atLeast({
      part: 'nozzle-retainer',
      check: what,
      value,
      limit: times * screw,
      limitSays: `${times} diameters of the screws`,
      remedy,
    });
  return [
    check(
      'ligament between the pocket of the insert and the tapped holes of the screws',
      (circle - screw - pocketDiameter) / 2,
      1,
      'Use a larger bolt circle or smaller screws',
    ),
    check(
      'distance between the centres of the screws',
      circle * Math.sin(Math.PI / count),
      2.5,
      'Use fewer or smaller screws',
    ),
    check(
      'distance from the centres of the screws to the edge of the plate',
      (retainer.outsideDiameter.value.si - circle) / 2,
      1.5,
      'Use a larger plate or a smaller bolt circle',
    ),
    check(
      'distance from the centres of the screws to the outside of the closure',
      (weakestCase(motor).bore.si - circle) / 2,
      1.5,
      'Use a smaller bolt circle',
    ),
  ];
}
