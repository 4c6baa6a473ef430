import type { ErosiveBurningFit, ImpliedArea, PredictionDifference, SimulatedFiring } from '../../ballistics';
import type { ReducedFiring } from '../../firing';
import { type FailureMargin, partName } from '../../structures';
import { type Quantity, table } from '../../units';
import { inspectionLines } from '../reuse/reuse-lines';
import type { Inspection, PartReuse } from '../reuse/reuse-result';

/** A figure of the firing with its predicted value. */
export interface ComparedFigure {
  readonly figure: string;
  readonly predicted: Quantity | undefined;
  readonly measured: Quantity | undefined;
  /** Measured/predicted ratio. */
  readonly ratio: number | undefined;
}

/** Strength utilisation of a failure mode in the firing. */
export interface StrengthUtilisation
  extends Pick<FailureMargin, 'id' | 'part' | 'mode' | 'limit' | 'applied' | 'allowable' | 'marginOfSafety'> {
  /** Applied/allowable ratio without a factor of safety; at 1 or more the part has yielded or failed. */
  readonly utilisation: number;
  /** Margin of safety including the factor, as in the review. */
  readonly marginOfSafety: number;
}

/** A finding for or against reuse of the hardware. The decision is left to the engineer. */
export interface ReuseFinding {
  readonly finding: string;
  readonly effect: 'adverse' | 'favourable' | 'neutral';
}

/** A firing as an entry of the ledger in the document. */
export interface LedgerEntry {
  readonly kind: 'firing';
  readonly pressure: string;
  readonly wallTemperature?: string;
}

/** A change to the document, as a JSON merge patch (RFC 7396). */
export type MotorPatch = Readonly<Record<string, unknown>>;

/** Result of the comparison of a firing with the model, and its effect on the hardware. */
export interface MotorComparison {
  readonly predicted: SimulatedFiring;
  readonly measured: ReducedFiring;
  readonly figures: readonly ComparedFigure[];
  /** Single causes of the difference, best first; undefined where the two have no channel in common. */
  readonly difference: PredictionDifference | undefined;
  /** The burning area that the pressure implies; undefined without pressure. */
  readonly impliedArea: ImpliedArea | undefined;
  /** Constants to change in the document, with the reasons. */
  readonly patch: MotorPatch;
  readonly patchReasons: readonly string[];
  /** Erosive burning that the start of the pressure shows; undefined where the record does not determine it. */
  readonly erosiveBurning: ErosiveBurningFit | undefined;
  /** Diagnosis where no constant explains the firing, such as a flaw implied by the pressure; otherwise empty. */
  readonly diagnosis: readonly string[];
  /** Upper limit of the peak gauge pressure on the hardware. */
  readonly peakPressureUpperBound: Quantity<'gauge pressure'> | undefined;
  /** Utilisation of each mode at that pressure, highest first. */
  readonly utilisations: readonly StrengthUtilisation[];
  readonly reuse: {
    readonly findings: readonly ReuseFinding[];
    /** Inspections before the next firing, with the limits of this motor. */
    readonly inspections: readonly Inspection[];
    /** Cycles used and estimated life of each part, the firing just compared counted. */
    readonly parts: readonly PartReuse[];
    /** The entry for this firing, to be added to `history.pressurisations`; undefined where its pressure is not known. */
    readonly ledgerEntry: LedgerEntry | undefined;
    readonly summary: string;
  };
  readonly cautions: readonly string[];
  toString(): string;
}

/** The comparison as text. */
export function comparisonText(found: Omit<MotorComparison, 'toString'>): string {
  const {
    figures,
    difference,
    patch,
    patchReasons,
    erosiveBurning,
    peakPressureUpperBound,
    utilisations,
    reuse,
    diagnosis,
    cautions,
  } = found;
  const rows = figures.map(({ figure, predicted, measured, ratio }) => ({
    figure,
    predicted: predicted ?? '–',
    measured: measured ?? '–',
    ratio: ratio === undefined ? '–' : ratio.toFixed(3),
  }));
  const most = utilisations.slice(0, 8).map(({ part, mode, applied, allowable, utilisation }) => ({
    part: partName(part),
    mode,
    applied,
    allowable,
    used: `${(100 * utilisation).toFixed(0)} %`,
  }));
  return [
    table(rows),
    ...(difference ? ['', String(difference)] : []),
    '',
    ...(patchReasons.length > 0
      ? ['changes to the document:', ...patchReasons.map((reason) => `  ${reason}`), JSON.stringify(patch)]
      : diagnosis.length > 0
        ? diagnosis
        : ['the firing requires no change to the document']),
    ...(patchReasons.length > 0 ? diagnosis : []),
    ...(erosiveBurning ? [`erosive burning: ${erosiveBurning}`] : []),
    '',
    ...(peakPressureUpperBound === undefined
      ? ['the maximum pressure on the hardware is not known']
      : [
          `maximum pressure on the hardware: up to ${peakPressureUpperBound}; strength utilisation:`,
          table(most),
        ]),
    '',
    reuse.summary,
    ...reuse.findings.map(({ finding, effect }) => `  ${effect === 'neutral' ? 'note' : effect}: ${finding}`),
    ...inspectionLines(reuse).map((line) => `  inspect: ${line}`),
    ...(reuse.ledgerEntry === undefined
      ? []
      : [`entry for history.pressurisations: ${JSON.stringify(reuse.ledgerEntry)}`]),
    ...cautions.map((caution) => `caution: ${caution}`),
  ].join('\n');
}
