import {
  fromSiValue,
  type NamedKind,
  type Quantity,
  type QuantityInput,
  readInput,
  table,
  unitOf,
} from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { readNotNegative, readPositive, refusal } from '../../units/refusal';
import type { FailureMargin } from '../failure-mode';
import { given, step } from '../failure-mode/calculation';
import { failureMargin } from '../failure-mode/failure-margin';
import type { FailureMode } from '../failure-mode/failure-mode';
import { governing, marginTable } from '../margin';
import { type AnchorBolts, anchorModes } from './anchor-bolts';
import { restraintStiffness, ropeMetallicArea, terminatedRopeStrength } from './rope-strength';
import { requiredBreakingForce, ropeStiffness, snatchLoad } from './snatch-load';
import { strutForce } from './stand-members';
import { type Termination, terminationEfficiency } from './termination';
import { type WireRope, type WireRopeInput, wireRope } from './wire-rope';

/** What holds a motor that breaks free of its stand. */
export interface RopeRestraintInput {
  /** Greatest thrust. */
  readonly thrust: QuantityInput<'force'>;
  /** How far the motor may move before the rope is tight; zero is a rope without slack, which still doubles the load. */
  readonly slack: QuantityInput<'length'>;
  /** Of the motor; gives the speed at which it takes up the slack. */
  readonly mass?: QuantityInput<'mass'>;
  readonly rope: WireRope | WireRopeInput;
  readonly ropeLength: QuantityInput<'length'>;
  /** Area of its wires; 0.472·d² (7x19) where left out. */
  readonly metallicArea?: QuantityInput<'area'>;
  /** 15 Msi (103 GPa) where left out. */
  readonly modulus?: QuantityInput<'stress'>;
  /** Ropes that share the load alike; 1 where left out. */
  readonly legs?: number;
  /** Between a rope and the thrust; 0 where left out. */
  readonly legAngle?: QuantityInput<'angle'>;
  readonly termination: Termination;
  /** On the breaking force, 1 or more; 5 where left out. */
  readonly designFactor?: number;
  /** Working load limit of the shackle of one rope, as stamped on it. */
  readonly shackle?: QuantityInput<'force'>;
  /** What the ropes are anchored with. */
  readonly anchor?: AnchorBolts;
}

/** What a restraint sees and holds. */
export interface RopeRestraint {
  readonly rope: WireRope;
  /** Of all ropes together, along the thrust. */
  readonly stiffness: Quantity<'stiffness'>;
  /** Twice the thrust: the load were there no slack. */
  readonly suddenlyAppliedLoad: Quantity<'force'>;
  /** The greatest load on the restraint. */
  readonly snatchLoad: Quantity<'force'>;
  readonly impactFactor: number;
  /** Where the mass is given. */
  readonly takeUpSpeed: Quantity<'speed'> | undefined;
  readonly ropeLoad: Quantity<'force'>;
  /** Of the rope with its ends. */
  readonly terminatedStrength: Quantity<'force'>;
  /** From the catalogue, for this load and design factor. */
  readonly requiredBreakingForce: Quantity<'force'>;
  readonly margins: readonly FailureMargin[];
  readonly governing: FailureMargin;
  readonly cautions: readonly string[];
  toString(): string;
}

const name = 'ropeRestraint';
const fields: FieldsOf<RopeRestraintInput> = {
  thrust: 'required',
  slack: 'required',
  mass: 'optional',
  rope: 'required',
  ropeLength: 'required',
  metallicArea: 'optional',
  modulus: 'optional',
  legs: 'optional',
  legAngle: 'optional',
  termination: 'required',
  designFactor: 'optional',
  shackle: 'optional',
  anchor: 'optional',
};

/**
 * Whether wire ropes hold a motor that breaks free at full thrust and takes up their slack, with shackle and anchor.
 * By the energy method: motor and anchorage rigid, rope elastic and massless, thrust kept up throughout. Do not count
 * on a rope for what a barrier is there for.
 *
 * @throws MeopError `out-of-domain`, `unknown-name`, `unknown-field`
 * @example ropeRestraint({ thrust: '2 kN', slack: '0 mm', ropeLength: '1 m', rope: { diameter: '5/16 in', construction: '6x19 FC', grade: 'improved plow' }, termination: 'clips' }).requiredBreakingForce.in('kN') // => 25
 */
