import type { ImpliedArea, PredictionDifference } from '../../ballistics';
import type { Quantity } from '../../units';

/** Below this share the traces agree. */
const agrees = 0.01;

/** What is said of constants or of nothing in particular is enough from here on. */
const explains = 0.5;

const rounded = (value: Quantity, unit: 's' | 'mm'): string =>
  `${Number(value.in(unit).toPrecision(2))} ${unit}`;

/** What is known beside the difference. */
interface DiagnosisContext {
  /** Recorded over predicted. */
  readonly impulse: number | undefined;
  /** Whether a constant of the document is changed. */
  readonly isPatched: boolean;
}

/**
 * What the firing teaches where no constant of the document explains what is left of the difference; empty where one does
 * or nothing is to be explained.
 */
export function diagnosisOf(
  left: PredictionDifference | undefined,
  area: ImpliedArea | undefined,
  { impulse, isPatched }: DiagnosisContext,
): readonly string[] {
  if (left === undefined || left.residual < agrees) return [];
  const [best] = left.explanations;
  if (best !== undefined && best.explained >= explains && best.cause !== 'burning area') return [];
  const none = isPatched
    ? `That does not explain the whole firing: ${(100 * left.residual).toFixed(0)} % of the peaks is left.`
    : 'No constant of the document explains the firing, so none is changed: that is no agreement of the two.';
  const sameImpulse = impulse !== undefined && Math.abs(impulse - 1) < 0.05;
  const flaw = area?.flaw;
  if (flaw === undefined || area?.excess === undefined)
    return [none, ...(area === undefined || !sameImpulse ? [] : faintFlaw(area))];
  const falls = Math.min(...area.excess.si) < 0;
  const share = (100 * flaw.maxExcessFraction).toFixed(0);
  return [
    none,
    `From ${rounded(flaw.from, 's')}, ${rounded(flaw.atDepth, 'mm')} into the web, the pressure asks for up to ${flaw.maxExcess} (${share} %) more burning area than the sound grain has.`,
    ...(falls && sameImpulse
      ? [
          'Later it asks for less, and the impulse is as predicted: propellant burned early through surface that should not have been there. A wrong burn law or throat would shift the whole trace instead.',
        ]
      : []),
    `That is what a flaw does: cracks of ${flaw.crackArea} together, which burn on both faces, or ${flaw.debondArea} of wall where the propellant is loose. Look at the grain before its constants, and put what is found into grain.segments[…].flaws: the review then judges the motor with it.`,
  ];
}

/** What a small flaw leaves behind: more area early, less later, all of it too little to be told from the law by itself. */
function faintFlaw({ time, excess, flawFreeArea }: ImpliedArea): readonly string[] {
  if (excess === undefined || flawFreeArea === undefined) return [];
  const t = time.si;
  const [first, last] = [t[0], t[t.length - 1]];
  // Weighed by time: the steps of a prediction are not even.
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
  const [early, late] = [share(0.06, 0.3), share(0.65, 0.9)]; // without rise and tail
  return early > 0.01 && late < -0.01
    ? [
        `Early the pressure asks for ${(100 * early).toFixed(0)} % more burning area than the sound grain has, late for ${(-100 * late).toFixed(0)} % less, with the impulse as predicted: a small flaw does that. Look at the grain of the next motor.`,
      ]
    : [];
}
