import {
  fromSiValue,
  MeopError,
  type Quantity,
  type QuantityInput,
  quantity,
  readInput,
  unitFor,
} from '../../units';
import type { StressDatum } from '../materials/datum';
import { column, origin } from '../materials/shelf-entry';
import { type BoltClassName, boltRows } from './bolt-table';

/** The strength class of a bolt or screw; all stresses are minimums on the tensile stress area. */
export interface BoltClass {
  readonly name: BoltClassName;
  /** The standard that defines the class. */
  readonly standard: string;
  /** The diameters these values hold for. */
  readonly sizes: string;
  /** The stress a sample carries without permanent set; ISO 3506 gives none. */
  readonly proofStress?: StressDatum;
  readonly yieldStrength: StressDatum;
  readonly ultimateStrength: StressDatum;
  /** Ultimate shear where threads lie in the shear plane, on the root or stress area. */
  readonly shearUltimateThread: StressDatum;
  /** Ultimate shear where the plain shank lies in the shear plane. */
  readonly shearUltimateShank: StressDatum;
  readonly notes: readonly string[];
  /** What a strength of this class at this diameter rests on. */
  readonly cautions: readonly string[];
}

/**
 * A bolt class by name: `'8.8'`, `'A2-70'`, `'grade 5'`, `'A574'`. Where the class is stronger in some sizes, give the
 * diameter; without it the least of the sizes up to 3/4 in is taken.
 *
 * @throws MeopError `unknown-name`; `out-of-domain` for a diameter that is not above zero or beyond the class
 * @example boltClass('12.9').ultimateStrength.value.in('MPa') // => 1220
 */
export function boltClass(
  name: BoltClassName | (string & Record<never, never>),
  { diameter }: { readonly diameter?: QuantityInput<'length'> } = {},
): BoltClass {
  // However it is written: 'Grade 8', 'class 8.8', 'a4-80'.
  const asked = String(name)
    .trim()
    .toLowerCase()
    .replace(/^(?:sae|class|astm)\s+/, '');
  const rows = boltRows.filter((row) => row.name.toLowerCase() === asked);
  const size = diameter === undefined ? undefined : readInput('length', 'diameter', diameter, 'boltClass').si;
  if (rows.length === 0)
    throw new MeopError(
      'unknown-name',
      `boltClass: no bolt class '${name}'; known are ${boltClassNames().join(', ')}`,
      'name',
      { value: name, expected: 'the name of a bolt class' },
    );
  const fits = rows.filter(({ maxDiameter, minDiameter = 0 }) =>
    // Without a size those of radial bolts: what only thicker ones have is asked for with a diameter.
    size === undefined ? minDiameter < usual : size > minDiameter && size <= maxDiameter,
  );
  // The rows of one class differ in every value in the same sense, so the least proof or yield is the least row.
  const [row] = fits.sort((a, b) => a.ultimate - b.ultimate);
  if (row === undefined)
    throw new MeopError(
      'out-of-domain',
      `boltClass: diameter: ${diameter} given; class ${name} is known for ${rows.map(({ sizes }) => sizes).join(' and ')}`,
      'diameter',
      { value: diameter, expected: rows.map(({ sizes }) => sizes).join(' and ') },
    );
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
            `${row.standard} states ${row.name} for ${row.sizes}: a smaller bolt of that name is its maker's word`,
          ]
        : [],
  };
}

const usual = 0.01905; // m, 3/4 in

/**
 * The names that {@link boltClass} knows.
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
