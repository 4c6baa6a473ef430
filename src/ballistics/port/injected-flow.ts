import {
  choice,
  density,
  formula,
  fromSiValue,
  length,
  pressureDifference,
  procedure,
  type Quantity,
  ratio,
  speed,
  unitOf,
} from '../../units';

const source =
  'profile of a rotational flow injected at right angles: G. I. Taylor (1956), F. E. C. Culick (1966); quoted from memory, not verified, rederived from the balances of mass and momentum';

/** Momentum factor of the profile cos(π/2·x), where x is (r/R)² in a round port and y/h in a slot. */
export const injectedMomentumFactor = Math.PI ** 2 / 8;

/** @example dynamicPressureDrop({ density: '4.5 kg/m^3', meanSpeed: '192 m/s', momentumFactor: 1.2337005501 }).in('kPa') // => 204.6561169 */
export const dynamicPressureDrop = /* @__PURE__ */ formula({
  name: 'dynamicPressureDrop',
  title: 'Pressure drop from the closed end of a port, incompressible',
  equation: 'Δp = β·ρ_g·u_m²',
  source,
  inputs: {
    density: density('ρ_g', 'density of the gas', { example: '4.5 kg/m^3' }),
    meanSpeed: speed('u_m', 'mean speed over the section', { min: 0, example: '192 m/s' }),
    momentumFactor: ratio('β', 'momentum factor of the profile', { min: 1, max: 1.5, example: 1.2337 }),
  },
  output: pressureDifference('Δp', 'static pressure at the closed end less that of the section'),
  si: ({ density: rho, meanSpeed, momentumFactor }) => momentumFactor * rho * meanSpeed ** 2,
});

/** The flow in a port whose walls inject gas. */
export interface InjectedFlow {
  /** Mean of the squared velocity/square of the mean velocity. */
  readonly momentumFactor: number;
  readonly meanSpeed: Quantity<'speed'>;
  readonly centreSpeed: Quantity<'speed'>;
  /** Static pressure at the closed end less that of the section. */
  readonly pressureDrop: Quantity<'pressure difference'>;
}

/**
 * Velocity and pressure drop of the gas in a port whose walls inject it evenly at right angles, incompressible: profile
 * cos(π/2·(r/R)²) in a round port, cos(π/2·y/h) in a slot of two burning walls.
 *
 * The profile is that of a nearly laminar flow, valid up to a length of some 10 to 20 diameters (from memory, not
 * verified); further downstream the flow is turbulent and the momentum factor falls towards 1.
 *
 * @example injectedFlow({ shape: 'round', gasDensity: '4.5 kg/m^3', injectionSpeed: '3.2 m/s', distance: '300 mm', halfWidth: '10 mm' }).meanSpeed.in('m/s') // => 192
 */
export const injectedFlow = /* @__PURE__ */ procedure({
  name: 'injectedFlow',
  title: 'Velocity profile and pressure drop of a port with injected gas',
  source,
  inputs: {
    shape: choice('section of the port', ['round', 'slot']),
    gasDensity: density('ρ_g', 'density of the gas', { example: '4.5 kg/m^3' }),
    injectionSpeed: speed('v_w', 'speed at which the gas leaves the wall', { min: 0, example: '3.2 m/s' }),
    distance: length('z', 'distance from the closed end', { example: '300 mm' }),
    halfWidth: length('R', 'radius of the round port, or half the width of the slot', { example: '10 mm' }),
  },
  gives: 'momentum factor, mean and centre speed, and pressure drop from the closed end',
  example: {
    shape: 'round',
    gasDensity: '4.5 kg/m^3',
    injectionSpeed: '3.2 m/s',
    distance: '300 mm',
    halfWidth: '10 mm',
  },
  working: ({ gasDensity }, { meanSpeed }: InjectedFlow) => [
    dynamicPressureDrop.explain({
      density: gasDensity,
      meanSpeed,
      momentumFactor: injectedMomentumFactor,
    }),
  ],
  run: ({ shape, gasDensity, injectionSpeed, distance, halfWidth }): InjectedFlow => {
    const mean = ((shape === 'round' ? 2 : 1) * injectionSpeed.si * distance.si) / halfWidth.si;
    return {
      momentumFactor: injectedMomentumFactor,
      meanSpeed: fromSiValue<'speed'>(mean, 'speed', unitOf('m/s')),
      centreSpeed: fromSiValue<'speed'>((Math.PI / 2) * mean, 'speed', unitOf('m/s')),
      pressureDrop: fromSiValue<'pressure difference'>(
        dynamicPressureDrop.si({
          density: gasDensity.si,
          meanSpeed: mean,
          momentumFactor: injectedMomentumFactor,
        }),
        'pressure difference',
        unitOf('kPa'),
      ),
    };
  },
});
