/** The worst-case limits of mating threads in metres, for stripping calculations. */
export interface ThreadLimitsSi {
  /** Minimum major diameter of the screw. */
  readonly externalMajorMin: number;
  /** Minimum pitch diameter of the screw. */
  readonly externalPitchMin: number;
  /** Maximum pitch diameter of the tapped hole. */
  readonly internalPitchMax: number;
  /** Maximum minor diameter of the tapped hole. */
  readonly internalMinorMax: number;
}

/** Basic dimensions, m. */
interface Basic {
  readonly diameter: number;
  readonly pitch: number;
  readonly pitchDiameter: number;
  readonly minorDiameter: number;
}

/**
 * Limits for 6g screws in 6H holes by the tolerance formulas of ISO 965-1 (from memory), each tolerance rounded up to the
 * R40 series of preferred numbers as the standard's tables are rounded, so none is below its table value by more than 1 %.
 */
export function metricLimits({ diameter, pitch, pitchDiameter, minorDiameter }: Basic): ThreadLimitsSi {
  const p = pitch * 1e3;
  // The standard computes with the geometric mean of its diameter step.
  const [low, high] = steps.find(([, top]) => diameter * 1e3 <= top) ?? [180, diameter * 1e3];
  const d = Math.sqrt(low * high);
  const deviation = (15 + 11 * p) * 1e-6;
  const major = tolerance(180 * p ** (2 / 3) - 3.15 / Math.sqrt(p));
  const pitch6 = 90 * p ** 0.4 * d ** 0.1;
  const minor = tolerance(p < 1 ? 433 * p - 190 * p ** 1.22 : 230 * p ** 0.7);
  return {
    externalMajorMin: diameter - deviation - major,
    externalPitchMin: pitchDiameter - deviation - tolerance(pitch6),
    internalPitchMax: pitchDiameter + tolerance(1.32 * pitch6),
    internalMinorMax: minorDiameter + minor,
  };
}

const steps = [
  [1.4, 2.8],
  [2.8, 5.6],
  [5.6, 11.2],
  [11.2, 22.4],
  [22.4, 45],
  [45, 90],
  [90, 180],
] as const;

// biome-ignore format: a series of preferred numbers reads best in rows
const r40 = [
  1, 1.06, 1.12, 1.18, 1.25, 1.32, 1.4, 1.5, 1.6, 1.7, 1.8, 1.9, 2, 2.12, 2.24, 2.36, 2.5, 2.65, 2.8, 3,
  3.15, 3.35, 3.55, 3.75, 4, 4.25, 4.5, 4.75, 5, 5.3, 5.6, 6, 6.3, 6.7, 7.1, 7.5, 8, 8.5, 9, 9.5, 10,
];

/** Micrometres in, metres out, rounded up to R40. */
function tolerance(micrometres: number): number {
  const decade = 10 ** Math.floor(Math.log10(micrometres));
  const mantissa = micrometres / decade;
  return decade * (r40.find((number) => number >= mantissa) ?? 10) * 1e-6;
}

/**
 * Limits for 2A screws in 2B holes of ASME B1.1 for a length of engagement of one diameter, as its tables print them (tables
 * seen, formulas from memory): basic size, allowance and tolerance are each rounded to 0.0001 in. The minor diameter of
 * #6 and larger is then rounded to 0.001 in, which makes that of 1/4-20 0.207 instead of 0.2074 in.
 */
export function unifiedLimits({ diameter, pitch, pitchDiameter, minorDiameter }: Basic): ThreadLimitsSi {
  const d = diameter / inch;
  const p = pitch / inch;
  const p23 = p ** (2 / 3);
  const pitch2A = 0.0015 * Math.cbrt(d) + 0.0015 * Math.sqrt(d) + 0.015 * p23;
  const allowance = tenths(0.3 * pitch2A);
  const basicPitch = tenths(pitchDiameter / inch);
  const coarse = 0.25 * p - 0.4 * p * p;
  const numbered = Math.max(coarse, Math.min(0.394 * p, 0.05 * p23 + (0.03 * p) / d - 0.002));
  const minor = tenths(minorDiameter / inch) + tenths(d < 0.25 ? numbered : coarse);
  return {
    externalMajorMin: (d - allowance - tenths(0.06 * p23)) * inch,
    externalPitchMin: (basicPitch - allowance - tenths(pitch2A)) * inch,
    internalPitchMax: (basicPitch + tenths(1.3 * pitch2A)) * inch,
    internalMinorMax: (d < 0.138 - 1e-9 ? minor : rounded(minor, 1e-3)) * inch,
  };
}

const inch = 0.0254;
/** To the nearest step, halves upward; the small part keeps a half that binary arithmetic puts just below. */
const rounded = (value: number, step: number): number => Math.floor(value / step + 0.5 + 1e-6) * step;
const tenths = (value: number): number => rounded(value, 1e-4);
