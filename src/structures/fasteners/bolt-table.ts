import type { Provenance } from '../materials/datum';

/** The names of the bolt classes. */
export type BoltClassName =
  | '4.6'
  | '4.8'
  | '5.6'
  | '5.8'
  | '6.8'
  | '8.8'
  | '9.8'
  | '10.9'
  | '12.9'
  | 'A2-50'
  | 'A2-70'
  | 'A2-80'
  | 'A4-50'
  | 'A4-70'
  | 'A4-80'
  | 'grade 1'
  | 'grade 2'
  | 'grade 5'
  | 'grade 8'
  | 'A574';

/** Ratio of ultimate shear to ultimate tension, with its source. */
interface ShearRatio {
  readonly ratio: number;
  readonly source: string;
  readonly provenance: Provenance;
}

interface BoltRow {
  readonly name: BoltClassName;
  readonly standard: string;
  readonly sizes: string;
  /** m; the row holds above this. */
  readonly minDiameter?: number;
  /** m; the standard states no strength for smaller bolts, though they are sold under its name. */
  readonly leastDiameter?: number;
  /** m; the row holds up to and with this. */
  readonly maxDiameter: number;
  readonly unit: 'ksi' | 'MPa';
  readonly proof?: number;
  /** The yield strength and, where it is not from the same table, why. */
  readonly yieldStrength: readonly [strength: number, note?: string];
  readonly ultimate: number;
  readonly source: string;
  readonly threadShear: ShearRatio;
  readonly shankShear: ShearRatio;
  readonly notes: readonly string[];
}

const ratio = (value: number, source: string, provenance: Provenance = 'published'): ShearRatio => ({
  ratio: value,
  source,
  provenance,
});
const shank = ratio(0.6, 'EN 1993-1-8 table 3.4, shear plane in the shank');
const thread = ratio(0.6, 'EN 1993-1-8 table 3.4, shear plane in the thread, classes 4.6, 5.6 and 8.8');
const threadHalf = ratio(
  0.5,
  'EN 1993-1-8 table 3.4, shear plane in the thread, classes 4.8, 5.8, 6.8 and 10.9',
);
const extended = ratio(
  0.5,
  'the 0.5 of EN 1993-1-8 for class 10.9, extended to this class',
  'engineering practice, no published source',
);
const bolts = ratio(0.6, 'rule of fastener handbooks', 'from memory');
const stainless = ratio(
  0.6,
  'cautious practice for cold-worked austenitic bolts',
  'engineering practice, no published source',
);

const iso898 = 'ISO 898-1:2013, mechanical properties, read in reproductions of its table';
const embrittlement = 'susceptible to hydrogen embrittlement where electroplated';

function metric(
  name: BoltClassName,
  [proof, yieldStrength, ultimate]: readonly [number, number, number],
  shear: ShearRatio,
  extra: Partial<BoltRow> = {},
): BoltRow {
  return {
    name,
    standard: 'ISO 898-1',
    sizes: 'M1.6 to M39',
    maxDiameter: 0.039,
    unit: 'MPa',
    proof,
    yieldStrength: [yieldStrength],
    ultimate,
    source: iso898,
    threadShear: shear,
    shankShear: shank,
    notes: ['minimums at 10 to 35 °C; ISO 898-1 limits use to −50 to 150 °C'],
    ...extra,
  };
}

const cold = { 50: [210, 500], 70: [450, 700], 80: [600, 800] } as const;

function austenitic(steel: 'A2' | 'A4', level: 50 | 70 | 80): BoltRow {
  const [yieldStrength, ultimate] = cold[level];
  return {
    name: `${steel}-${level}`,
    standard: 'ISO 3506-1',
    sizes: 'M1.6 to M24',
    maxDiameter: 0.024,
    unit: 'MPa',
    yieldStrength: [yieldStrength],
    ultimate,
    source: 'ISO 3506-1, mechanical requirements, read in reproductions of its table',
    threadShear: stainless,
    shankShear: stainless,
    notes: ['ISO 3506-1 gives no proof stress', 'austenitic threads gall: lubricate'],
  };
}

