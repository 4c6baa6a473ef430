import { oRingGland } from '../../structures';
import type { Quantity } from '../../units';
import type { Motor } from '../document';
import type { SealReview } from './review-result';
import { toleranced } from './worst-sizes';

/** Every O-ring at MEOP, over its tolerances; the bore takes those of tube and wall. `worst` is the motor at its worse ends. */
export function sealReviews(
  motor: Motor,
  worst: Motor,
  meop: Quantity<'gauge pressure'>,
): readonly SealReview[] {
  const { case: tube, closures, ambient } = motor;
  const { temperatureRange } = worst;
  const { wallTemperature, wall: thinnest } = worst.case;
  const outside = toleranced(tube.outsideDiameter);
  const wall = toleranced(tube.wall);
  const bore = {
    nominal: outside.nominal.minus(wall.nominal.times(2)),
    plusMinus: outside.plusMinus.plus(wall.plusMinus.times(2)),
  };
  const rise = (wallTemperature?.value.si ?? 0) - ambient.temperature.value.si;
  return (['head', 'aft'] as const).flatMap((closure) =>
    (closures?.[closure]?.seals ?? []).map((seal, i) => {
      const { hardness, backupThickness } = worst.closures?.[closure]?.seals[i] ?? seal;
      return {
        closure,
        place: i + 1,
        gland: oRingGland({
          ring: seal.ring,
          bore,
          grooveDiameter: toleranced(seal.grooveDiameter),
          grooveWidth: toleranced(seal.grooveWidth),
          closureDiameter: toleranced(seal.closureDiameter),
          pressure: meop,
          caseWall: thinnest.value,
          caseMaterial: tube.material,
          ...(rise > 0 && { caseTemperatureRise: `${rise} delta_K` as const }),
          ...(hardness && { hardness: hardness.value.si }),
          ...(seal.compound && { compound: seal.compound }),
          ...(temperatureRange && { coldest: temperatureRange.coldest.value }),
          ...(wallTemperature && { hottest: wallTemperature.value }),
          ...(seal.backupRings !== undefined && { backupRings: seal.backupRings }),
          ...(backupThickness && { backupThickness: backupThickness.value }),
        }),
      };
    }),
  );
}
