import type { Difference, ImpliedArea } from '../../ballistics';
import type { Quantity } from '../../units';

/** Below this share the traces agree. */
const agrees = 0.01;

/** What is said of constants or of nothing in particular is enough from here on. */
const explains = 0.5;

const rounded = (value: Quantity, unit: 's' | 'mm'): string =>
  `${Number(value.in(unit).toPrecision(2))} ${unit}`;

/** What the firing teaches where no constant of the document explains it; empty where one does or nothing is to be explained. */
export function lessonOf(
  difference: Difference | undefined,
  area: ImpliedArea | undefined,
  impulseRatio: number | undefined,
): readonly string[] {
  if (difference === undefined || difference.residual < agrees) return [];
  const [best] = difference.explanations;
  if (best !== undefined && best.explained >= explains && best.cause !== 'burning area') return [];
  const none =
    'No constant of the document explains the firing, so none is changed: that is no agreement of the two.';
  const flaw = area?.flaw;
  if (flaw === undefined || area?.excess === undefined) return [none];
  const falls = Math.min(...area.excess.si) < 0;
  const sameImpulse = impulseRatio !== undefined && Math.abs(impulseRatio - 1) < 0.05;
  const share = (100 * flaw.greatestShare).toFixed(0);
  return [
    none,
    `From ${rounded(flaw.from, 's')}, ${rounded(flaw.atDepth, 'mm')} into the web, the pressure asks for up to ${flaw.greatestExcess} (${share} %) more burning area than the sound grain has.`,
    ...(falls && sameImpulse
      ? [
          'Later it asks for less, and the impulse is as predicted: propellant burned early through surface that should not have been there. A wrong burn law or throat would shift the whole trace instead.',
        ]
      : []),
    `That is what a flaw does: cracks of ${flaw.crackArea} together, which burn on both faces, or ${flaw.debondArea} of wall where the propellant is loose. Look at the grain before its constants, and put what is found into grain.segments[…].flaws: the review then judges the motor with it.`,
  ];
}
