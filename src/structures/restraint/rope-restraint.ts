import {
  type Arguments,
  area,
  either,
  force,
  fromSiValue,
  inputs,
  instance,
  mass,
  optional,
  printable,
  procedure,
  type Quantity,
  stress,
  table,
  unitFor,
  unitOf,
  type Values,
} from '../../units';
import type { FailureMargin } from '../failure-mode';
import { given, step } from '../failure-mode/calculation';
import { failureMargin } from '../failure-mode/failure-margin';
import type { FailureMode } from '../failure-mode/failure-mode';
import { governing, marginTable } from '../margin';
import { anchorModes } from './anchor-bolts';
import { restraint } from './restraint-groups';
import { restraintStiffness, ropeMetallicArea, terminatedRopeStrength } from './rope-strength';
import { requiredBreakingForce, ropeStiffness, snatchLoad } from './snatch-load';
import { strutForce } from './stand-members';
import { terminationEfficiency } from './termination';
import { isWireRope, type WireRope, wireRopeInputs, wireRopeOf } from './wire-rope';

const restraintInputs = {
  thrust: force('F', 'maximum thrust', { above: 0, example: '2 kN' }),
  ...restraint.fields,
  rope: either('wire rope, or the result of wireRope', [
    instance('wire rope', 'a WireRope', isWireRope),
    inputs(wireRopeInputs, { meaning: restraint.fields.rope.meaning }),
  ]),
  mass: optional(
    mass('m', 'mass of the motor, for the speed at which it takes up the slack', { example: '4 kg' }),
  ),
  metallicArea: optional(
    area('A', 'area of the wires; 0.472·d² (7x19) where omitted', { example: '19 mm^2' }),
  ),
  modulus: optional(
    stress('E', 'elastic modulus of the rope, about half of that of steel', { above: 0, example: '103 GPa' }),
    15e6 * 6894.757293168361,
  ),
};

/** A restraint of a motor that separates from its stand. */
export type RopeRestraintInput = Arguments<typeof restraintInputs>;

/** Loads and strengths of a restraint. */
export interface RopeRestraint {
  readonly rope: WireRope;
  /** Stiffness of all ropes together along the thrust. */
  readonly stiffness: Quantity<'stiffness'>;
  /** Twice the thrust: the load without slack. */
  readonly suddenlyAppliedLoad: Quantity<'force'>;
  /** The maximum load on the restraint. */
  readonly snatchLoad: Quantity<'force'>;
  readonly impactFactor: number;
  /** Speed of the motor when the rope becomes tight, where the mass is given. */
  readonly takeUpSpeed: Quantity<'speed'> | undefined;
  readonly ropeLoad: Quantity<'force'>;
  /** Strength of the rope with its terminations. */
  readonly terminatedStrength: Quantity<'force'>;
  /** Catalogue strength required for this load and design factor. */
  readonly requiredBreakingForce: Quantity<'force'>;
  readonly margins: readonly FailureMargin[];
  readonly governing: FailureMargin;
  readonly cautions: readonly string[];
  toString(): string;
}

/**
 * Loads and margins of wire ropes that restrain a motor which separates at full thrust and takes up their slack, with shackle and
 * anchor. Energy method: motor and anchorage rigid, rope elastic and massless, thrust constant throughout. A rope does not
 * replace a barrier.
 *
 * @example ropeRestraint({ thrust: '2 kN', slack: '0 mm', ropeLength: '1 m', rope: { diameter: '5/16 in', construction: '6x19 FC', grade: 'improved plow' }, termination: 'clips' }).requiredBreakingForce.in('kN') // => 25
 */
export const ropeRestraint = /* @__PURE__ */ procedure({
  name: 'ropeRestraint',
  title: 'Review of the wire-rope restraint of a motor',
  source: snatchLoad.source,
  inputs: restraintInputs,
  checks: [
    ({ slack, ropeLength }) =>
      slack.si <= 2 * ropeLength.si
        ? undefined
        : {
            path: 'slack',
            given: slack,
            expected: `at most twice the length of the rope (${ropeLength.times(2)})`,
          },
  ],
  gives: 'the snatch load and the margin of safety of every part of the restraint',
  example: {
    thrust: '2 kN',
    slack: '0 mm',
    ropeLength: '1 m',
    rope: { diameter: '5/16 in', construction: '6x19 FC', grade: 'improved plow' },
    termination: 'clips',
  },
  run: (input): RopeRestraint => restraintOf(input),
});

