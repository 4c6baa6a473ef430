import {
  force,
  formula,
  length,
  type NamedTable,
  named,
  procedure,
  type Quantity,
  ratio,
  torque,
  unknownName,
} from '../../units';
import type { Provenance } from '../materials/datum';

const inputs = {
  torque: torque('T', 'tightening torque', { min: 0, example: '9.4 N*m' }),
  diameter: length('d', 'nominal diameter of the thread', { example: '6 mm' }),
};

/** @example preloadFromTorque({ torque: '9.396 N*m', nutFactor: 0.18, diameter: '6 mm' }).in('N') // => 8700 */
export const preloadFromTorque = /* @__PURE__ */ formula({
  name: 'preloadFromTorque',
  title: 'Preload from tightening torque',
  equation: 'F = T / (K·d)',
  source: "Shigley's Mechanical Engineering Design, 9th ed., equation 8-27",
  inputs: {
    torque: inputs.torque,
    nutFactor: ratio('K', 'nut factor', { above: 0 }),
    diameter: inputs.diameter,
  },
  output: force('F', 'preload'),
  example: { torque: '9.4 N*m', nutFactor: 0.2, diameter: '6 mm' },
  si: ({ torque: t, nutFactor, diameter }) => t / (nutFactor * diameter),
});

const finishes = {
  'plain, black': 0.3,
  'zinc plated': 0.2,
  lubricated: 0.18,
  'cadmium plated': 0.16,
  'anti-seize': 0.12,
} as const;

/** The finish of a bolt, which determines its nut factor. */
export type BoltFinish = keyof typeof finishes;

/** A nut factor with its origin. */
export interface NutFactor {
  readonly finish: BoltFinish;
  readonly value: number;
  readonly source: string;
  readonly provenance: Provenance;
}

const isFinish = (name: string): name is BoltFinish => Object.hasOwn(finishes, name);
const finishNames = (): readonly BoltFinish[] => Object.keys(finishes).filter(isFinish);

/**
 * The nut factor K of a finish.
 *
 * @throws MeopError `unknown-name`
 * @example nutFactor('lubricated').value // => 0.18
 */
export function nutFactor(finish: BoltFinish | (string & Readonly<Record<never, never>>)): NutFactor {
  if (!isFinish(finish))
    throw unknownName(finish, finishNames(), 'finish', { procedure: 'nutFactor', path: '' });
  return {
    finish,
    value: finishes[finish],
    source: "Shigley's Mechanical Engineering Design, 9th ed., table 8-15",
    provenance: 'published',
  };
}

/** Nut factors by the finish of the bolt, or one with the user's own value. */
export const nutFactors: NamedTable<NutFactor, BoltFinish> = {
  what: 'finish',
  names: finishNames,
  get usual() {
    return finishNames();
  },
  find: nutFactor,
  is: (value): value is NutFactor =>
    typeof value === 'object' && value !== null && typeof Reflect.get(value, 'value') === 'number',
};

/** A preload with its dispersion. */
export interface PreloadRange {
  readonly min: Quantity<'force'>;
  readonly nominal: Quantity<'force'>;
  readonly max: Quantity<'force'>;
  readonly cautions: readonly string[];
}

const dispersion = 0.25;

/**
 * Preload from torque with its dispersion. Ten lubricated bolts at one torque had a standard deviation of 8.4 % of the mean
 * (Shigley, 9th ed., table 8-14); ±25 % is three of those. Do not rely on friction from preload in a radial joint.
 *
 * @example preloadRange({ torque: '10 N*m', finish: 'zinc plated', diameter: '5 mm' }).min.in('N') // => 7500
 */
export const preloadRange = /* @__PURE__ */ procedure({
  name: 'preloadRange',
  title: 'Preload from torque, with its dispersion',
  source: "Shigley's Mechanical Engineering Design, 9th ed., equation 8-27 and tables 8-14 and 8-15",
  inputs: {
    torque: inputs.torque,
    finish: named('finish of the bolt', nutFactors, { example: 'zinc plated' }),
    diameter: inputs.diameter,
  },
  gives: 'the minimum, nominal and maximum preload',
  example: { torque: '10 N*m', finish: 'zinc plated', diameter: '5 mm' },
  run: ({ torque: tightening, finish, diameter }): PreloadRange => {
    const nominal = preloadFromTorque({ torque: tightening, nutFactor: finish.value, diameter });
    return {
      min: nominal.times(1 - dispersion),
      nominal,
      max: nominal.times(1 + dispersion),
      cautions: ['Preload from torque varies by ±25 % with friction, whatever the accuracy of the wrench.'],
    };
  },
});
