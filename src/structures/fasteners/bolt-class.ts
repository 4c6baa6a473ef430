import {
  fromSiValue,
  length,
  MeopError,
  optional,
  type Quantity,
  type QuantityInput,
  quantity,
  readInputs,
  unitFor,
  unknownName,
} from '../../units';
import type { StressDatum } from '../materials/datum';
import { column, origin } from '../materials/shelf-entry';
import { type BoltClassName, boltRows } from './bolt-table';

/** The strength class of a bolt or screw; all stresses are minimums on the tensile stress area. */
export interface BoltClass {
  readonly name: BoltClassName;
  /** The standard that defines the class. */
  readonly standard: string;
  /** The diameters for which these values are valid. */
  readonly sizes: string;
  /** Stress without permanent set; ISO 3506 states none. */
  readonly proofStress?: StressDatum;
  readonly yieldStrength: StressDatum;
  readonly ultimateStrength: StressDatum;
  /** Ultimate shear where threads lie in the shear plane, on the root or stress area. */
  readonly shearUltimateThread: StressDatum;
  /** Ultimate shear where the plain shank lies in the shear plane. */
  readonly shearUltimateShank: StressDatum;
  readonly notes: readonly string[];
  /** Cautions for the strengths of this class at this diameter. */
  readonly cautions: readonly string[];
}

const sizeInputs = {
  diameter: optional(length('d', 'nominal diameter of the bolt', { above: Number.NEGATIVE_INFINITY })),
};

/**
 * A bolt class by name: `'8.8'`, `'A2-70'`, `'grade 5'`, `'A574'`. Where the class is stronger in some sizes, give the
 * diameter; without it the minimum of the sizes up to 3/4 in is used.
 *
 * @throws MeopError `unknown-name`; `out-of-domain` for a diameter that is not above zero or beyond the class
 * @example boltClass('12.9').ultimateStrength.value.in('MPa') // => 1220
 */
export function boltClass(
  name: BoltClassName | (string & Record<never, never>),
  options: { readonly diameter?: QuantityInput<'length'> } = {},
): BoltClass {
  const { diameter } = readInputs(sizeInputs, options, { procedure: 'boltClass', path: '' });
  // In any spelling: 'Grade 8', 'class 8.8', 'a4-80'.
  const wanted = String(name)
    .trim()
    .toLowerCase()
    .replace(/^(?:sae|class|astm)\s+/, '');
  const rows = boltRows.filter((row) => row.name.toLowerCase() === wanted);
  const size = diameter?.si;
  if (rows.length === 0)
    throw unknownName(name, boltClassNames(), 'bolt class', { procedure: 'boltClass', path: '' });
  const fits = rows.filter(({ maxDiameter, minDiameter = 0 }) =>
    // Without a size those of radial bolts; the values of thicker bolts require a diameter.
    size === undefined ? minDiameter < usual : size > minDiameter && size <= maxDiameter,
  );
  // The rows of one class differ in every value in the same sense, so the minimum proof or yield is the minimum row.
  const [row] = fits.sort((a, b) => a.ultimate - b.ultimate);
  if (row === undefined)
    throw new MeopError({
      code: 'out-of-domain',
      procedure: 'boltClass',
      path: 'diameter',
      given: diameter,
      expected: `a diameter of class ${name}: ${rows.map(({ sizes }) => sizes).join(' and ')}`,
    });
  const table = column(row.unit, origin('specified minimum', row.source));
  const [yieldValue, yieldNote] = row.yieldStrength;
  return {
    name: row.name,
    standard: row.standard,
    sizes: row.sizes,
    ...(row.proof !== undefined && { proofStress: table(row.proof) }),
    yieldStrength:
      yieldNote === undefined
        ? table(yieldValue)
        : column(row.unit, origin('specified minimum', row.standard, 'from memory', yieldNote))(yieldValue),
    ultimateStrength: table(row.ultimate),
    shearUltimateThread: shear(row.ultimate * row.threadShear.ratio, row.unit, row.threadShear),
    shearUltimateShank: shear(row.ultimate * row.shankShear.ratio, row.unit, row.shankShear),
    notes: row.notes,
    cautions:
      size !== undefined && size < (row.leastDiameter ?? 0) * (1 - 1e-9)
        ? [
            `${row.standard} covers ${row.name} for ${row.sizes}. The strength of a smaller bolt marked ${row.name} is stated only by its manufacturer.`,
          ]
        : [],
  };
}

const usual = 0.01905; // m, 3/4 in

/**
 * The names of the bolt classes.
 *
 * @example boltClassNames().includes('A4-80') // => true
 */
export function boltClassNames(): readonly BoltClassName[] {
  return [...new Set(boltRows.map(({ name }) => name))];
}

function shear(
  stress: number,
  unit: 'ksi' | 'MPa',
  {
    source,
    provenance,
    ratio,
  }: { readonly source: string; readonly provenance: StressDatum['provenance']; readonly ratio: number },
): StressDatum {
  const si = quantity('stress', `${stress} ${unit}`).si;
  const value: Quantity<'stress'> = fromSiValue(si, 'stress', unitFor('stress', unit));
  return { value, ...origin('computed', `${ratio} × the minimum ultimate: ${source}`, provenance) };
}
