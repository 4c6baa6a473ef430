import type { NamedKind } from '../../units';

// No small motor exceeds these values: a unit or typing error, not a design (engineering practice, no published source).
const most: Partial<Readonly<Record<NamedKind, readonly [si: number, words: string]>>> = {
  length: [100, '100 m'],
  mass: [1e6, '1000 t'],
  time: [1e5, '100 000 s'],
  frequency: [1e9, '1 GHz'],
  speed: [1e5, '100 km/s'],
  force: [1e9, '1 GN'],
  'absolute pressure': [1e9, '1 GPa'],
  'gauge pressure': [1e9, '1 GPa'],
  stress: [1e13, '10 TPa'],
  density: [3e4, '30 000 kg/m³'],
  temperature: [1e4, '10 000 K'],
  'molar mass': [10, '10 kg/mol'],
  'mass flux': [1e6, '1 000 000 kg/(m²·s)'],
  'second moment of area': [1, '1 m⁴'],
  'temperature sensitivity': [1, '1 per K'],
  'thermal expansion': [0.01, '0.01 per K'],
  angle: [2 * Math.PI * (1 + 1e-12), '360°'],
  dimensionless: [1e3, '1000'],
};

/** Limit that a value of a small motor does not exceed; undefined where the value is plausible. */
export function implausible(kind: NamedKind, si: number): string | undefined {
  const limit = most[kind];
  return limit === undefined || Math.abs(si) <= limit[0]
    ? undefined
    : `at most ${limit[1]} for a small motor`;
}
