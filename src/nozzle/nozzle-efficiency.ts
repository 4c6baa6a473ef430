import { formula, ratio, readInput, table } from '../units';
import { refusal } from '../units/refusal';

/**
 * Delivered thrust coefficient: divergence acts on the momentum term, the other factors on the total.
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
    ({ efficiency }) => efficiency <= 1 || 'an efficiency above 1 is not a loss; check its calibration',
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
 * Velocity coefficient: actual/ideal exhaust velocity ratio, from the nozzle efficiency, which is the ratio of the
 * enthalpies converted to kinetic energy.
 *
 * @throws MeopError `out-of-domain` for an efficiency not above 0 and at most 1
 * @example velocityCoefficient({ nozzleEfficiency: 0.95 }) // => 0.974679434
 */
export const velocityCoefficient = /* @__PURE__ */ formula({
  name: 'velocityCoefficient',
  title: 'Velocity coefficient from nozzle efficiency',
  equation: 'ζ_v = √(η_n)',
  source:
    'Definition: kinetic energy is proportional to the square of velocity (any gas-turbine or rocket textbook)',
  inputs: {
    nozzleEfficiency: ratio('η_n', 'actual/ideal enthalpy drop', { above: 0, max: 1 }),
  },
  output: ratio('ζ_v', 'actual/ideal exhaust velocity'),
  example: { nozzleEfficiency: 0.95 },
  si: ({ nozzleEfficiency }) => Math.sqrt(nozzleEfficiency),
  solve: { nozzleEfficiency: (value) => value * value },
});

/** One named loss of a nozzle. */
export interface NozzleLoss {
  readonly name: string;
  /** Remaining fraction; 1 without loss. */
  readonly factor: number;
  /** Source of the factor: a title and edition, 'measured', or 'assumed'. */
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
 * The overall efficiency of named loss factors, each with its source. Losses by submergence are not modelled: the
 * loss of a nozzle with its entrance inside the chamber is larger.
 *
 * @throws MeopError `out-of-domain` for a factor not above 0 and at most 1, naming the loss
 * @example nozzleEfficiency([{ name: 'friction', factor: 0.99, source: 'assumed' }, { name: 'droplets', factor: 0.96, source: 'assumed' }]).efficiency // => 0.9504
 */
export function nozzleEfficiency(losses: readonly NozzleLoss[]): NozzleEfficiency {
  let efficiency = 1;
  losses.forEach(({ name, factor }, i) => {
    const { si } = readInput('dimensionless', `losses[${i}].factor`, factor, 'nozzleEfficiency');
    if (!(si > 0 && si <= 1))
      throw refusal(
        'nozzleEfficiency',
        `losses[${i}].factor`,
        factor,
        'above 0 and at most 1',
        `the factor of ${name} is what is left, not what is lost`,
      );
    efficiency *= si;
  });
  const text = (): string =>
    table([
      ...losses.map(({ name, factor, source }) => ({ loss: name, factor: factor.toPrecision(4), source })),
      { loss: 'all', factor: efficiency.toPrecision(4), source: 'product' },
    ]);
  return {
    losses,
    efficiency,
    cautions: ['Submergence of the nozzle in the chamber is not modelled.'],
    toString: text,
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: text },
  };
}
