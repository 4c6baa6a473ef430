import { type FaceSeal, faceSeal, type ORingGland, oRingGland } from '../../structures';
import { fromSiValue, type Quantity, unitOf } from '../../units';
import type { Motor } from '../document';
import { boreOf } from '../document/case-size';
import { isFaceSeal } from '../document/closure-inputs';
import type { Path } from '../document/problems';
import { type Attempt, orThrow } from './refusals';
import type { FaceSealReview, Review, SealReview } from './review-result';
import { toleranced } from './worst-sizes';

const placesOf = (end: 'head' | 'aft', i: number): readonly Path[] => [
  ['closures', end, 'seals', i],
  ['closures', end],
  ['case'],
];

/**
 * Evaluates every radial O-ring at MEOP over its tolerances; the bore has its own tolerance, or those of tube and wall. `worst`
 * is the motor at its worst-case limits.
 */
export function sealReviews(
  motor: Motor,
  worst: Motor,
  meop: Quantity<'gauge pressure'>,
  attempt: Attempt = orThrow,
): readonly SealReview[] {
  const { case: tube, closures, ambient } = motor;
  const { temperatureRange } = worst;
  const { wallTemperature, wall: thinnest } = worst.case;
  const bore = toleranced(boreOf(tube));
  const rise = (wallTemperature?.value.si ?? 0) - ambient.temperature.value.si;
  return (['head', 'aft'] as const).flatMap((closure) =>
    (closures?.[closure]?.seals ?? []).flatMap((seal, i) => {
      if (isFaceSeal(seal)) return [];
      const atWorst = worst.closures?.[closure]?.seals[i];
      const { hardness, backupThickness } = atWorst === undefined || isFaceSeal(atWorst) ? seal : atWorst;
      const gland = attempt(placesOf(closure, i), () =>
        oRingGland({
          ring: seal.ring,
          bore,
          grooveDiameter: toleranced(seal.grooveDiameter),
          grooveWidth: toleranced(seal.grooveWidth),
          closureDiameter: toleranced(seal.closureDiameter),
          pressure: meop,
          caseWall: thinnest.value,
          caseMaterial: tube.material,
          ...(rise > 0 && {
            caseTemperatureRise: fromSiValue<'temperature difference'>(
              rise,
              'temperature difference',
              unitOf('delta_K'),
            ),
          }),
          ...(hardness && { hardness: hardness.value.si }),
          ...(seal.compound && { compound: seal.compound }),
          ...(temperatureRange && { coldest: temperatureRange.coldest.value }),
          ...(wallTemperature && { hottest: wallTemperature.value }),
          ...(seal.backupRings !== undefined && { backupRings: seal.backupRings }),
          ...(backupThickness && { backupThickness: backupThickness.value }),
        }),
      );
      return gland === undefined ? [] : [{ closure, place: i + 1, gland }];
    }),
  );
}

/**
 * Evaluates every face seal at MEOP over its tolerances. `openings` is how far bolts along the axis let the faces open; it is used
 * where the document specifies no `faceGap`.
 */
export function faceSealReviews(
  motor: Motor,
  worst: Motor,
  meop: Quantity<'gauge pressure'>,
  attempt: Attempt = orThrow,
  openings: Readonly<Partial<Record<'head' | 'aft', Quantity<'length'> | undefined>>> = {},
): readonly FaceSealReview[] {
  const { temperatureRange } = worst;
  const { wallTemperature } = worst.case;
  return (['head', 'aft'] as const).flatMap((closure) =>
    (motor.closures?.[closure]?.seals ?? []).flatMap((seal, i) => {
      if (!isFaceSeal(seal)) return [];
      const atWorst = worst.closures?.[closure]?.seals[i];
      const { hardness, faceGap } = atWorst === undefined || !isFaceSeal(atWorst) ? seal : atWorst;
      const gap = faceGap?.value ?? openings[closure];
      const own = worst.closures?.[closure]?.temperature;
      const hottest = (own?.value.si ?? 0) > (wallTemperature?.value.si ?? 0) ? own : wallTemperature;
      const face = attempt(placesOf(closure, i), () =>
        faceSeal({
          ring: seal.ring,
          grooveOutsideDiameter: toleranced(seal.grooveOutsideDiameter),
          grooveInsideDiameter: toleranced(seal.grooveInsideDiameter),
          grooveDepth: toleranced(seal.grooveDepth),
          pressure: meop,
          ...(gap && { faceGap: gap }),
          ...(hardness && { hardness: hardness.value.si }),
          ...(seal.compound && { compound: seal.compound }),
          ...(temperatureRange && { coldest: temperatureRange.coldest.value }),
          ...(hottest && { hottest: hottest.value }),
        }),
      );
      return face === undefined ? [] : [{ closure, place: i + 1, face }];
    }),
  );
}

/** The seals of both kinds, grouped by closure, starting at the gas side. */
export function allSeals({ seals, faceSeals }: Pick<Review, 'seals' | 'faceSeals'>): readonly {
  readonly closure: 'head' | 'aft';
  readonly place: number;
  readonly seal: ORingGland | FaceSeal;
}[] {
  return [
    ...seals.map(({ closure, place, gland }) => ({ closure, place, seal: gland })),
    ...faceSeals.map(({ closure, place, face }) => ({ closure, place, seal: face })),
  ].sort((a, b) => (a.closure === b.closure ? a.place - b.place : a.closure === 'head' ? -1 : 1));
}
