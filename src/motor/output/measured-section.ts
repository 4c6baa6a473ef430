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
import type { PlotLevel } from './plot-spec';

/** What the recorded firing is laid beside. */
export interface MeasuredContext {
  readonly prediction?: Firing;
  readonly levels?: readonly PlotLevel[];
}

interface Interval {
  readonly value: Quantity;
  readonly low: Quantity;
  readonly high: Quantity;
}

/** A reduced firing: what the motor did, as far as the record tells. */
export function measuredSection(
  reduced: ReducedFiring,
  beside: MeasuredContext = {},
): readonly ReportSection[] {
  const { record, recovery, cautions } = reduced;
  return section({
    id: 'recorded',
    title: 'The recorded firing',
    lead: [
      reduced.status === 'no result'
        ? 'No channel of the record is fit to give numbers.'
        : `${record.title ?? 'The firing'}: ${record.time.length} samples. ${recoveryText(recovery)}`.trim(),
    ],
    figures: reduced.status === 'no result' ? [] : [tracePlot(reduced, beside)],
    tables: [numbersTable(reduced)],
    cautions,
    remarks: record.history.map((line) => `Done: ${line}`),
  });
}

const recoveryText = (recovery: ReducedFiring['recovery']): string =>
  recovery === undefined
    ? ''
    : `The ${recovery.channel} clipped; what it missed is recovered from the other channel, with its 95 % band.`;

function tracePlot(reduced: ReducedFiring, { prediction, levels = [] }: MeasuredContext): ReportFigure {
  const described =
    prediction === undefined ? 'Recorded pressure and thrust' : 'Recorded and predicted pressure and thrust';
  return {
    id: 'recorded-plot',
    title: described,
    description: `${described} over time${prediction === undefined ? '' : ', each from its first 10 % point'}.${reduced.recovery === undefined ? '' : ' The shaded band holds what a clipped channel missed, with 95 % confidence.'}`,
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
  { name: 'at least', numeric: true },
  { name: 'at most', numeric: true },
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
    name: 'What the motor did, with 95 % confidence where two limits are given',
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
      ...quantity('pressure that the hardware may have seen', reduced.peakPressureUpperBound),
    ],
  };
}
