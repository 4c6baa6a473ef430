import { length, list, MeopError, optional, procedure, type Quantity, q, ratio, words } from '../../units';
import { disagreements, type SizeRun, sizeRuns } from './o-ring-table';

/** An O-ring with its tolerances, in the free state. */
export interface ORing {
  /** `AS568-228`, or the designation of its manufacturer. */
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
 * @throws MeopError `unknown-name`
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

const size = {
  insideDiameter: length('D_i', 'inside diameter of the free ring', { example: '60 mm' }),
  crossSection: length('d', 'cross section of the free ring', { example: '3 mm' }),
};
const tolerance = (symbol: string, of: string, example: `${number} mm`) =>
  length(symbol, `tolerance of the ${of}, plus or minus`, { min: 0, example });

/**
 * An O-ring of other sizes, such as metric ones, with the tolerances of its manufacturer.
 *
 * @example customORing({ insideDiameter: '60 mm', insideDiameterTolerance: '0.5 mm', crossSection: '3 mm', crossSectionTolerance: '0.1 mm' }).size // => '60 x 3 mm'
 */
export const customORing = /* @__PURE__ */ procedure({
  name: 'customORing',
  title: 'An O-ring of a size that is not in AS568',
  source: 'the data of its manufacturer',
  inputs: {
    insideDiameter: size.insideDiameter,
    insideDiameterTolerance: tolerance('δ_i', 'inside diameter', '0.5 mm'),
    crossSection: size.crossSection,
    crossSectionTolerance: tolerance('δ', 'cross section', '0.1 mm'),
    size: optional(words('designation of the ring', { example: '60 x 3 mm' })),
    source: optional(
      words('source of the sizes', { example: 'data sheet of the manufacturer' }),
      "user's own",
    ),
  },
  gives: 'the O-ring, to be passed as a ring',
  example: {
    insideDiameter: '60 mm',
    insideDiameterTolerance: '0.5 mm',
    crossSection: '3 mm',
    crossSectionTolerance: '0.1 mm',
  },
  run: ({ size: name, ...ring }): ORing => {
    const mm = (value: Quantity<'length'>): number => Number(value.in('mm').toFixed(3));
    return {
      size: name ?? `${mm(ring.insideDiameter)} x ${mm(ring.crossSection)} mm`,
      ...ring,
      cautions: [],
    };
  },
});

/**
 * The standard O-rings for a groove in order of increasing stretch. The stretch of 1 % to 5 % is the usual range of the handbooks
 * of seal manufacturers.
 *
 * @example oRingsForGroove({ grooveDiameter: '2.278 in', crossSection: '0.139 in' }).map((ring) => ring.size).join() // => 'AS568-228'
 */
export const oRingsForGroove = /* @__PURE__ */ procedure({
  name: 'oRingsForGroove',
  title: 'Standard O-rings for a groove',
  source,
  inputs: {
    grooveDiameter: length('D', 'diameter of the bottom of the groove', { example: '2.278 in' }),
    crossSection: optional({ ...size.crossSection, meaning: 'nominal cross section; any where omitted' }),
    stretch: optional(
      list('minimum and maximum stretch at the nominal size', ratio('S', 'stretch'), { min: 2, max: 2 }),
      [0.01, 0.05],
    ),
  },
  gives: 'the O-rings in order of increasing stretch',
  example: { grooveDiameter: '2.278 in', crossSection: '0.139 in' },
  checks: [
    ({ stretch: [min, max] }) =>
      min <= max
        ? undefined
        : { path: 'stretch', given: [min, max], expected: 'a minimum and a maximum in this order' },
  ],
  run: ({ grooveDiameter: { si: groove }, crossSection, stretch: [min, max] }): readonly ORing[] => {
    const found: [stretch: number, dash: number][] = [];
    for (const run of sizeRuns) {
      if (crossSection && Math.abs(crossSection.si - mils(run.crossSection)) > mils(run.tolerance)) continue;
      sizesOf(run).forEach(([insideDiameter], i) => {
        const stretched = groove / mils(insideDiameter) - 1;
        if (stretched >= min && stretched <= max) found.push([stretched, run.from + i]);
      });
    }
    return found.sort(([a], [b]) => a - b).map(([, dash]) => oRing(String(dash)));
  },
});

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
  return new MeopError({
    code: 'unknown-name',
    procedure: 'oRing',
    given: size,
    note: 'AS568 size',
    expected: `-${known.join(', -')}`,
    remedy: Number.isInteger(dash) ? `did you mean '${String(nearest).padStart(3, '0')}'?` : undefined,
  });
}
