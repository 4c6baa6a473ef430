import {
  formula,
  fromSiValue,
  heatTransferCoefficient,
  length,
  MeopError,
  type NamedKind,
  type Quantity,
  type QuantityInput,
  thermalConductivity,
  thermalResistance,
  unitOf,
} from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { readPositive } from '../units/refusal';

const incropera = 'Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 6th ed. (2007)';

/**
 * Thermal resistance of the wall of a tube.
 *
 * @throws MeopError `out-of-domain` for an outer radius not above the inner one
 * @example cylinderWallResistance({ innerRadius: '20 mm', outerRadius: '25 mm', length: '1 m', conductivity: '0.2 W/(m*K)' }).in('K/W') // => 0.177573
 */
export const cylinderWallResistance = /* @__PURE__ */ formula({
  name: 'cylinderWallResistance',
  title: 'Thermal resistance of a tube wall',
  equation: 'R = ln(r_2 / r_1) / (2·π·k·L)',
  source: `${incropera}, section 3.3`,
  inputs: {
    innerRadius: length('r_1', 'inner radius'),
    outerRadius: length('r_2', 'outer radius'),
    length: length('L', 'length of the tube'),
    conductivity: thermalConductivity('k', 'conductivity'),
  },
  output: thermalResistance('R', 'thermal resistance'),
  example: { innerRadius: '20 mm', outerRadius: '25 mm', length: '1 m', conductivity: '0.2 W/(m*K)' },
  requires: [
    ({ innerRadius, outerRadius }) =>
      outerRadius > innerRadius || 'the outer radius must be above the inner one: are the two exchanged?',
  ],
  si: ({ innerRadius, outerRadius, length, conductivity }) =>
    Math.log1p((outerRadius - innerRadius) / innerRadius) / (2 * Math.PI * conductivity * length),
});

/**
 * Radius up to which more insulation on a thin tube lets more heat out, since its surface grows.
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

/** One step of the way through a wall: a layer, or the contact between two. */
export type WallStep =
  | {
      readonly name?: string;
      readonly thickness: QuantityInput<'length'>;
      readonly conductivity: QuantityInput<'thermal conductivity'>;
    }
  | {
      readonly name?: string;
      /** Aluminium on aluminium in air, 10 µm rough, at 1 bar: 2.75e-4 m²·K/W (Incropera, table 3.1, from memory). */
      readonly contact: QuantityInput<'thermal insulance'>;
    };

/** What {@link layeredWallHeat} needs. */
export interface LayeredWallOptions {
  /** Driving temperature of the gas: the adiabatic wall temperature. */
  readonly gasTemperature: QuantityInput<'temperature'>;
  readonly gasCoefficient: QuantityInput<'heat-transfer coefficient'>;
  /** From the hot side to the cold one; thin against the radius of a tube. */
  readonly steps: readonly WallStep[];
  readonly outsideTemperature: QuantityInput<'temperature'>;
  readonly outsideCoefficient: QuantityInput<'heat-transfer coefficient'>;
}

/** Steady heat through a wall of layers. */
export interface LayeredWallHeat {
  readonly heatFlux: Quantity<'heat flux'>;
  readonly overallCoefficient: Quantity<'heat-transfer coefficient'>;
  /** The hot face, and behind each step; one more than there are steps. */
  readonly temperatures: readonly Quantity<'temperature'>[];
  readonly cautions: readonly string[];
}

const layeredWallHeatFields: FieldsOf<LayeredWallOptions> = {
  gasTemperature: 'required',
  gasCoefficient: 'required',
  steps: 'required',
  outsideTemperature: 'required',
  outsideCoefficient: 'required',
};

/**
 * Steady heat flux and face temperatures of a wall of layers with contact resistances between them, gas on one side and
 * air on the other. A short firing never gets there: it is the bound for a wall that is given time.
 *
 * Source: Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 6th ed. (2007), section 3.1, resistances in series.
 *
 * @throws MeopError `missing-field` for no steps, `out-of-domain` for values not above 0
 * @example layeredWallHeat({ gasTemperature: '1500 K', gasCoefficient: '2000 W/(m^2*K)', steps: [{ thickness: '1.5 mm', conductivity: '0.15 W/(m*K)' }, { contact: '2.75e-4 m^2*K/W' }, { thickness: '3 mm', conductivity: '167 W/(m*K)' }], outsideTemperature: '300 K', outsideCoefficient: '15 W/(m^2*K)' }).heatFlux.in('W/m^2') // => 15491.94
 */
export function layeredWallHeat(options: LayeredWallOptions): LayeredWallHeat {
  requireFields('layeredWallHeat', options, layeredWallHeatFields);
  const gas = read('temperature', 'gasTemperature', options.gasTemperature);
  const hot = read('heat-transfer coefficient', 'gasCoefficient', options.gasCoefficient);
  const air = read('temperature', 'outsideTemperature', options.outsideTemperature);
  const cold = read('heat-transfer coefficient', 'outsideCoefficient', options.outsideCoefficient);
  if (!Array.isArray(options.steps) || options.steps.length === 0)
    throw new MeopError(
      'missing-field',
      'layeredWallHeat: steps: none given; at least one is expected',
      'steps',
    );
  const insulances = options.steps.map((step: WallStep, i) => {
    if ('contact' in step)
      requireFields(`layeredWallHeat: steps[${i}]`, step, { name: 'optional', contact: 'required' });
    else
      requireFields(`layeredWallHeat: steps[${i}]`, step, {
        name: 'optional',
        thickness: 'required',
        conductivity: 'required',
      });
    return 'contact' in step
      ? read('thermal insulance', `steps[${i}].contact`, step.contact)
      : read('length', `steps[${i}].thickness`, step.thickness) /
          read('thermal conductivity', `steps[${i}].conductivity`, step.conductivity);
  });
  const overall = 1 / insulances.reduce((sum, r) => sum + r, 1 / hot + 1 / cold);
  const flux = overall * (gas - air);
  const temperatures = [gas - flux / hot];
  for (const insulance of insulances)
    temperatures.push(temperatures[temperatures.length - 1] - flux * insulance);
  return {
    heatFlux: fromSiValue(flux, 'heat flux', unitOf('kW/m^2')),
    overallCoefficient: fromSiValue(overall, 'heat-transfer coefficient', unitOf('W/(m^2*K)')),
    temperatures: temperatures.map((si) => fromSiValue(si, 'temperature', unitOf('K'))),
    cautions: [
      'steady: a case is hottest some time after burnout, and a firing of seconds stays far below this',
    ],
  };
}

const read = (kind: NamedKind, field: string, value: unknown): number =>
  readPositive(kind, field, value, 'layeredWallHeat').si;
