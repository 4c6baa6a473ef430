import { linearInterpolant } from '../../numerics';
import { MeopError, named, procedure, temperature } from '../../units';
import { boltClasses } from './bolt-class-table';
import type { BoltClassName } from './bolt-table';

/** The strength of a bolt at temperature, as a fraction of that at room temperature. */
export interface BoltRetention {
  /** 0 to 1; strength gained at low temperature is neglected. */
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

/**
 * The fraction of its room-temperature strength that a bolt retains at temperature. The standards state the yield strength; the
 * ultimate and shear strengths, which decrease less, are assumed to decrease equally. Below 38 °C it is 1.
 *
 * @throws MeopError `out-of-domain` above the end of the standard's table
 * @example boltRetention({ boltClass: '8.8', temperature: '300 degC' }).fraction // => 0.75
 */
export const boltRetention = /* @__PURE__ */ procedure({
  name: 'boltRetention',
  title: 'Strength of a bolt retained at temperature',
  source: 'ISO 898-1:1999 annex A and ISO 3506-1 (from memory)',
  inputs: {
    boltClass: named('strength class of the bolt', boltClasses, { example: '8.8' }),
    temperature: temperature('T', 'temperature of the bolt', { example: '300 degC' }),
  },
  gives: 'the fraction of the room-temperature strength',
  example: { boltClass: '8.8', temperature: '300 degC' },
  run: ({ boltClass, temperature: { si } }) => retentionOf(boltClass, si),
});

function retentionOf(name: BoltClassName, si: number): BoltRetention {
  if (si <= roomTop) return { fraction: 1, source: 'room temperature', cautions: [] };
  const [curve, source] = curveOf(name);
  const celsius = si - zero;
  const top = curve[curve.length - 1][0];
  if (celsius > top)
    throw new MeopError({
      code: 'out-of-domain',
      procedure: 'boltRetention',
      path: 'temperature',
      given: `${celsius.toFixed(1)} °C`,
      expected: `at most ${top} °C, to which the strength of class ${name} is known: no strength is allowed above it`,
    });
  return {
    fraction: linearInterpolant(
      curve.map(([t]) => t),
      curve.map(([, part]) => part),
    ).at(celsius),
    source: `${source} (from memory)`,
    cautions: [
      `The strength of class ${name} at temperature is quoted from memory, not verified against the document (${source}).`,
      ...(celsius > 150
        ? ['The bolts exceed 150 °C, the maximum service temperature that ISO 898-1 states for its classes.']
        : []),
    ],
  };
}
