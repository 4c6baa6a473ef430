import { machFromAreaRatioSi } from '../thermo/mach-from-area-ratio';
import { formula, length, massFlow, massFlux, ratio, readInput } from '../units';
import { readPositive, refusal } from '../units/refusal';

const procedure = 'portEnd';

const source =
  'momentum balance of a constant-area port with gas entering at right angles, no friction; Shapiro (1953) ch. 8 and Price, J. Appl. Phys. (1955), from memory';
const gamma = ratio('γ', 'ratio of specific heats', { above: 1 });
const mach = ratio('M', 'Mach number at the aft end of the port', { min: 0, max: 1 });

/**
 * Mass flux through a round port.
 *
 * @example portMassFlux({ massFlow: '0.169932044 kg/s', portDiameter: '16 mm' }).in('kg/(m^2*s)') // => 845.1726498
 */
export const portMassFlux = /* @__PURE__ */ formula({
  name: 'portMassFlux',
  title: 'Mass flux through a round port',
  equation: 'G = 4·ṁ / (π·d²)',
  source: 'definition of mass flux',
  inputs: {
    massFlow: massFlow('ṁ', 'mass flow through the port', { min: 0 }),
    portDiameter: length('d', 'port diameter'),
  },
  output: massFlux('G', 'mass flux'),
  example: { massFlow: '0.17 kg/s', portDiameter: '16 mm' },
  si: ({ massFlow: flow, portDiameter }) => (4 * flow) / (Math.PI * portDiameter ** 2),
  solve: {
    massFlow: (G, { portDiameter }) => (G * Math.PI * portDiameter ** 2) / 4,
    portDiameter: (G, { massFlow: flow }) => Math.sqrt((4 * flow) / (Math.PI * G)),
  },
});

/**
 * Static pressure at the head end of a port over that at its aft end.
 *
 * @example portStaticPressureRatio({ mach: 0.3, gamma: 1.2 }) // => 1.108
 */
export const portStaticPressureRatio = /* @__PURE__ */ formula({
  name: 'portStaticPressureRatio',
  title: 'Static pressure, head end over aft end of the port',
  equation: 'p_h/p_a = 1 + γ·M²',
  source,
  inputs: { mach, gamma },
  output: ratio('p_h/p_a', 'static pressure at the head end over that at the aft end'),
  example: { mach: 0.3, gamma: 1.2 },
  si: ({ mach: M, gamma: g }) => 1 + g * M * M,
  solve: { mach: (value, { gamma: g }) => Math.sqrt((value - 1) / g) },
});

/**
 * Stagnation pressure at the aft end of a port, which drives the nozzle, over static pressure at its head end, which a
 * gauge in the forward closure reads.
 *
 * @example portStagnationPressureRatio({ mach: 0.3, gamma: 1.2 }) // => 0.952373356
 */
export const portStagnationPressureRatio = /* @__PURE__ */ formula({
  name: 'portStagnationPressureRatio',
  title: 'Stagnation pressure at the aft end over head-end pressure',
  equation: 'p_0/p_h = (1 + (γ − 1)·M² / 2)^(γ / (γ − 1)) / (1 + γ·M²)',
  source,
  inputs: { mach, gamma },
  output: ratio('p_0/p_h', 'stagnation pressure at the aft end over head-end pressure'),
  example: { mach: 0.3, gamma: 1.2 },
  si: ({ mach: M, gamma: g }) =>
    Math.exp((g / (g - 1)) * Math.log1p(((g - 1) / 2) * M * M)) / (1 + g * M * M),
});

/** The flow at the aft end of a port and what it does to the pressure along it. */
export interface PortEnd {
  /** Mach number at the aft end; 1 where the port chokes before the throat does. */
  readonly mach: number;
  readonly choked: boolean;
  /** Static pressure at the head end over that at the aft end. */
  readonly headToAftStatic: number;
  /** Stagnation pressure at the aft end over head-end pressure. */
  readonly aftStagnationToHead: number;
}

/**
 * Flow at the aft end of a port from port-to-throat area ratio, isentropic from there to the choked throat.
 *
 * Source: A/A* relation, NACA Report 1135; momentum balance as in {@link portStaticPressureRatio}.
 *
 * @throws MeopError `out-of-domain`
 * @example portEnd({ portToThroat: 2, gamma: 1.2 }).headToAftStatic // => 1.11699046
 */
export function portEnd({
  portToThroat,
  gamma: g,
}: {
  readonly portToThroat: number;
  readonly gamma: number;
}): PortEnd {
  const J = readPositive('dimensionless', 'portToThroat', portToThroat, procedure).si;
  const k = readInput('dimensionless', 'gamma', g, procedure).si;
  if (!(k > 1)) throw refusal(procedure, 'gamma', g, 'a value above 1');
  const M = portEndMachSi(J, k);
  return {
    mach: M,
    choked: J <= 1,
    headToAftStatic: portStaticPressureRatio.si({ mach: M, gamma: k }),
    aftStagnationToHead: portStagnationPressureRatio.si({ mach: M, gamma: k }),
  };
}

/**
 * Mach number at the aft end of a port; plain numbers, unchecked.
 *
 * @example portEndMachSi(2, 1.2) // => 0.312237165
 */
export function portEndMachSi(portToThroat: number, g: number): number {
  return portToThroat <= 1 ? 1 : machFromAreaRatioSi(portToThroat, g, false);
}

/**
 * Mach number where the flux is G in a port with head-end pressure p_h: the subsonic root of
 * G·√(R·T)/p_h = √γ·M·√(1 + (γ−1)/2·M²) / (1 + γ·M²), 1 where there is none; plain numbers, unchecked.
 *
 * @example portMachSi(2175.790441, 4e6, 3e5, 1.2) // => 0.3
 */
export function portMachSi(massFluxSi: number, headPressure: number, gasEnergy: number, g: number): number {
  const s = (massFluxSi * Math.sqrt(gasEnergy)) / headPressure;
  const ss = s * s;
  // A quadratic in M²: (γ²·s² − γ·(γ−1)/2)·x² + (2·γ·s² − γ)·x + s² = 0; its small root without cancellation.
  const a = g * g * ss - (g * (g - 1)) / 2;
  const b = 2 * g * ss - g;
  const discriminant = b * b - 4 * a * ss;
  if (!(discriminant > 0) || b >= 0) return 1;
  return Math.min(1, Math.sqrt((2 * ss) / (-b + Math.sqrt(discriminant))));
}
