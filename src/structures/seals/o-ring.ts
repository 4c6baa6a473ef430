import { fromSiValue, MeopError, type Quantity, type QuantityInput, q, readInput } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { readNotNegative, readPositive, refusal } from '../../units/refusal';
import { disagreements, type SizeRun, sizeRuns } from './o-ring-table';

/** An O-ring with its tolerances, free of any groove. */
export interface ORing {
  /** `AS568-228`, or what its maker calls it. */
  readonly size: string;
  readonly insideDiameter: Quantity<'length'>;
  /** Plus or minus, on the inside diameter. */
  readonly insideDiameterTolerance: Quantity<'length'>;
  readonly crossSection: Quantity<'length'>;
  /** Plus or minus, on the cross section. */
  readonly crossSectionTolerance: Quantity<'length'>;
  readonly source: string;
  readonly cautions: readonly string[];
}

const source =
  'SAE AS568 (sizes of ISO 3601-1 class A), read in five transcriptions; the standard itself was not opened';

/**
 * A standard O-ring by its dash number: `'228'`, `'-228'`, `'AS568-228'`, `'012'`.
 *
 * @throws MeopError `unknown-name` for a number the standard does not have
 * @example oRing('-228').insideDiameter.in('in') // => 2.234
 */
export function oRing(size: string): ORing {
  const text = String(size).trim();
  const number = /^(?:AS568[A-Z]?[\s-]*|-)?(\d{1,3})$/i.exec(text)?.[1];
  const dash = Number(number);
  const run = number === undefined ? undefined : runOf(dash);
  if (!run) throw unknownSize(size, dash);
  const [insideDiameter, tolerance] = insideDiameterIn(run, dash - run.from);
  const mil = (value: number): Quantity<'length'> => q(value / 1000, 'in');
  const known = disagreements[dash];
  return {
    size: `AS568-${String(dash).padStart(3, '0')}`,
    insideDiameter: mil(insideDiameter),
    insideDiameterTolerance: mil(tolerance),
    crossSection: mil(run.crossSection),
    crossSectionTolerance: mil(run.tolerance),
    source,
    cautions: known === undefined ? [] : [`AS568-${dash}: sources disagree on the ${known}`],
  };
}

/** An O-ring that is in no table, for {@link customORing}. */
export interface CustomORing {
  readonly insideDiameter: QuantityInput<'length'>;
  readonly insideDiameterTolerance: QuantityInput<'length'>;
  readonly crossSection: QuantityInput<'length'>;
  readonly crossSectionTolerance: QuantityInput<'length'>;
  readonly size?: string;
  readonly source?: string;
}

/**
 * An O-ring of other sizes, such as metric ones, with the tolerances of its maker.
 *
 * @throws MeopError `out-of-domain`
 * @example customORing({ insideDiameter: '60 mm', insideDiameterTolerance: '0.5 mm', crossSection: '3 mm', crossSectionTolerance: '0.1 mm' }).size // => '60 x 3 mm'
 */
export function customORing(ring: CustomORing): ORing {
  const length = (field: keyof CustomORing, read: typeof readPositive): Quantity<'length'> => {
    const { si, unit } = read('length', field, ring[field], 'customORing');
    return fromSiValue(si, 'length', unit);
  };
  const insideDiameter = length('insideDiameter', readPositive);
  const crossSection = length('crossSection', readPositive);
  const mm = (value: Quantity<'length'>): number => Number(value.in('mm').toFixed(3));
  return {
    size: ring.size ?? `${mm(insideDiameter)} x ${mm(crossSection)} mm`,
    insideDiameter,
    insideDiameterTolerance: length('insideDiameterTolerance', readNotNegative),
    crossSection,
    crossSectionTolerance: length('crossSectionTolerance', readNotNegative),
    source: ring.source ?? "user's own",
    cautions: [],
  };
}

