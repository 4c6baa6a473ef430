import { findRoot } from '../numerics';
import {
  fromSiValue,
  MeopError,
  type Quantity,
  type QuantityInput,
  readInput,
  table,
  unitOf,
} from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { readPositive } from '../units/refusal';
import { type BurnLaw, temperatureFactorSi } from './burn-law';
import { bandRateSi } from './burn-law-band';
import { barelyStable, effectiveBands } from './effective-bands';
import type { Propellant } from './propellant';
import { rangeCautions, sensitivityUnknown } from './rate-by-law';

/** A chamber pressure at which gas made and gas let out balance. */
export interface EquilibriumRoot {
  readonly pressure: Quantity<'absolute pressure'>;
  readonly burnRate: Quantity<'speed'>;
  /** Whether a small disturbance dies away; from an unstable root the pressure runs to a neighbour. */
  readonly stable: boolean;
  /** Inside a band of the law, or held at a pressure where the law jumps from one band to the next. */
  readonly place: 'band' | 'jump';
  /** Relative change of pressure per relative change of burning area; zero where the jump holds it. */
  readonly amplification: number;
  readonly cautions: readonly string[];
}

/** Every equilibrium, from the lowest pressure up; prints as a table. */
export type EquilibriumRoots = readonly EquilibriumRoot[];

/** What {@link equilibriumPressures} needs to know. */
export interface EquilibriumOptions {
  readonly propellant: Propellant;
  /** K, burning area over throat area. */
  readonly burningAreaRatio: number;
  /** That of the burn law where left out. */
  readonly grainTemperature?: QuantityInput<'temperature'>;
  /** Whether the gas that fills the growing chamber counts. Default: it does. */
  readonly gasStorage?: boolean;
}

const context = 'equilibriumPressures';
const fields: FieldsOf<EquilibriumOptions> = {
  propellant: 'required',
  burningAreaRatio: 'required',
  grainTemperature: 'optional',
  gasStorage: 'optional',
};

/**
 * Every equilibrium of a propellant at a burning-area ratio, stable or not, for a law of any number of bands.
 *
 * Balance: (ρ − p/(R·T))·r(p)·K = p/c*. The term p/(R·T) is the gas that fills the volume the burned propellant
 * leaves; it lowers the pressure by some 0.5 % and is left out by `gasStorage: false`. Inside a band at most one
 * pressure balances and it is stable, as its exponent is below 1. A jump down between bands can hold the pressure
 * there; a jump up can make a pressure that no motor keeps. A law that is told to clamp keeps the rate at the end of its
 * range; of one that is told to refuse other pressures only the roots in its range are given.
 *
 * Source: steady mass balance, Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 11.
 *
 * @throws MeopError `out-of-domain`, `missing-field`, `unknown-field`; `out-of-range` where a law refuses the pressure of
 * every root
 * @example equilibriumPressures({ propellant: publishedPropellant('potassium nitrate/sucrose'), burningAreaRatio: 300 }).length // => 1
 */
