import {
  fromSiValue,
  MeopError,
  type Quantity,
  type QuantityInput,
  readInput,
  table,
  unitFor,
} from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { readPositive, refusal } from '../../units/refusal';
import { barlowBurst, faupelBurst, meanDiameterBurst, svenssonBurst, turnerBurst } from './burst-formulas';

const procedure = 'burstPressure';

/** A published way to estimate a burst pressure. */
export type BurstMethod = 'Barlow' | 'mean diameter' | 'Turner' | 'Faupel' | 'Svensson';

/** A tube to burst. */
export interface BurstInput {
  readonly insideRadius: QuantityInput<'length'>;
  readonly outsideRadius: QuantityInput<'length'>;
  readonly ultimateStrength: QuantityInput<'stress'>;
  /** Needed by Faupel, which is left out without it. */
  readonly yieldStrength?: QuantityInput<'stress'>;
  /** The exponent n; needed by Svensson, which is left out without it. */
  readonly strainHardening?: number;
  /** One method alone; every one that the givens allow where left out. */
  readonly method?: BurstMethod;
}

/** One method's answer. */
export interface BurstEstimate {
  readonly method: BurstMethod;
  readonly pressure: Quantity<'gauge pressure'>;
  readonly source: string;
}

/** Burst pressure by several methods: the spread is part of the answer. */
export interface BurstPressure {
  /** The least of the methods asked for. */
  readonly pressure: Quantity<'gauge pressure'>;
  /** Which method gives the least. */
  readonly method: BurstMethod;
  readonly estimates: readonly BurstEstimate[];
  readonly maxPressure: Quantity<'gauge pressure'>;
  /** Greatest over least, minus 1. */
  readonly spread: number;
  readonly cautions: readonly string[];
  toString(): string;
}

const burstPressureFields: FieldsOf<BurstInput> = {
  insideRadius: 'required',
  outsideRadius: 'required',
  ultimateStrength: 'required',
  yieldStrength: 'optional',
  strainHardening: 'optional',
  method: 'optional',
};

/**
 * Burst pressure by several published methods, with the least and the spread. No method knows of holes, threads, scratches
 * or welds: a case with bolt holes fails at its joint first.
 *
 * @throws MeopError `missing-field` where the method asked for needs a value that is not given, and as the formulas
 * @example burstPressure({ insideRadius: '1.5 in', outsideRadius: '1.75 in', ultimateStrength: '42 ksi', method: 'Barlow' }).pressure.in('psi') // => 6000
 */
export function burstPressure(input: BurstInput): BurstPressure {
  requireFields(procedure, input, burstPressureFields);
  const { ultimateStrength, yieldStrength, strainHardening, method } = input;
  const inside = readPositive('length', 'insideRadius', input.insideRadius, procedure);
  const outside = readInput('length', 'outsideRadius', input.outsideRadius, procedure).si;
  if (outside <= inside.si)
    throw refusal(
      procedure,
      'outsideRadius',
      input.outsideRadius,
      `more than the inside radius (${input.insideRadius})`,
    );
  const length = (si: number): Quantity<'length'> => fromSiValue(si, 'length', inside.unit);
  const tube = { outsideDiameter: length(2 * outside), wall: length(outside - inside.si), ultimateStrength };
  const unit = unitFor('gauge pressure', inside.unit.us ? 'psi' : 'MPa');
  const estimate = (
    name: BurstMethod,
    pressure: Quantity<'gauge pressure'>,
    { source }: { readonly source: string },
  ): BurstEstimate => ({ method: name, pressure: fromSiValue(pressure.si, 'gauge pressure', unit), source });
  const all = [
    estimate('Barlow', barlowBurst(tube), barlowBurst),
    estimate('mean diameter', meanDiameterBurst(tube), meanDiameterBurst),
    estimate('Turner', turnerBurst(tube), turnerBurst),
    ...(yieldStrength === undefined
      ? []
      : [estimate('Faupel', faupelBurst({ ...tube, yieldStrength }), faupelBurst)]),
    ...(strainHardening === undefined
      ? []
      : [estimate('Svensson', svenssonBurst({ ...tube, strainHardening }), svenssonBurst)]),
  ];
  return summary(method === undefined ? all : all.filter((one) => one.method === method), method);
}

function summary(estimates: readonly BurstEstimate[], asked: BurstMethod | undefined): BurstPressure {
  const [first] = estimates;
  if (first === undefined && asked !== 'Faupel' && asked !== 'Svensson')
    throw new MeopError(
      'unknown-name',
      `burstPressure: no method '${asked}'; known are Barlow, mean diameter, Turner, Faupel, Svensson`,
      'method',
      { value: asked, expected: 'the name of a burst method' },
    );
  if (first === undefined) {
    const field = asked === 'Faupel' ? 'yieldStrength' : 'strainHardening';
    throw new MeopError('missing-field', `burstPressure: the method ${asked} needs ${field}`, field, {
      value: asked,
      expected: field,
    });
  }
  const by = (better: (a: number, b: number) => boolean): BurstEstimate =>
    estimates.reduce((best, next) => (better(next.pressure.si, best.pressure.si) ? next : best), first);
  const least = by((a, b) => a < b);
  const greatest = by((a, b) => a > b);
  const spread = greatest.pressure.si / least.pressure.si - 1;
  const cautions = [
    'burst formulas hold for a plain tube of ductile metal: no holes, threads, welds or scratches',
    ...(asked === undefined
      ? [`${estimates.length} methods differ by ${(100 * spread).toFixed(0)} %; the least is taken`]
      : []),
  ];
  const text = (): string =>
    [
      table(estimates.map(({ method, pressure, source }) => ({ method, pressure, source }))),
      ...cautions.map((caution) => `caution: ${caution}`),
    ].join('\n');
  return {
    pressure: least.pressure,
    method: least.method,
    estimates,
    maxPressure: greatest.pressure,
    spread,
    cautions,
    toString: text,
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: text },
  };
}
