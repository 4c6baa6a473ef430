import {
  type Input,
  type Place,
  printable,
  procedure,
  type Quantity,
  type UnitOf,
  type Values,
} from '../units';
import type { BurnLawBand } from './burn-law-band';
import { burnLawInputs, type SaintRobertInput } from './burn-law-inputs';
import { convertBurnRateCoefficient } from './burn-rate-coefficient';
import { readBands } from './read-burn-law';

/** Treatment of pressures outside the characterised range of a burn law. */
export type ExtrapolationPolicy = 'extrapolate' | 'clamp' | 'error';

/**
 * A burn law: burning rate by pressure and initial grain temperature. Adjacent bands need not have the same rate at their
 * common limit. Outside the characterised range, the first and the last band are extrapolated.
 */
export interface BurnLaw {
  readonly bands: readonly BurnLawBand[];
  /** Limits of the characterised range [Pa]; zero and infinity where none is given. */
  readonly characterised: { readonly from: number; readonly to: number };
  readonly outside: ExtrapolationPolicy;
  /** Relative change of rate by grain temperature at constant pressure, σ_p; `undefined` where it is not known. */
  readonly temperatureSensitivity: Quantity<'temperature sensitivity'> | undefined;
  /** Grain temperature at which the bands are valid. */
  readonly referenceTemperature: Quantity<'temperature'>;
  readonly source: string;
  /** The coefficient a of r = a·pⁿ of a band, as a number in these units. */
  coefficient(rateUnit: UnitOf<'speed'>, pressureUnit: UnitOf<'absolute pressure'>, band?: number): number;
  toString(): string;
}

/** Whether a value is a burn law made by {@link saintRobert}. */
export const isBurnLaw = (value: unknown): value is BurnLaw =>
  typeof value === 'object' && value !== null && 'characterised' in value && 'bands' in value;

/** A burn law of a propellant or a reduction: one that was made before, or as it is quoted. */
export const burnLaw: Input<BurnLaw | SaintRobertInput, BurnLaw, 'required'> = {
  ...burnLawInputs,
  type: 'burn law',
  takes: () => `burn law, or ${burnLawInputs.takes()}`,
  read: (value, at) => (isBurnLaw(value) ? value : lawOf(burnLawInputs.read(value, at), at)),
  absent: () => lawOf(burnLawInputs.absent(), { procedure: '', path: '' }),
};

/**
 * Makes Saint-Robert's burn law r = a·pⁿ, for all pressures or band by band as published, continuous or not. A band
 * includes its lower limit.
 *
 * @example saintRobert({ coefficient: 7, rateUnit: 'mm/s', pressureUnit: 'MPa', exponent: 0.32 }).coefficient('m/s', 'Pa').toPrecision(9) // => '0.0000841585104'
 */
export const saintRobert = /* @__PURE__ */ procedure({
  name: 'saintRobert',
  title: "Saint-Robert's burn law",
  source: 'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 11',
  inputs: burnLawInputs.fields,
  gives: 'the burn law r = a·pⁿ, of one or several bands',
  example: { coefficient: 8.26, rateUnit: 'mm/s', pressureUnit: 'MPa', exponent: 0.319 },
  run: (values): BurnLaw => lawOf(values, { procedure: 'saintRobert', path: '' }),
});

function lawOf(given: Values<typeof burnLawInputs.fields>, at: Place): BurnLaw {
  const { outside, temperatureSensitivity, referenceTemperature, source } = given;
  const { bands, characterised } = readBands(given, at);
  const law: BurnLaw = printable(
    {
      bands,
      characterised,
      outside,
      temperatureSensitivity,
      referenceTemperature,
      source,
      coefficient: (rateUnit: UnitOf<'speed'>, pressureUnit: UnitOf<'absolute pressure'>, band = 0) =>
        coefficientOf(bands[band], rateUnit, pressureUnit),
    },
    () => lawText(law),
  );
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
