import { gamma } from '../../thermo/gas-inputs';
import { list, procedure, ratio } from '../../units';
import { portEndMach } from '../port-mach';
import { machSquared } from './impulse-flow';
import { momentumFactor, portToThroat } from './port-inputs';

/** Flow along a port of constant area and uniform injection, station by station. */
export interface UniformPort {
  /** Mach number at the aft end. */
  readonly aftMach: number;
  readonly mach: readonly number[];
  /** Static pressure/static pressure at the head end. */
  readonly pressureRatio: readonly number[];
  /** Static temperature/flame temperature. */
  readonly temperatureRatio: readonly number[];
}

/**
 * Mach number, pressure and temperature along a port of constant area whose surface burns at one rate: the mass flow is
 * proportional to the distance, and the throat sets the Mach number at the aft end.
 *
 * @example uniformPort({ portToThroat: 1.5, gamma: 1.14, stations: [0.5, 1] }).mach[0].toFixed(8) // => '0.18877646'
 */
export const uniformPort = /* @__PURE__ */ procedure({
  name: 'uniformPort',
  title: 'Mach number, pressure and temperature along a port of uniform injection',
  source:
    'constant-area flow with mass addition, Shapiro (1953) ch. 8, quoted from memory, not verified; rederived from the balances of mass, momentum and energy',
  inputs: {
    portToThroat,
    gamma,
    momentumFactor,
    stations: list(
      'stations along the port',
      ratio('z/L', 'distance from the head end/length of the port', { min: 0, max: 1, example: 0.5 }),
    ),
  },
  gives: 'the flow at each station',
  example: { portToThroat: 2, gamma: 1.2, stations: [0.25, 0.5, 0.75, 1] },
  run: ({ portToThroat: J, gamma: g, momentumFactor: b, stations }): UniformPort => {
    const aft = portEndMach(J, g, b);
    // ṁ·√(R·T_0)/(A·p_h) of a Mach number; its square is proportional to the square of the distance.
    const square = aft * aft;
    const flow = Math.sqrt(g * square * (1 + ((g - 1) / 2) * square)) / (1 + b * g * square);
    const squares = stations.map((z) =>
      // At the aft end of a choked port rounding must not lose the root.
      z === 1 ? square : machSquared(z * flow, 1, 1, g, b),
    );
    return {
      aftMach: aft,
      mach: squares.map(Math.sqrt),
      pressureRatio: squares.map((x) => 1 / (1 + b * g * x)),
      temperatureRatio: squares.map((x) => 1 / (1 + ((g - 1) / 2) * x)),
    };
  },
});
