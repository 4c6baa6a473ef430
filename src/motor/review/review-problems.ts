import { fromSiValue, MeopError, type Quantity, unitOf } from '../../units';
import { type DocumentProblem, type Motor, type MotorInput, motorOf, strengthProblems } from '../document';
import { pathText } from '../document/problems';
import { rawAt } from '../document/raw-value';
import { settingsOf } from '../settings';
import { atWorstCaseTolerances } from '../worst-case-tolerances';
import { closureMargins } from './closure-margins';
import { insertMargins } from './insert-margins';
import { faceSealReviews, sealReviews } from './seal-review';
import { standMargins } from './stand-margins';
import { worstShell } from './worst-shell';

type Path = readonly (string | number)[];

/**
 * Lists what prevents the review of a valid document: missing strengths of its materials, and dimensions that the
 * checks of a part reject at a limit of their tolerances. A prediction does not need them.
 *
 * @throws MeopError `motor-document` for an invalid document
 * @example reviewProblems(demoMotor()).length // => 0
 */
export function reviewProblems(input: MotorInput): readonly DocumentProblem[] {
  const motor = motorOf(input);
  const lacking = strengthProblems(motor);
  if (lacking.length > 0) return lacking;
  const json: unknown = JSON.parse(JSON.stringify(motor));
  const worst = atWorstCaseTolerances(motor);
  const settings = settingsOf(motor);
  const { closures } = worst;
  // Errors do not depend on the load: a thread that separates at some pressure is evaluated, not rejected.
  const pressure: Quantity<'gauge pressure'> = fromSiValue(1e6, 'gauge pressure', unitOf('MPa'));
  const thrust: Quantity<'force'> = fromSiValue(100, 'force', unitOf('N'));
  return [
    ...refused(json, [['case']], () => worstShell(worst, pressure, settings)),
    ...(['head', 'aft'] as const).flatMap((end) => {
      const closure = closures?.[end];
      const held = (['retainingRing', 'thread'] as const).find((field) => closure?.[field] !== undefined);
      const at = [['closures', end, held ?? 'joint'], ['closures', end], ['case']];
      return closure === undefined
        ? []
        : refused(json, at, () => closureMargins(worst, end, closure, pressure, settings));
    }),
    ...(['head', 'aft'] as const).flatMap((end) =>
      (motor.closures?.[end]?.seals ?? []).flatMap((_, i) => {
        const at = [['closures', end, 'seals', i], ['closures', end], ['case']];
        const [own, ownWorst] = [withOneSeal(motor, end, i), withOneSeal(worst, end, i)];
        return refused(json, at, () => [
          sealReviews(own, ownWorst, pressure),
          faceSealReviews(own, ownWorst, pressure),
        ]);
      }),
    ),
    ...refused(json, [['nozzle', 'insert'], ['nozzle']], () => insertMargins(worst, pressure, settings)),
    ...refused(json, [['stand', 'restraint'], ['stand']], () => standMargins(worst, thrust)),
  ];
}

/** The motor with one seal only, so that an error is attributed to it. */
function withOneSeal(motor: Motor, end: 'head' | 'aft', i: number): Motor {
  const closure = motor.closures?.[end];
  const seals = closure?.seals.slice(i, i + 1) ?? [];
  return { ...motor, closures: closure && { [end]: { ...closure, seals } } };
}

/** Errors of the checks of a part, at the first path that has the field they name. */
function refused(json: unknown, places: readonly Path[], check: () => unknown): readonly DocumentProblem[] {
  try {
    check();
    return [];
  } catch (error) {
    if (!(error instanceof MeopError)) throw error;
    const fields = error.path === 'temperature' ? ['temperature', 'wallTemperature'] : [error.path ?? ''];
    const found = places
      .flatMap((place) => fields.map((field): Path => [...place, field]))
      .find((path) => rawAt(json, path) !== undefined);
    const path = found ?? places[0] ?? [];
    const message = error.message.replace(/^\w+: (?:\w+: )?/, '');
    return [{ path: pathText(path), code: error.code, message, value: rawAt(json, path) }];
  }
}
