import { fromSiValue, inputs, MeopError, procedure, type Quantity, unitOf } from '../units';
import { readMotor } from './read-motor';
import { simulateInputs } from './simulate-inputs';

/** Heat loss of a motor to the wall of its chamber, as the simulation includes it. */
export interface MotorHeatLoss {
  /** Characteristic velocity with heat loss/without. */
  readonly efficiency: number;
  /** Pressure that balances the mean burning area, at which the loss is computed. */
  readonly pressure: Quantity<'absolute pressure'>;
  /** Wall in contact with the gas, as specified or as a mean over the burned depth. */
  readonly wallArea: Quantity<'area'>;
  readonly gasTemperature: Quantity<'temperature'>;
  /** Characteristic velocity delivered, with all losses. */
  readonly characteristicVelocity: Quantity<'speed'>;
}

/**
 * Heat loss of a motor with the input `heatLoss`: the factor on its characteristic velocity, at one pressure for the whole burn.
 *
 * @throws MeopError `missing-field` for a motor without `heatLoss`
 * @example motorHeatLoss({ motor: { propellant: publishedPropellant('potassium nitrate/sucrose'), grain: tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '85 mm' }), nozzle: { throatDiameter: '8 mm', expansionRatio: 5 }, chamber: { innerDiameter: '50 mm', length: '110 mm' }, ambient: '1 atm', heatLoss: { heatTransferCoefficient: '800 W/(m^2*K)', wallTemperature: '600 K' } } }).efficiency < 1 // => true
 */
export const motorHeatLoss = /* @__PURE__ */ procedure({
  name: 'motorHeatLoss',
  title: 'Heat loss of a motor',
  source: 'heatLossEfficiency, at the equilibrium pressure of the mean burning area',
  inputs: { motor: inputs(simulateInputs, { meaning: 'motor, as for simulate, with heatLoss' }) },
  gives:
    'the factor on the characteristic velocity, with the wall area, pressure and gas temperature it belongs to',
  example:
    "motorHeatLoss({ motor: { propellant: publishedPropellant('potassium nitrate/sucrose'), grain: tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '85 mm' }), nozzle: { throatDiameter: '8 mm', expansionRatio: 5 }, chamber: { innerDiameter: '50 mm', length: '110 mm' }, ambient: '1 atm', heatLoss: { heatTransferCoefficient: '800 W/(m^2*K)', wallTemperature: '600 K' } } })",
  run: ({ motor }): MotorHeatLoss => {
    const { heatLoss, model } = readMotor(motor, { procedure: 'motorHeatLoss', path: 'motor' });
    if (heatLoss === undefined)
      throw new MeopError({
        code: 'missing-field',
        procedure: 'motorHeatLoss',
        path: 'motor.heatLoss',
        expected: 'heat loss to the wall of the chamber',
      });
    return {
      efficiency: heatLoss.efficiency,
      pressure: fromSiValue(heatLoss.pressure, 'absolute pressure', unitOf('MPa')),
      wallArea: fromSiValue(heatLoss.wallArea, 'area', unitOf('cm^2')),
      gasTemperature: fromSiValue(
        model.gasEnergy / motor.propellant.gasConstant.si,
        'temperature',
        unitOf('K'),
      ),
      characteristicVelocity: fromSiValue(model.characteristicVelocity, 'speed', unitOf('m/s')),
    };
  },
});
