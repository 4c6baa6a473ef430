import type { FiringSummary } from './summary';

/** A summary as lines of text, with its definition next to each figure that has several. */
export function summaryText(summary: Omit<FiringSummary, 'toString'>, title: string | undefined): string {
  const { definitions } = summary;
  const rows: readonly (readonly [string, unknown, string?])[] = [
    ['designation', summary.designation],
    [
      'motor class',
      summary.motorClass &&
        `${summary.motorClass.letter}, ${summary.motorClass.percentOfRange.toFixed(0)} % of its range`,
    ],
    ['total impulse', summary.totalImpulse, definitions.totalImpulse],
    ['specific impulse', summary.specificImpulse],
    ['peak thrust', summary.peakThrust],
    ['average thrust', summary.averageThrust, definitions.averageThrust],
    ['peak pressure', summary.peakPressure],
    ['time of peak pressure', summary.timeOfPeakPressure],
    ['burned depth at peak pressure', summary.depthAtPeakPressure],
    ['average pressure', summary.averagePressure, 'over the action time'],
    ['ignition delay', summary.ignitionDelay, definitions.ignitionDelay],
    ['burn time', summary.burnTime, definitions.burnTime],
    ['action time', summary.actionTime, definitions.actionTime],
    ['burn time, 5 %', summary.burnTimeFivePercent, definitions.burnTimeFivePercent],
    ['characteristic velocity', summary.characteristicVelocity, definitions.pressureIntegral],
    ['thrust coefficient', summary.thrustCoefficient?.toPrecision(4)],
  ];
  const known = rows.filter(([, value]) => value !== undefined);
  const width = Math.max(...known.map(([name]) => name.length));
  return [
    `${title ?? 'firing'} (${summary.origin}), timing channel: ${definitions.trace}`,
    ...known.map(
      ([name, value, definition]) =>
        `  ${name.padEnd(width)}  ${String(value)}${definition === undefined ? '' : `  (${definition})`}`,
    ),
    ...summary.cautions.map((caution) => `  caution: ${caution}`),
  ].join('\n');
}
