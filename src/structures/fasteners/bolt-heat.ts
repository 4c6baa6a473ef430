import { linearInterpolant } from '../../numerics';
import { MeopError, type QuantityInput, readInput } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { boltClass } from './bolt-class';
import type { BoltClassName } from './bolt-table';

/** The part of its strength that a bolt keeps while hot. */
export interface BoltRetention {
  /** 0 to 1; strength gained by cold is not credited. */
  readonly fraction: number;
  readonly source: string;
  readonly cautions: readonly string[];
}

/** °C, with the fraction of the yield strength at room temperature. */
type HotYield = readonly (readonly [celsius: number, fraction: number])[];

// Lower yield strength or 0.2 % proof stress at 20, 100, 200, 250 and 300 °C, MPa: the least ratio of 8.8 (640, 590, 540, 510,
// 480), 10.9 (940, 875, 790, 745, 705) and 12.9 (1100, 1020, 925, 875, 825); and 5.6 (300, 270, 230, 215, 195).
const tempered: HotYield = [
  [20, 1],
  [100, 590 / 640],
  [200, 790 / 940],
  [250, 745 / 940],
  [300, 0.75],
];
const carbon: HotYield = [
  [20, 1],
  [100, 270 / 300],
  [200, 230 / 300],
  [250, 215 / 300],
  [300, 195 / 300],
];
const austenitic: HotYield = [
  [20, 1],
  [100, 0.85],
  [200, 0.8],
  [300, 0.75],
  [400, 0.7],
];
const iso898 = 'ISO 898-1:1999 annex A, yield strength at elevated temperatures';
const iso3506 = 'ISO 3506-1 annex, yield strength at elevated temperatures';

function curveOf(name: BoltClassName): readonly [curve: HotYield, source: string] {
  if (/^A[24]-/.test(name)) return [austenitic, iso3506];
  if (name === '5.6') return [carbon, iso898];
  // Neither quenched nor tempered.
  if (/^[456]\.|^grade [12]$/.test(name)) return [carbon, `${iso898}, class 5.6 for ${name}`];
  if (name === 'A574' || name.startsWith('grade'))
    return [tempered, `${iso898}, quenched and tempered classes for ${name}`];
  return [tempered, iso898];
}

const roomTop = 310.93; // K: to 100 °F handbooks call it room temperature
const zero = 273.15;

const boltRetentionFields: FieldsOf<Parameters<typeof boltRetention>[0]> = {
  boltClass: 'required',
  temperature: 'required',
};

/**
 * The fraction of its room-temperature strength that a bolt keeps while hot. The yield strength is what the standards
 * give; the ultimate and shear strengths, which fall less, are taken to fall alike. Below 38 °C it is 1.
 *
 * Source: ISO 898-1:1999 annex A and ISO 3506-1, from memory.
 *
 * @throws MeopError `out-of-domain` above the end of the standard's table, `unknown-name` as {@link boltClass}
 * @example boltRetention({ boltClass: '8.8', temperature: '300 degC' }).fraction // => 0.75
 */
export function boltRetention(options: {
  readonly boltClass: BoltClassName | (string & Record<never, never>);
  readonly temperature: QuantityInput<'temperature'>;
}): BoltRetention {
  requireFields('boltRetention', options, boltRetentionFields);
  const { boltClass: name, temperature } = options;
  const bolt = boltClass(name);
  const { si } = readInput('temperature', 'temperature', temperature, 'boltRetention');
  if (si <= roomTop) return { fraction: 1, source: 'room temperature', cautions: [] };
  const [curve, source] = curveOf(bolt.name);
  const celsius = si - zero;
  const top = curve[curve.length - 1][0];
  if (celsius > top)
    throw new MeopError(
      'out-of-domain',
      `boltRetention: temperature: ${celsius.toFixed(1)} °C given; the strength of class ${bolt.name} is known to ${top} °C: nothing is allowed above it`,
      'temperature',
      { value: temperature, expected: `at most ${top} °C` },
    );
  return {
    fraction: linearInterpolant(
      curve.map(([t]) => t),
      curve.map(([, part]) => part),
    ).at(celsius),
    source: `${source} (from memory)`,
    cautions: [
      `strength of class ${bolt.name} while hot is from memory and was not checked against the document (${source})`,
      ...(celsius > 150
        ? ['the bolts are hotter than the 150 °C to which ISO 898-1 states the use of its classes']
        : []),
    ],
  };
}
