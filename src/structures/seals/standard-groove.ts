import {
  choice,
  fromSiValue,
  length,
  MeopError,
  optional,
  procedure,
  type Quantity,
  unitFor,
  unitOf,
} from '../../units';

/** One row of a published table of static grooves, in inches and per cent. */
interface GrooveRow {
  readonly section: number;
  readonly depth: readonly [min: number, max: number];
  readonly width: readonly [min: number, max: number];
  /** For gas and vacuum, where the table has it. */
  readonly gasWidth?: readonly [min: number, max: number];
  readonly squeeze: readonly [min: number, max: number];
}

const tables = {
  radial: {
    source: 'Apple Rubber, Seal Design Guide, static gland table',
    rows: [
      { section: 0.07, depth: [0.05, 0.055], width: [0.1, 0.11], squeeze: [18, 32] },
      { section: 0.103, depth: [0.08, 0.086], width: [0.141, 0.151], squeeze: [14, 25] },
      { section: 0.139, depth: [0.11, 0.116], width: [0.19, 0.2], squeeze: [14, 23] },
      { section: 0.21, depth: [0.17, 0.176], width: [0.275, 0.285], squeeze: [14, 21] },
      { section: 0.275, depth: [0.225, 0.235], width: [0.345, 0.355], squeeze: [13, 20] },
    ],
  },
  face: {
    source: 'Parker O-Ring Handbook ORD 5700, design chart 4-3, read in two transcriptions',
    // biome-ignore format: columns of a table
    rows: [
      { section: 0.07, depth: [0.05, 0.054], width: [0.101, 0.107], gasWidth: [0.084, 0.089], squeeze: [19, 32] },
      { section: 0.103, depth: [0.074, 0.08], width: [0.136, 0.142], gasWidth: [0.12, 0.125], squeeze: [20, 30] },
      { section: 0.139, depth: [0.101, 0.107], width: [0.177, 0.187], gasWidth: [0.158, 0.164], squeeze: [20, 30] },
      { section: 0.21, depth: [0.152, 0.162], width: [0.27, 0.29], gasWidth: [0.239, 0.244], squeeze: [21, 30] },
      { section: 0.275, depth: [0.201, 0.211], width: [0.342, 0.362], gasWidth: [0.309, 0.314], squeeze: [21, 29] },
    ],
  },
} as const satisfies Readonly<
  Record<string, { readonly source: string; readonly rows: readonly GrooveRow[] }>
>;

/** Position of the groove: around a closure, against a bore, or in a flat face. */
export type GroovePlace = keyof typeof tables;

/** The published row for a section (SI) and its source; `undefined` where there is none. */
export function grooveRow(
  section: number,
  place: GroovePlace,
): (GrooveRow & { readonly source: string }) | undefined {
  const { rows, source } = tables[place];
  const row: GrooveRow | undefined = rows.find((one) => Math.abs(section / 0.0254 - one.section) < 0.004);
  return row && { ...row, source };
}

/** A length between two limits. */
export interface LengthRange {
  readonly min: Quantity<'length'>;
  readonly max: Quantity<'length'>;
}

/** A groove as published by seal manufacturers. */
export interface StandardGroove {
  /** Radial: with half of the diametral clearance. Face: depth of cut. */
  readonly depth: LengthRange;
  /** Without backup rings. */
  readonly width: LengthRange;
  /** Narrower width for gas and vacuum, where published; it has no space for thermal growth. */
  readonly gasWidth?: LengthRange;
  /** Over the tolerances of ring and depth, as fractions. */
  readonly squeeze: { readonly min: number; readonly max: number };
  readonly source: string;
}

/**
 * The published static groove for a cross section of AS568, as a starting point; evaluate the machined groove with
 * {@link oRingGland} or {@link faceSeal}.
 *
 * @throws MeopError `unknown-name` for a cross section that is not in the table
 * @example standardGroove({ crossSection: '0.139 in' }).depth.min.in('in') // => 0.11
 */
export const standardGroove = /* @__PURE__ */ procedure({
  name: 'standardGroove',
  title: 'Published static groove for an O-ring',
  source: `${tables.radial.source}; ${tables.face.source}`,
  inputs: {
    crossSection: length('d', 'cross section of the O-ring', { example: '0.139 in' }),
    place: optional(
      choice('groove around a closure (radial) or in a flat face', ['radial', 'face']),
      'radial',
    ),
  },
  gives: 'depth, width and squeeze of the groove',
  example: { crossSection: '0.139 in' },
  run: ({ crossSection, place }): StandardGroove => {
    const row = grooveRow(crossSection.si, place);
    if (row === undefined)
      throw new MeopError({
        code: 'unknown-name',
        procedure: 'standardGroove',
        path: 'crossSection',
        given: String(crossSection),
        note: 'cross section',
        expected: tables[place].rows.map(({ section }) => `${section} in`).join(', '),
      });
    const { us } = unitFor('length', crossSection.unit);
    const range = ([min, max]: readonly [number, number]): LengthRange => {
      const show = (inches: number): Quantity<'length'> =>
        fromSiValue(inches * 0.0254, 'length', unitOf(us ? 'in' : 'mm'));
      return { min: show(min), max: show(max) };
    };
    return {
      depth: range(row.depth),
      width: range(row.width),
      ...(row.gasWidth && { gasWidth: range(row.gasWidth) }),
      squeeze: { min: row.squeeze[0] / 100, max: row.squeeze[1] / 100 },
      source: row.source,
    };
  },
});
