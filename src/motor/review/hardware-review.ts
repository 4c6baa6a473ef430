import type { Quantity } from '../../units';
import type { Motor } from '../document';
import type { Path } from '../document/problems';
import { linesOf } from '../part-lines';
import type { MotorSettings } from '../settings';
import { atWorstCaseTolerances } from '../worst-case-tolerances';
import { closureMargins, type Retention, type RetentionReview } from './closure-margins';
import { insertMargins } from './insert-margins';
import { type Attempt, orThrow, refusals } from './refusals';
import { faceSealReviews, sealReviews } from './seal-review';
import { standMargins } from './stand-margins';
import { worstShell } from './worst-shell';

type End = 'head' | 'aft';

/** The hardware of a motor at a pressure and a thrust, with the worst-case limits of its tolerances, and what its calculations refuse. */
export function hardwareReview(
  motor: Motor,
  pressure: Quantity<'gauge pressure'>,
  thrust: Quantity<'force'>,
  settings: MotorSettings,
) {
  const worst = atWorstCaseTolerances(motor);
  const { attempt, problems } = refusals(motor.document);
  return {
    worst,
    structure: structureMargins(worst, pressure, thrust, settings, attempt),
    seals: sealReviews(motor, worst, pressure, attempt),
    faceSeals: faceSealReviews(motor, worst, pressure, attempt),
    problems,
  };
}

const refused: RetentionReview = { margins: [], cautions: [] };

/** Every margin of case, closures, insert, stand and restraint of a motor, as it is given, at a pressure above ambient and a thrust. */
export function structureMargins(
  motor: Motor,
  pressure: Quantity<'gauge pressure'>,
  thrust: Quantity<'force'>,
  settings: MotorSettings,
  attempt: Attempt = orThrow,
) {
  const shell = attempt([['case']], () => worstShell(motor, pressure, settings));
  const ends = (['head', 'aft'] as const).map((end) => {
    const closure = motor.closures?.[end];
    if (closure === undefined) return [end, undefined] as const;
    const method = (['retainingRing', 'thread'] as const).find((field) => closure[field] !== undefined);
    const places: Path[] = [['closures', end, method ?? 'joint'], ['closures', end], ['case']];
    return [
      end,
      attempt(places, () => closureMargins(motor, end, closure, pressure, settings)) ?? refused,
    ] as const;
  });
  const insert = attempt([['nozzle', 'insert'], ['nozzle']], () => insertMargins(motor, pressure, settings));
  const stand = attempt([['stand', 'restraint'], ['stand']], () => standMargins(motor, thrust));
  const held = <F extends keyof Retention>(field: F): { readonly [E in End]?: NonNullable<Retention[F]> } =>
    Object.fromEntries(ends.flatMap(([end, one]) => (one?.[field] === undefined ? [] : [[end, one[field]]])));
  return {
    margins: [
      ...(shell?.margins ?? []),
      ...ends.flatMap(([, one]) => one?.margins ?? []),
      ...(insert?.margins ?? []),
      ...(stand?.margins ?? []),
    ],
    joints: held('joint'),
    retainingRings: held('retainingRing'),
    threads: held('thread'),
    restraint: stand?.restraint,
    cautions: [
      ...linesOf('case', shell?.cautions ?? []),
      ...ends.flatMap(
        ([end, one]) =>
          one?.cautions ?? [{ text: `${end} closure not specified; joint and seals are not evaluated.` }],
      ),
      ...(insert?.cautions ?? []),
      ...(stand?.cautions ?? []),
    ],
  };
}