function inch(
  name: BoltClassName,
  [proof, yieldStrength, ultimate]: readonly [number, number, number],
  threadShear: ShearRatio,
  range: Pick<BoltRow, 'sizes' | 'minDiameter' | 'maxDiameter'>,
): BoltRow {
  return {
    name,
    standard: 'SAE J429',
    leastDiameter: 0.00635,
    ...range,
    unit: 'ksi',
    proof,
    yieldStrength: [yieldStrength],
    ultimate,
    source: 'SAE J429 as in Shigley and Mischke, Mechanical Engineering Design, 5th ed., p. 341',
    threadShear,
    shankShear: bolts,
    notes: [],
  };
}

const a574Yield = 'newer editions are remembered as 153 ksi; an older handbook table prints 160 ksi';

function a574(
  [proof, ultimate]: readonly [number, number],
  sizes: string,
  range: Pick<BoltRow, 'minDiameter' | 'maxDiameter'>,
): BoltRow {
  return {
    name: 'A574',
    standard: 'ASTM A574',
    sizes,
    ...range,
    unit: 'ksi',
    proof,
    yieldStrength: [153, a574Yield],
    ultimate,
    source: 'ASTM A574, read in a handbook compilation of its table (one source)',
    threadShear: extended,
    shankShear: bolts,
    notes: [embrittlement],
  };
}

/** Every bolt class, one row a size range. */
export const boltRows: readonly BoltRow[] = /* @__PURE__ */ (() => [
  metric('4.6', [225, 240, 400], thread),
  metric('4.8', [310, 340, 420], threadHalf),
  metric('5.6', [280, 300, 500], thread),
  metric('5.8', [380, 420, 520], threadHalf),
  metric('6.8', [440, 480, 600], threadHalf),
  metric('8.8', [580, 640, 800], thread, { sizes: 'up to 16 mm', maxDiameter: 0.016 }),
  metric('8.8', [600, 660, 830], thread, { sizes: 'above 16 mm', minDiameter: 0.016 }),
  metric('9.8', [650, 720, 900], extended, { sizes: 'up to 16 mm', maxDiameter: 0.016 }),
  metric('10.9', [830, 940, 1040], threadHalf),
  metric('12.9', [970, 1100, 1220], extended, { notes: [embrittlement] }),
  ...(['A2', 'A4'] as const).flatMap((steel) => [
    austenitic(steel, 50),
    austenitic(steel, 70),
    austenitic(steel, 80),
  ]),
  inch('grade 1', [33, 36, 60], bolts, { sizes: '1/4 to 1 1/2 in', maxDiameter: 0.0381 }),
  inch('grade 2', [55, 57, 74], bolts, { sizes: '1/4 to 3/4 in', maxDiameter: 0.01905 }),
  inch('grade 2', [33, 36, 60], bolts, {
    sizes: '7/8 to 1 1/2 in',
    minDiameter: 0.01905,
    maxDiameter: 0.0381,
  }),
  inch('grade 5', [85, 92, 120], bolts, { sizes: '1/4 to 1 in', maxDiameter: 0.0254 }),
  inch('grade 5', [74, 81, 105], bolts, {
    sizes: '1 1/8 to 1 1/2 in',
    minDiameter: 0.0254,
    maxDiameter: 0.0381,
  }),
  inch('grade 8', [120, 130, 150], extended, { sizes: '1/4 to 1 1/2 in', maxDiameter: 0.0381 }),
  a574([140, 180], '#0 to 1/2 in', { maxDiameter: 0.0127 }),
  a574([135, 170], '5/8 in and above', { minDiameter: 0.0127, maxDiameter: 0.0381 }),
])();
