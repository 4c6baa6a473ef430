import type { Firing, ReducedFiring } from '../../firing';
import type { Quantity } from '../../units';
import {
  type Column,
  figure,
  type ReportFigure,
  type ReportSection,
  type ReportTable,
  type Shown,
  section,
  shown,
  textCell,
  unknown,
} from './content';
import { plotFiring } from './plot-firing';
import type { PlotLevel } from './plot-inputs';

/** Data shown together with a recorded firing. */
export interface MeasuredContext {
  readonly prediction?: Firing;
  readonly levels?: readonly PlotLevel[];
}

interface Interval {
  readonly value: Quantity;
  readonly low: Quantity;
  readonly high: Quantity;
}

/** Section on a reduced firing. */
export function measuredSection(
  reduced: ReducedFiring,
  beside: MeasuredContext = {},
): readonly ReportSection[] {
  const { record, recovery, cautions } = reduced;
  return section({
    id: 'recorded',
    title: 'Recorded firing',
    lead: [
      reduced.status === 'no result'
        ? 'No channel of the record is valid.'
        : `${record.title ?? 'The firing'}: ${record.time.length} samples. ${recoveryText(recovery)}`.trim(),
    ],
    figures: reduced.status === 'no result' ? [] : [tracePlot(reduced, beside)],
    tables: [numbersTable(reduced)],
    cautions,
    remarks: record.history.map((line) => `Processing: ${line}`),
  });
}

const recoveryText = (recovery: ReducedFiring['recovery']): string =>
  recovery === undefined
    ? ''
    : `The ${recovery.channel} channel saturated. The missing part is reconstructed from ${recovery.channel === 'pressure' ? 'thrust' : 'pressure'}, with a 95 % confidence interval.`;

function tracePlot(reduced: ReducedFiring, { prediction, levels = [] }: MeasuredContext): ReportFigure {
  const described =
    prediction === undefined ? 'Recorded pressure and thrust' : 'Recorded and predicted pressure and thrust';
  return {
    id: 'recorded-plot',
    title: described,
    description: `${described} against time${prediction === undefined ? '' : ', each from its first 10 % point'}.${reduced.recovery === undefined ? '' : ' The shaded area is the reconstructed part of the saturated channel, with its 95 % confidence interval.'}`,
    spec: (width) =>
      plotFiring(prediction === undefined ? reduced : [reduced, prediction], {
        width,
        levels,
        timeFrom: prediction === undefined ? 'own zero' : 'ten percent point',
      }),
  };
}

const columns: readonly Column[] = [
  { name: 'figure' },
  { name: 'value', numeric: true },
  { name: 'lower limit', numeric: true },
  { name: 'upper limit', numeric: true },
];

function numbersTable(reduced: ReducedFiring): ReportTable {
  const interval = (name: string, given: Interval | undefined): readonly Shown[][] =>
    given === undefined ? [] : [[textCell(name), shown(given.value), shown(given.low), shown(given.high)]];
  const single = (name: string, given: Shown | undefined): readonly Shown[][] =>
    given === undefined ? [] : [[textCell(name), given, unknown, unknown]];
  const quantity = (name: string, given: Quantity | undefined) => single(name, given && shown(given));
  const number = (name: string, given: number | undefined) =>
    single(name, given === undefined ? undefined : figure(given));
  return {
    name: 'Results, with 95 % confidence limits where given',
    columns,
    rows: [
      ...single('class', reduced.motorClass && textCell(reduced.motorClass.letter)),
      ...interval('total impulse', reduced.totalImpulse),
      ...quantity('specific impulse', reduced.specificImpulse),
      ...interval('peak thrust', reduced.peakThrust),
      ...quantity('average thrust, 10 %', reduced.averageThrust),
      ...interval('peak pressure, absolute', reduced.peakPressure),
      ...interval('pressure integral', reduced.pressureIntegral),
      ...quantity('burn time, 10 %', reduced.burnTime),
      ...quantity('burn time, 5 %', reduced.burnTime5),
      ...quantity('characteristic velocity', reduced.characteristicVelocity),
      ...number('thrust coefficient', reduced.thrustCoefficient),
      ...number('combustion efficiency', reduced.combustionEfficiency),
      ...number('nozzle efficiency', reduced.nozzleEfficiency),
      ...quantity('upper limit of peak pressure, gauge', reduced.peakPressureUpperBound),
    ],
  };
}