export function equilibriumPressures(options: EquilibriumOptions): EquilibriumRoots {
  requireFields(context, options, fields);
  const { propellant, burningAreaRatio, grainTemperature, gasStorage = true } = options;
  const K = readPositive('dimensionless', 'burningAreaRatio', burningAreaRatio, context).si;
  const { law, density, characteristicVelocity, gasConstant, effectiveTemperature } = propellant;
  const factor =
    grainTemperature === undefined
      ? 1
      : temperatureFactorSi(law, readInput('temperature', 'grainTemperature', grainTemperature, context).si);
  const temperatureCautions =
    grainTemperature !== undefined && law.temperatureSensitivity === undefined ? [sensitivityUnknown] : [];
  const stored = gasStorage ? 1 / (gasConstant.si * effectiveTemperature.si) : 0;
  const bands = effectiveBands(law);
  const rate = (band: number, p: number): number => factor * bandRateSi(bands[band], p);
  // Gas made over gas let out, less one, without dividing by a pressure that may be tiny.
  const excess = (band: number, p: number): number =>
    ((density.si - stored * p) * rate(band, p) * K * characteristicVelocity.si) / p - 1;
  const cautions = (p: number, exponent: number): readonly string[] => [
    ...barelyStable(exponent),
    ...rangeCautions(law, p, p),
    ...temperatureCautions,
  ];

  const roots: EquilibriumRoot[] = [];
  const add = (si: number, band: number, stable: boolean, place: 'band' | 'jump'): void => {
    const said = cautions(si, place === 'band' ? bands[band].exponent : 0);
    roots.push({
      pressure: fromSiValue<'absolute pressure'>(si, 'absolute pressure', unitOf('MPa'), said),
      burnRate: fromSiValue<'speed'>(
        place === 'band' ? rate(band, si) : si / (characteristicVelocity.si * K * (density.si - stored * si)),
        'speed',
        unitOf('mm/s'),
      ),
      stable,
      place,
      amplification: place === 'band' ? amplification(bands[band].exponent, stored * si, density.si) : 0,
      cautions: said,
    });
  };
  const most = stored > 0 ? density.si / stored : Number.POSITIVE_INFINITY;
  for (let i = 0; i < bands.length; i++) {
    const lower = i === 0 ? 0 : bands[i].from;
    const upper = Math.min(i + 1 < bands.length ? bands[i].to : Number.POSITIVE_INFINITY, most);
    const si = rootInBand((p) => excess(i, p), bands[i].exponent, lower, upper);
    if (si !== undefined) add(si, i, true, 'band');
    if (i + 1 >= bands.length || bands[i].to >= most) continue;
    const below = excess(i, upper);
    const above = excess(i + 1, upper);
    if (below >= 0 && above < 0) add(upper, i, true, 'jump');
    if (below < 0 && above >= 0) add(upper, i, false, 'jump');
  }
  const known = law.outside === 'error' ? inRange(law, roots) : roots;
  const text = (): string =>
    table(
      known.map((root) => ({
        pressure: root.pressure,
        'burning rate': root.burnRate,
        stable: root.stable ? 'stable' : 'unstable',
        place: root.place,
        amplification: root.amplification.toPrecision(3),
      })),
    );
  return Object.assign([...known], { toString: text, [Symbol.for('nodejs.util.inspect.custom')]: text });
}

function inRange({ characterised: { from, to } }: BurnLaw, roots: readonly EquilibriumRoot[]) {
  const known = roots.filter(({ pressure }) => pressure.si >= from && pressure.si <= to);
  if (known.length > 0) return known;
  const where = roots.map(({ pressure }) => `${Number((pressure.si / 1e6).toPrecision(4))} MPa`).join(', ');
  throw new MeopError(
    'out-of-range',
    `${context}: the equilibrium is at ${where}; the burn law was characterised from ${from / 1e6} to ${to / 1e6} MPa and is told to refuse others: say outside: 'extrapolate' or 'clamp'`,
    'propellant',
    { expected: `${from} to ${to} Pa` },
  );
}

// d ln p / d ln A of the balance: 1 / (1 − n + x), x = share of the gas density in what is left of the solid's.
function amplification(exponent: number, gasDensity: number, solidDensity: number): number {
  return 1 / (1 - exponent + gasDensity / (solidDensity - gasDensity));
}

/** The one root of a falling function in [lower, upper); upper may be infinite. */
function rootInBand(
  excess: (p: number) => number,
  exponent: number,
  lower: number,
  upper: number,
): number | undefined {
  // Towards zero pressure the excess is positive for every exponent below 1.
  if (lower > 0 && excess(lower) < 0) return undefined;
  let high = Number.isFinite(upper) ? upper : Math.max(lower, 1) * 2;
  let low = lower > 0 ? lower : high;
  if (Number.isFinite(upper)) {
    if (excess(upper) >= 0) return undefined;
  } else for (let i = 0; excess(high) >= 0 && i < 2000 && high < 1e300; i++) high *= 2;
  if (lower === 0) for (let i = 0; excess(low) < 0 && i < 2000 && low > 1e-300; i++) low /= 2;
  if (low === high) low /= 2;
  if (!(excess(low) >= 0) || !(excess(high) < 0))
    throw new MeopError(
      'no-solution',
      `${context}: no pressure between ${low} and ${high} Pa balances at an exponent of ${exponent}: check the burning-area ratio`,
      'burningAreaRatio',
    );
  // In ln p the function is close to straight, whatever the decade.
  return Math.exp(
    findRoot((logP) => excess(Math.exp(logP)), { lower: Math.log(low), upper: Math.log(high) }).root,
  );
}
