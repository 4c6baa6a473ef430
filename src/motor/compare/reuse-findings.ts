import type { ReducedFiring } from '../../firing';
import type { Quantity } from '../../units';
import type { Motor } from '../document';
import { linesOf, written } from '../part-lines';
import type { ReuseReview } from '../reuse/reuse-result';
import type { MotorSettings } from '../settings';
import type { ReuseFinding, StrengthUtilisation } from './comparison';

/** Returns the findings for and against reuse of the hardware. The decision is left to the engineer. */
export function reuseFindings(
  motor: Motor,
  measured: ReducedFiring,
  utilisations: readonly StrengthUtilisation[],
  peakPressureUpperBound: Quantity<'gauge pressure'> | undefined,
  meop: Quantity<'gauge pressure'>,
  { factors }: MotorSettings,
  ledger: ReuseReview,
): readonly ReuseFinding[] {
  const findings: ReuseFinding[] = [];
  const add = (effect: ReuseFinding['effect'], finding: string): void => {
    findings.push({ finding, effect });
  };
  if (peakPressureUpperBound === undefined)
    add('adverse', 'The maximum pressure on the hardware is not known.');
  else {
    const over = peakPressureUpperBound.si / meop.si;
    if (over > 1)
      add(
        'adverse',
        `Maximum pressure up to ${peakPressureUpperBound}, ${over.toFixed(2)} × the design MEOP of ${meop}.`,
      );
    else add('favourable', `Maximum pressure at most ${peakPressureUpperBound}, ${over.toFixed(2)} × MEOP.`);
    if (over > factors.proofFactor)
      add('adverse', `The maximum pressure exceeds the proof pressure of ${factors.proofFactor} × MEOP.`);
    const beyond = utilisations.filter((one) => one.utilisation >= 1);
    const allAgainst = (ones: readonly StrengthUtilisation[], message: string): void => {
      const lines = ones.flatMap(({ part, mode, utilisation: share }) =>
        linesOf(part, [`${mode}: reached ${(100 * share).toFixed(0)} % of the allowable${message}`]),
      );
      for (const line of written(lines, ', ')) add('adverse', line);
    };
    allAgainst(beyond, '. Measure the part before any other step.');
    const near = utilisations.filter(
      (one) => one.utilisation < 1 && one.limit === 'yield' && one.utilisation * factors.yieldFactor > 1,
    );
    allAgainst(near, `; with the factor of ${factors.yieldFactor} the margin of safety is negative.`);
    if (beyond.length === 0 && near.length === 0 && utilisations.length > 0)
      add('favourable', 'All margins of safety, including the factor, were zero or greater.');
  }
  if (measured.clipping.pressure !== undefined)
    add('adverse', 'The pressure channel saturated. The upper limit of the estimated peak is used.');
  heatFacts(motor, measured, add);
  lifeFacts(ledger, add);
  add('neutral', 'Replace O-rings after every firing (engineering practice, no published source).');
  const ends = [motor.closures?.head, motor.closures?.aft];
  if (ends.some((closure) => closure?.retainingRing !== undefined))
    add(
      'neutral',
      'A retaining ring loaded against its groove may be permanently deformed. Replace it (engineering practice, no published source).',
    );
  add('neutral', 'Measure the throat, and inspect for scratches and burns.');
  add(
    'neutral',
    'Heated aluminium may have lost its temper. Check hardness (engineering practice, no published source).',
  );
  return findings;
}

/** The life that remains, the firing just compared counted. */
function lifeFacts(
  { parts, heat, checks }: ReuseReview,
  add: (effect: ReuseFinding['effect'], finding: string) => void,
): void {
  const of = (isUsed: boolean): readonly string[] =>
    written(
      parts
        .filter(({ remainingFirings }) => (remainingFirings === 0) === isUsed)
        .flatMap(({ part, statement }) => linesOf(part, [statement])),
    );
  for (const line of of(true)) add('adverse', line);
  for (const line of of(false)) add('neutral', line);
  const isTempered = checks.every(({ check, passes }) => passes || check !== 'temper after heating');
  if (heat !== undefined) add(isTempered ? 'neutral' : 'adverse', heat.statement);
}

function heatFacts(
  motor: Motor,
  measured: ReducedFiring,
  add: (effect: ReuseFinding['effect'], finding: string) => void,
): void {
  const limit = motor.case.wallTemperature?.value;
  const channels = Object.entries(measured.record.temperatures);
  if (channels.length === 0) {
    add('adverse', 'No temperature was recorded; the case temperature is not known.');
    return;
  }
  for (const [name, series] of channels) {
    const hottest = series.max().to('degC');
    if (limit === undefined)
      add(
        'neutral',
        `${name} reached ${hottest}; the document specifies no wall temperature for comparison.`,
      );
    else if (hottest.si > limit.si)
      add('adverse', `${name} reached ${hottest}, above the design wall temperature of ${limit}.`);
    else add('favourable', `${name} reached ${hottest}; the design wall temperature is ${limit}.`);
  }
}
