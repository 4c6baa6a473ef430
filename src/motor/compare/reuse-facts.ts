import type { ReducedFiring } from '../../firing';
import type { Quantity } from '../../units';
import type { Motor } from '../document';
import type { MotorSettings } from '../settings';
import { twinLines } from '../twin-lines';
import type { ReuseFact, UsedMargin } from './comparison';

/** What the firing says for and against the hardware. Facts only: whether it flies again is for people to decide. */
export function reuseFacts(
  motor: Motor,
  measured: ReducedFiring,
  used: readonly UsedMargin[],
  pressureSeen: Quantity<'gauge pressure'> | undefined,
  meop: Quantity<'gauge pressure'>,
  { factors }: MotorSettings,
): readonly ReuseFact[] {
  const facts: ReuseFact[] = [];
  const add = (speaks: ReuseFact['speaks'], fact: string): void => {
    facts.push({ fact, speaks });
  };
  if (pressureSeen === undefined) add('against', 'what pressure the hardware saw is not known');
  else {
    const over = pressureSeen.si / meop.si;
    if (over > 1)
      add(
        'against',
        `it saw up to ${pressureSeen}, ${over.toFixed(2)} times the MEOP of ${meop} that it was judged for`,
      );
    else add('for', `it saw at most ${pressureSeen}, ${over.toFixed(2)} times its MEOP`);
    if (over > factors.proofFactor)
      add('against', `that is above the proof pressure, ${factors.proofFactor} times MEOP`);
    const beyond = used.filter((one) => one.used >= 1);
    const allAgainst = (ones: readonly UsedMargin[], says: string): void => {
      const lines = ones.map(
        ({ part, mode, used: share }) =>
          `${part}, ${mode}: used ${(100 * share).toFixed(0)} % of its strength${says}`,
      );
      for (const line of twinLines(lines)) add('against', line);
    };
    allAgainst(beyond, ': measure the part before anything else');
    const near = used.filter(
      (one) => one.used < 1 && one.mode.includes('yield') && one.used * factors.yieldFactor > 1,
    );
    allAgainst(near, `, more than its factor of ${factors.yieldFactor} leaves`);
    if (beyond.length === 0 && near.length === 0 && used.length > 0)
      add('for', 'no mode used more of its strength than its factor of safety leaves');
  }
  if (measured.clipping.pressure !== undefined)
    add('against', 'the pressure channel was saturated: the peak is an estimate, and its upper end is taken');
  heatFacts(motor, measured, add);
  add('neither', 'O-rings are for one firing: fit new ones (common practice, no source)');
  const ends = [motor.closures?.head, motor.closures?.aft];
  if (ends.some((closure) => closure?.retainingRing !== undefined))
    add(
      'neither',
      'a retaining ring that was pressed against its groove may have taken a set: fit a new one (common practice, no source)',
    );
  add(
    'neither',
    'holes, grooves, threads, bore and throat are to be measured; a computed stress does not show a scratch or a burn',
  );
  add(
    'neither',
    'aluminium that was hot may have lost its temper: a hardness test tells (common practice, no source)',
  );
  return facts;
}

function heatFacts(
  motor: Motor,
  measured: ReducedFiring,
  add: (speaks: ReuseFact['speaks'], fact: string) => void,
): void {
  const limit = motor.case.wallTemperature?.value;
  const channels = Object.entries(measured.record.temperatures);
  if (channels.length === 0) {
    add('against', 'no temperature was recorded: how hot the case got is not known');
    return;
  }
  for (const [name, series] of channels) {
    const hottest = series.max().to('degC');
    if (limit === undefined)
      add('neither', `${name} reached ${hottest}; the document gives no wall temperature to compare`);
    else if (hottest.si > limit.si)
      add('against', `${name} reached ${hottest}, above the ${limit} that the case was judged for`);
    else add('for', `${name} reached ${hottest}; the case was judged for ${limit}`);
  }
}
