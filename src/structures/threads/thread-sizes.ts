// Major diameters and pitches; everything else follows from them by the formulas of the standards.

/** Nominal diameter in mm, coarse pitch, then the finer pitches in use (ISO 261, ISO 262). */
export const metricSizes: readonly (readonly [
  diameter: number,
  coarse: number,
  ...fine: readonly number[],
])[] = [
  [2, 0.4, 0.25],
  [2.5, 0.45, 0.35],
  [3, 0.5, 0.35],
  [3.5, 0.6, 0.35],
  [4, 0.7, 0.5],
  [5, 0.8, 0.5],
  [6, 1, 0.75],
  [7, 1, 0.75],
  [8, 1.25, 1, 0.75],
  [10, 1.5, 1.25, 1, 0.75],
  [12, 1.75, 1.5, 1.25, 1],
  [14, 2, 1.5, 1.25, 1],
  [16, 2, 1.5, 1],
  [18, 2.5, 2, 1.5, 1],
  [20, 2.5, 2, 1.5, 1],
];

/** Size name, major diameter in inch, threads per inch UNC, UNF (ASME B1.1). */
export const unifiedSizes: readonly (readonly [name: string, diameter: number, unc: number, unf: number])[] =
  [
    ['#2', 0.086, 56, 64],
    ['#3', 0.099, 48, 56],
    ['#4', 0.112, 40, 48],
    ['#5', 0.125, 40, 44],
    ['#6', 0.138, 32, 40],
    ['#8', 0.164, 32, 36],
    ['#10', 0.19, 24, 32],
    ['#12', 0.216, 24, 28],
    ['1/4', 0.25, 20, 28],
    ['5/16', 0.3125, 18, 24],
    ['3/8', 0.375, 16, 24],
    ['7/16', 0.4375, 14, 20],
    ['1/2', 0.5, 13, 20],
    ['9/16', 0.5625, 12, 18],
    ['5/8', 0.625, 11, 18],
    ['3/4', 0.75, 10, 16],
  ];
