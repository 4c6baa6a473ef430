import {
  formula,
  fromSiValue,
  heatTransferCoefficient,
  length,
  list,
  procedure,
  type Quantity,
  temperature,
  thermalConductivity,
  thermalResistance,
  unitOf,
} from '../units';
import { hotGas, solid } from './heat-inputs';
import { conductingLayer, stepWith } from './wall-steps';

const incropera = 'Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 6th ed. (2007)';

/** @example cylinderWallResistance({ innerRadius: '20 mm', outerRadius: '25 mm', length: '1 m', conductivity: '0.2 W/(m*K)' }).in('K/W') // => 0.177573 */
export const cylinderWallResistance = /* @__PURE__ */ formula({
  name: 'cylinderWallResistance',
  title: 'Thermal resistance of a tube wall',
  equation: 'R = ln(r_2 / r_1) / (2·π·k·L)',
  source: `${incropera}, section 3.3`,
  inputs: {
    innerRadius: length('r_1', 'inner radius'),
    outerRadius: length('r_2', 'outer radius'),
    length: length('L', 'length of the tube'),
    conductivity: solid.conductivity,
  },
  output: thermalResistance('R', 'thermal resistance'),
  example: { innerRadius: '20 mm', outerRadius: '25 mm', length: '1 m', conductivity: '0.2 W/(m*K)' },
  requires: [
    ({ innerRadius, outerRadius }) =>
      outerRadius > innerRadius ||
      'the outer radius must be above the inner one: check whether the two are exchanged',
  ],
  si: ({ innerRadius, outerRadius, length, conductivity }) =>
    Math.log1p((outerRadius - innerRadius) / innerRadius) / (2 * Math.PI * conductivity * length),
});

/**
 * Radius up to which more insulation on a thin tube increases the heat loss, because the surface grows.
 *
 * @example criticalInsulationRadius({ conductivity: '0.055 W/(m*K)', coefficient: '5 W/(m^2*K)' }).in('mm') // => 11
 */
export const criticalInsulationRadius = /* @__PURE__ */ formula({
  name: 'criticalInsulationRadius',
  title: 'Critical radius of insulation',
  equation: 'r_cr = k / h',
  source: `${incropera}, example 3.5`,
  inputs: {
    conductivity: thermalConductivity('k', 'conductivity of the insulation'),
    coefficient: heatTransferCoefficient('h', 'heat-transfer coefficient outside'),
  },
  output: length('r_cr', 'critical radius'),
  example: { conductivity: '0.055 W/(m*K)', coefficient: '5 W/(m^2*K)' },
  si: ({ conductivity, coefficient }) => conductivity / coefficient,
});

/** Steady heat through a wall of layers. */
export interface LayeredWallHeat {
  readonly heatFlux: Quantity<'heat flux'>;
  readonly overallCoefficient: Quantity<'heat-transfer coefficient'>;
  /** The hot face, and behind each step; one more than there are steps. */
  readonly temperatures: readonly Quantity<'temperature'>[];
  readonly cautions: readonly string[];
}

/**
 * Steady heat flux and face temperatures of a wall of layers with contact resistances between them, gas on one
 * side and air on the other. A short firing does not reach the steady state, which is the upper bound.
 *
 * @example layeredWallHeat({ gasTemperature: '1500 K', gasCoefficient: '2000 W/(m^2*K)', steps: [{ thickness: '1.5 mm', conductivity: '0.15 W/(m*K)' }, { contact: '2.75e-4 m^2*K/W' }, { thickness: '3 mm', conductivity: '167 W/(m*K)' }], outsideTemperature: '300 K', outsideCoefficient: '15 W/(m^2*K)' }).heatFlux.in('W/m^2') // => 15491.94
 */
export const layeredWallHeat = /* @__PURE__ */ procedure({
  name: 'layeredWallHeat',
  title: 'Steady heat through a wall of layers',
  source: `${incropera}, section 3.1, resistances in series`,
  inputs: {
    ...hotGas,
    steps: list(
      'layers and contacts from the hot side; thin against the radius of a tube',
      stepWith(conductingLayer),
    ),
    outsideTemperature: temperature('T_o', 'temperature of the air outside'),
    outsideCoefficient: heatTransferCoefficient('h_o', 'heat-transfer coefficient outside'),
  },
  gives: 'heat flux, overall coefficient, and the temperatures of the hot face and behind each step',
  example: {
    gasTemperature: '1500 K',
    gasCoefficient: '2000 W/(m^2*K)',
    steps: [
      { thickness: '1.5 mm', conductivity: '0.15 W/(m*K)' },
      { contact: '2.75e-4 m^2*K/W' },
      { thickness: '3 mm', conductivity: '167 W/(m*K)' },
    ],
    outsideTemperature: '300 K',
    outsideCoefficient: '15 W/(m^2*K)',
  },
  run: ({
    gasTemperature,
    gasCoefficient,
    steps,
    outsideTemperature,
    outsideCoefficient,
  }): LayeredWallHeat => {
    const [gas, hot] = [gasTemperature.si, gasCoefficient.si];
    const insulances = steps.map((step) =>
      'contact' in step ? step.contact.si : step.thickness.si / step.conductivity.si,
    );
    const overall = 1 / insulances.reduce((sum, r) => sum + r, 1 / hot + 1 / outsideCoefficient.si);
    const flux = overall * (gas - outsideTemperature.si);
    const temperatures = [gas - flux / hot];
    for (const insulance of insulances)
      temperatures.push(temperatures[temperatures.length - 1] - flux * insulance);
    return {
      heatFlux: fromSiValue(flux, 'heat flux', unitOf('kW/m^2')),
      overallCoefficient: fromSiValue(overall, 'heat-transfer coefficient', unitOf('W/(m^2*K)')),
      temperatures: temperatures.map((si) => fromSiValue(si, 'temperature', unitOf('K'))),
      cautions: [
        'steady state: a case reaches its maximum temperature after burnout, and a firing of seconds stays far below these values',
      ],
    };
  },
});
