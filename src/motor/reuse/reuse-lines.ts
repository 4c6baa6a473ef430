import { linesOf, written } from '../part-lines';
import type { ReuseReview } from './reuse-result';

/** The estimates of life as lines of text; equal lines of both ends are merged. */
export const lifeLines = ({ parts }: Pick<ReuseReview, 'parts'>): readonly string[] =>
  written(parts.flatMap(({ part, statement }) => linesOf(part, [statement])));

/** The inspections as lines of text. */
export const inspectionLines = ({ inspections }: Pick<ReuseReview, 'inspections'>): readonly string[] =>
  written(
    inspections.flatMap(({ part, inspection, instruction }) =>
      linesOf(part, [`${inspection}. ${instruction}`]),
    ),
  );
