import { MeopError, type Place, type Quantity, type Unit, type Values } from '../units';
import { pathTo } from '../units/declare/place';
import type { BurnLawBand } from './burn-law-band';
import type { burnLawBand, burnLawInputs } from './burn-law-inputs';

type Quoted = Pick<
  Values<typeof burnLawBand.fields>,
  'coefficient' | 'rateUnit' | 'pressureUnit' | 'referenceRate' | 'referencePressure' | 'exponent' | 'through'
>;
type Power = Pick<BurnLawBand, 'referenceRate' | 'referencePressure' | 'exponent'>;
type Range = Pick<BurnLawBand, 'from' | 'to'>;

/** The bands of a burn law in SI, and the range of its characterisation. */
export function readBands(
  given: Values<typeof burnLawInputs.fields>,
  at: Place,
): { readonly bands: readonly BurnLawBand[]; readonly characterised: Range } {
  const everywhere = { from: 0, to: Number.POSITIVE_INFINITY };
  if (given.bands === undefined) {
    const bands = [{ ...everywhere, ...readPower(given, at) }];
    return { bands, characterised: readRange(given, everywhere, at) };
  }
  const other = quotedFields.find((field) => given[field] !== undefined);
  if (other !== undefined) throw twoForms('bands', other, at);
  const bands = joined(given.bands, at);
  return {
    bands,
    characterised: readRange(given, { from: bands[0].from, to: bands[bands.length - 1].to }, at),
  };
}

const quotedFields = [
  'coefficient',
  'rateUnit',
  'pressureUnit',
  'referenceRate',
  'referencePressure',
  'exponent',
  'through',
] as const satisfies readonly (keyof Quoted)[];

function readRange(
  { characterisedFrom, characterisedTo }: Values<typeof burnLawInputs.fields>,
  otherwise: Range,
  at: Place,
): Range {
  const { from, to } = {
    from: characterisedFrom?.si ?? otherwise.from,
    to: characterisedTo?.si ?? otherwise.to,
  };
  if (from < to) return { from, to };
  throw new MeopError({
    code: 'burn-law-bands',
    procedure: at.procedure,
    path: pathTo(at, 'characterisedTo'),
    given: characterisedTo,
    expected: `above the start of the characterised range, ${megapascals(from)}`,
  });
}

const megapascals = (pressure: number): string => `${Number((pressure / 1e6).toPrecision(6))} MPa`;

/** Bands in order of pressure, each beginning where the previous one ends. */
function joined(
  given: readonly Values<typeof burnLawBand.fields>[],
  at: Place,
): readonly [BurnLawBand, ...BurnLawBand[]] {
  const wrong = (problem: string): MeopError =>
    new MeopError({ code: 'burn-law-bands', procedure: at.procedure, path: pathTo(at, 'bands'), problem });
  const bands = given
    .map((band, i) => ({
      from: band.from.si,
      to: band.to.si,
      ...readPower(band, { ...at, path: `${pathTo(at, 'bands')}.${i}` }),
    }))
    .sort((a, b) => a.from - b.from);
  bands.forEach(({ from, to }, i) => {
    if (!(from < to))
      throw wrong(
        `the band from ${megapascals(from)} ends at ${megapascals(to)}, which is not above its start`,
      );
    const next = bands[i + 1];
    // Limits that are printed in rounded units may differ by rounding.
    if (next !== undefined && Math.abs(next.from - to) > 1e-6 * to)
      throw wrong(
        `one band ends at ${megapascals(to)} and the next begins at ${megapascals(next.from)}; bands must not overlap or leave a gap`,
      );
  });
  const [first, ...others] = bands;
  if (first === undefined) throw wrong('the list of bands is empty; at least one is required');
  return [first, ...others];
}

const twoForms = (one: string, other: string, at: Place): MeopError =>
  new MeopError({
    code: 'inconsistent',
    procedure: at.procedure,
    path: pathTo(at, other),
    problem: `${one} and ${other} are mutually exclusive`,
    remedy:
      'Give a coefficient with its units and exponent, or a rate at a pressure and an exponent, or two points, or bands',
  });

/** The power law of one of the forms in which it is quoted. */
function readPower(law: Quoted, at: Place): Power {
  const { coefficient, rateUnit, pressureUnit, referenceRate, referencePressure, exponent, through } = law;
  const own = through ? 'through' : referenceRate ? 'referenceRate' : undefined;
  const others = quotedFields.slice(0, own === 'through' ? 6 : 3);
  const other = own && others.find((field) => law[field] !== undefined);
  if (own !== undefined && other !== undefined) throw twoForms(own, other, at);
  if (through !== undefined) return throughPoints(through, at);
  const missing = (field: string, expected: string): MeopError =>
    new MeopError({
      code: 'missing-field',
      procedure: at.procedure,
      path: pathTo(at, field),
      expected,
      remedy: 'Give coefficient, rateUnit and pressureUnit together, or referenceRate and referencePressure',
    });
  if (exponent === undefined) throw missing('exponent', 'pressure exponent');
  if (referenceRate !== undefined) {
    if (referencePressure === undefined)
      throw missing('referencePressure', 'reference pressure of that rate');
    return { referenceRate: referenceRate.si, referencePressure: referencePressure.si, exponent };
  }
  if (coefficient === undefined || rateUnit === undefined || pressureUnit === undefined)
    throw missing('coefficient', 'a coefficient has no meaning without the units of r and p');
  return {
    referenceRate: coefficient * sizeOf(rateUnit),
    referencePressure: sizeOf(pressureUnit),
    exponent,
  };
}

/** SI size of a unit. */
export const sizeOf = ({ factor, divisor }: Unit): number => factor / divisor;

interface Point {
  readonly pressure: Quantity<'absolute pressure'>;
  readonly rate: Quantity<'speed'>;
}

/** n = ln(r2/r1) / ln(p2/p1), from the definition of the power law. */
function throughPoints([one, two]: readonly Point[], at: Place): Power {
  const wrong = (facts: { readonly given: unknown; readonly expected: string; readonly remedy?: string }) =>
    new MeopError({ code: 'out-of-domain', procedure: at.procedure, path: pathTo(at, 'through'), ...facts });
  if (one.pressure.si === two.pressure.si)
    throw wrong({ given: one.pressure, expected: 'two points at different pressures' });
  const exponent = Math.log(two.rate.si / one.rate.si) / Math.log(two.pressure.si / one.pressure.si);
  if (!(exponent < 1))
    throw wrong({
      given: exponent,
      expected: 'two points with an exponent below 1',
      remedy: 'No chamber pressure is stable at an exponent of 1 or more',
    });
  return { referenceRate: one.rate.si, referencePressure: one.pressure.si, exponent };
}