export function ropeRestraint(input: RopeRestraintInput): RopeRestraint {
  requireFields(name, input, fields);
  const thrust = positive('force', 'thrust', input.thrust);
  const slack = readNotNegative('length', 'slack', input.slack, name).si;
  const length = positive('length', 'ropeLength', input.ropeLength);
  const legs = input.legs ?? 1;
  if (!(Number.isInteger(legs) && legs >= 1)) throw refusal(name, 'legs', legs, 'a whole number from 1');
  const angle = input.legAngle === undefined ? 0 : readInput('angle', 'legAngle', input.legAngle, name).si;
  if (!(angle >= 0 && angle < Math.PI / 2))
    throw refusal(name, 'legAngle', input.legAngle, 'an angle from 0 to below 90 deg');
  const designFactor = input.designFactor ?? 5;
  if (!(designFactor >= 1 && Number.isFinite(designFactor)))
    throw refusal(name, 'designFactor', designFactor, 'a design factor of 1 or more');
  if (slack > 2 * length)
    throw refusal(name, 'slack', input.slack, 'no more than twice the length of the rope');

  const rope = 'breakingForce' in input.rope ? input.rope : wireRope(input.rope);
  const end = terminationEfficiency(input.termination, { fibreCore: rope.construction.includes('FC') });
  const metallicArea =
    input.metallicArea === undefined
      ? step(ropeMetallicArea, { diameter: rope.diameter.si })
      : positive('area', 'metallicArea', input.metallicArea);
  const modulus =
    input.modulus === undefined ? 15e6 * unitOf('psi').factor : positive('stress', 'modulus', input.modulus);
  const stiffness = step(restraintStiffness, {
    stiffness: step(ropeStiffness, { metallicArea, modulus, length }),
    count: legs,
    angle,
  });
  const peak = step(snatchLoad, { load: thrust, stiffness, slack });
  const perRope = step(strutForce, { load: peak, count: legs, angle });
  const { unit } = readInput('force', 'thrust', input.thrust, name);
  const force = (si: number): Quantity<'force'> => fromSiValue(si, 'force', unit);
  const { efficiency } = end;
  const strength = step(terminatedRopeStrength, { breakingForce: rope.breakingForce.si, efficiency });

  const cautions = [
    ...rope.cautions,
    ...end.cautions,
    ...(legs > 1
      ? ['ropes share alike only where their lengths do: one that is shorter takes the snatch alone']
      : []),
    ...(input.metallicArea === undefined && rope.construction !== '7x19'
      ? [
          `the wire area of ${rope.construction} is taken as that of 7x19 (engineering practice, no published source)`,
        ]
      : []),
    ...(slack > 0 ? ['the snatch grows with the square root of the slack: take the slack out'] : []),
    'the weight of the motor is left out: add it where it pulls with the thrust',
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
            allowable: given('force', positive('force', 'shackle', input.shackle)),
            factor: 1,
            sources: ['working load limit, which contains the factor of its maker'],
            cautions: [
              'in line with the bow only: a load from the side takes up to half away (engineering practice, no published source)',
            ],
          } as const,
        ]),
    ...(input.anchor === undefined ? [] : anchorModes(input.anchor, peak, unit)),
  ];
  const margins = modes.map((mode) => failureMargin(mode));
  const mass = input.mass === undefined ? undefined : positive('mass', 'mass', input.mass);
  const result = {
    rope,
    stiffness: fromSiValue<'stiffness'>(stiffness.value, 'stiffness', unitOf('N/mm')),
    suddenlyAppliedLoad: force(2 * thrust),
    snatchLoad: force(peak.value),
    impactFactor: peak.value / thrust,
    takeUpSpeed:
      mass === undefined
        ? undefined
        : fromSiValue<'speed'>(Math.sqrt((2 * thrust * slack) / mass), 'speed', unitOf('m/s')),
    ropeLoad: force(perRope.value),
    terminatedStrength: force(strength.value),
    requiredBreakingForce: force(requiredBreakingForce.si({ load: perRope.value, designFactor, efficiency })),
    margins,
    governing: governing(margins),
    cautions,
  };
  const text = (): string => restraintText(result);
  return { ...result, toString: text, ...{ [Symbol.for('nodejs.util.inspect.custom')]: text } };
}

function restraintText(r: Omit<RopeRestraint, 'toString'>): string {
  const rows = [
    { what: 'without slack', load: r.suddenlyAppliedLoad },
    { what: `with the slack, ${r.impactFactor.toFixed(1)} times the thrust`, load: r.snatchLoad },
    { what: 'in one rope', load: r.ropeLoad },
    { what: 'rope with its ends breaks at', load: r.terminatedStrength },
    { what: 'catalogue strength needed', load: r.requiredBreakingForce },
  ];
  return [
    table(rows),
    '',
    marginTable(r.margins),
    // Those of the margins stand below their table already.
    ...r.cautions
      .filter((caution) => !r.margins.some(({ cautions }) => cautions.includes(caution)))
      .map((caution) => `caution: ${caution}`),
  ].join('\n');
}

const positive = (kind: NamedKind, field: string, value: unknown): number =>
  readPositive(kind, field, value, name).si;
