import type { Firing, ReducedFiring } from '../../firing';
import { headlineOf, type ReportContent, section, shown, textCell } from './content';
import { simulatedSummary, summaryTable } from './firing-section';
import { type MeasuredContext, measuredSection } from './measured-section';
import { plotFiring } from './plot-firing';

/** Content of the report on a predicted or measured firing. */
export function firingContent(firing: Firing): ReportContent {
  const summary = simulatedSummary(firing);
  return {
    title: firing.title ?? 'Firing',
    kind: `${firing.origin} firing`,
    headline: headlineOf(
      `${summary.designation ?? 'A firing'}: ${[
        summary.totalImpulse && `total impulse ${summary.totalImpulse}`,
        summary.peakPressure && `peak pressure ${summary.peakPressure}`,
        summary.peakThrust && `peak thrust ${summary.peakThrust}`,
      ]
        .filter((part) => part !== undefined)
        .join(', ')}.`,
    ),
    keyFigures: [
      ...(summary.peakPressure === undefined
        ? []
        : [['peak pressure, absolute', shown(summary.peakPressure)] as const]),
      ...(summary.peakThrust === undefined ? [] : [['peak thrust', shown(summary.peakThrust)] as const]),
      ...(summary.totalImpulse === undefined
        ? []
        : [['total impulse', shown(summary.totalImpulse)] as const]),
      ...(summary.burnTime === undefined ? [] : [['burn time', shown(summary.burnTime)] as const]),
      ...(summary.designation === undefined ? [] : [['class', textCell(summary.designation)] as const]),
    ],
    sections: section({
      id: 'firing',
      title: 'The firing',
      figures: [
        {
          id: 'firing-plot',
          title: 'Pressure and thrust',
          description: 'Chamber pressure and thrust over time.',
          spec: (width) => plotFiring(firing, { width }),
        },
      ],
      tables: [summaryTable('Results', summary)],
      cautions: summary.cautions,
      remarks: firing.history,
    }),
  };
}

/** Content of the report on a reduced firing. */
export function reducedContent(reduced: ReducedFiring, beside: MeasuredContext = {}): ReportContent {
  const { record, status, totalImpulse, peakPressure, motorClass } = reduced;
  return {
    title: record.title ?? 'Firing',
    kind: 'recorded firing, reduced',
    headline:
      status === 'no result'
        ? headlineOf('The record gives no result.', 'fail')
        : headlineOf(
            `${[
              motorClass && `Class ${motorClass.letter}`,
              totalImpulse && `total impulse ${totalImpulse.value}`,
              peakPressure && `peak pressure ${peakPressure.value}`,
            ]
              .filter((part) => part !== undefined)
              .join(', ')}.`,
          ),
    ...(status === 'no result' && { verdict: 'not judged' as const }),
    keyFigures: [
      ...(motorClass === undefined ? [] : [['class', textCell(motorClass.letter)] as const]),
      ...(totalImpulse === undefined ? [] : [['total impulse', shown(totalImpulse.value)] as const]),
      ...(peakPressure === undefined
        ? []
        : [['peak pressure, absolute', shown(peakPressure.value)] as const]),
    ],
    sections: measuredSection(reduced, beside),
  };
}
