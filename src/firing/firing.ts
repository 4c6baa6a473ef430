import {
  fromSiArray,
  fromSiValue,
  MeopError,
  type NamedKind,
  type Quantity,
  type QuantityInput,
  readInput,
  type Series,
  unitOf,
} from '../units';
import { checkChannel, checkTime } from './firing-checks';

/** Whether a firing was computed or recorded. */
export type FiringOrigin = 'predicted' | 'measured';

/** An event at a moment of a firing: burnout, closure burst, burning front at the case wall. */
export interface FiringEvent {
  readonly name: string;
  readonly time: Quantity<'time'>;
  /** Burned depth at that moment, where it is known. */
  readonly depth?: Quantity<'length'>;
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

// A pressure without a stated reference is absolute, as this record declares it; gauge pressure is rejected.
type Given<K extends 'absolute pressure' | 'force'> = K extends 'absolute pressure'
  ? Series<'absolute pressure'> | Series<'pressure'>
  : Series<K>;

/** Input of {@link firing}. */
export interface FiringInput extends Omit<FiringChannels, 'pressure'> {
  readonly title?: string;
  readonly ambientPressure?: QuantityInput<'absolute pressure'>;
  readonly loadedMass?: QuantityInput<'mass'>;
  readonly initialThroatDiameter?: QuantityInput<'length'>;
  readonly origin: FiringOrigin;
  readonly time: Series<'time'>;
  readonly pressure?: Given<'absolute pressure'>;
  readonly temperatures?: Readonly<Record<string, Series<'temperature'>>>;
  readonly events?: readonly FiringEvent[];
  readonly notes?: readonly string[];
  readonly cautions?: readonly string[];
  readonly history?: readonly string[];
}

/**
 * Makes a firing record from its channels.
 *
 * Time must increase from sample to sample, and every channel must be as long as time. Chamber pressure is absolute: a
 * gauge reading becomes absolute by adding the ambient pressure, which the caller must know.
 *
 * @throws MeopError `not-a-series`, `too-short`, `not-finite`, `time-order`, `length-mismatch`, `wrong-kind`
 * @example firing({ origin: 'measured', time: series([0, 1], 's'), thrust: series([0, 5], 'N') }).thrust.max().in('N') // => 5
 */
export function firing<const I extends FiringInput>(input: I): TypedFiring<I> {
  const given: FiringInput = input;
  const { temperatures = {}, events = [], notes = [], cautions = [], history = [], ...rest } = given;
  checkTime(rest.time);
  const { length } = rest.time;
  for (const [name, kind] of channelKinds) checkChannel(name, rest[name], kind, length);
  for (const [name, channel] of Object.entries(temperatures))
    checkChannel(`temperatures.${name}`, channel, 'temperature', length);
  if (rest.origin !== 'predicted' && rest.origin !== 'measured')
    throw new MeopError(
      'unknown-name',
      `firing: origin must be 'predicted' or 'measured', got '${String(rest.origin)}'`,
      'origin',
    );
  const { pressure, ambientPressure, loadedMass, initialThroatDiameter, ...others } = rest;
  const made: Firing = {
    ...withoutUndefined(others),
    ...(ambientPressure !== undefined && {
      ambientPressure: fact('absolute pressure', 'ambientPressure', ambientPressure),
    }),
    ...(loadedMass !== undefined && { loadedMass: fact('mass', 'loadedMass', loadedMass) }),
    ...(initialThroatDiameter !== undefined && {
      initialThroatDiameter: fact('length', 'initialThroatDiameter', initialThroatDiameter),
    }),
    ...(pressure === undefined ? {} : { pressure: asAbsolute(pressure) }),
    temperatures: { ...temperatures },
    events: [...events],
    notes: [...notes],
    cautions: [...cautions],
    history: [...history],
    toString: () => firingText(made),
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: () => firingText(made) },
  };
  // True: every channel of the input is in the record under the same name; only the kind of the pressure is made exact.
  return made as TypedFiring<I>;
}

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

function fact<K extends NamedKind>(
  kind: K,
  field: keyof FiringMetadata,
  given: QuantityInput<K>,
): Quantity<K> {
  const { si, unit } = readInput(kind, field, given, 'firing');
  return fromSiValue<K>(si, kind, unit);
}

function asAbsolute({ si }: { readonly si: Float64Array }): Series<'absolute pressure'> {
  return fromSiArray('absolute pressure', si);
}

function withoutUndefined<T extends object>(fields: T): T {
  const known = Object.entries(fields).filter(([, value]) => value !== undefined);
  return Object.fromEntries(known) as T; // True: only undefined fields, hence optional ones, are omitted.
}

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
