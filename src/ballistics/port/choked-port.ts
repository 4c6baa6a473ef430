import { formula, fromSiValue, length, massFlux, procedure, type Quantity, unitOf } from '../../units';
import { castDensity } from '../propellant-inputs';
import { chokingMachSi, stagnationRatio } from './impulse-flow';
import { headPressure, momentumFactor, portGasInputs } from './port-inputs';

const source =
  'momentum balance of a constant-area port with gas entering at right angles, no friction; Shapiro (1953) ch. 8, quoted from memory, not verified';

/** @example chokedPortFlux({ headPressure: '5 MPa', gasConstant: '207.8615654538 J/(kg*K)', gasTemperature: '1600 K', gamma: 1.14 }).in('kg/(m^2*s)') // => 4474.592158 */
export const chokedPortFlux = /* @__PURE__ */ formula({
  name: 'chokedPortFlux',
  title: 'Maximum mass flux of a port',
  equation: 'G_c = p_h·√(γ / (2·(1 − γ + 2·β·γ)·R·T_0))',
  source,
  inputs: { headPressure, ...portGasInputs, momentumFactor },
  output: massFlux('G_c', 'mass flux at the aft end where the port chokes'),
  si: ({ headPressure: p, gasConstant, gasTemperature, gamma, momentumFactor: b = 1 }) =>
    p * Math.sqrt(gamma / (2 * (1 - gamma + 2 * b * gamma) * gasConstant * gasTemperature)),
});

/** A port that chokes at its aft end. */
export interface ChokedPort {
  readonly massFlux: Quantity<'mass flux'>;
  readonly massFlow: Quantity<'mass flow'>;
  readonly exitMach: number;
  readonly exitPressure: Quantity<'absolute pressure'>;
  readonly exitStagnation: Quantity<'absolute pressure'>;
  /** Mean burning rate over the bore that delivers this flow. */
  readonly chokingRate: Quantity<'speed'>;
}

/**
 * The flow of a round port that chokes at its aft end, as it does where the throat is not smaller than the port: the most that
 * the port passes at a head pressure, and the mean burning rate that delivers it. The head pressure follows the flow:
 * p_h = G·√(2·(γ + 1)·R·T_0/γ) for a uniform profile.
 *
 * @example chokedPort({ boreDiameter: '12 mm', length: '250 mm', headPressure: '5 MPa', density: '1780 kg/m^3', gasConstant: '207.8615654538 J/(kg*K)', gasTemperature: '1600 K', gamma: 1.14 }).chokingRate.in('mm/s') // => 30.1657898
 */
export const chokedPort = /* @__PURE__ */ procedure({
  name: 'chokedPort',
  title: 'Flow of a choked port',
  source,
  inputs: {
    boreDiameter: length('d', 'bore diameter', { example: '12 mm' }),
    length: length('L', 'length of the bore', { example: '250 mm' }),
    headPressure,
    density: castDensity,
    ...portGasInputs,
    momentumFactor,
  },
  gives:
    'mass flux and mass flow, the pressures at the aft end, and the mean burning rate that chokes the port',
  example: {
    boreDiameter: '12 mm',
    length: '250 mm',
    headPressure: '5 MPa',
    density: '1780 kg/m^3',
    gasConstant: '208 J/(kg*K)',
    gasTemperature: '1600 K',
    gamma: 1.14,
  },
  working: (v) => [
    chokedPortFlux.explain({
      headPressure: v.headPressure,
      gasConstant: v.gasConstant,
      gasTemperature: v.gasTemperature,
      gamma: v.gamma,
      momentumFactor: v.momentumFactor,
    }),
  ],
  run: (v): ChokedPort => {
    const flux = chokedPortFlux.si({
      headPressure: v.headPressure.si,
      gasConstant: v.gasConstant.si,
      gasTemperature: v.gasTemperature.si,
      gamma: v.gamma,
      momentumFactor: v.momentumFactor,
    });
    const mach = chokingMachSi(v.gamma, v.momentumFactor);
    const square = mach * mach;
    const exit = v.headPressure.si / (1 + v.momentumFactor * v.gamma * square);
    const pressure = (si: number) => fromSiValue<'absolute pressure'>(si, 'absolute pressure', unitOf('MPa'));
    const bore = v.boreDiameter.si;
    return {
      massFlux: fromSiValue<'mass flux'>(flux, 'mass flux', unitOf('kg/(m^2*s)')),
      massFlow: fromSiValue<'mass flow'>((flux * Math.PI * bore ** 2) / 4, 'mass flow', unitOf('kg/s')),
      exitMach: mach,
      exitPressure: pressure(exit),
      exitStagnation: pressure(exit * stagnationRatio(square, v.gamma)),
      chokingRate: fromSiValue<'speed'>(
        (flux * bore) / (4 * v.density.si * v.length.si),
        'speed',
        unitOf('mm/s'),
      ),
    };
  },
});
