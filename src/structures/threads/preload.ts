import {
  force,
  formula,
  length,
  MeopError,
  type Quantity,
  type QuantityInput,
  ratio,
  torque,
} from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import type { Provenance } from '../materials/datum';

/**
 * Preload of a bolt from its tightening torque.
 *
 * @example preloadFromTorque({ torque: '9.396 N*m', nutFactor: 0.18, diameter: '6 mm' }).in('N') // => 8700
 */
export const preloadFromTorque = /* @__PURE__ */ formula({
  name: 'preloadFromTorque',
  title: 'Preload from tightening torque',
  equation: 'F = T / (K·d)',
  source: "Shigley's Mechanical Engineering Design, 9th ed., equation 8-27",
  inputs: {
    torque: torque('T', 'tightening torque', { min: 0 }),
    nutFactor: ratio('K', 'nut factor', { above: 0 }),
    diameter: length('d', 'nominal diameter'),
  },
  output: force('F', 'preload'),
  example: { torque: '9.4 N*m', nutFactor: 0.2, diameter: '6 mm' },
  si: ({ torque: t, nutFactor, diameter }) => t / (nutFactor * diameter),
  solve: {
    torque: (preload, { nutFactor, diameter }) => preload * nutFactor * diameter,
    nutFactor: (preload, { torque: t, diameter }) => t / (preload * diameter),
    diameter: (preload, { torque: t, nutFactor }) => t / (preload * nutFactor),
  },
});

const conditions = {
  'plain, black': 0.3,
  'zinc plated': 0.2,
  lubricated: 0.18,
  'cadmium plated': 0.16,
  'anti-seize': 0.12,
} as const;

/** The finish of a bolt, which decides its nut factor. */
export type BoltFinish = keyof typeof conditions;

/** A nut factor with its origin. */
export interface NutFactor {
  readonly finish: BoltFinish;
  readonly value: number;
  readonly source: string;
  readonly provenance: Provenance;
}

/**
 * The nut factor K of a finish.
 *
 * @throws MeopError `unknown-name`
 * @example nutFactor('lubricated').value // => 0.18
 */
export function nutFactor(finish: BoltFinish): NutFactor {
  if (!Object.hasOwn(conditions, finish)) {
    const known = Object.keys(conditions)
      .map((name) => `'${name}'`)
      .join(', ');
    throw new MeopError('unknown-name', `nutFactor: no finish '${finish}'; known are ${known}`, 'finish', {
      value: finish,
      expected: known,
    });
  }
  return {
    finish,
    value: conditions[finish],
    source: "Shigley's Mechanical Engineering Design, 9th ed., table 8-15",
    provenance: 'published',
  };
}

/** A preload that is known only within the scatter of friction. */
export interface PreloadRange {
  readonly min: Quantity<'force'>;
  readonly nominal: Quantity<'force'>;
  readonly max: Quantity<'force'>;
  readonly cautions: readonly string[];
}

const preloadRangeFields: FieldsOf<Parameters<typeof preloadRange>[0]> = {
  torque: 'required',
  finish: 'required',
  diameter: 'required',
};

/**
 * Preload from torque with its scatter. Ten lubricated bolts at one torque had a standard deviation of 8.4 % of the mean
 * (Shigley, 9th ed., table 8-14); ±25 % is three of those. Do not count on friction from preload in a radial joint.
 *
 * @example preloadRange({ torque: '10 N*m', finish: 'zinc plated', diameter: '5 mm' }).min.in('N') // => 7500
 */
export function preloadRange(options: {
  readonly torque: QuantityInput<'torque'>;
  readonly finish: BoltFinish;
  readonly diameter: QuantityInput<'length'>;
}): PreloadRange {
  requireFields('preloadRange', options, preloadRangeFields);
  const { torque: tightening, finish, diameter } = options;
  const { value } = nutFactor(finish);
  const nominal = preloadFromTorque({ torque: tightening, nutFactor: value, diameter });
  const times = (share: number): Quantity<'force'> => nominal.times(share);
  return {
    min: times(1 - scatter),
    nominal,
    max: times(1 + scatter),
    cautions: ['preload from torque scatters by ±25 %: friction, not the wrench, decides'],
  };
}
const scatter = 0.25;
