import type { Propellant } from '../propellant';

// Assumed where nothing is measured (engineering practice, no published source); α grows with the surface temperature's nearness
// to that of the grain: from 1000 to 700 K it changes by a factor of 2.6 at a flame of 1600 K.
const viscosity = 5e-5; // Pa·s
const prandtl = 0.6;
const solidHeatCapacity = 1300; // J/(kg·K)
const surfaceTemperature = 800; // K

/** Coefficient α of the Lenoir-Robillard law for a propellant, with assumed properties of gas and surface. */
export function assumedCoefficient(
  { gamma, gasConstant, effectiveTemperature, density }: Propellant,
  grainTemperature: number,
): number {
  const gasHeatCapacity = (gamma / (gamma - 1)) * gasConstant.si;
  return lenoirRobillardCoefficientSi({
    gasHeatCapacity,
    viscosity,
    prandtl,
    density: density.si,
    solidHeatCapacity,
    gasTemperature: effectiveTemperature.si,
    surfaceTemperature,
    grainTemperature,
  });
}

/** α from properties in SI. */
export const lenoirRobillardCoefficientSi = (
  v: Readonly<
    Record<
      | 'gasHeatCapacity'
      | 'viscosity'
      | 'prandtl'
      | 'density'
      | 'solidHeatCapacity'
      | 'gasTemperature'
      | 'surfaceTemperature'
      | 'grainTemperature',
      number
    >
  >,
): number =>
  ((0.0288 * v.gasHeatCapacity * v.viscosity ** 0.2 * v.prandtl ** (-2 / 3)) /
    (v.density * v.solidHeatCapacity)) *
  ((v.gasTemperature - v.surfaceTemperature) / (v.surfaceTemperature - v.grainTemperature));
