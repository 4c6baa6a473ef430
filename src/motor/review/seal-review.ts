import { oRingGland } from '../../structures';
import type { Quantity } from '../../units';
import type { Motor } from '../document';
import type { SealReview } from './review-result';
import { toleranced } from './worst-sizes';

/** Every O-ring at MEOP, over its tolerances; the bore takes those of tube and wall. */
export function sealReviews(motor: Motor, meop: Quantity<'gauge pressure'>): readonly SealReview[] {
  const { case: tube, closures, temperatureRange, ambient } = motor;
  const outside = toleranced(tube.outsideDiameter);
  const wall = toleranced(tube.wall);
  const bore = {
    nominal: outside.nominal.minus(wall.nominal.times(2)),
    plusMinus: outside.plusMinus.plus(wall.plusMinus.times(2)),
  };
  const rise = (tube.wallTemperature?.value.si ?? 0) - ambient.temperature.value.si;
  return (['head', 'aft'] as const).flatMap((closure) =>
    (closures?.[closure]?.seals ?? []).map((seal, i) => ({
      closure,
      place: i + 1,
      gland: oRingGland({
        ring: seal.ring,
        bore,
        grooveDiameter: toleranced(seal.grooveDiameter),
        grooveWidth: toleranced(seal.grooveWidth),
        closureDiameter: toleranced(seal.closureDiameter),
        pressure: meop,
        caseWall: tube.wall.value,
        caseMaterial: tube.material,
        ...(rise > 0 && { caseTemperatureRise: `${rise} delta_K` as const }),
        ...(seal.hardness && { hardness: seal.hardness.value.si }),
        ...(seal.compound && { compound: seal.compound }),
        ...(temperatureRange && { coldest: temperatureRange.coldest.value }),
        ...(tube.wallTemperature && { hottest: tube.wallTemperature.value }),
        ...(seal.backupRings !== undefined && { backupRings: seal.backupRings }),
        ...(seal.backupThickness && { backupThickness: seal.backupThickness.value }),
      }),
    })),
  );
}
