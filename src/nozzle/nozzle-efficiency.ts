import { formula, inputs, list, printable, procedure, ratio, table, words } from '../units';

/**
 * Delivered thrust coefficient: the divergence factor applies to the momentum term, the efficiency to the sum.
 *
 * @example deliveredThrustCoefficient({ momentum: 1.55, pressure: 0.04, divergenceFactor: 0.989, efficiency: 0.97 }) // => 1.525762
 */
export const deliveredThrustCoefficient = /* @__PURE__ */ formula({
  name: 'deliveredThrustCoefficient',
  title: 'Delivered thrust coefficient',
  equation: 'C_F,del = η·(λ·C_mom + C_pres)',
  source:
    'Sutton & Biblarz, Rocket Propulsion Elements, 7th ed. (2001), section 3.4 and 3.5: divergence on the momentum term',
  inputs: {
    momentum: ratio('C_mom', 'momentum term of the ideal thrust coefficient'),
    pressure: ratio('C_pres', 'pressure term of the ideal thrust coefficient'),
    divergenceFactor: ratio('λ', 'divergence factor', { above: 0, max: 1 }),
    efficiency: ratio('η', 'product of the other factors', { above: 0 }),
  },
  output: ratio('C_F,del', 'delivered thrust coefficient'),
  example: { momentum: 1.55, pressure: 0.04, divergenceFactor: 0.989, efficiency: 0.97 },
  valid: [
    ({ efficiency }) => efficiency <= 1 || 'An efficiency above 1 is not a loss; check its calibration.',
  ],
  si: ({ momentum, pressure, divergenceFactor, efficiency }) =>
    efficiency * (divergenceFactor * momentum + pressure),
  solve: {
    efficiency: (value, { momentum, pressure, divergenceFactor }) =>
      value / (divergenceFactor * momentum + pressure),
    divergenceFactor: (value, { momentum, pressure, efficiency }) =>
      (value / efficiency - pressure) / momentum,
  },
});

/**
 * Velocity coefficient, from the nozzle efficiency: the ratio of the enthalpies converted to kinetic energy.
 *
 * @example velocityCoefficient({ nozzleEfficiency: 0.95 }) // => 0.974679434
 */
export const velocityCoefficient = /* @__PURE__ */ formula({
  name: 'velocityCoefficient',
  title: 'Velocity coefficient from nozzle efficiency',
  equation: 'ζ_v = √(η_n)',
  source:
    'Definition: kinetic energy is proportional to the square of velocity (any gas-turbine or rocket textbook)',
  inputs: {
    nozzleEfficiency: ratio('η_n', 'actual/ideal enthalpy drop', { above: 0, max: 1, example: 0.95 }),
  },
  output: ratio('ζ_v', 'actual/ideal exhaust velocity'),
  si: ({ nozzleEfficiency }) => Math.sqrt(nozzleEfficiency),
  solve: { nozzleEfficiency: (value) => value * value },
});

/** One named loss of a nozzle. */
export interface NozzleLoss {
  readonly name: string;
  /** Remaining share: 1 where nothing is lost. */
  readonly factor: number;
  /** Origin of the factor. */
  readonly source: string;
}

/** Named losses and their product. */
export interface NozzleEfficiency {
  readonly losses: readonly NozzleLoss[];
  readonly efficiency: number;
  readonly cautions: readonly string[];
  toString(): string;
}

/**
 * The product of named loss factors, each with its source. Submergence is not modelled: a nozzle whose entrance projects into
 * the chamber has additional losses.
 *
 * @example nozzleEfficiency({ losses: [{ name: 'friction', factor: 0.99, source: 'assumed' }, { name: 'droplets', factor: 0.96, source: 'assumed' }] }).efficiency // => 0.9504
 */
export const nozzleEfficiency = /* @__PURE__ */ procedure({
  name: 'nozzleEfficiency',
  title: 'Efficiency of a nozzle from its losses',
  source: 'Product of the loss factors, each with its own source',
  inputs: {
    losses: list(
      'losses of the nozzle',
      inputs(
        {
          name: words('name of the loss', { example: 'friction' }),
          factor: ratio('η_i', 'share that remains, not the share that is lost', {
            above: 0,
            max: 1,
            example: 0.99,
          }),
          source: words("origin of the factor: a title and edition, 'measured' or 'assumed'", {
            example: 'assumed',
          }),
        },
        { meaning: 'a loss' },
      ),
      { min: 0 },
    ),
  },
  gives: 'product of the factors',
  example: {
    losses: [
      { name: 'friction', factor: 0.99, source: 'assumed' },
      { name: 'droplets', factor: 0.96, source: 'assumed' },
    ],
  },
  run: ({ losses }): NozzleEfficiency => {
    const efficiency = losses.reduce((product, { factor }) => product * factor, 1);
    const cautions = ['Submergence of the nozzle in the chamber is not modelled.'];
    return printable({ losses, efficiency, cautions }, () =>
      table([
        ...losses.map(({ name, factor, source }) => ({ loss: name, factor: factor.toPrecision(4), source })),
        { loss: 'all', factor: efficiency.toPrecision(4), source: 'product' },
      ]),
    );
  },
});
