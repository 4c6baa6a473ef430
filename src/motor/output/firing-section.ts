import type { SimulatedFiring } from '../../ballistics';
import { type Firing, type FiringSummary, summarize } from '../../firing';
import { heatLossText } from '../heat-loss-of';
import type { Review } from '../review/review-result';
import { facts, figure, type ReportSection, type ReportTable, section, shown, textCell } from './content';
import { plotFiring } from './plot-firing';

/** Section on the predicted firing. */
export function firingSection(review: Review, summary: FiringSummary): readonly ReportSection[] {
  const { prediction, meop, flow, ignition, heatLoss } = review;
  const cases = [prediction, ...(meop.worstCase.firing === prediction ? [] : [meop.worstCase.firing])];
  const titled = cases.map((firing, i) => ({ ...firing, title: i === 0 ? 'nominal' : 'worst case' }));
  return section({
    id: 'firing',
    title: 'Predicted firing',
    figures: [
      {
        id: 'firing-plot',
        title: 'Predicted pressure and thrust',
        description:
          'Chamber pressure and thrust against time, nominal and worst case. The dotted line is MEOP.',
        spec: (width) => plotFiring(titled, { width, levels: [{ label: 'MEOP', at: meop.pressure }] }),
      },
    ],
    tables: [
      summaryTable('Nominal values', summary, [
        ['propellant burned', shown(prediction.balance.burned)],
        ['end condition', textCell(prediction.end)],
      ]),
      ignitionTable(ignition),
      {
        name: 'Port flow',
        columns: [
          { name: 'check' },
          { name: 'value', numeric: true },
          { name: 'limit', numeric: true },
          { name: 'result' },
        ],
        rows: flow.map(({ check, value, limit, passes, message }) => [
          textCell(check),
          {
            ...(typeof value === 'number' ? figure(value) : shown(value)),
            verdict: passes ? 'pass' : 'fail',
          },
          typeof limit === 'number' ? figure(limit) : shown(limit),
          textCell(message),
        ]),
      },
    ],
    remarks: [
      ...(heatLoss === undefined ? [] : [heatLossText(heatLoss)]),
      ...Object.entries(summary.definitions).map(([name, text]) => `${plainName(name)}: ${text}`),
    ],
  });
}

/** Ignition over a range of flame spread. */
const ignitionTable = ({ spreads }: Review['ignition']): ReportTable => ({
  name: 'Ignition by time of flame spread, nominal values',
  columns: [
    { name: 'flame spread', numeric: true },
    { name: 'ignition peak', numeric: true },
    { name: 'rise from 10 % to 90 %', numeric: true },
    { name: 'maximum rate of rise', numeric: true },
    { name: 'peak of the firing', numeric: true },
  ],
  rows: spreads.map((one) => [
    shown(one.flameSpreadTime),
    shown(one.ignitionPeak),
    shown(one.riseTime),
    shown(one.maxRiseRate),
    shown(one.peakPressure),
  ]),
});

/** Summary with the peak and the impulse of the simulation, which are more accurate than those of its samples. */
export function simulatedSummary(firing: Firing, summary = summarize(firing)): FiringSummary {
  return isSimulated(firing)
    ? {
        ...summary,
        peakPressure: firing.peakPressure,
        timeOfPeakPressure: firing.timeOfPeakPressure,
        totalImpulse: firing.totalImpulse,
      }
    : summary;
}

const isSimulated = (firing: Firing): firing is SimulatedFiring =>
  'pressureIntegral' in firing && 'balance' in firing;

/** Table of the results of a firing. */
export function summaryTable(
  name: string,
  summary: FiringSummary,
  more: Parameters<typeof facts>[1] = [],
): ReportTable {
  const known = (value: Parameters<typeof shown>[0] | undefined) => value && shown(value);
  return facts(name, [
    ['designation', summary.designation === undefined ? undefined : textCell(summary.designation)],
    ['total impulse', known(summary.totalImpulse)],
    ['specific impulse', known(summary.specificImpulse)],
    ['peak thrust', known(summary.peakThrust)],
    ['average thrust', known(summary.averageThrust)],
    ['peak pressure, absolute', known(summary.peakPressure)],
    ['time of peak pressure', known(summary.timeOfPeakPressure)],
    ['average pressure, absolute', known(summary.averagePressure)],
    ['ignition delay', known(summary.ignitionDelay)],
    ['burn time', known(summary.burnTime)],
    ['action time', known(summary.actionTime)],
    ['burn time, 5 %', known(summary.burnTimeFivePercent)],
    ['characteristic velocity', known(summary.characteristicVelocity)],
    [
      'thrust coefficient',
      summary.thrustCoefficient === undefined ? undefined : figure(summary.thrustCoefficient),
    ],
    ...more,
  ]);
}

const plainName = (name: string): string =>
  name === 'trace' ? 'timing channel' : name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
