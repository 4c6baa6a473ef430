import type { Firing, ReducedFiring } from '../../firing';
import { MeopError } from '../../units';
import type { MotorComparison } from '../compare/comparison';
import type { FlawEnvelope } from '../envelope/flaw-envelope';
import type { Meop } from '../meop/meop-result';
import type { Review } from '../review/review-result';
import { comparisonContent, comparisonSections } from './comparison-section';
import type { ReportContent } from './content';
import { csvReport } from './csv-report';
import type { PlotEngine } from './draw-plot';
import { type Drawings, drawingsOf } from './drawings';
import { envelopeContent, envelopeSection } from './envelope-section';
import { firingContent, reducedContent } from './firing-content';
import { htmlReport } from './html-report';
import { reportJson } from './json-report';
import { markdownReport } from './markdown-report';
import { measuredSection } from './measured-section';
import { pressureContent } from './pressure-section';
import { reviewContent } from './review-content';
import { textReport } from './text-report';

/** Formats of a report. */
export type ReportFormat = 'text' | 'markdown' | 'html' | 'csv' | 'json';

/** Subjects of a report. */
export type Reportable = Review | Meop | MotorComparison | FlawEnvelope | ReducedFiring | Firing;

/** Additional content of a report. */
export interface ReportInput {
  /** Recorded firing of the motor, compared with the prediction of a review. */
  readonly firing?: ReducedFiring;
  /** Comparison of a recorded firing with the model, and its effect on the hardware; includes the firing. */
  readonly comparison?: MotorComparison;
  /** Critical flaw sizes of the motor. */
  readonly flaws?: FlawEnvelope;
}

/** Options of a report. */
export interface ReportOptions extends ReportInput {
  /** Default `'text'`. */
  readonly format?: ReportFormat;
  /** Plots of an HTML page, drawn by {@link reportDrawings}; without them the page contains tables only. */
  readonly drawings?: Drawings;
}

/**
 * Writes a report on a review, a MEOP, a comparison, a flaw envelope, a reduced firing or a firing: text for a
 * terminal, Markdown, one self-contained HTML page, CSV with one number per line, or JSON. All formats print the
 * same digits. {@link reportPage} includes the plots.
 *
 * @throws MeopError `unknown-name` for another format
 * @example report(firing({ origin: 'measured', time: series([0, 0.1, 1.9, 2.1], 's'), thrust: series([0, 500, 500, 0], 'N') }), { format: 'csv' }).slice(0, 14) // => 'part,table,row'
 */
export function report(subject: Reportable, options: ReportOptions = {}): string {
  const { format = 'text', drawings } = options;
  const content = contentOf(subject, options);
  switch (format) {
    case 'text':
      return textReport(content);
    case 'markdown':
      return markdownReport(content);
    case 'html':
      return htmlReport(content, drawings);
    case 'csv':
      return csvReport(content);
    case 'json':
      return `${JSON.stringify(reportJson(content), undefined, 2)}\n`;
    default:
      throw new MeopError(
        'unknown-name',
        `report: format must be text, markdown, html, csv or json, got '${String(format)}'`,
        'format',
        { value: format },
      );
  }
}

/**
 * Draws the plots of a report as SVG with the packages `vega` and `vega-lite`. Pass them as `engine` in a bundled
 * or CommonJS program.
 *
 * @throws MeopError `no-plot-engine` where they are not installed
 * @example typeof reportDrawings // => 'function'
 */
export function reportDrawings(
  subject: Reportable,
  matter: ReportInput = {},
  engine?: PlotEngine,
): Promise<Drawings> {
  return drawingsOf(contentOf(subject, matter), engine);
}

/**
 * Writes a report as one HTML page with plots, drawn with the packages `vega` and `vega-lite`. Pass them as
 * `engine` in a bundled or CommonJS program.
 *
 * @throws MeopError `no-plot-engine` where they are not installed: `report(…, { format: 'html' })` gives the page
 * without plots
 * @example typeof reportPage // => 'function'
 */
export async function reportPage(
  subject: Reportable,
  matter: ReportInput = {},
  engine?: PlotEngine,
): Promise<string> {
  const content = contentOf(subject, matter);
  return htmlReport(content, await drawingsOf(content, engine));
}

function contentOf(subject: Reportable, { firing, comparison, flaws }: ReportInput): ReportContent {
  if ('margins' in subject) {
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
  if ('worstCase' in subject) return pressureContent(subject);
  if ('reuse' in subject) return comparisonContent(subject);
  if ('flawFreePeakPressure' in subject) return envelopeContent(subject);
  return 'record' in subject ? reducedContent(subject) : firingContent(subject);
}
