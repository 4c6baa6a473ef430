import { fromSiValue, MeopError, type NamedKind, type Quantity, unitFor } from '../../units';
import type { Provenance } from '../materials/datum';
import { rootArea, tensileStressArea, unifiedStressArea } from './stress-area';
import { metricLimits, type ThreadLimitsSi, unifiedLimits } from './thread-limits';
import { metricSizes, unifiedSizes } from './thread-sizes';

/** A standard thread: basic dimensions, and the worst-case limits of the usual tolerance class. */
export interface ThreadGeometry {
  /** The full designation: `M6x1`, `1/4-20 UNC`. */
  readonly name: string;
  readonly system: 'ISO metric' | 'unified inch';
  /** `special` for a custom thread. */
  readonly series: 'coarse' | 'fine' | 'UNC' | 'UNF' | 'special';
  /** Nominal diameter. */
  readonly majorDiameter: Quantity<'length'>;
  readonly pitch: Quantity<'length'>;
  readonly pitchDiameter: Quantity<'length'>;
  /** Basic minor diameter of the internal thread, about the tap drill. */
  readonly minorDiameter: Quantity<'length'>;
  /** Root diameter of the screw: d − 1.226869 P metric; d − 1.299038 P unified, the minimum of those in use. */
  readonly rootDiameter: Quantity<'length'>;
  readonly tensileStressArea: Quantity<'area'>;
  /** Area at the root diameter, for threads in a shear plane. */
  readonly rootArea: Quantity<'area'>;
  /** Worst-case limits of class 6g/6H or 2A/2B, for stripping. */
  readonly limits: ThreadLimits;
  readonly source: string;
  /** Of the limits. */
  readonly provenance: Provenance;
}

/** The worst-case limits of mating threads. */
export type ThreadLimits = { readonly [F in keyof ThreadLimitsSi]: Quantity<'length'> };

/** The values from which the geometry of a thread follows. */
export interface ThreadSize {
  readonly name: string;
  readonly system: ThreadGeometry['system'];
  readonly series: ThreadGeometry['series'];
  readonly diameter: number;
  readonly pitch: number;
}

/**
 * A standard thread by name: ISO coarse and fine M1.6 to M36 (`'M6'`, `'M8x1'`) and unified #0 to 1 in (`'#10-32'`,
 * `'1/4-20'`, `'1/4-20 UNC'`).
 *
 * @throws MeopError `unknown-name` naming the nearest sizes
 * @example threadGeometry('M6').tensileStressArea.in('mm^2') // => 20.12337599
 */
export function threadGeometry(name: string): ThreadGeometry {
  const key = String(name)
    .trim()
    .replace(/["″”]/g, '')
    .replace(/\s*[×xX]\s*/g, 'x')
    .replace(/\s+/g, ' ')
    .toUpperCase();
  const all = sizes();
  const size = all.find(({ keys }) => keys.includes(key));
  if (size) return geometryOf(size);
  const start = key.split(/[-X ]/)[0];
  const near = all.filter(({ keys }) => keys.some((known) => known.split(/[-X ]/)[0] === start));
  const offered = near.length > 0 ? near.map((known) => known.name) : ['M1.6 to M36', '#0-80 to 1-12'];
  throw new MeopError({
    code: 'unknown-name',
    procedure: 'threadGeometry',
    given: name,
    note: 'thread',
    expected: `${offered.join(', ')}; any other with customThread({ majorDiameter, pitch })`,
  });
}

/**
 * The designations of {@link threadGeometry}, by system and increasing diameter.
 *
 * @example threadNames()[0] // => 'M1.6x0.35'
 */
export function threadNames(): readonly string[] {
  return sizes().map(({ name }) => name);
}

interface Size extends ThreadSize {
  readonly keys: readonly string[];
}

let known: readonly Size[] | undefined; // made at first use: importing costs nothing

function sizes(): readonly Size[] {
  known ??= standardSizes();
  return known;
}

function standardSizes(): readonly Size[] {
  const metric = metricSizes.flatMap(([diameter, coarse, ...fine]) =>
    [coarse, ...fine].map((pitch): Size => {
      const name = `M${diameter}x${pitch}`;
      const isCoarse = pitch === coarse;
      return {
        name,
        keys: [name.toUpperCase(), ...(isCoarse ? [`M${diameter}`] : [])],
        system: 'ISO metric',
        series: isCoarse ? 'coarse' : 'fine',
        diameter: diameter * 1e-3,
        pitch: pitch * 1e-3,
      };
    }),
  );
  const unified = unifiedSizes.flatMap(([size, diameter, unc, unf]) =>
    [['UNC', unc] as const, ['UNF', unf] as const].flatMap(([series, perInch]): readonly Size[] => {
      if (perInch === undefined) return [];
      const name = `${size}-${perInch} ${series}`;
      const plain = size.replace('#', '');
      return [
        {
          name,
          keys: [size, plain].flatMap((start) => [`${start}-${perInch}`, `${start}-${perInch} ${series}`]),
          system: 'unified inch',
          series,
          diameter: diameter * 0.0254,
          pitch: 0.0254 / perInch,
        },
      ];
    }),
  );
  return [...metric, ...unified];
}

const sqrt3 = Math.sqrt(3);

/** A thread with the profile and limits of its system. */
export function geometryOf({ name, system, series, diameter, pitch }: ThreadSize): ThreadGeometry {
  const metric = system === 'ISO metric';
  const height = (pitch * sqrt3) / 2; // of the fundamental triangle, ISO 68-1
  const pitchDiameter = diameter - (3 / 4) * height;
  const minorDiameter = diameter - (5 / 4) * height;
  const rootDiameter = diameter - (metric ? 17 / 12 : 3 / 2) * height;
  const basic = { diameter, pitch, pitchDiameter, minorDiameter };
  const limits = metric ? metricLimits(basic) : unifiedLimits(basic);
  const show = <const K extends NamedKind>(kind: K, si: number, metricUnit: string, inchUnit: string) =>
    fromSiValue<K>(si, kind, unitFor(kind, metric ? metricUnit : inchUnit));
  const length = (si: number): Quantity<'length'> => show('length', si, 'mm', 'in');
  const area = (si: number): Quantity<'area'> => show('area', si, 'mm^2', 'in^2');
  const stressed = metric ? tensileStressArea : unifiedStressArea;
  return {
    name,
    system,
    series,
    majorDiameter: length(diameter),
    pitch: length(pitch),
    pitchDiameter: length(pitchDiameter),
    minorDiameter: length(minorDiameter),
    rootDiameter: length(rootDiameter),
    tensileStressArea: area(stressed.si({ diameter, pitch })),
    rootArea: area(rootArea.si({ rootDiameter })),
    limits: {
      externalMajorMin: length(limits.externalMajorMin),
      externalPitchMin: length(limits.externalPitchMin),
      internalPitchMax: length(limits.internalPitchMax),
      internalMinorMax: length(limits.internalMinorMax),
    },
    source: metric
      ? 'ISO 261 sizes, ISO 68-1 profile, ISO 898-1 stress area; limits 6g/6H by the ISO 965-1 formulas (from memory)'
      : "ASME B1.1 sizes and profile, root as in Shigley's Mechanical Engineering Design, 9th ed., table 8-2; limits 2A/2B as the tables of ASME B1.1 print them (formulas from memory)",
    provenance: 'from memory',
  };
}
