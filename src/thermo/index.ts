/**
 * Perfect-gas and isentropic flow, shocks, choked flow, characteristic velocity, gas mixtures, species and products at chemical
 * equilibrium, the atmosphere, heat to a wall and in it.
 * Imports units and numerics only.
 *
 * @example idealCharacteristicVelocity({ gamma: 1.2, gasConstant: '350 J/(kg*K)', temperature: '3000 K' }).in('m/s') // => 1580.024404
 * @module
 */
export * from './area-ratio';
export * from './bartz';
export * from './characteristic-velocity';
export * from './choked-flow';
export * from './duct-convection';
export * from './gas';
export * from './gas-mixture';
export * from './grey-plates';
export * from './heat-numbers';
export * from './isentropic';
export * from './layered-wall';
export * from './layered-wall-heating';
export * from './lumped-heating';
export type { MachBranch } from './mach-from-area-ratio';
export * from './mach-from-mass-flow-parameter';
export * from './mach-relations';
export * from './normal-shock';
export * from './oblique-shock';
export * from './orifice-flow';
export * from './pitot-pressure';
export * from './prandtl-meyer';
export * from './products/equilibrium-constant';
export * from './products/equilibrium-products';
export type { EquilibriumReactant } from './products/products-problem';
export { type SpeciesProperties, speciesProperties } from './products/species-properties';
export { type PolynomialForm, speciesNames } from './products/species-table';
export * from './semi-infinite-solid';
export * from './standard-atmosphere';
export * from './station-pressure';
export * from './thermocouple-errors';
export * from './transient-conduction';
export * from './two-phase-mixture';
export * from './wall-heat';
