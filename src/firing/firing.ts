import {
  type Arguments,
  any,
  byName,
  choice,
  either,
  fromSiArray,
  fromSiValue,
  inputs,
  instance,
  isSeries,
  length,
  list,
  mass,
  optional,
  type Procedure,
  parameterOf,
  procedure,
  type Quantity,
  type Series,
  trace,
  unitOf,
  words,
} from '../units';
import { checkChannel, checkTime } from './firing-checks';
import { ambientPressure, throatDiameter } from './motor-inputs';

/** Whether a firing was computed or recorded. */
export type FiringOrigin = 'predicted' | 'measured';

/** An event at a moment of a firing: burnout, closure burst, burning front at the case wall. */
export interface FiringEvent {
  readonly name: string;
  readonly time: Quantity<'time'>;
  /** Burned depth at that moment, where it is known. */
  readonly depth?: Quantity<'length'> | undefined;
}

/** The channels that a firing has at most once, and the kind of each. */
export interface FiringChannels {
  /** Chamber pressure, absolute. */
  readonly pressure?: Series<'absolute pressure'>;
  readonly thrust?: Series<'force'>;
  /** Mass flow through the nozzle. */
  readonly massFlow?: Series<'mass flow'>;
  readonly burningArea?: Series<'area'>;
  /** Burned depth: distance burned normal to the surface. */
  readonly web?: Series<'length'>;
  /** Mass flux at the aft end of the port. */
  readonly portMassFlux?: Series<'mass flux'>;
  readonly throatDiameter?: Series<'length'>;
  /** Mass of unburned propellant. */
  readonly propellantMass?: Series<'mass'>;
}

/** Facts about a firing as a whole. */
export interface FiringMetadata {
  readonly title?: string;
  /** Pressure around the motor, by which a gauge reading becomes absolute. */
  readonly ambientPressure?: Quantity<'absolute pressure'>;
  /** Mass of propellant loaded. */
  readonly loadedMass?: Quantity<'mass'>;
  /** Throat diameter before firing. */
  readonly initialThroatDiameter?: Quantity<'length'>;
}

/**
 * A firing, predicted or measured: time, and every known channel, each as long as `time`. Summaries, comparisons, plots
 * and fits of firings all take this type.
 */
export interface Firing extends FiringChannels, FiringMetadata {
  readonly origin: FiringOrigin;
  /** Time in seconds, strictly increasing. */
  readonly time: Series<'time'>;
  /** Thermocouple and other temperatures by the name of their place. */
  readonly temperatures: Readonly<Record<string, Series<'temperature'>>>;
  readonly events: readonly FiringEvent[];
  readonly notes: readonly string[];
  /** Limits to the validity of the record. */
  readonly cautions: readonly string[];
  /** Processing steps from the source to this record, in order. */
  readonly history: readonly string[];
  toString(): string;
}

/** Whether a value is a firing: by what it contains, so that a copy is one too. */
export const isFiring = (value: unknown): value is Firing =>
  typeof value === 'object' &&
  value !== null &&
  'origin' in value &&
  (value.origin === 'predicted' || value.origin === 'measured') &&
  'time' in value &&
  isSeries(value.time) &&
  'temperatures' in value &&
  'events' in value &&
  'history' in value;

const texts = words('one line of text');
const moment = /* @__PURE__ */ parameterOf('time', any);

/** The channels and facts of a firing. */
const firingFields = {
  origin: choice('origin of the record: computed or recorded', ['predicted', 'measured']),
  time: trace('time', 'times of the samples, increasing'),
  // A pressure without a stated reference is absolute, as this record declares it; gauge pressure is rejected.
  pressure: optional(
    either('chamber pressure, absolute', [
      trace('pressure', 'pressure'),
      trace('absolute pressure', 'pressure', {
        remedy: 'Add the ambient pressure to each value and declare the sum absolute',
      }),
    ]),
  ),
  thrust: optional(trace('force', 'thrust')),
  massFlow: optional(trace('mass flow', 'mass flow through the nozzle')),
  burningArea: optional(trace('area', 'burning area')),
  web: optional(trace('length', 'burned depth: distance burned normal to the surface')),
  portMassFlux: optional(trace('mass flux', 'mass flux at the aft end of the port')),
  throatDiameter: optional(trace('length', 'throat diameter')),
  propellantMass: optional(trace('mass', 'mass of unburned propellant')),
  title: optional(words('title of the record')),
  ambientPressure: optional(ambientPressure),
  loadedMass: optional(mass('m_p', 'mass of propellant loaded', { min: 0, example: '1.2 kg' })),
  initialThroatDiameter: optional(throatDiameter),
  temperatures: optional(
    byName('temperatures by the name of their place', trace('temperature', 'temperature')),
    {},
  ),
  events: optional(
    list(
      'events at a moment of the firing',
      inputs(
        {
          name: words('what happened'),
          time: moment('t', 'time of the event'),
          depth: optional(length('w', 'burned depth at that moment', { min: 0 })),
        },
        { meaning: 'event' },
      ),
      { min: 0 },
    ),
    [],
  ),
  notes: optional(list('notes', texts, { min: 0 }), []),
  cautions: optional(list('limits to the validity of the record', texts, { min: 0 }), []),
  history: optional(list('processing steps from the source to this record', texts, { min: 0 }), []),
};

