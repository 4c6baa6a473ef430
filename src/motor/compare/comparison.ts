import type { ImpliedArea, PredictionDifference, SimulatedFiring } from '../../ballistics';
import type { ReducedFiring } from '../../firing';
import { type FailureMargin, partName } from '../../structures';
import { type Quantity, table } from '../../units';

/** A figure of the firing beside that of the prediction. */
export interface ComparedFigure {
  readonly figure: string;
  readonly predicted: Quantity | undefined;
  readonly measured: Quantity | undefined;
  /** Measured over predicted. */
  readonly ratio: number | undefined;
}

/** How much of its strength a mode used in the firing. */
export interface StrengthUtilisation
  extends Pick<FailureMargin, 'id' | 'part' | 'mode' | 'limit' | 'applied' | 'allowable' | 'marginOfSafety'> {
  /** Applied over allowable, without factor: from 1 on the part yielded or was at its end. */
  readonly utilisation: number;
}

/** A fact for or against flying the hardware again; what is decided is not the library's. */
export interface ReuseFinding {
  readonly finding: string;
  readonly effect: 'adverse' | 'favourable' | 'neutral';
}

/** A change to the document, as a JSON merge patch (RFC 7396). */
export type MotorPatch = Readonly<Record<string, unknown>>;

/** What a firing says of the model and of the hardware. */
export interface MotorComparison {
  readonly predicted: SimulatedFiring;
  readonly measured: ReducedFiring;
  readonly figures: readonly ComparedFigure[];
  /** Which single cause explains the difference best; undefined where the two share no channel. */
  readonly difference: PredictionDifference | undefined;
  /** The burning area that the pressure implies; undefined without pressure. */
  readonly impliedArea: ImpliedArea | undefined;
  /** Constants that the firing asks to change, each with why. */
  readonly patch: MotorPatch;
  readonly patchReasons: readonly string[];
  /** What the firing teaches where no constant explains it, such as the flaw that the pressure tells of; empty elsewhere. */
  readonly diagnosis: readonly string[];
  /** Upper end of the peak pressure above ambient that the hardware saw. */
  readonly peakPressureUpperBound: Quantity<'gauge pressure'> | undefined;
  /** What each mode used at that pressure, the most first. */
  readonly utilisations: readonly StrengthUtilisation[];
  readonly reuse: {
    readonly findings: readonly ReuseFinding[];
    readonly summary: string;
  };
  readonly cautions: readonly string[];
  toString(): string;
}

/** A comparison as people read it. */
export function comparisonText(found: Omit<MotorComparison, 'toString'>): string {
  const {
    figures,
    difference,
    patch,
    patchReasons,
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
      ? [
          'what the document should say:',
          ...patchReasons.map((reason) => `  ${reason}`),
          JSON.stringify(patch),
        ]
      : diagnosis.length > 0
        ? diagnosis
        : ['the firing asks for no change of the document']),
    ...(patchReasons.length > 0 ? diagnosis : []),
    '',
    ...(peakPressureUpperBound === undefined
      ? ['what pressure the hardware saw is not known']
      : [
          `the hardware saw up to ${peakPressureUpperBound} above ambient; of its strength it used`,
          table(most),
        ]),
    '',
    reuse.summary,
    ...reuse.findings.map(({ finding, effect }) => `  ${effect === 'neutral' ? 'note' : effect}: ${finding}`),
    ...cautions.map((caution) => `caution: ${caution}`),
  ].join('\n');
}
