import { solid } from '../thermo/heat-inputs';
import { formula, heatFlux, temperatureDifference, time } from '../units';

/**
 * Time until the surface of a thick wall has warmed by a given amount under a constant heat flux: the time at which a throat that
 * recedes only above some temperature begins to recede.
 *
 * @example wallHeatingTime({ conductivity: '100 W/(m*K)', density: '1800 kg/m^3', specificHeat: '1500 J/(kg*K)', temperatureRise: '1000 delta_K', heatFlux: '10 MW/m^2' }).in('s') // => 2.12058
 */
export const wallHeatingTime = /* @__PURE__ */ formula({
  name: 'wallHeatingTime',
  title: 'Time to warm the surface of a thick wall',
  equation: 't = π / 4·k·ρ·c·(ΔT / q)²',
  source:
    'Semi-infinite solid, constant surface flux: Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, section 5.7',
  inputs: {
    ...solid,
    temperatureRise: temperatureDifference('ΔT', 'rise of the surface temperature', { above: 0 }),
    heatFlux: heatFlux('q', 'heat flux into the wall', { above: 0 }),
  },
  output: time('t', 'time'),
  example: {
    conductivity: '100 W/(m*K)',
    density: '1800 kg/m^3',
    specificHeat: '1500 J/(kg*K)',
    temperatureRise: '1000 delta_K',
    heatFlux: '10 MW/m^2',
  },
  si: ({ conductivity, density, specificHeat, temperatureRise, heatFlux }) =>
    (Math.PI / 4) * conductivity * density * specificHeat * (temperatureRise / heatFlux) ** 2,
});
