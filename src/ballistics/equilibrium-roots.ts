import { findRoot } from '../numerics';
import {
  flag,
  fromSiValue,
  MeopError,
  optional,
  procedure,
  type Quantity,
  table,
  unitOf,
  type Values,
} from '../units';
import { type BurnLaw, temperatureFactorSi } from './burn-law';
import { bandRateSi } from './burn-law-band';
import { barelyStable, effectiveBands } from './effective-bands';
import { burningToThroat } from './equilibrium-inputs';
import { grainTemperature } from './motor-inputs';
import { propellantValue } from './propellant';
import { outsideRemedy, rangeCautions, rangeText, sensitivityUnknown } from './rate-by-law';

/** A chamber pressure at which gas generation and outflow balance. */
export interface EquilibriumRoot {
  readonly pressure: Quantity<'absolute pressure'>;
  readonly burnRate: Quantity<'speed'>;
  /** Whether a small disturbance decays; from an unstable root the pressure moves to an adjacent one. */
  readonly stable: boolean;
  /** Inside a band of the law, or at the common limit of two bands with different rates. */
  readonly place: 'band' | 'jump';
  /** Relative change of pressure per relative change of burning area; zero at a common limit of two bands. */
  readonly amplification: number;
  readonly cautions: readonly string[];
}

/** Every equilibrium, by increasing pressure; prints as a table. */
export type EquilibriumRoots = readonly EquilibriumRoot[];

const context = 'equilibriumPressures';

const equilibriumInputs = {
  propellant: propellantValue,
  burningAreaRatio: burningToThroat,
  grainTemperature: optional(grainTemperature),
  gasStorage: optional(
    flag('whether the gas that fills the growing volume of the chamber is included'),
    true,
  ),
};
type Given = Values<typeof equilibriumInputs>;

/**
 * Every equilibrium pressure of a propellant at a burning-area ratio, stable or not, for a law of any number of bands.
 *
 * Balance: (ρ − p/(R·T))·r(p)·K = p/c*. The term p/(R·T) is the gas that fills the volume of the burned propellant; it
 * lowers the pressure by some 0.5 % and is neglected with `gasStorage: false`. Inside a band at most one
 * pressure satisfies the balance, and it is stable, as the exponent is below 1. Where the rate falls between two bands, the
 * pressure can remain at their common limit; where it rises, that limit can be an unstable equilibrium. A clamped law keeps the
 * rate at the limit of its range; for a law that does not allow other pressures, only the roots in its range are given.
 *
 * @throws MeopError `out-of-range` where a law allows none of the pressures
 * @example equilibriumPressures({ propellant: publishedPropellant('potassium nitrate/sucrose'), burningAreaRatio: 300 }).length // => 1
 */
export const equilibriumPressures = /* @__PURE__ */ procedure({
  name: context,
  title: 'Equilibrium chamber pressures for any burn law',
  source: 'steady mass balance, Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), ch. 11',
  inputs: equilibriumInputs,
  gives: 'every equilibrium with its burning rate, stability and amplification, by increasing pressure',
  example:
    "equilibriumPressures({ propellant: publishedPropellant('potassium nitrate/sucrose'), burningAreaRatio: 300 })",
  run: equilibria,
});

function equilibria({
  propellant,
  burningAreaRatio: K,
  grainTemperature,
  gasStorage,
}: Given): EquilibriumRoots {
  const { law, density, characteristicVelocity, gasConstant, effectiveTemperature } = propellant;
  const factor = grainTemperature === undefined ? 1 : temperatureFactorSi(law, grainTemperature.si);
  const temperatureCautions =
    grainTemperature !== undefined && law.temperatureSensitivity === undefined ? [sensitivityUnknown] : [];
  const stored = gasStorage ? 1 / (gasConstant.si * effectiveTemperature.si) : 0;
  const bands = effectiveBands(law);
  const rate = (band: number, p: number): number => factor * bandRateSi(bands[band], p);
  // Gas generation/outflow, less one, without dividing by a pressure that may be tiny.
  const excess = (band: number, p: number): number =>
    ((density.si - stored * p) * rate(band, p) * K * characteristicVelocity.si) / p - 1;
  const cautions = (p: number, exponent: number): readonly string[] => [
    ...barelyStable(exponent),
    ...rangeCautions(law, p, p),
    ...temperatureCautions,
  ];

  const roots: EquilibriumRoot[] = [];
  const add = (si: number, band: number, stable: boolean, place: 'band' | 'jump'): void => {
    const found = cautions(si, place === 'band' ? bands[band].exponent : 0);
    roots.push({
      pressure: fromSiValue<'absolute pressure'>(si, 'absolute pressure', unitOf('MPa'), found),
      burnRate: fromSiValue<'speed'>(
        place === 'band' ? rate(band, si) : si / (characteristicVelocity.si * K * (density.si - stored * si)),
        'speed',
        unitOf('mm/s'),
      ),
      stable,
      place,
      amplification: place === 'band' ? amplification(bands[band].exponent, stored * si, density.si) : 0,
      cautions: found,
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

function inRange(law: BurnLaw, roots: readonly EquilibriumRoot[]) {
  const { from, to } = law.characterised;
  const known = roots.filter(({ pressure }) => pressure.si >= from && pressure.si <= to);
  if (known.length > 0) return known;
  const where = roots.map(({ pressure }) => `${Number((pressure.si / 1e6).toPrecision(4))} MPa`).join(', ');
  throw new MeopError({
    code: 'out-of-range',
    procedure: context,
    path: 'propellant',
    problem: `the equilibrium pressure ${where} is outside the characterised range of the burn law, ${rangeText(law)}`,
    remedy: outsideRemedy,
  });
}

// d ln p / d ln A of the balance: 1 / (1 − n + x), x = share of the gas density in what is left of the solid's.
function amplification(exponent: number, gasDensity: number, solidDensity: number): number {
  return 1 / (1 - exponent + gasDensity / (solidDensity - gasDensity));
}

/** The only root of a decreasing function in [lower, upper); upper may be infinite. */
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
    throw new MeopError({
      code: 'no-solution',
      procedure: context,
      path: 'burningAreaRatio',
      problem: `no pressure between ${low} and ${high} Pa satisfies the balance at an exponent of ${exponent}`,
      remedy: 'Check the burning-area ratio',
    });
  // In ln p the function is close to straight, whatever the decade.
  return Math.exp(
    findRoot((logP) => excess(Math.exp(logP)), { lower: Math.log(low), upper: Math.log(high) }).root,
  );
}
