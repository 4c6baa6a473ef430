import { gamma, gasConstant } from '../thermo/gas-inputs';
import { coefficient } from '../thermo/heat-inputs';
import { vandenkerckhoveSi } from '../thermo/isentropic-kernels';
import {
  absolutePressure,
  area,
  formula,
  fromSiValue,
  heatTransferCoefficient,
  length,
  massFlow,
  procedure,
  type Quantity,
  ratio,
  temperature,
  unitOf,
} from '../units';
import { stirredRootSi } from './transient/stirred-chamber';
import { wallHeatLoss } from './transient-inputs';

const source =
  'energy balance of a well-stirred chamber, ṁ·c_p·(T_0 − T) = h·A_w·(T − T_w), c_p = γ·R / (γ − 1) (derived)';

const flame = {
  gamma,
  gasConstant,
  flameTemperature: temperature('T_0', 'flame temperature without heat loss', { example: '1600 K' }),
};

const wall = {
  heatTransferCoefficient: coefficient,
  wallArea: area('A_w', 'wall area in contact with the gas', { example: '60 cm^2' }),
  wallTemperature: wallHeatLoss.fields.wallTemperature,
};

/** State of the gas in a chamber that loses heat to its wall. */
export interface HeatLossEfficiency {
  readonly gasTemperature: Quantity<'temperature'>;
  /** Characteristic velocity with heat loss/without. */
  readonly efficiency: number;
  /** Heat lost/enthalpy of the gas at the flame temperature. */
  readonly lossFraction: number;
  readonly massFlow: Quantity<'mass flow'>;
}

/**
 * Efficiency of the characteristic velocity with heat loss to the wall of the chamber. Wall area/throat area is the ratio that
 * governs: small throats and empty chambers lose most. At equal shape and pressure the loss is proportional to size^−0.2.
 *
 * @example heatLossEfficiency({ gamma: 1.14, gasConstant: '207.8615654 J/(kg*K)', flameTemperature: '1600 K', pressure: '4 MPa', throatDiameter: '8.5 mm', heatTransferCoefficient: '800 W/(m^2*K)', wallArea: '60 cm^2', wallTemperature: '600 K' }).efficiency // => 0.996508659
 */
export const heatLossEfficiency = /* @__PURE__ */ procedure({
  name: 'heatLossEfficiency',
  title: 'Efficiency of the characteristic velocity with heat loss',
  source,
  inputs: {
    ...flame,
    pressure: absolutePressure('p', 'chamber pressure', { example: '4 MPaa' }),
    throatDiameter: length('d_t', 'throat diameter', { example: '8.5 mm' }),
    ...wall,
  },
  gives: 'the gas temperature, the efficiency, the fraction of heat lost and the mass flow',
  example: {
    gamma: 1.14,
    gasConstant: '208 J/(kg*K)',
    flameTemperature: '1600 K',
    pressure: '4 MPa',
    throatDiameter: '8.5 mm',
    heatTransferCoefficient: '800 W/(m^2*K)',
    wallArea: '60 cm^2',
    wallTemperature: '600 K',
  },
  run: (given): HeatLossEfficiency => {
    const R = given.gasConstant.si;
    const T = given.flameTemperature.si;
    const without =
      (given.pressure.si * (Math.PI / 4) * given.throatDiameter.si ** 2 * vandenkerckhoveSi(given.gamma)) /
      Math.sqrt(R * T);
    const heatCapacity = (given.gamma * R) / (given.gamma - 1);
    const transfer = (given.heatTransferCoefficient.si * given.wallArea.si) / (without * heatCapacity);
    const root = stirredRootSi(transfer, given.wallTemperature.si / T);
    return {
      gasTemperature: fromSiValue(root * root * T, 'temperature', unitOf('K')),
      efficiency: root,
      lossFraction: 1 - root * root,
      massFlow: fromSiValue(without / root, 'mass flow', unitOf('kg/s')),
    };
  },
});

/**
 * Heat-transfer coefficient that explains the efficiency of a firing: the calibration of {@link heatLossEfficiency}. `efficiency` is
 * the delivered/expected characteristic velocity, from which losses of combustion are divided out.
 *
 * @example heatTransferFromEfficiency({ massFlow: '0.251440927 kg/s', gamma: 1.14, gasConstant: '207.8615654 J/(kg*K)', flameTemperature: '1600 K', efficiency: 0.996508659, wallArea: '60 cm^2', wallTemperature: '600 K' }).in('W/(m^2*K)') // => 799.999999
 */
export const heatTransferFromEfficiency = /* @__PURE__ */ formula({
  name: 'heatTransferFromEfficiency',
  title: 'Heat-transfer coefficient from the efficiency of a firing',
  equation: 'h = ṁ·γ·R·T_0·(1 − η²) / ((γ − 1)·A_w·(η²·T_0 − T_w))',
  source,
  inputs: {
    massFlow: massFlow('ṁ', 'mean mass flow of the firing', { above: 0, example: '0.25 kg/s' }),
    ...flame,
    efficiency: ratio('η', 'delivered characteristic velocity/that without heat loss', {
      above: 0,
      below: 1,
      example: 0.98,
    }),
    wallArea: wall.wallArea,
    wallTemperature: wall.wallTemperature,
  },
  output: heatTransferCoefficient('h', 'heat-transfer coefficient'),
  requires: [
    ({ efficiency, flameTemperature, wallTemperature }) =>
      efficiency ** 2 * flameTemperature > wallTemperature ||
      'the gas temperature η²·T_0 must be above the wall temperature',
  ],
  si: (v) =>
    (v.massFlow * v.gamma * v.gasConstant * v.flameTemperature * (1 - v.efficiency) * (1 + v.efficiency)) /
    ((v.gamma - 1) * v.wallArea * (v.efficiency ** 2 * v.flameTemperature - v.wallTemperature)),
});

/**
 * Heat-transfer coefficient at another pressure and size, by the law of turbulent pipe flow with the mass flux proportional to the pressure.
 *
 * @example scaledHeatTransfer({ heatTransferCoefficient: '800 W/(m^2*K)', pressureRatio: 1, sizeRatio: 0.5 }).in('W/(m^2*K)') // => 918.9586840
 */
export const scaledHeatTransfer = /* @__PURE__ */ formula({
  name: 'scaledHeatTransfer',
  title: 'Heat-transfer coefficient at another pressure and size',
  equation: 'h_2 = h_1·f_p^(4 / 5)·f_d^(−1 / 5)',
  source:
    'h ~ G^0.8·d^−0.2 of turbulent pipe flow, with G ~ p at equal shape (quoted from memory, not verified)',
  inputs: {
    heatTransferCoefficient: heatTransferCoefficient('h_1', 'heat-transfer coefficient of the known motor', {
      example: '800 W/(m^2*K)',
    }),
    pressureRatio: ratio('f_p', 'pressure/pressure of the known motor', { above: 0, example: 1.5 }),
    sizeRatio: ratio('f_d', 'size/size of the known motor', { above: 0, example: 0.5 }),
  },
  output: heatTransferCoefficient('h_2', 'heat-transfer coefficient of the other motor'),
  si: (v) => v.heatTransferCoefficient * v.pressureRatio ** 0.8 * v.sizeRatio ** -0.2,
});
