import { MeopError, type NamedKind, type QuantityInput, readInput, type UnitOf } from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { readPositive, refusal } from '../units/refusal';
import type { BurnLawBand } from './burn-law-band';
import { sizeOf } from './burn-rate-coefficient';

/** The ways in which a power law is quoted. */
export type LawForm =
  | {
      /** The number a of r = a·pⁿ, as quoted in `rateUnit` and `pressureUnit`. */
      readonly coefficient: number;
      readonly rateUnit: UnitOf<'speed'>;
      readonly pressureUnit: UnitOf<'absolute pressure'>;
      readonly exponent: number;
    }
  | {
      readonly referenceRate: QuantityInput<'speed'>;
      readonly referencePressure: QuantityInput<'absolute pressure'>;
      readonly exponent: number;
    }
  | { readonly through: readonly [LawPoint, LawPoint] };

/** A measured burning rate. */
export interface LawPoint {
  readonly pressure: QuantityInput<'absolute pressure'>;
  readonly rate: QuantityInput<'speed'>;
}

/** A law and the pressures between which it holds; the lower end belongs to the band. */
export type BurnLawBandInput = LawForm & {
  readonly from: QuantityInput<'absolute pressure'>;
  readonly to: QuantityInput<'absolute pressure'>;
};

/** What to do with a pressure that the law was not characterised for. */
export type ExtrapolationPolicy = 'extrapolate' | 'clamp' | 'error';

/** What goes with every form of a burn law. */
export interface BurnLawOptions {
  /** Least pressure that was characterised. */
  readonly characterisedFrom?: QuantityInput<'absolute pressure'>;
  /** Greatest pressure that was characterised. */
  readonly characterisedTo?: QuantityInput<'absolute pressure'>;
  /** Default `'extrapolate'`, with a caution: the pressure that matters most is the one nobody has measured. */
  readonly outside?: ExtrapolationPolicy;
  /** σ_p, relative change of rate by grain temperature at constant pressure. */
  readonly temperatureSensitivity?: QuantityInput<'temperature sensitivity'>;
  /** Grain temperature of the characterisation. Default 21 °C (engineering practice, no published source). */
  readonly referenceTemperature?: QuantityInput<'temperature'>;
  readonly source?: string;
}

/** One law for all pressures, or bands. */
export type SaintRobertInput =
  | (LawForm & BurnLawOptions)
  | ({ readonly bands: readonly BurnLawBandInput[] } & BurnLawOptions)
  | readonly BurnLawBandInput[];

/** A burn law as it was read. */
export interface ReadBands {
  readonly bands: readonly BurnLawBand[];
  readonly characterised: { readonly from: number; readonly to: number };
  readonly outside: ExtrapolationPolicy;
  readonly sensitivity: number | undefined;
  readonly referenceTemperature: number;
  readonly source: string;
}

const context = 'saintRobert';

const formFields: FieldsOf<LawForm> = {
  coefficient: 'optional',
  rateUnit: 'optional',
  pressureUnit: 'optional',
  exponent: 'optional',
  referenceRate: 'optional',
  referencePressure: 'optional',
  through: 'optional',
};
const factFields: FieldsOf<BurnLawOptions> = {
  characterisedFrom: 'optional',
  characterisedTo: 'optional',
  outside: 'optional',
  temperatureSensitivity: 'optional',
  referenceTemperature: 'optional',
  source: 'optional',
};
const bandFields: FieldsOf<BurnLawBandInput> = { ...formFields, from: 'required', to: 'required' };

/** Everything of a burn law in SI, checked. */
export function readBands(input: SaintRobertInput): ReadBands {
  if (typeof input !== 'object' || input === null)
    throw new MeopError(
      'missing-field',
      `${context}: ${String(input)} given; { coefficient, rateUnit, pressureUnit, exponent }, { referenceRate, referencePressure, exponent } or a list of bands is expected`,
    );
  if (isList(input)) return { ...joined(input), ...readFacts({}) };
  if ('bands' in input) {
    requireFields(context, input, { bands: 'required', ...factFields });
    const { bands, characterised } = joined(input.bands);
    return { bands, ...readFacts(input), characterised: readRange(input, characterised) };
  }
  requireFields(context, input, { ...formFields, ...factFields });
  const band = { from: 0, to: Number.POSITIVE_INFINITY, ...readForm(input, '') };
  return { bands: [band], ...readFacts(input), characterised: readRange(input, { from: 0, to: band.to }) };
}

const isList = (input: SaintRobertInput): input is readonly BurnLawBandInput[] => Array.isArray(input);

function readFacts(facts: BurnLawOptions): Omit<ReadBands, 'bands' | 'characterised'> {
  const { temperatureSensitivity, referenceTemperature = '21 degC', source, outside = 'extrapolate' } = facts;
  if (outside !== 'extrapolate' && outside !== 'clamp' && outside !== 'error')
    throw new MeopError(
      'unknown-name',
      `${context}: outside: '${String(outside)}' given; 'extrapolate', 'clamp' or 'error' is expected`,
      'outside',
    );
  return {
    outside,
    sensitivity:
      temperatureSensitivity === undefined
        ? undefined
        : readInput('temperature sensitivity', 'temperatureSensitivity', temperatureSensitivity, context).si,
    referenceTemperature: positive('temperature', 'referenceTemperature', referenceTemperature),
    source: source ?? 'no source given',
  };
}

