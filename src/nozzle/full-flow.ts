// What holds of results that assume a choked throat and a full-flowing divergent section.
import { fromSiValue, MeopError, type Quantity, unitOf } from '../units';
import type { IdealNozzle } from './ideal-nozzle-kernels';

/** The caution of a full-flowing result below Summerfield's limit. */
export const separatesCaution =
  'The exit pressure is below 0.4 of the ambient pressure. The flow will separate and the thrust will differ; use nozzleRegime.';

/** The caution of a full-flowing result with a shock inside. */
export const shockCaution =
  'The ambient pressure is so high that a shock is in the divergent section, and the thrust will differ; use nozzleRegime.';

/** Raises an error where the throat of a full-flowing nozzle is not choked. @throws MeopError `out-of-domain` */
export function requireChoked(
  procedure: string,
  { maxChokedBackPressureRatio }: IdealNozzle,
  chamberPressure: Quantity<'absolute pressure'>,
  ambientPressure: Quantity<'absolute pressure'>,
): void {
  if (ambientPressure.si / chamberPressure.si < maxChokedBackPressureRatio) return;
  const limit = fromSiValue(
    ambientPressure.si / maxChokedBackPressureRatio,
    'absolute pressure',
    unitOf('MPa'),
  );
  throw new MeopError({
    code: 'out-of-domain',
    procedure,
    path: 'chamberPressure',
    given: chamberPressure,
    expected: `above ${limit.format({ figures: 6 })}, where the throat chokes`,
    remedy: 'Use nozzleRegime for unchoked flow',
  });
}
