import { integrateOde } from '../numerics';
import { gamma, gasConstant } from '../thermo/gas-inputs';
import { vandenkerckhoveSi } from '../thermo/isentropic-kernels';
import {
  absolutePressure,
  area,
  fromSiValue,
  heatTransferCoefficient,
  length,
  procedure,
  type Quantity,
  temperature,
  time,
  unitOf,
  volume,
} from '../units';
import { tailOffSlopes } from './transient/tail-off-slopes';
import { wallHeatLoss } from './transient-inputs';

/** Gas in a chamber at a time after burnout. */
export interface CoolingBlowdown {
  readonly pressure: Quantity<'absolute pressure'>;
  readonly temperature: Quantity<'temperature'>;
}

/**
 * Pressure and temperature of a chamber that empties through a choked throat and loses heat to its wall. Without heat transfer the
 * result is that of `adiabaticBlowdown`; the isothermal law is above it at first and below it late.
 *
 * @example coolingBlowdown({ pressure: '4 MPa', temperature: '1600 K', time: '10 ms', freeVolume: '200 cm^3', throatDiameter: '8 mm', gamma: 1.14, gasConstant: '207.8615654 J/(kg*K)', heatTransferCoefficient: '500 W/(m^2*K)', wallArea: '200 cm^2', wallTemperature: '500 K' }).pressure.in('MPa') // => 1.409833
 */
export const coolingBlowdown = /* @__PURE__ */ procedure({
  name: 'coolingBlowdown',
  title: 'Tail-off with heat loss',
  source:
    'balance of mass and energy, d(m·c_v·T)/dt = −ṁ·c_p·T − h·A_w·(T − T_w) (derived); as in textbooks on gas dynamics, discharge of a vessel',
  inputs: {
    pressure: absolutePressure('p_0', 'pressure at burnout', { example: '4 MPaa' }),
    temperature: temperature('T_0', 'gas temperature at burnout', { example: '1600 K' }),
    time: time('t', 'time since burnout', { min: 0, example: '10 ms' }),
    freeVolume: volume('V', 'volume of the chamber', { example: '200 cm^3' }),
    throatDiameter: length('d_t', 'throat diameter', { example: '8 mm' }),
    gamma,
    gasConstant,
    heatTransferCoefficient: heatTransferCoefficient('h', 'heat-transfer coefficient between gas and wall', {
      min: 0,
      example: '500 W/(m^2*K)',
    }),
    wallArea: area('A_w', 'wall area in contact with the gas', { example: '200 cm^2' }),
    wallTemperature: wallHeatLoss.fields.wallTemperature,
  },
  gives: 'pressure and temperature of the gas',
  example: {
    pressure: '4 MPa',
    temperature: '1600 K',
    time: '10 ms',
    freeVolume: '200 cm^3',
    throatDiameter: '8 mm',
    gamma: 1.14,
    gasConstant: '208 J/(kg*K)',
    heatTransferCoefficient: '500 W/(m^2*K)',
    wallArea: '200 cm^2',
    wallTemperature: '500 K',
  },
  run: (given): CoolingBlowdown => {
    const { gamma: g, time: t } = given;
    const R = given.gasConstant.si;
    const tail = {
      law: 'heat-loss',
      wallConductance: (given.heatTransferCoefficient.si * given.wallArea.si) / R,
      wallEnergy: R * given.wallTemperature.si,
    } as const;
    const flowFactor = (Math.PI / 4) * given.throatDiameter.si ** 2 * vandenkerckhoveSi(g);
    const initial = [given.pressure.si, R * given.temperature.si];
    const [p, e] =
      t.si === 0
        ? initial
        : integrateOde({
            start: 0,
            end: t.si,
            initial,
            relativeTolerance: 1e-10,
            absoluteTolerance: 1e-6,
            autonomous: true,
            keep: 'end',
            derivative: (_, [pressure, energy], out) =>
              tailOffSlopes(
                tail,
                g,
                given.freeVolume.si,
                pressure,
                energy,
                (pressure * flowFactor) / Math.sqrt(energy),
                0,
                0,
                out,
              ),
          }).y.map((column) => column[column.length - 1]);
    return {
      pressure: fromSiValue(p, 'absolute pressure', unitOf('MPa')),
      temperature: fromSiValue(e / R, 'temperature', unitOf('K')),
    };
  },
});
