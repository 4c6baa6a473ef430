import { linesOf } from '../part-lines';
import { type PartConditions, type PartReview, partReview } from './part-review';
import { worstShell } from './worst-shell';

/** Evaluates the plain tube. */
export function caseMargins({ motor, pressure, settings, attempt }: PartConditions): PartReview {
  const shell = attempt([['case']], () => worstShell(motor, pressure, settings));
  return partReview({ margins: shell?.margins ?? [], cautions: linesOf('case', shell?.cautions ?? []) });
}
