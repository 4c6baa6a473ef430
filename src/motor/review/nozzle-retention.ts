import { type NozzleBlowOut, nozzleBlowOut } from '../../nozzle';
import type { TensionBoltReview } from '../../structures';
import { failureMargin } from '../../structures/failure-mode/failure-margin';
import type { PressureDrivenMode } from '../../structures/failure-mode/failure-mode';
import { leastFavourable } from '../../structures/failure-mode/least-favourable';
import { insertModes, seatLoad } from '../../structures/retention/insert-modes';
import { lipModes } from '../../structures/retention/lip-modes';
import { retainerModes } from '../../structures/retention/retainer-modes';
import { absolute, fromSiValue, MeopError, unitFor, unitOf } from '../../units';
import type { Motor } from '../document';
import type { Closure } from '../document/closure-inputs';
import type { Insert } from '../document/nozzle-inputs';
import { linesOf, type PartLine } from '../part-lines';
import { closureHeat } from './closure-heat';
import { insertStrength } from './insert-strength';
import { type PartConditions, type PartReview, partReview, type Unjudged } from './part-review';
import { retainerScrews } from './retainer-screws';
import { retainerChecks, seatChecks } from './retention-checks';
import { type SeatGeometry, seatLimits } from './seat-geometry';

/** The retention of the nozzle, with the force on it. */
export interface NozzleRetention extends PartReview {
  readonly blowOut: NozzleBlowOut | undefined;
}

/** Evaluates the seat of the throat insert and what retains it, for the chamber pressure on the whole sealed area. */
export const nozzleRetention = (conditions: PartConditions): NozzleRetention =>
  conditions.attempt(
    [
      ['nozzle', 'insert', 'seat'],
      ['nozzle', 'retainer'],
      ['closures', 'aft'],
    ],
    () => retentionOf(conditions),
  ) ?? unjudged();

const unjudged = (...reasons: readonly string[]): NozzleRetention => ({
  ...partReview({ unjudged: reasons.map((reason) => ({ part: 'throat-insert', reason })) }),
  blowOut: undefined,
});

function retentionOf(conditions: PartConditions): NozzleRetention {
  const { motor } = conditions;
  const { insert } = motor.nozzle;
  const aft = motor.closures?.aft;
  if (insert === undefined) return unjudged(); // said where its strength is evaluated
  if (insert.seat === undefined)
    return unjudged(
      'nozzle.insert.seat not specified; whether the nozzle is blown out or falls through is not evaluated.',
    );
  const limits = aft && seatLimits(motor, insert, insert.seat, aft);
  // A document that describes a seat describes what carries it.
  if (aft === undefined || limits === undefined)
    return unjudged('closures.aft not specified; the seat of the insert is not evaluated.');
  const { widest, narrowest } = limits;
  const metal = metalOf(conditions, aft, widest.sealDiameter);
  const lacking = new Set<string>();
  const of = (seat: SeatGeometry) =>
    [...modesOfInsert(conditions, insert, seat), ...withStrengths(() => metal.modes(seat), lacking)].map(
      (mode) => failureMargin(mode),
    );
  const margins = leastFavourable([of(widest), of(narrowest)]);
  return {
    margins: [...margins, ...(metal.screws?.margins ?? [])],
    checks: [...seatChecks(motor, limits, aft), ...retainerChecks(motor, widest)],
    unjudged: [
      ...bearingUnknown(insert).map((reason) => ({ part: 'throat-insert' as const, reason })),
      ...[...lacking].map((statement) => ({
        part: metal.part,
        reason: `What the insert bears on is not evaluated: ${statement}`,
      })),
      ...heatUnknown(motor),
      ...(metal.screws?.unjudged ?? []).map((reason) => ({ part: 'nozzle-retainer' as const, reason })),
    ],
    cautions: [
      ...linesOf('throat-insert', insertCautions(insert)),
      ...metal.cautions,
      ...linesOf('nozzle-retainer', metal.screws?.cautions ?? []),
    ],
    blowOut: blowOutOf(conditions, widest),
  };
}

/** Modes, or none where the material lacks a strength, which is noted. */
function withStrengths(
  modes: () => readonly PressureDrivenMode[],
  lacking: Set<string>,
): readonly PressureDrivenMode[] {
  try {
    return modes();
  } catch (error) {
    if (!(error instanceof MeopError) || error.code !== 'no-allowable') throw error;
    lacking.add(error.statement);
    return [];
  }
}

const unit = () => unitFor('stress', 'MPa');

/** Pressure beyond the pocket loads the plate alone. */
const insertLoad = (pressure: number, { sealDiameter, pocketDiameter }: SeatGeometry) =>
  seatLoad(pressure, Math.min(sealDiameter, pocketDiameter));

