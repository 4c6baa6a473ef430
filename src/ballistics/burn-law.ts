import { fromSiValue, type Quantity, type UnitOf, unitOf } from '../units';
import type { BurnLawBand } from './burn-law-band';
import { type ExtrapolationPolicy, readBands, type SaintRobertInput } from './burn-law-input';
import { convertBurnRateCoefficient } from './burn-rate-coefficient';

/**
 * A burn law: burning rate by pressure and initial grain temperature. Bands need not join: printed ones do not.
 * Outside the characterised range the first and the last band go on.
 */
export interface BurnLaw {
  readonly bands: readonly BurnLawBand[];
  /** Ends of the range that was characterised [Pa]; zero and infinity where nothing is said. */
  readonly characterised: { readonly from: number; readonly to: number };
  readonly outside: ExtrapolationPolicy;
  /** Relative change of rate by grain temperature at constant pressure, σ_p; `undefined` where nobody measured it. */
  readonly temperatureSensitivity: Quantity<'temperature sensitivity'> | undefined;
  /** Grain temperature for which the bands hold. */
  readonly referenceTemperature: Quantity<'temperature'>;
  readonly source: string;
  /** The coefficient a of r = a·pⁿ of a band, as a number in the units given. */
  coefficient(rateUnit: UnitOf<'speed'>, pressureUnit: UnitOf<'absolute pressure'>, band?: number): number;
  toString(): string;
}

/**
 * Saint-Robert's burn law r = a·pⁿ, for all pressures or band by band as published, continuous or not.
 *
 * Give a coefficient with the units it is quoted in (`rateUnit`, `pressureUnit`), or a rate at a pressure, or two
 * points to pass through; or a list of bands, each with `from` and `to`. A band holds at its lower end.
 *
 * Source: Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 11.
 *
 * @throws MeopError `out-of-domain` for an exponent of 1 or more (no stable chamber pressure), `burn-law-bands` for
 * bands that overlap or leave a gap
 * @example saintRobert({ coefficient: 7, rateUnit: 'mm/s', pressureUnit: 'MPa', exponent: 0.32 }).coefficient('m/s', 'Pa').toPrecision(9) // => '0.0000841585104'
 */
export function saintRobert(input: SaintRobertInput): BurnLaw {
  const { bands, characterised, outside, sensitivity, referenceTemperature, source } = readBands(input);
  const law: BurnLaw = {
    bands,
    characterised,
    outside,
    temperatureSensitivity:
      sensitivity === undefined
        ? undefined
        : fromSiValue<'temperature sensitivity'>(sensitivity, 'temperature sensitivity', unitOf('1/K')),
    referenceTemperature: fromSiValue<'temperature'>(referenceTemperature, 'temperature', unitOf('K')),
    source,
    coefficient: (rateUnit, pressureUnit, band = 0) => coefficientOf(bands[band], rateUnit, pressureUnit),
    toString: () => lawText(law),
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: () => lawText(law) },
  };
  return law;
}

function coefficientOf(
  band: BurnLawBand,
  rateUnit: UnitOf<'speed'>,
  pressureUnit: UnitOf<'absolute pressure'>,
): number {
  // At the reference pressure in Pa the coefficient of (m/s, Pa) is r_ref / p_refⁿ; the rest is a change of units.
  return convertBurnRateCoefficient({
    coefficient: band.referenceRate,
    exponent: band.exponent,
    from: { rateUnit: 'm/s', pressureUnit: 'Pa' },
    to: { rateUnit, pressureUnit },
    referencePressure: band.referencePressure,
  });
}

/** Factor on the rate for a grain temperature [K]; 1 where the sensitivity is not known. */
export function temperatureFactorSi(law: BurnLaw, temperature: number): number {
  const { temperatureSensitivity, referenceTemperature } = law;
  if (temperatureSensitivity === undefined) return 1;
  return Math.exp(temperatureSensitivity.si * (temperature - referenceTemperature.si));
}

function lawText(law: BurnLaw): string {
  const rows = law.bands.map((band, i) => {
    const a = law.coefficient('mm/s', 'MPa', i).toPrecision(4);
    const range =
      law.bands.length > 1
        ? `  ${(band.from / 1e6).toPrecision(4)} to ${(band.to / 1e6).toPrecision(4)} MPa`
        : '';
    return `  r = ${a}·p^${Number(band.exponent.toPrecision(4))} mm/s, p in MPa${range}`;
  });
  return [`burn law (${law.source})`, ...rows].join('\n');
}
