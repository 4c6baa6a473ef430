import { caseMargins } from './case-margins';
import { insertMargins } from './insert-margins';
import { layoutChecks } from './layout-checks';
import type { PartReviewer } from './part-review';

/**
 * Reviewers of the parts that bear pressure, in the order of their findings. The retention of the closures and the
 * stand are evaluated apart from these.
 */
export const partReviewers: readonly PartReviewer[] = [caseMargins, insertMargins, layoutChecks];