/** Which O-rings would suit a groove. */
export interface ORingSearch {
  /** Of the bottom of the groove that the ring is stretched over. */
  readonly grooveDiameter: QuantityInput<'length'>;
  /** Nominal, such as 0.139 in; every section where left out. */
  readonly crossSection?: QuantityInput<'length'>;
  /** Least and greatest stretch at the nominal size; 1 % to 5 % where left out. */
  readonly stretch?: readonly [least: number, greatest: number];
}

const oRingsForGrooveFields: FieldsOf<ORingSearch> = {
  grooveDiameter: 'required',
  crossSection: 'optional',
  stretch: 'optional',
};

/**
 * The standard O-rings that stretch by so much over a groove, least stretched first. The 1 % to 5 % are the usual range
 * of seal makers' handbooks.
 *
 * @throws MeopError `out-of-domain`
 * @example oRingsForGroove({ grooveDiameter: '2.278 in', crossSection: '0.139 in' }).map((ring) => ring.size).join() // => 'AS568-228'
 */
export function oRingsForGroove(options: ORingSearch): readonly ORing[] {
  requireFields('oRingsForGroove', options, oRingsForGrooveFields);
  const { grooveDiameter, crossSection, stretch = [0.01, 0.05] } = options;
  const groove = readPositive('length', 'grooveDiameter', grooveDiameter, 'oRingsForGroove').si;
  const section =
    crossSection === undefined
      ? undefined
      : readInput('length', 'crossSection', crossSection, 'oRingsForGroove').si;
  const [least, greatest] = stretch;
  if (!(least <= greatest)) throw refusal('oRingsForGroove', 'stretch', stretch, 'a range that rises');
  const found: [stretch: number, dash: number][] = [];
  for (const run of sizeRuns) {
    if (section !== undefined && Math.abs(section - mils(run.crossSection)) > mils(run.tolerance)) continue;
    sizesOf(run).forEach(([insideDiameter], i) => {
      const stretched = groove / mils(insideDiameter) - 1;
      if (stretched >= least && stretched <= greatest) found.push([stretched, run.from + i]);
    });
  }
  return found.sort(([a], [b]) => a - b).map(([, dash]) => oRing(String(dash)));
}

const mils = (value: number): number => value * 25.4e-6;

const runOf = (dash: number): SizeRun | undefined =>
  sizeRuns.find((run) => dash >= run.from && dash < run.from + sizesOf(run).length);

const parsed = new Map<SizeRun, readonly (readonly [insideDiameter: number, tolerance: number])[]>();

function sizesOf(run: SizeRun): readonly (readonly [insideDiameter: number, tolerance: number])[] {
  const known = parsed.get(run);
  if (known) return known;
  let tolerance = 0;
  const sizes = run.insideDiameters.split(/\s+/).map((text) => {
    const [size, changed] = text.split('/');
    if (changed !== undefined) tolerance = Number(changed);
    return [Number(size), tolerance] as const;
  });
  parsed.set(run, sizes);
  return sizes;
}

const insideDiameterIn = (run: SizeRun, at: number): readonly [number, number] => sizesOf(run)[at];

function unknownSize(size: unknown, dash: number): MeopError {
  const ranges = new Map<number, readonly [number, number]>();
  for (const run of sizeRuns) {
    const hundreds = Math.floor(run.from / 100);
    ranges.set(hundreds, [ranges.get(hundreds)?.[0] ?? run.from, run.from + sizesOf(run).length - 1]);
  }
  const known = [...ranges.values()].map((range) =>
    range.map((n) => String(n).padStart(3, '0')).join(' to '),
  );
  const nearest = sizeRuns
    .flatMap((run) => [run.from, run.from + sizesOf(run).length - 1])
    .sort((a, b) => Math.abs(a - dash) - Math.abs(b - dash))[0];
  const hint = Number.isInteger(dash) ? ` (nearest -${String(nearest).padStart(3, '0')})` : '';
  return new MeopError(
    'unknown-name',
    `oRing: size: '${String(size)}' is no AS568 size${hint}; known are -${known.join(', -')}`,
    'size',
    { value: size, expected: 'an AS568 dash number' },
  );
}
