import type { Quantity } from '../../units';
import type { FailureMargin } from './failure-margin';

/** A place in the order in which parts fail as pressure rises. */
export interface FailureSequenceEntry extends Pick<FailureMargin, 'id' | 'part' | 'mode' | 'consequence'> {
  readonly failurePressure: Quantity<'gauge pressure'>;
  /** Failure pressure over MEOP. */
  readonly meopRatio: number;
}

/** The modes that chamber pressure drives, in the order in which they are reached as it rises, without factors. */
export function failureSequence(
  margins: readonly FailureMargin[],
  meop: Quantity<'gauge pressure'>,
): readonly FailureSequenceEntry[] {
  return margins
    .flatMap(({ id, part, mode, consequence, failurePressure }) =>
      failurePressure === undefined
        ? []
        : [{ id, part, mode, consequence, failurePressure, meopRatio: failurePressure.si / meop.si }],
    )
    .sort((a, b) => a.failurePressure.si - b.failurePressure.si);
}