/** Input of {@link firing}. */
export type FiringInput = Arguments<typeof firingFields>;

/** A firing with the channels that the compiler knows to be present. */
export type TypedFiring<I extends FiringInput> = Firing & {
  readonly [K in GivenChannels<I>]: NonNullable<FiringChannels[K]>;
};
type GivenChannels<I> = {
  [K in keyof I & keyof FiringChannels]: undefined extends I[K] ? never : K;
}[keyof I & keyof FiringChannels];

/** The channels of a firing in printing order, with the required kind of each. */
export const channelKinds = [
  ['pressure', 'absolute pressure'],
  ['thrust', 'force'],
  ['massFlow', 'mass flow'],
  ['burningArea', 'area'],
  ['web', 'length'],
  ['portMassFlux', 'mass flux'],
  ['throatDiameter', 'length'],
  ['propellantMass', 'mass'],
] as const satisfies readonly (readonly [keyof FiringChannels, string])[];

const asAbsolute = ({ si }: Series): Series<'absolute pressure'> => fromSiArray('absolute pressure', si);

function withoutUndefined<T extends object>(fields: T): { [F in keyof T]: Exclude<T[F], undefined> } {
  const known = Object.entries(fields).filter(([, value]) => value !== undefined);
  // True: only undefined fields, hence optional ones, are omitted.
  return Object.fromEntries(known) as { [F in keyof T]: Exclude<T[F], undefined> };
}

/** Gives a record its text. Copies by spreading do not contain it, so that they can be given to {@link firing}. */
export function withText<R extends Firing>(record: R): R {
  const value = (): string => firingText(record);
  const hidden = { value, enumerable: false, writable: true, configurable: true };
  return Object.defineProperties(record, {
    toString: hidden,
    [Symbol.for('nodejs.util.inspect.custom')]: hidden,
  });
}

/** A record of fields that are read: its samples are checked. @throws MeopError */
export function firingOf<R extends Firing>(fields: R): R {
  checkTime(fields.time);
  const { length: samples } = fields.time;
  for (const [name] of channelKinds) checkChannel(name, fields[name], samples);
  for (const [name, channel] of Object.entries(fields.temperatures))
    checkChannel(`temperatures.${name}`, channel, samples);
  return withText(fields);
}

/** A small record, as code: the subject of the calls on cards. */
export const exampleFiring =
  "firing({ origin: 'measured', time: series([0, 1, 2, 3, 4, 5, 6, 7, 8], 's'), pressure: series([0.1, 0.1, 2, 3, 3, 2, 0.1, 0.1, 0.1], 'MPa'), thrust: series([0, 0, 20, 50, 50, 20, 0, 0, 0], 'N'), ambientPressure: quantity('absolute pressure', '0.1 MPa') })";

/**
 * Makes a firing record from its channels. Time must increase from sample to sample, and every channel must be as long as
 * time. Chamber pressure is absolute: a gauge reading becomes absolute by adding the ambient pressure, which the caller
 * must know.
 *
 * @example firing({ origin: 'measured', time: series([0, 1], 's'), thrust: series([0, 5], 'N') }).thrust.max().in('N') // => 5
 */
export const firing: FiringProcedure = /* @__PURE__ */ procedure({
  name: 'firing',
  title: 'Firing record',
  source: 'definition',
  inputs: firingFields,
  gives: 'the record',
  example: exampleFiring,
  run: ({ pressure, ...others }): Firing =>
    firingOf({ ...withoutUndefined(others), ...(pressure && { pressure: asAbsolute(pressure) }) }),
}) as FiringProcedure; // true: the record has every channel of the input, under the same name

type Made = Procedure<typeof firingFields, Firing>;

/** The procedure `firing`, which knows the channels of its result from those of its input. */
type FiringProcedure = Pick<Made, keyof Made> & (<const I extends FiringInput>(input: I) => TypedFiring<I>);

/** A firing, predicted or measured. */
export const firingInput = /* @__PURE__ */ instance(
  'the firing, predicted or measured',
  'a Firing',
  isFiring,
  {
    remedy: 'Make one with firing, firingFromLog or simulate',
  },
);

// The part of a series that printing needs, whatever its kind.
interface Extent {
  min(): { toString(): string };
  max(): { toString(): string };
}

function firingText(record: Firing): string {
  const { time, title, origin } = record;
  const span = fromSiValue<'time'>(time.si[time.length - 1] - time.si[0], 'time', unitOf('s'));
  const lines = [
    `${title ?? 'firing'} (${origin}): ${time.length} samples over ${span}`,
    ...channelKinds.flatMap(([name]) => {
      const channel: Extent | undefined = record[name];
      return channel === undefined ? [] : [`  ${name}: ${channel.min()} to ${channel.max()}`];
    }),
    ...Object.entries(record.temperatures).map(
      ([name, channel]) => `  temperature ${name}: ${channel.min()} to ${channel.max()}`,
    ),
    ...record.events.map((event) => `  ${event.name} at ${event.time}`),
    ...record.notes.map((note) => `  note: ${note}`),
    ...record.cautions.map((caution) => `  caution: ${caution}`),
  ];
  return lines.join('\n');
}
