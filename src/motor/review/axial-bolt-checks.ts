import type { TensionBoltReview } from '../../structures';
import { ligamentBetweenHoles, ligamentToBore, ligamentToOutside, threadGeometry } from '../../structures';
import { fromSiValue, type Quantity, unitFor } from '../../units';
import type { PartCheck } from './part-review';
import type { AxiallyBolted } from './worst-axial-bolts';
import { narrowestCase, weakestCase } from './worst-sizes';

const practice = 'Ligaments of tapped holes (engineering practice, no published source)';

/** Checks of the metal round the tapped holes of bolts along the axis, and of the proportion of the joint. */
export function axialBoltChecks(
  { motor, part, closure }: AxiallyBolted,
  { fatigue }: TensionBoltReview,
): readonly PartCheck[] {
  const { flange, thread, count, boltCircle, holeDiameter } = closure.axialBolts;
  const shoulder = closure.layout?.shoulder;
  const { majorDiameter } = threadGeometry(thread);
  const unit = unitFor('length', boltCircle.value.unit);
  const length = (si: number): Quantity<'length'> => fromSiValue<'length'>(si, 'length', unit);
  const hole = { boltCircle: boltCircle.value.si, holeDiameter: majorDiameter.si };
  const outsideDiameter = flange?.outsideDiameter.value ?? narrowestCase(motor);
  const ligament = (what: string, value: number, diameters: number): PartCheck => {
    const limit = diameters * majorDiameter.si;
    const [shown, required] = [length(value), length(limit)];
    return {
      part,
      check: `ligament between ${what}`,
      value: shown,
      limit: required,
      passes: value >= limit * (1 - 1e-9),
      message: `The ligament between ${what} is ${shown}; required ≥ ${required} (${diameters} × ${thread}).`,
      source: practice,
    };
  };
  return [
    ligament('tapped holes and bore', ligamentToBore.si({ ...hole, bore: weakestCase(motor).bore.si }), 0.5),
    ligament(
      'tapped holes and outside',
      ligamentToOutside.si({ ...hole, outsideDiameter: outsideDiameter.si }),
      0.5,
    ),
    ...(shoulder === undefined
      ? []
      : [
          ligament(
            'clearance holes and edge of the closure',
            ligamentToOutside.si({
              boltCircle: boltCircle.value.si,
              holeDiameter: holeDiameter.value.si,
              outsideDiameter: shoulder.diameter.value.si - shoulder.diameter.plusMinus,
            }),
            0.5,
          ),
        ]),
    ...(count < 2 ? [] : [ligament('tapped holes', ligamentBetweenHoles.si({ ...hole, count }), 1.5)]),
    ...(fatigue.goodman === undefined
      ? []
      : [
          {
            part,
            check: 'proportion of the bolts (fatigue)',
            value: fatigue.goodman,
            limit: 1,
            passes: fatigue.goodman >= 1,
            message: `The fatigue factor of the bolts at maximum preload is ${fatigue.goodman.toFixed(2)} with a stress amplitude of ${fatigue.amplitude}; required ≥ 1. It shows the proportion of the joint, not a life.`,
            source: "Shigley's Mechanical Engineering Design, 9th ed., section 8-11, Goodman, and table 8-17",
          },
        ]),
  ];
}

/** Cautions for ligaments that satisfy the check and are less than one diameter. */
export const thinLigaments = (checks: readonly PartCheck[], limit: Quantity<'length'>): readonly string[] =>
  checks.flatMap(({ check, value, passes }) =>
    passes && /bore|outside/.test(check) && typeof value !== 'number' && value.si < limit.si
      ? [
          `The ${check} is ${value}, less than one bolt diameter (${limit}), which is recommended in aluminium (engineering practice, no published source).`,
        ]
      : [],
  );
