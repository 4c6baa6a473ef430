import type { ImpliedArea, PredictionDifference } from '../../ballistics';
import type { Quantity } from '../../units';

/** Relative difference below which the traces agree. */
const agrees = 0.01;

/** Fraction explained from which a constant is a sufficient explanation. */
const explains = 0.5;

const rounded = (value: Quantity, unit: 's' | 'mm'): string =>
  `${Number(value.in(unit).toPrecision(2))} ${unit}`;

/** Further results used in the diagnosis. */
interface DiagnosisContext {
  /** Measured/predicted ratio of total impulse. */
  readonly impulse: number | undefined;
  /** True where a constant of the document is changed. */
  readonly isPatched: boolean;
}

/**
 * Returns the diagnosis where no constant of the document explains the remaining difference; empty where one does
 * or no difference remains.
 */
export function diagnosisOf(
  left: PredictionDifference | undefined,
  area: ImpliedArea | undefined,
  { impulse, isPatched }: DiagnosisContext,
): readonly string[] {
  if (left === undefined || left.residual < agrees) return [];
  const [best] = left.explanations;
  if (best !== undefined && best.explained >= explains && best.id !== 'burning-area') return [];
  const none = isPatched
    ? `This does not explain the whole firing: ${(100 * left.residual).toFixed(0)} % of the peaks remains unexplained.`
    : 'No single model constant explains the difference, so none is changed. Prediction and firing do not agree.';
  const sameImpulse = impulse !== undefined && Math.abs(impulse - 1) < 0.05;
  const flaw = area?.flaw;
  if (flaw === undefined || area?.excess === undefined)
    return [none, ...(area === undefined || !sameImpulse ? [] : faintFlaw(area))];
  const falls = Math.min(...area.excess.si) < 0;
  const share = (100 * flaw.maxExcessFraction).toFixed(0);
  return [
    none,
    `From ${rounded(flaw.from, 's')} (${rounded(flaw.atDepth, 'mm')} web burned) the pressure implies up to ${flaw.maxExcess} (${share} %) more burning area than the flaw-free grain.`,
    ...(falls && sameImpulse
      ? [
          'Later it implies less, and total impulse is as predicted: propellant burned early on surface that is not in the model. A wrong burn law or throat would shift the whole trace instead.',
        ]
      : []),
    `This is consistent with cracks of ${flaw.crackArea} total area burning on both faces, or with ${flaw.debondArea} of debonded wall. Inspect the grain before changing model constants. Add the flaws found to grain.segments[…].flaws, so that the review includes them.`,
  ];
}

/**
 * Diagnosis of a small flaw: more area early and less late, with a difference too small to identify a flaw from
 * either alone.
 */
function faintFlaw({ time, excess, flawFreeArea }: ImpliedArea): readonly string[] {
  if (excess === undefined || flawFreeArea === undefined) return [];
  const t = time.si;
  const [first, last] = [t[0], t[t.length - 1]];
  // Weighted by time: the time steps of a prediction are not uniform.
  const share = (from: number, to: number): number => {
    let [more, sound] = [0, 0];
    for (let k = 1; k < t.length; k++) {
      const passed = (t[k] - first) / (last - first);
      if (passed < from || passed > to) continue;
      more += excess.si[k] * (t[k] - t[k - 1]);
      sound += flawFreeArea.si[k] * (t[k] - t[k - 1]);
    }
    return more / sound;
  };
  const [early, late] = [share(0.06, 0.3), share(0.65, 0.9)]; // excludes rise and tail-off
  return early > 0.01 && late < -0.01
    ? [
        `The pressure implies ${(100 * early).toFixed(0)} % more burning area than the flaw-free grain early and ${(-100 * late).toFixed(0)} % less late, and total impulse is as predicted. This is consistent with a small flaw. Inspect the grain of the next motor.`,
      ]
    : [];
}
