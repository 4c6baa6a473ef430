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

/** The formats of a report. */
export type ReportFormat = 'text' | 'markdown' | 'html' | 'csv' | 'json';

/** What a report can be made of. */
export type Reportable = Review | Meop | MotorComparison | FlawEnvelope | ReducedFiring | Firing;

/** What goes into a report beside its subject. */
export interface ReportInput {
  /** A recorded firing of the motor, laid beside the prediction of a review. */
  readonly firing?: ReducedFiring;
  /** What a recorded firing says of the model and of the hardware; holds the firing, too. */
  readonly comparison?: MotorComparison;
  /** The flaws that the motor survives. */
  readonly flaws?: FlawEnvelope;
}

/** How a report is written. */
export interface ReportOptions extends ReportInput {
  /** Default `'text'`. */
  readonly format?: ReportFormat;
  /** The plots of an HTML page, drawn by {@link reportDrawings}; without them it has tables only. */
  readonly drawings?: Drawings;
}

/**
 * A report on a review, a MEOP, a comparison, a flaw envelope, a reduced firing or a firing: text for a terminal, Markdown, one HTML page that needs nothing
 * else, CSV with one number a line, or JSON. All print the same digits. {@link reportPage} gives the page with its plots.
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
        `report: format: '${String(format)}' given; text, markdown, html, csv or json is expected`,
        'format',
        { value: format },
      );
  }
}

/**
 * The plots of a report as SVG, drawn with the packages `vega` and `vega-lite`; `engine` hands them in
 * where the program is bundled or CommonJS.
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
 * A report as one HTML page with its plots inside, drawn with the packages `vega` and `vega-lite`; `engine` hands them in
 * where the program is bundled or CommonJS.
 *
 * @throws MeopError `no-plot-engine` where they are not installed: `report(…, { format: 'html' })` gives the page without plots
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
