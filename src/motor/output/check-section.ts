import { partName } from '../../structures';
import { namedRows } from '../part-rows';
import type { Review } from '../review/review-result';
import { type ReportSection, section, textCell } from './content';

/** Section on the checks of parts that have no margin of safety. */
export function checkSection({ checks }: Pick<Review, 'checks'>): readonly ReportSection[] {
  const rows = namedRows(checks, ({ check, message }) => [check, message]);
  return section({
    id: 'checks',
    title: 'Checks of the parts',
    tables: [
      {
        name: 'Layout, ligaments and fits',
        prose: true,
        columns: [{ name: 'part' }, { name: 'check' }, { name: 'result' }, { name: 'value and limit' }],
        rows: rows.map(({ part, check, passes, message }) => [
          textCell(part),
          textCell(check),
          { text: passes ? 'pass' : 'fail', verdict: passes ? 'pass' : 'fail' },
          textCell(message),
        ]),
      },
    ],
  });
}

/** Section on the parts, and aspects of parts, that bear pressure and could not be evaluated. */
export function unjudgedSection({ unjudged }: Pick<Review, 'unjudged'>): readonly ReportSection[] {
  return section({
    id: 'not-judged',
    title: 'Not judged',
    tables: [
      {
        name: 'Parts that bear pressure and could not be evaluated',
        prose: true,
        columns: [{ name: 'part' }, { name: 'reason' }],
        rows: unjudged.map(({ part, reason }) => [
          { text: partName(part), verdict: 'marginal' },
          textCell(reason),
        ]),
      },
    ],
  });
}
