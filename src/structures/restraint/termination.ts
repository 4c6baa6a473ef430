import { fromSiValue, MeopError, type Quantity, type QuantityInput, readInput, unitOf } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';

/** How a rope ends. */
export type Termination =
  | 'poured socket'
  | 'swaged socket'
  | 'swaged sleeve'
  | 'hand-tucked splice'
  | 'wedge socket'
  | 'clips';

/** What of the rope's strength its end keeps. */
export interface TerminationEfficiency {
  readonly efficiency: number;
  readonly source: string;
  readonly cautions: readonly string[];
}

const source = 'US Army TM 5-3810-305-10, table 4, termination efficiencies';

// Steel core, fibre core; the smaller end of a range.
const efficiencies: Readonly<
  Record<Termination, readonly [steel: number, fibre: number | undefined, caution: string]>
> = {
  'poured socket': [1, 1, 'only as good as the pouring: proof-load it'],
  'swaged socket': [0.95, undefined, 'only with the machine and dies of the maker'],
  'swaged sleeve': [
    0.95,
    0.925,
    'with a thimble, the right sleeve and the crimps its maker asks for: gauge every crimp',
  ],
  'hand-tucked splice': [0.86, 0.86, 'with a thimble; 0.76 in stainless rope'],
  'wedge socket': [0.75, 0.75, '0.75 to 0.95 by design; the low end is taken'],
  clips: [
    0.8,
    0.8,
    'with a thimble, the full number of clips, saddles on the live end, torqued, and torqued again after the first load',
  ],
};

const terminationEfficiencyFields: FieldsOf<NonNullable<Parameters<typeof terminationEfficiency>[1]>> = {
  fibreCore: 'optional',
};

/**
 * What of the rope's strength an end keeps. Tests have found ends weaker than these handbook figures (J. Eng. Mater.
 * Technol. 103 (1981) 164, abstract): proof-load what lives depend on.
 *
 * @throws MeopError `unknown-name`; `out-of-domain` where nothing is established for the core
 * @example terminationEfficiency('clips').efficiency // => 0.8
 */
export function terminationEfficiency(
  termination: Termination,
  options: { readonly fibreCore?: boolean } = {},
): TerminationEfficiency {
  requireFields('terminationEfficiency', options, terminationEfficiencyFields);
  const { fibreCore = false } = options;
  if (!Object.hasOwn(efficiencies, termination))
    throw new MeopError(
      'unknown-name',
      `terminationEfficiency: no termination '${String(termination)}'; known are ${Object.keys(efficiencies).join(', ')}`,
      'termination',
      { value: termination },
    );
  const [steel, fibre, caution] = efficiencies[termination];
  const efficiency = fibreCore ? fibre : steel;
  if (efficiency === undefined)
    throw new MeopError(
      'out-of-domain',
      `terminationEfficiency: a ${termination} is not established for ropes with a fibre core: take a steel core or another end`,
      'termination',
      { value: termination },
    );
  return { efficiency, source, cautions: [`${termination}: ${caution}`] };
}

/** How an end with U-bolt clips is made. */
export interface RopeClips {
  readonly count: number;
  /** Rope turned back behind the thimble. */
  readonly turnback: Quantity<'length'>;
  readonly spacing: Quantity<'length'>;
  readonly torque: Quantity<'torque'>;
  readonly source: string;
  readonly cautions: readonly string[];
}

// Rope in sixteenths of an inch, turnback in, torque ft lbf.
const clipRows: readonly (readonly [sixteenths: number, turnback: number, torque: number])[] = [
  [2, 3.75, 4.5],
  [3, 3.75, 7.5],
  [4, 4.75, 15],
  [5, 5.25, 30],
  [6, 6.5, 45],
  [7, 7, 65],
  [8, 11.5, 65],
];

const ropeClipsFields: FieldsOf<Parameters<typeof ropeClips>[0]> = { diameter: 'required' };

/**
 * U-bolt clips for a rope of 1/8 to 1/2 in: at least three, though makers' tables allow two to 7/16 in.
 *
 * @throws MeopError `unknown-name` for a diameter that is not in the table
 * @example ropeClips({ diameter: '1/4 in' }).torque.in('ft*lbf') // => 15
 */
export function ropeClips(options: { readonly diameter: QuantityInput<'length'> }): RopeClips {
  requireFields('ropeClips', options, ropeClipsFields);
  const { diameter } = options;
  const { si } = readInput('length', 'diameter', diameter, 'ropeClips');
  const row = clipRows.find(([size]) => Math.abs((size * 0.0254) / 16 - si) <= 0.01 * si);
  if (!row)
    throw new MeopError(
      'unknown-name',
      `ropeClips: diameter: ${String(diameter)} given; known are 1/8, 3/16, 1/4, 5/16, 3/8, 7/16 and 1/2 in`,
      'diameter',
      { value: diameter },
    );
  const [, turnback, torque] = row;
  return {
    count: 3,
    turnback: fromSiValue(turnback * 0.0254, 'length', unitOf('in')),
    spacing: fromSiValue(6 * si, 'length', unitOf('in')),
    torque: fromSiValue(torque * unitOf('ft*lbf').factor, 'torque', unitOf('ft*lbf')),
    source:
      'maker’s table of wire rope clips (turnback, torque); spacing of six diameters and three clips at least: engineering practice, no published source',
    cautions: ['U-bolts on the dead end, saddles on the live end', 'torque again after the first load'],
  };
}
