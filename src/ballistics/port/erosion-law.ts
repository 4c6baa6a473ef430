// Burning rate with erosive burning; plain SI numbers, unchecked.

/** A law of erosive burning for the port. */
export type ErosionLaw =
  | { readonly law: 'none' }
  | {
      readonly law: 'mukunda-paul';
      /** K, the gain of the law. */
      readonly gain: number;
      /** g_th, the threshold of g. */
      readonly threshold: number;
      /** Viscosity of the gas [Pa·s]. */
      readonly viscosity: number;
      readonly augmentationFactor: number;
    }
  | {
      readonly law: 'lenoir-robillard';
      /** α in SI, m^2.8·kg^−0.8·s^−0.2. */
      readonly coefficient: number;
      /** β. */
      readonly decay: number;
      /** Length of the law [m]; undefined: the hydraulic diameter or the distance, as `lengthOf` says. */
      readonly length: number | undefined;
      readonly lengthOf: 'hydraulic diameter' | 'distance from the head';
      readonly augmentationFactor: number;
    }
  | {
      readonly law: 'threshold-velocity';
      /** Velocity at which augmentation begins [m/s]. */
      readonly threshold: number;
      /** Augmentation at twice the threshold, less one. */
      readonly gain: number;
      readonly augmentationFactor: number;
    };

// Powers of the threshold that was used last: the same law is evaluated in every cell.
let knownThreshold = Number.NaN;
let thresholdEighth = 0;
let thresholdPower = 0;

/** Total burning rate [m/s] in a cross-flow: base rate [m/s], mass flux [kg/(m²·s)], hydraulic diameter, distance from the head end [m], velocity [m/s]. */
export function erosiveRate(
  law: ErosionLaw,
  density: number,
  base: number,
  flux: number,
  diameter: number,
  position: number,
  velocity: number,
): number {
  if (law.law === 'none' || !(flux > 0)) return base;
  if (law.law === 'mukunda-paul') {
    const solid = density * base;
    const relative = flux / solid;
    const squared = relative * relative;
    const fourth = squared * squared;
    // g^8, g = (G/(ρ·r_0))·(Re_0/1000)^(−1/8): below the threshold no logarithm is needed.
    const eighth = (fourth * fourth * 1000 * law.viscosity) / (solid * diameter);
    if (law.threshold !== knownThreshold) {
      knownThreshold = law.threshold;
      thresholdEighth = knownThreshold ** 8;
      thresholdPower = knownThreshold ** 0.8;
    }
    if (eighth <= thresholdEighth) return base;
    return (
      base * (1 + law.augmentationFactor * law.gain * (Math.exp(0.1 * Math.log(eighth)) - thresholdPower))
    );
  }
  if (law.law === 'threshold-velocity')
    return velocity > law.threshold
      ? base * (1 + law.augmentationFactor * law.gain * (velocity / law.threshold - 1))
      : base;
  const length =
    law.length ?? (law.lengthOf === 'hydraulic diameter' ? diameter : Math.max(position, 1e-9 * diameter));
  const fourth = flux * flux * flux * flux;
  const heat = law.coefficient * Math.exp(0.2 * Math.log(fourth / length));
  const total = lenoirRobillardSi(base, heat, (law.decay * density) / flux);
  return base + law.augmentationFactor * (total - base);
}

/** Root of r = base + heat·exp(−decay·r): the total rate stands on both sides. Newton's steps from the left never overshoot. */
export function lenoirRobillardSi(base: number, heat: number, decay: number): number {
  let r = base;
  for (let i = 0; i < 40; i++) {
    const added = heat * Math.exp(-decay * r);
    const step = (base + added - r) / (1 + decay * added);
    r += step;
    // The next step would be below the last digit.
    if (decay * decay * added * step * step <= 1e-17 * r) break;
  }
  return r;
}
