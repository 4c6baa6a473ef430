import type { Quantity } from '../../units';
import type { Motor } from '../document';
import type { MotorSettings } from '../settings';
import type { Closure } from './closure-heat';
import type { ReviewPart } from './review-result';

/** A closure held in some way, and what it is to be judged at. */
export interface ClosureAtMeop<Held extends Closure> {
  readonly motor: Motor;
  readonly part: ReviewPart;
  readonly closure: Held;
  readonly meop: Quantity<'gauge pressure'>;
  readonly settings: MotorSettings;
}
