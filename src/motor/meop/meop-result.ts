import type { SimulatedFiring } from '../../ballistics';
import { type Quantity, type Series, table } from '../../units';
import type { FlawSet } from '../motor-grain';
import type { PeakSensitivity } from './sensitivity';

/** One motor that was simulated in full. */
export interface MeopCase {
  /**
   * Greatest pressure above ambient, at the head end: there the gas stands, and pushes aft what burns behind it. Where
   * the port is wide it is that of `peakPressure`.
   */
  readonly pressure: Quantity<'gauge pressure'>;
  /** Of the simulation: the pressure that drives the nozzle. */
  readonly peakPressure: Quantity<'absolute pressure'>;
  readonly peakThrust: Quantity<'force'>;
  readonly grainTemperature: Quantity<'temperature'>;
  readonly flaws: FlawSet;
  /** The values that are not nominal. */
  readonly values: readonly { readonly input: string; readonly value: Quantity }[];
  readonly firing: SimulatedFiring;
}

/** Motors drawn at random within their tolerances and temperatures. */
export interface MeopScatter {
  /** Share of motors that stay below `pressure`. */
  readonly share: number;
  /** The pressure of that share, above ambient. */
  readonly pressure: Quantity<'gauge pressure'>;
  /** Between these it lies with 95 % confidence, as far as the number of samples goes. */
  readonly band: readonly [Quantity<'gauge pressure'>, Quantity<'gauge pressure'>];
  readonly mean: Quantity<'gauge pressure'>;
  /** Standard deviation over mean of the absolute pressure. */
  readonly relativeDeviation: number;
  readonly samples: number;
  readonly seed: number;
  readonly distribution: 'uniform' | 'normal';
  /** Greatest pressure of every motor drawn, in the order of drawing. */
  readonly peakPressure: Series<'absolute pressure'>;
  /** The motor at the percentile, simulated in full. */
  readonly checked: MeopCase;
  /** What the full simulation of that motor has over its quick pressure, as a share. */
  readonly checkDifference: number;
}

/** The maximum expected operating pressure, how it was found, and what drives it. */
export interface Meop {
  /** The pressure to judge by, above ambient: that of `basis` times the allowance. */
  readonly pressure: Quantity<'gauge pressure'>;
  readonly basis: 'worst case' | 'percentile' | 'nominal';
  readonly allowance: number;
  /** The thrust to judge stand and restraint by: of the worst case, raised with its pressure by the allowance. */
  readonly thrust: Quantity<'force'>;
  /** At nominal values and ambient temperature, with the flaws of the document. */
  readonly nominal: MeopCase;
  /** Every toleranced value at its worse end, the grain at its worse temperature, with the assumed flaw where that raises the peak. */
  readonly worstCase: MeopCase;
  readonly percentile: MeopScatter;
  readonly sensitivity: readonly PeakSensitivity[];
  readonly assumptions: readonly string[];
  readonly cautions: readonly string[];
  toString(): string;
}

/** The result as people read it. */
export function meopText(found: Omit<Meop, 'toString'>): string {
  const { nominal, worstCase, percentile, sensitivity } = found;
  const percent = (value: number): string => `${value < 0 ? '−' : '+'}${Math.abs(value * 100).toFixed(2)} %`;
  const cases = [
    {
      case: 'nominal',
      'above ambient': nominal.pressure,
      thrust: nominal.peakThrust,
      grain: temperatureText(nominal),
    },
    {
      case: `${Number((percentile.share * 100).toFixed(4))} % of ${percentile.samples} drawn`,
      'above ambient': percentile.pressure,
      thrust: percentile.checked.peakThrust,
      grain: 'range',
    },
    {
      case: 'worst case',
      'above ambient': worstCase.pressure,
      thrust: worstCase.peakThrust,
      grain: temperatureText(worstCase),
    },
  ];
  const drivers = sensitivity.map((row) => ({
    input: row.input,
    value: row.value,
    'at lower': percent(row.atLower),
    'at upper': percent(row.atUpper),
    'of variance': `${(row.shareOfVariance * 100).toFixed(1)} %`,
  }));
  return [
    `MEOP ${found.pressure} above ambient (${found.basis}${found.allowance === 1 ? '' : `, allowance ${found.allowance}`})`,
    table(cases),
    ...(drivers.length > 0 ? ['', 'what drives the peak pressure, each alone:', table(drivers)] : []),
    ...found.assumptions.map((line) => `assumed: ${line}`),
    ...found.cautions.map((line) => `caution: ${line}`),
  ].join('\n');
}

const temperatureText = ({ grainTemperature }: MeopCase): string => `${grainTemperature.to('degC')}`;