function restraintOf({ legs, designFactor, mass, ...input }: Values<typeof restraintInputs>): RopeRestraint {
  const [thrust, slack, length] = [input.thrust.si, input.slack.si, input.ropeLength.si];
  const angle = input.legAngle.si;
  const rope = isWireRope(input.rope) ? input.rope : wireRopeOf(input.rope);
  const end = terminationEfficiency({
    termination: input.termination,
    fibreCore: rope.construction.includes('FC'),
  });
  const metallicArea = input.metallicArea?.si ?? step(ropeMetallicArea, { diameter: rope.diameter.si });
  const modulus = input.modulus.si;
  const stiffness = step(restraintStiffness, {
    stiffness: step(ropeStiffness, { metallicArea, modulus, length }),
    count: legs,
    angle,
  });
  const peak = step(snatchLoad, { load: thrust, stiffness, slack });
  const perRope = step(strutForce, { load: peak, count: legs, angle });
  const unit = unitFor('force', input.thrust.unit);
  const force = (si: number): Quantity<'force'> => fromSiValue(si, 'force', unit);
  const { efficiency } = end;
  const strength = step(terminatedRopeStrength, { breakingForce: rope.breakingForce.si, efficiency });

  const cautions = [
    ...rope.cautions,
    ...end.cautions,
    ...(legs > 1
      ? [
          'Ropes share the load equally only where their lengths are equal. A shorter rope carries the snatch load alone.',
        ]
      : []),
    ...(input.metallicArea === undefined && rope.construction !== '7x19'
      ? [
          `metallicArea not specified; assumed the wire area of 7x19 for ${rope.construction} (engineering practice, no published source).`,
        ]
      : []),
    ...(slack > 0 ? ['The snatch load increases with the square root of the slack. Remove the slack.'] : []),
    'The weight of the motor is neglected. Add it where it acts along the thrust.',
  ];
  const all = { part: 'restraint', calculation: perRope, unit } as const;
  const modes: readonly FailureMode[] = [
    {
      ...all,
      id: 'rope-tension',
      limit: 'ultimate',
      allowable: strength,
      factor: designFactor,
      sources: [`strength: ${rope.source}`, end.source],
      cautions: [...rope.cautions, ...end.cautions],
    },
    ...(input.shackle === undefined
      ? []
      : [
          {
            ...all,
            id: 'shackle-load',
            limit: 'rated load',
            allowable: given('force', input.shackle.si),
            factor: 1,
            sources: ['working load limit, which includes the factor of its manufacturer'],
            cautions: [
              'Load the shackle in line with its bow only. A side load reduces its strength by up to 50 % (engineering practice, no published source).',
            ],
          } as const,
        ]),
    ...(input.anchor === undefined ? [] : anchorModes(input.anchor, peak, unit)),
  ];
  const margins = modes.map((mode) => failureMargin(mode));
  const result = {
    rope,
    stiffness: fromSiValue<'stiffness'>(stiffness.value, 'stiffness', unitOf('N/mm')),
    suddenlyAppliedLoad: force(2 * thrust),
    snatchLoad: force(peak.value),
    impactFactor: peak.value / thrust,
    takeUpSpeed:
      mass === undefined
        ? undefined
        : fromSiValue<'speed'>(Math.sqrt((2 * thrust * slack) / mass.si), 'speed', unitOf('m/s')),
    ropeLoad: force(perRope.value),
    terminatedStrength: force(strength.value),
    requiredBreakingForce: force(requiredBreakingForce.si({ load: perRope.value, designFactor, efficiency })),
    margins,
    governing: governing(margins),
    cautions,
  };
  return printable(result, () => restraintText(result));
}

function restraintText(r: Omit<RopeRestraint, 'toString'>): string {
  const rows = [
    { what: 'without slack', load: r.suddenlyAppliedLoad },
    { what: `snatch load, ${r.impactFactor.toFixed(1)} times the thrust`, load: r.snatchLoad },
    { what: 'in one rope', load: r.ropeLoad },
    { what: 'breaking strength with terminations', load: r.terminatedStrength },
    { what: 'required catalogue strength', load: r.requiredBreakingForce },
  ];
  return [
    table(rows),
    '',
    marginTable(r.margins),
    // Those of the margins are listed below their table already.
    ...r.cautions
      .filter((caution) => !r.margins.some(({ cautions }) => cautions.includes(caution)))
      .map((caution) => `caution: ${caution}`),
  ].join('\n');
}
