import { gaussLegendre, integratePanels } from '../numerics';
import { gamma, gasConstant } from '../thermo/gas-inputs';
import { isentropicPressureRatioSi, isentropicTemperatureRatioSi } from '../thermo/isentropic-kernels';
import { machFromAreaRatioSi } from '../thermo/mach-from-area-ratio';
import { dynamicViscosity, procedure } from '../units';
import {
  chamberPressure,
  chamberTemperature,
  expansionRatio,
  halfAngle,
  throatDiameter,
} from './nozzle-inputs';

/** Thrust lost to friction on the wall of the divergent cone. */
export interface FrictionLoss {
  /** Loss of thrust coefficient. */
  readonly thrustCoefficient: number;
  /** Reynolds number of the wall length at the exit state. */
  readonly wallReynolds: number;
  readonly cautions: readonly string[];
}

/**
 * Estimate of the thrust lost to friction in a conical divergent section: the turbulent flat-plate law at the local state,
 * starting at the throat, integrated along the cone. Compressibility and a cold wall are neglected and act in opposite
 * directions; the uncertainty of the loss is about 50 %.
 *
 * @example frictionThrustLoss({ gamma: 1.13, gasConstant: '196 J/(kg*K)', temperature: '1700 K', chamberPressure: '5 MPa', viscosity: '6e-5 Pa*s', throatDiameter: '12 mm', expansionRatio: 7, halfAngle: '12 deg' }).thrustCoefficient < 0.03 // => true
 */
export const frictionThrustLoss = /* @__PURE__ */ procedure({
  name: 'frictionThrustLoss',
  title: 'Thrust lost to wall friction in a divergent cone',
  source:
    'Local friction coefficient 0.0592·Re_x^(−1/5): Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, flat plate in turbulent flow; viscosity proportional to T^0.6 (quoted from memory, not verified)',
  inputs: {
    gamma,
    gasConstant,
    temperature: chamberTemperature,
    chamberPressure,
    viscosity: dynamicViscosity('μ', 'viscosity of the gas at the chamber temperature'),
    throatDiameter,
    expansionRatio,
    halfAngle,
  },
  gives: 'loss of thrust coefficient, and the Reynolds number of the wall',
  example: {
    gamma: 1.13,
    gasConstant: '196 J/(kg*K)',
    temperature: '1700 K',
    chamberPressure: '5 MPa',
    viscosity: '6e-5 Pa*s',
    throatDiameter: '12 mm',
    expansionRatio: 7,
    halfAngle: '12 deg',
  },
  checks: [
    ({ expansionRatio }) =>
      expansionRatio > 1
        ? undefined
        : { path: 'expansionRatio', given: expansionRatio, expected: 'above 1; at 1 there is no cone' },
  ],
  run: ({
    gamma,
    gasConstant: { si: r },
    temperature: { si: hot },
    chamberPressure: { si: chamber },
    viscosity: { si: viscosity },
    throatDiameter,
    expansionRatio,
    halfAngle: { si: angle },
  }): FrictionLoss => {
    const throat = throatDiameter.si / 2;
    // Along the wall: s from the throat, radius r_t + s·sin α; the axial part of τ on the ring 2πr·ds is lost thrust.
    const length = (throat * (Math.sqrt(expansionRatio) - 1)) / Math.sin(angle);
    const sample = (s: number): { readonly drag: number; readonly reynolds: number } => {
      const radius = throat + s * Math.sin(angle);
      const mach = machFromAreaRatioSi(Math.max(1, (radius / throat) ** 2), gamma, true);
      const t = isentropicTemperatureRatioSi(mach, gamma);
      const p = chamber * isentropicPressureRatioSi(mach, gamma);
      const velocity = mach * Math.sqrt(gamma * r * hot * t);
      const density = p / (r * hot * t);
      const reynolds = (density * velocity * s) / (viscosity * t ** 0.6);
      const friction = 0.0592 * reynolds ** -0.2;
      return {
        drag: friction * 0.5 * density * velocity ** 2 * 2 * Math.PI * radius * Math.cos(angle),
        reynolds,
      };
    };
    // s = length·u⁵ takes the s^(−1/5) singularity at the throat out of the integrand.
    const drag = integratePanels((u) => sample(length * u ** 5).drag * 5 * length * u ** 4, {
      lower: 0,
      upper: 1,
      rule: gaussLegendre(24),
    });
    return {
      thrustCoefficient: drag / (chamber * Math.PI * throat * throat),
      wallReynolds: sample(length).reynolds,
      cautions: [
        'Flat-plate estimate from the throat on, with an uncertainty of 50 %. A rough or slagged wall loses more.',
      ],
    };
  },
});