function modesOfInsert(
  { pressure, settings }: PartConditions,
  insert: Insert,
  seat: SeatGeometry,
): readonly PressureDrivenMode[] {
  const { ultimateFactor } = settings.factors;
  return insertModes(
    { ...seat, length: seat.insertLength, poissonRatio: insert.material.poissonRatio?.value ?? 0.5 },
    { load: insertLoad(pressure.si, seat), pressure: pressure.si, unit: unit() },
    {
      compressive: insertStrength(insert, 'compressive', ultimateFactor),
      tensile: insertStrength(insert, 'tensile', ultimateFactor),
    },
  );
}

/** A plate whose strength at elevated temperature is not known, in a motor with a hot case. */
function heatUnknown(motor: Motor): readonly Unjudged[] {
  const { retainer } = motor.nozzle;
  if (retainer === undefined || motor.case.wallTemperature === undefined) return [];
  return closureHeat(motor, retainer) === undefined
    ? [
        {
          part: 'nozzle-retainer',
          reason: `The strength of ${retainer.material.name} at elevated temperature is not known; it is evaluated at room temperature.`,
        },
      ]
    : [];
}

const bearingUnknown = (insert: Insert): readonly string[] =>
  insertStrength(insert, 'compressive', 1) === undefined
    ? [
        `${insert.material.name} has no compressive strength; its bearing on the seat is not evaluated. Specify nozzle.insert.compressiveStrength.`,
      ]
    : [];

const insertCautions = ({ seat, material }: Insert): readonly string[] => [
  ...(seat?.bond === undefined
    ? []
    : [`The bond (${seat.bond}) is not relied on: the seat carries the whole force.`]),
  ...(seat?.thicknessAtOpening === undefined
    ? [
        'nozzle.insert.seat.thicknessAtOpening not specified; assumed what an entrance of 45° leaves at the opening of the seat.',
      ]
    : []),
  ...(material.class === 'brittle'
    ? [
        'The insert is assumed to bear on a third of its seat. Chamfer the insert, round the corner of the seat and do not press the insert in: a sharp corner or an interference cracks it.',
      ]
    : []),
];

/** What carries the insert: the lip of the closure, or a plate and its screws. */
function metalOf(
  conditions: PartConditions,
  aft: Closure,
  sealDiameter: number,
): {
  readonly part: 'aft-closure' | 'nozzle-retainer';
  readonly screws?: TensionBoltReview | undefined;
  readonly modes: (seat: SeatGeometry) => readonly PressureDrivenMode[];
  readonly cautions: readonly PartLine[];
} {
  const {
    motor,
    pressure,
    settings: { factors },
  } = conditions;
  const common = {
    factors: { yield: factors.yieldFactor, ultimate: factors.ultimateFactor },
    pressure: pressure.si,
    unit: unit(),
  };
  const closure = {
    ...common,
    part: 'aft-closure' as const,
    material: aft.material,
    temperature: closureHeat(motor, aft),
  };
  const { retainer } = motor.nozzle;
  if (retainer === undefined)
    return {
      part: closure.part,
      modes: (seat) =>
        lipModes(closure, { ...seat, load: insertLoad(pressure.si, seat), thickness: seat.lipThickness }),
      cautions: linesOf(
        'aft-closure',
        aft.temperature === undefined
          ? [
              'closures.aft.temperature not specified; the lip of the seat is next to the hot insert and may be weaker than evaluated.',
            ]
          : [],
      ),
    };
  const { material, screws } = retainer;
  const plate = {
    ...common,
    part: 'nozzle-retainer' as const,
    material,
    temperature: closureHeat(motor, retainer),
  };
  return {
    part: plate.part,
    modes: (seat) =>
      retainerModes(plate, {
        ...seat,
        load: seatLoad(pressure.si, seat.sealDiameter),
        thickness: seat.lipThickness,
        poissonRatio: material.poissonRatio?.value ?? 0.5, // the moment increases with it
        boltCircle: screws.boltCircle.value.si,
      }),
    screws: retainerScrews(conditions, aft, sealDiameter),
    cautions: linesOf(
      'nozzle-retainer',
      motor.nozzle.insert?.seat?.sealDiameter === undefined
        ? [
            'nozzle.insert.seat.sealDiameter not specified; pressure is assumed to reach the circle of the screws under the plate.',
          ]
        : [],
    ),
  };
}

function blowOutOf({ motor, pressure }: PartConditions, seat: SeatGeometry): NozzleBlowOut {
  const { nozzle, ambient, propellant } = motor;
  const length = (si: number) => fromSiValue<'length'>(si, 'length', unitOf('mm'));
  return nozzleBlowOut({
    chamberPressure: absolute(pressure, ambient.pressure.value),
    gamma: propellant.gamma.value.si,
    sealDiameter: length(seat.sealDiameter),
    throatDiameter: nozzle.throatDiameter.value,
    exitDiameter: nozzle.exitDiameter.value,
    ambientPressure: ambient.pressure.value,
  });
}
