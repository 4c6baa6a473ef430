import { linesOf } from '../part-lines';
import { type PartConditions, type PartReview, partReview } from './part-review';
import { worstShell } from './worst-shell';

/** Evaluates the plain tube. */
export function caseMargins({ motor, pressure, settings, attempt }: PartConditions): PartReview {
  const shell = attempt([['case']], () => worstShell(motor, pressure, settings));
  // The proof test is evaluated for every part together.
  const margins = (shell?.margins ?? []).filter(({ id }) => id !== 'proof-yield');
  return partReview({
    margins,
    unjudged:
      motor.case.wallTemperature === undefined
        ? [
            {
              part: 'case',
              reason:
                'case.wallTemperature not specified; the strength at the temperature of the firing is not evaluated.',
            },
          ]
        : [],
    cautions: linesOf('case', shell?.cautions ?? []),
  });
}
