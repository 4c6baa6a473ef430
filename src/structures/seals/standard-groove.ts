import { fromSiValue, MeopError, type Quantity, type QuantityInput, readInput, unitOf } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';

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

/** Whether the groove is round a closure, against a bore, or in a flat face. */
export type GroovePlace = keyof typeof tables;

/** The published row nearest to a section (SI) and its source; undefined where none is near. */
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

/** A groove as seal makers publish it. */
export interface StandardGroove {
  /** Radial: with half of the diametral clearance. Face: what is cut. */
  readonly depth: LengthRange;
  /** Without backup rings. */
  readonly width: LengthRange;
  /** Narrower, for gas and vacuum, where it is published; it leaves no room for a ring that grows hot. */
  readonly gasWidth?: LengthRange;
  /** Over the tolerances of ring and depth, as fractions. */
  readonly squeeze: { readonly min: number; readonly max: number };
  readonly source: string;
}

const name = 'standardGroove';
const fields: FieldsOf<Parameters<typeof standardGroove>[0]> = {
  crossSection: 'required',
  place: 'optional',
};

/**
 * The published static groove for a cross section of AS568: where to start; judge what is machined with {@link oRingGland} or
 * {@link faceSeal}.
 *
 * @throws MeopError `unknown-name` for a cross section or place that is in no table
 * @example standardGroove({ crossSection: '0.139 in' }).depth.min.in('in') // => 0.11
 */
export function standardGroove(options: {
  readonly crossSection: QuantityInput<'length'>;
  /** Against a bore (radial) where left out. */
  readonly place?: GroovePlace;
}): StandardGroove {
  requireFields(name, options, fields);
  const { crossSection, place = 'radial' } = options;
  const { si, unit } = readInput('length', 'crossSection', crossSection, name);
  const unknown = (field: string, value: unknown, known: string): MeopError =>
    new MeopError('unknown-name', `${name}: ${field}: no '${String(value)}'; known are ${known}`, field, {
      value,
      expected: known,
    });
  if (!Object.hasOwn(tables, place)) throw unknown('place', place, Object.keys(tables).join(', '));
  const row = grooveRow(si, place);
  if (row === undefined)
    throw unknown(
      'crossSection',
      crossSection,
      tables[place].rows.map(({ section }) => `${section} in`).join(', '),
    );
  const range = ([min, max]: readonly [number, number]): LengthRange => {
    const show = (inches: number): Quantity<'length'> =>
      fromSiValue(inches * 0.0254, 'length', unit.us ? unitOf('in') : unitOf('mm'));
    return { min: show(min), max: show(max) };
  };
  return {
    depth: range(row.depth),
    width: range(row.width),
    ...(row.gasWidth && { gasWidth: range(row.gasWidth) }),
    squeeze: { min: row.squeeze[0] / 100, max: row.squeeze[1] / 100 },
    source: row.source,
  };
}
