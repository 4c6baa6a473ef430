import { gaussLegendre, integratePanels } from '../numerics';
import { isentropicPressureRatioSi, isentropicTemperatureRatioSi } from '../thermo/isentropic-kernels';
import { machFromAreaRatioSi } from '../thermo/mach-from-area-ratio';
import { type NamedKind, type QuantityInput, readInput } from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { refusal } from '../units/refusal';

const procedure = 'frictionThrustLoss';

/** Options of {@link frictionThrustLoss}. */
export interface FrictionLossOptions {
  readonly gamma: number;
  readonly gasConstant: QuantityInput<'specific gas constant'>;
  readonly temperature: QuantityInput<'temperature'>;
  readonly chamberPressure: QuantityInput<'absolute pressure'>;
  /** Viscosity of the gas at the chamber temperature. */
  readonly viscosity: QuantityInput<'dynamic viscosity'>;
  readonly throatDiameter: QuantityInput<'length'>;
  readonly expansionRatio: number;
  /** Half angle of the cone. */
  readonly halfAngle: QuantityInput<'angle'>;
}

/** Thrust loss by friction on the wall of the divergent cone. */
export interface FrictionLoss {
  /** Loss of thrust coefficient. */
  readonly thrustCoefficient: number;
  /** Reynolds number of the wall length at the exit state. */
  readonly wallReynolds: number;
  readonly cautions: readonly string[];
}

const frictionThrustLossFields: FieldsOf<FrictionLossOptions> = {
  gamma: 'required',
  gasConstant: 'required',
  temperature: 'required',
  chamberPressure: 'required',
  viscosity: 'required',
  throatDiameter: 'required',
  expansionRatio: 'required',
  halfAngle: 'required',
};

/**
 * Estimates the thrust loss by friction in a conical divergent section: the turbulent flat-plate law at the local
 * state, starting at the throat, integrated along the cone. Compressibility and a cold wall are neglected; their
 * effects are opposite. The accuracy is about 50 %.
 *
 * Source: local friction coefficient 0.0592·Re_x^(−1/5), Incropera & DeWitt, Fundamentals of Heat and Mass
 * Transfer, flat plate in turbulent flow; viscosity proportional to T^0.6 (quoted from memory, not verified).
 *
 * @throws MeopError `out-of-domain` for values outside the ranges of the fields
 * @example frictionThrustLoss({ gamma: 1.13, gasConstant: '196 J/(kg*K)', temperature: '1700 K', chamberPressure: '5 MPa', viscosity: '6e-5 Pa*s', throatDiameter: '12 mm', expansionRatio: 7, halfAngle: '12 deg' }).thrustCoefficient < 0.03 // => true
 */
export function frictionThrustLoss(options: FrictionLossOptions): FrictionLoss {
  requireFields(procedure, options, frictionThrustLossFields);
  const read = (kind: NamedKind, field: keyof FrictionLossOptions, above: number): number => {
    const { si } = readInput(kind, field, options[field], procedure);
    if (si > above) return si;
    throw refusal(procedure, field, options[field], `above ${above}`);
  };
  const gamma = read('dimensionless', 'gamma', 1);
  const r = read('specific gas constant', 'gasConstant', 0);
  const hot = read('temperature', 'temperature', 0);
  const chamber = read('absolute pressure', 'chamberPressure', 0);
  const viscosity = read('dynamic viscosity', 'viscosity', 0);
  const throat = read('length', 'throatDiameter', 0) / 2;
  const expansion = read('dimensionless', 'expansionRatio', 1);
  const angle = read('angle', 'halfAngle', 0);
  if (!(angle < Math.PI / 2)) throw refusal(procedure, 'halfAngle', options.halfAngle, 'below 90 deg');

  // Along the wall: s from the throat, radius r_t + s·sin α; the axial component of τ on the ring 2πr·ds is the thrust loss.
  const length = (throat * (Math.sqrt(expansion) - 1)) / Math.sin(angle);
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
  // s = length·u⁵ removes the s^(−1/5) singularity at the throat from the integrand.
  const drag = integratePanels((u) => sample(length * u ** 5).drag * 5 * length * u ** 4, {
    lower: 0,
    upper: 1,
    rule: gaussLegendre(24),
  });
  return {
    thrustCoefficient: drag / (chamber * Math.PI * throat * throat),
    wallReynolds: sample(length).reynolds,
    cautions: [
      'Flat-plate estimate from the throat, accurate to about 50 %. A rough or slagged wall has a larger loss.',
    ],
  };
}
