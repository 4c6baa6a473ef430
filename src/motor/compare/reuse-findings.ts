import type { ReducedFiring } from '../../firing';
import type { Quantity } from '../../units';
import type { Motor } from '../document';
import { linesOf, written } from '../part-lines';
import type { MotorSettings } from '../settings';
import type { ReuseFinding, StrengthUtilisation } from './comparison';

/** What the firing says for and against the hardware. Facts only: whether it flies again is for people to decide. */
export function reuseFindings(
  motor: Motor,
  measured: ReducedFiring,
  utilisations: readonly StrengthUtilisation[],
  peakPressureUpperBound: Quantity<'gauge pressure'> | undefined,
  meop: Quantity<'gauge pressure'>,
  { factors }: MotorSettings,
): readonly ReuseFinding[] {
  const findings: ReuseFinding[] = [];
  const add = (effect: ReuseFinding['effect'], finding: string): void => {
    findings.push({ finding, effect });
  };
  if (peakPressureUpperBound === undefined) add('adverse', 'what pressure the hardware saw is not known');
  else {
    const over = peakPressureUpperBound.si / meop.si;
    if (over > 1)
      add(
        'adverse',
        `it saw up to ${peakPressureUpperBound}, ${over.toFixed(2)} times the MEOP of ${meop} that it was judged for`,
      );
    else add('favourable', `it saw at most ${peakPressureUpperBound}, ${over.toFixed(2)} times its MEOP`);
    if (over > factors.proofFactor)
      add('adverse', `that is above the proof pressure, ${factors.proofFactor} times MEOP`);
    const beyond = utilisations.filter((one) => one.utilisation >= 1);
    const allAgainst = (ones: readonly StrengthUtilisation[], message: string): void => {
      const lines = ones.flatMap(({ part, mode, utilisation: share }) =>
        linesOf(part, [`${mode}: used ${(100 * share).toFixed(0)} % of its strength${message}`]),
      );
      for (const line of written(lines, ', ')) add('adverse', line);
    };
    allAgainst(beyond, ': measure the part before anything else');
    const near = utilisations.filter(
      (one) => one.utilisation < 1 && one.limit === 'yield' && one.utilisation * factors.yieldFactor > 1,
    );
    allAgainst(near, `, more than its factor of ${factors.yieldFactor} leaves`);
    if (beyond.length === 0 && near.length === 0 && utilisations.length > 0)
      add('favourable', 'no mode used more of its strength than its factor of safety leaves');
  }
  if (measured.clipping.pressure !== undefined)
    add('adverse', 'the pressure channel was saturated: the peak is an estimate, and its upper end is taken');
  heatFacts(motor, measured, add);
  add('neutral', 'O-rings are for one firing: fit new ones (engineering practice, no published source)');
  const ends = [motor.closures?.head, motor.closures?.aft];
  if (ends.some((closure) => closure?.retainingRing !== undefined))
    add(
      'neutral',
      'a retaining ring that was pressed against its groove may have taken a set: fit a new one (engineering practice, no published source)',
    );
  add(
    'neutral',
    'holes, grooves, threads, bore and throat are to be measured; a computed stress does not show a scratch or a burn',
  );
  add(
    'neutral',
    'aluminium that was hot may have lost its temper: a hardness test tells (engineering practice, no published source)',
  );
  return findings;
}

function heatFacts(
  motor: Motor,
  measured: ReducedFiring,
  add: (effect: ReuseFinding['effect'], finding: string) => void,
): void {
  const limit = motor.case.wallTemperature?.value;
  const channels = Object.entries(measured.record.temperatures);
  if (channels.length === 0) {
    add('adverse', 'no temperature was recorded: how hot the case got is not known');
    return;
  }
  for (const [name, series] of channels) {
    const hottest = series.max().to('degC');
    if (limit === undefined)
      add('neutral', `${name} reached ${hottest}; the document gives no wall temperature to compare`);
    else if (hottest.si > limit.si)
      add('adverse', `${name} reached ${hottest}, above the ${limit} that the case was judged for`);
    else add('favourable', `${name} reached ${hottest}; the case was judged for ${limit}`);
  }
}
