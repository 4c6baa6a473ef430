import type { TappedEndMargins, TensionBoltReview } from '../../structures';
import { reviewTappedEndAs } from '../../structures/tension-bolts/review-tapped-end';
import { reviewTensionBoltsAs } from '../../structures/tension-bolts/review-tension-bolts';
import type { ClosureAtMeop } from './closure-at-meop';
import { type Closure, closureHeat } from './closure-heat';
import { pressureAreaDiameter, weakestCase } from './worst-sizes';

/** A closure with bolts along the axis. */
export type AxiallyBolted = ClosureAtMeop<
  Closure & { readonly axialBolts: NonNullable<Closure['axialBolts']> }
>;

/** Evaluates the bolts along the axis that retain a closure. */
export function worstAxialBolts({ motor, part, closure, meop, settings }: AxiallyBolted): TensionBoltReview {
  const { flange, ...bolts } = closure.axialBolts;
  const { bore, outsideDiameter } = weakestCase(motor);
  const { material, wallTemperature } = motor.case;
  return reviewTensionBoltsAs(
    {
      pressure: meop,
      sealDiameter: pressureAreaDiameter(motor, closure),
      bolts: {
        thread: bolts.thread,
        boltClass: bolts.boltClass,
        count: bolts.count,
        boltCircle: bolts.boltCircle.value,
        clampedThickness: bolts.clampedThickness.value,
        engagement: bolts.engagement.value,
        holeDiameter: bolts.holeDiameter.value,
        headDiameter: bolts.headDiameter?.value,
        shankLength: bolts.shankLength?.value,
        preload: bolts.preload?.value,
        torque: bolts.torque?.value,
        finish: bolts.finish,
        tightening: bolts.tightening,
        relaxation: bolts.relaxation?.value.si,
      },
      clampedMaterial: closure.material,
      tappedMaterial: material,
      insideDiameter: bore,
      outsideDiameter: flange?.outsideDiameter.value ?? outsideDiameter,
      clampedTemperature: closureHeat(motor, closure),
      tappedTemperature: wallTemperature?.value,
      coldest: motor.temperatureRange?.coldest.value,
      factors: settings.factors,
    },
    part,
  );
}

/** Evaluates the end of the case that the bolts are tapped into. */
export function worstTappedEnd({ motor, part, closure, meop, settings }: AxiallyBolted): TappedEndMargins {
  const { flange, thread, count, boltCircle } = closure.axialBolts;
  const { wall, outsideDiameter } = weakestCase(motor);
  const { material, wallTemperature } = motor.case;
  return reviewTappedEndAs(
    {
      pressure: meop,
      sealDiameter: pressureAreaDiameter(motor, closure),
      tube: { outsideDiameter, wall, material, wallTemperature: wallTemperature?.value },
      ...(flange && {
        flange: { outsideDiameter: flange.outsideDiameter.value, thickness: flange.thickness.value },
      }),
      thread,
      count,
      boltCircle: boltCircle.value,
      factors: settings.factors,
    },
    part,
  );
}