function readRange(facts: BurnLawOptions, otherwise: ReadBands['characterised']): ReadBands['characterised'] {
  const from =
    facts.characterisedFrom === undefined
      ? otherwise.from
      : positive('absolute pressure', 'characterisedFrom', facts.characterisedFrom);
  const to =
    facts.characterisedTo === undefined
      ? otherwise.to
      : positive('absolute pressure', 'characterisedTo', facts.characterisedTo);
  if (from < to) return { from, to };
  throw new MeopError(
    'burn-law-bands',
    `${context}: the characterised range ends at ${to} Pa, not above its start of ${from} Pa`,
    'characterisedTo',
  );
}

/** Bands in order of pressure, each beginning where the one before ends. */
function joined(given: readonly BurnLawBandInput[]): Pick<ReadBands, 'bands' | 'characterised'> {
  if (given.length === 0)
    throw new MeopError(
      'burn-law-bands',
      `${context}: an empty list of bands given; give at least one`,
      'bands',
    );
  const bands = given
    .map((band, i) => {
      requireFields(`${context}: bands[${i}]`, band, bandFields);
      return {
        from: positive('absolute pressure', `bands[${i}].from`, band.from),
        to: positive('absolute pressure', `bands[${i}].to`, band.to),
        ...readForm(band, `bands[${i}].`),
      };
    })
    .sort((a, b) => a.from - b.from);
  bands.forEach((band, i) => {
    if (!(band.from < band.to))
      throw new MeopError(
        'burn-law-bands',
        `${context}: the band from ${band.from} Pa ends at ${band.to} Pa; its end must be above its start`,
        'bands',
      );
    const next = bands[i + 1];
    // Ends that are printed in rounded units may differ by rounding.
    if (next !== undefined && Math.abs(next.from - band.to) > 1e-6 * band.to)
      throw new MeopError(
        'burn-law-bands',
        `${context}: one band ends at ${band.to} Pa and the next begins at ${next.from} Pa; bands must neither overlap nor leave a gap`,
        'bands',
      );
  });
  return { bands, characterised: { from: bands[0].from, to: bands[bands.length - 1].to } };
}

type Power = Pick<BurnLawBand, 'referenceRate' | 'referencePressure' | 'exponent'>;

/** The three ways of quoting a law exclude each other: which of two was meant cannot be guessed. */
function requireOneForm(form: LawForm, at: string): void {
  const given = (field: string): boolean => Reflect.get(form, field) !== undefined;
  const own = given('through') ? 'through' : given('referenceRate') ? 'referenceRate' : undefined;
  if (own === undefined) return;
  const others = ['coefficient', 'rateUnit', 'pressureUnit'];
  if (own === 'through') others.push('referenceRate', 'referencePressure', 'exponent');
  const other = others.find(given);
  if (other === undefined) return;
  throw new MeopError(
    'inconsistent',
    `${context}: ${at}${own} and ${at}${other} belong to different ways of quoting a law: give a coefficient with its units and exponent, or a rate at a pressure and an exponent, or two points`,
    `${at}${other}`,
  );
}

function readForm(form: LawForm, at: string): Power {
  requireOneForm(form, at);
  if ('through' in form) return throughPoints(form.through, at);
  const exponent = readInput('dimensionless', `${at}exponent`, form.exponent, context).si;
  if (!(exponent < 1)) throw unstable(exponent, `${at}exponent`);
  if ('referenceRate' in form)
    return {
      referenceRate: positive('speed', `${at}referenceRate`, form.referenceRate),
      referencePressure: positive('absolute pressure', `${at}referencePressure`, form.referencePressure),
      exponent,
    };
  if (form.coefficient === undefined || form.rateUnit === undefined || form.pressureUnit === undefined)
    throw new MeopError(
      'missing-field',
      `${context}: ${at}coefficient, ${at}rateUnit and ${at}pressureUnit are expected together: a coefficient means nothing without the units of r and p; or give referenceRate and referencePressure`,
      `${at}coefficient`,
    );
  const coefficient = positive('dimensionless', `${at}coefficient`, form.coefficient);
  return {
    referenceRate: coefficient * sizeOf('speed', form.rateUnit, `${at}rateUnit`),
    referencePressure: sizeOf('absolute pressure', form.pressureUnit, `${at}pressureUnit`),
    exponent,
  };
}

/** n = ln(r2/r1) / ln(p2/p1), from the definition of the power law. */
function throughPoints(points: readonly [LawPoint, LawPoint], at: string): Power {
  if (!Array.isArray(points) || points.length !== 2)
    throw new MeopError('missing-field', `${context}: ${at}through: two points are expected`, `${at}through`);
  const [one, two] = points.map((point, i) => ({
    pressure: positive('absolute pressure', `${at}through[${i}].pressure`, point.pressure),
    rate: positive('speed', `${at}through[${i}].rate`, point.rate),
  }));
  if (one.pressure === two.pressure)
    throw new MeopError(
      'out-of-domain',
      `${context}: ${at}through: both points are at ${one.pressure} Pa; an exponent needs two pressures`,
      `${at}through`,
    );
  const exponent = Math.log(two.rate / one.rate) / Math.log(two.pressure / one.pressure);
  if (!(exponent < 1)) throw unstable(exponent, `${at}through`);
  return { referenceRate: one.rate, referencePressure: one.pressure, exponent };
}

const positive = (kind: NamedKind, field: string, value: unknown): number =>
  readPositive(kind, field, value, context).si;

const unstable = (exponent: number, field: string): MeopError =>
  refusal(
    context,
    field,
    exponent,
    'an exponent below 1',
    'from 1 on gas is made faster than a throat lets it out, so no chamber pressure is stable',
  );
