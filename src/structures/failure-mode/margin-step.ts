import { loadMarginOfSafety, marginOfSafety, pressureMarginOfSafety } from '../margin';
import { kindOf, type Step, step } from './calculation';
import type { FailureMode } from './failure-mode';

/** The last step of a mode: its margin of safety, of a stress, a load or a pressure. */
export function marginStep({ calculation, allowable, factor }: FailureMode): Step {
  const values = { applied: calculation.value, allowable: allowable.value, factor };
  switch (kindOf(calculation)) {
    case 'stress':
      return step(marginOfSafety, values);
    case 'force':
      return step(loadMarginOfSafety, values);
    default:
      return step(pressureMarginOfSafety, values);
  }
}
