import { flag, fromSiValue, MeopError, optional, procedure, type Quantity, unitOf } from '../../units';
import { restraint, rope } from './restraint-groups';

const { termination } = restraint.fields;

/** A termination of a rope. */
export type Termination = ReturnType<typeof termination.read>;

/** Breaking strength of the rope with the termination/that of the rope. */
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
  'poured socket': [1, 1, 'the strength depends on the pouring: proof-load it'],
  'swaged socket': [0.95, undefined, 'only with the machine and dies of the manufacturer'],
  'swaged sleeve': [
    0.95,
    0.925,
    'with a thimble, the specified sleeve and number of crimps: gauge every crimp',
  ],
  'hand-tucked splice': [0.86, 0.86, 'with a thimble; 0.76 in stainless rope'],
  'wedge socket': [0.75, 0.75, '0.75 to 0.95 by design; the minimum is used'],
  clips: [
    0.8,
    0.8,
    'with a thimble, the full number of clips, saddles on the live end, torqued, and retorqued after the first load',
  ],
};

/**
 * Breaking strength of a rope with its termination/that of the rope. Tests have found terminations weaker than these handbook
 * values (J. Eng. Mater. Technol. 103 (1981) 164, abstract): proof-load every restraint on which lives depend.
 *
 * @throws MeopError `out-of-domain` where no value is established for the core
 * @example terminationEfficiency({ termination: 'clips' }).efficiency // => 0.8
 */
export const terminationEfficiency = /* @__PURE__ */ procedure({
  name: 'terminationEfficiency',
  title: 'Efficiency of a rope termination',
  source,
  inputs: {
    termination,
    fibreCore: optional(flag('whether the rope has a fibre core', { example: false }), false),
  },
  gives: 'the efficiency with its cautions',
  example: { termination: 'clips' },
  run: ({ termination, fibreCore }): TerminationEfficiency => {
    const [steel, fibre, caution] = efficiencies[termination];
    const efficiency = fibreCore ? fibre : steel;
    if (efficiency === undefined)
      throw new MeopError({
        code: 'out-of-domain',
        procedure: 'terminationEfficiency',
        path: 'termination',
        given: termination,
        expected: 'a termination with an established efficiency for a fibre core',
        remedy: 'Use a steel core or another termination',
      });
    return { efficiency, source, cautions: [`${termination}: ${caution}`] };
  },
});

/** A termination with U-bolt clips. */
export interface RopeClips {
  readonly count: number;
  /** Length of rope turned back behind the thimble. */
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

/**
 * U-bolt clips for a rope of 1/8 to 1/2 in: at least three, although tables of manufacturers allow two to 7/16 in.
 *
 * @throws MeopError `unknown-name` for a diameter that is not in the table
 * @example ropeClips({ diameter: '1/4 in' }).torque.in('ft*lbf') // => 15
 */
export const ropeClips = /* @__PURE__ */ procedure({
  name: 'ropeClips',
  title: 'U-bolt clips of a rope termination',
  source:
    'table of a manufacturer of wire rope clips (turnback, torque); spacing of six diameters and at least three clips: engineering practice, no published source',
  inputs: { diameter: rope.fields.diameter },
  gives: 'number, turnback, spacing and torque of the clips',
  example: { diameter: '1/4 in' },
  run: ({ diameter }): RopeClips => {
    const { si } = diameter;
    const row = clipRows.find(([size]) => Math.abs((size * 0.0254) / 16 - si) <= 0.01 * si);
    if (!row)
      throw new MeopError({
        code: 'unknown-name',
        procedure: 'ropeClips',
        path: 'diameter',
        given: String(diameter),
        note: 'rope diameter',
        expected: '1/8, 3/16, 1/4, 5/16, 3/8, 7/16 and 1/2 in',
      });
    const [, turnback, torque] = row;
    return {
      count: 3,
      turnback: fromSiValue(turnback * 0.0254, 'length', unitOf('in')),
      spacing: fromSiValue(6 * si, 'length', unitOf('in')),
      torque: fromSiValue(torque * unitOf('ft*lbf').factor, 'torque', unitOf('ft*lbf')),
      source: ropeClips.source,
      cautions: [
        'Fit the U-bolts on the dead end and the saddles on the live end.',
        'Retorque after the first load.',
      ],
    };
  },
});
