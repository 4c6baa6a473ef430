import type { SimulatedFiring } from '../../ballistics';
import { type Quantity, type Series, table } from '../../units';
import { type AssumedBlockage, blockageText } from '../assumed-blockage';
import type { FlawSet } from '../motor-grain';
import type { PeakSensitivity } from './sensitivity';

/** A case simulated in full. */
export interface MeopCase {
  /** Peak gauge pressure at the head end, which is higher than `peakPressure` by the flow along a narrow port. */
  readonly pressure: Quantity<'gauge pressure'>;
  /** Peak chamber pressure of the simulation, at the nozzle inlet. */
  readonly peakPressure: Quantity<'absolute pressure'>;
  readonly peakThrust: Quantity<'force'>;
  readonly grainTemperature: Quantity<'temperature'>;
  readonly flaws: FlawSet;
  /** Values that are not nominal. */
  readonly values: readonly { readonly input: string; readonly value: Quantity }[];
  readonly firing: SimulatedFiring;
  /** The blockage of the throat that the document assumes, with its pulse; in the worst case only. */
  readonly blockage?: AssumedBlockage;
}

/** Monte Carlo over tolerances and temperatures. */
export interface MeopScatter {
  /** Fraction of samples with a pressure below `pressure`. */
  readonly share: number;
  /** Percentile of the peak gauge pressure. */
  readonly pressure: Quantity<'gauge pressure'>;
  /** 95 % confidence interval of the percentile from the finite number of samples; model error is not included. */
  readonly band: readonly [Quantity<'gauge pressure'>, Quantity<'gauge pressure'>];
  readonly mean: Quantity<'gauge pressure'>;
  /** Coefficient of variation of the absolute pressure. */
  readonly relativeDeviation: number;
  readonly samples: number;
  readonly seed: number;
  readonly distribution: 'uniform' | 'normal';
  /** Peak pressure of every sample, in the order of sampling. */
  readonly peakPressure: Series<'absolute pressure'>;
  /** The motor at the percentile, simulated in full. */
  readonly checked: MeopCase;
  /** Relative difference between the simulation of that motor with its own grain and its pressure as a sample. */
  readonly checkDifference: number;
  /** Samples that were simulated in full. */
  readonly fullRuns: number;
  /** How the percentile was found, and what limits it. */
  readonly remarks: readonly string[];
}

/** The maximum expected operating pressure, its basis and its sensitivities. */
export interface Meop {
  /** Design gauge pressure: that of `basis` multiplied by the allowance. */
  readonly pressure: Quantity<'gauge pressure'>;
  readonly basis: 'worst case' | 'percentile' | 'nominal';
  readonly allowance: number;
  /**
   * Design thrust of stand and restraint: that of the worst case, raised in proportion to its pressure by the
   * allowance.
   */
  readonly thrust: Quantity<'force'>;
  /** Nominal values at ambient temperature, with the flaws of the document. */
  readonly nominal: MeopCase;
  /**
   * Every toleranced value at its worst-case limit, the grain at its worst-case temperature, with the assumed flaw
   * where it raises the peak.
   */
  readonly worstCase: MeopCase;
  readonly percentile: MeopScatter;
  readonly sensitivity: readonly PeakSensitivity[];
  /** What is missing for `pressure` to be an upper bound, each as a noun phrase with the reason. */
  readonly notIncluded: readonly string[];
  readonly assumptions: readonly string[];
  readonly cautions: readonly string[];
  toString(): string;
}

/** The result as text. */
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
      case: `${Number((percentile.share * 100).toFixed(4))}th percentile of ${percentile.samples} samples`,
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
    `MEOP ${found.pressure} (basis: ${found.basis}${found.allowance === 1 ? '' : `, allowance ${found.allowance}`})${notIncludedText(found, ', ')}`,
    table(cases),
    ...(drivers.length > 0 ? ['', 'sensitivity of peak pressure, one input at a time:', table(drivers)] : []),
    ...(worstCase.blockage === undefined ? [] : ['', blockageText(worstCase.blockage)]),
    ...found.assumptions.map((line) => `assumption: ${line}`),
    ...found.cautions.map((line) => `caution: ${line}`),
  ].join('\n');
}

/** What MEOP does not include, for the place next to its value; empty where nothing is missing. */
export const notIncludedText = ({ notIncluded }: Pick<Meop, 'notIncluded'>, before: string): string =>
  notIncluded.length === 0 ? '' : `${before}not included: ${notIncluded.join(', ')}`;

const temperatureText = ({ grainTemperature }: MeopCase): string => `${grainTemperature.to('degC')}`;
