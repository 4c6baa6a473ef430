import { choice, optional, procedure, type Values } from '../../units';
import { isReducedFiring } from '../given-firing';
import { comparisonContent, comparisonSections } from './comparison-section';
import type { ReportContent } from './content';
import { csvReport } from './csv-report';
import { plotEngine } from './draw-plot';
import { drawings, drawingsOf } from './drawings';
import { envelopeContent, envelopeSection } from './envelope-section';
import { firingContent, reducedContent } from './firing-content';
import { htmlReport } from './html-report';
import { reportJson } from './json-report';
import { markdownReport } from './markdown-report';
import { measuredSection } from './measured-section';
import { pressureContent } from './pressure-section';
import {
  isComparison,
  isFlawEnvelope,
  isMeop,
  isReview,
  type Reportable,
  reportable,
  reportContent,
} from './reportable';
import { reviewContent } from './review-content';
import { textReport } from './text-report';

/** Formats of a report. */
export type ReportFormat = 'text' | 'markdown' | 'html' | 'csv' | 'json';

/**
 * All formats print the same digits. {@link reportPage} includes the plots.
 *
 * @example report(firing({ origin: 'measured', time: series([0, 0.1, 1.9, 2.1], 's'), thrust: series([0, 500, 500, 0], 'N') }), { format: 'csv' }).slice(0, 14) // => 'part,table,row'
 */
export const report = /* @__PURE__ */ procedure({
  name: 'report',
  title: 'Report on a review, a MEOP, a comparison, a flaw envelope or a firing',
  source: 'definition',
  subject: reportable,
  inputs: {
    format: optional(
      choice(
        'text for a terminal, Markdown, one self-contained HTML page, CSV with one number per line, or JSON',
        ['text', 'markdown', 'html', 'csv', 'json'] satisfies readonly ReportFormat[],
      ),
      'text',
    ),
    ...reportContent,
    drawings: optional(drawings),
  },
  gives: 'the report as text in the format',
  example: 'report(review(demoMotor()))',
  run: (subject, { format, drawings: drawn, ...more }): string => {
    const content = contentOf(subject, more);
    switch (format) {
      case 'text':
        return textReport(content);
      case 'markdown':
        return markdownReport(content);
      case 'html':
        return htmlReport(content, drawn);
      case 'csv':
        return csvReport(content);
      case 'json':
        return `${JSON.stringify(reportJson(content), undefined, 2)}\n`;
    }
  },
});

const withPlots = { ...reportContent, engine: optional(plotEngine) };

/**
 * @throws MeopError `no-plot-engine` where the packages are neither passed nor found
 * @example typeof reportDrawings // => 'function'
 */
export const reportDrawings = /* @__PURE__ */ procedure({
  name: 'reportDrawings',
  title: 'Plots of a report, drawn with the packages vega and vega-lite',
  source: 'vega and vega-lite',
  subject: reportable,
  inputs: withPlots,
  gives: 'each plot as SVG, in a wide and a narrow version',
  example: 'reportDrawings(review(demoMotor()))',
  asynchronous: true,
  run: (subject, { engine, ...more }) => drawingsOf(contentOf(subject, more), engine),
});

/**
 * @throws MeopError `no-plot-engine` where the packages are neither passed nor found: `report(…, { format: 'html' })`
 * gives the page without plots
 * @example typeof reportPage // => 'function'
 */
export const reportPage = /* @__PURE__ */ procedure({
  name: 'reportPage',
  title: 'Report as one HTML page with plots, drawn with the packages vega and vega-lite',
  source: 'vega and vega-lite',
  subject: reportable,
  inputs: withPlots,
  gives: 'the page',
  example: 'reportPage(review(demoMotor()))',
  asynchronous: true,
  run: async (subject, { engine, ...more }) => {
    const content = contentOf(subject, more);
    return htmlReport(content, await drawingsOf(content, engine));
  },
});

function contentOf(
  subject: Reportable,
  { firing, comparison, flaws }: Values<typeof reportContent>,
): ReportContent {
  if (isReview(subject)) {
    const levels = [{ label: 'MEOP', at: subject.meop.pressure }];
    const { prediction } = subject;
    return reviewContent(
      subject,
      [
        ...(flaws === undefined ? [] : envelopeSection(flaws)),
        ...(comparison === undefined
          ? firing === undefined
            ? []
            : measuredSection(firing, { prediction, levels })
          : comparisonSections(comparison, { levels })),
      ],
      comparison,
    );
  }
  if (isMeop(subject)) return pressureContent(subject);
  if (isComparison(subject)) return comparisonContent(subject);
  if (isFlawEnvelope(subject)) return envelopeContent(subject);
  return isReducedFiring(subject) ? reducedContent(subject) : firingContent(subject);
}
