import {
  choice,
  fromSiValue,
  MeopError,
  optional,
  printable,
  procedure,
  type Quantity,
  ratio,
  stress,
  table,
  unitFor,
  type Values,
} from '../../units';
import { barlowBurst, faupelBurst, meanDiameterBurst, svenssonBurst, turnerBurst } from './burst-formulas';
import { hasWall, radii } from './cylinder';

const method = choice('burst method', ['Barlow', 'mean diameter', 'Turner', 'Faupel', 'Svensson']);

/** A published method to estimate a burst pressure. */
export type BurstMethod = (typeof method.options)[number];

const inputs = {
  ...radii,
  ultimateStrength: stress('S_u', 'ultimate strength', { above: 0, example: '42 ksi' }),
  yieldStrength: optional(
    stress('S_y', 'yield strength, required by the method of Faupel', { above: 0, example: '35 ksi' }),
  ),
  strainHardening: optional(
    ratio('n', 'strain-hardening exponent, required by the method of Svensson', { example: 0.05 }),
  ),
  method: optional({ ...method, meaning: 'one method; all that the inputs allow where omitted' }),
};

/** The estimate of one method. */
export interface BurstEstimate {
  readonly method: BurstMethod;
  readonly pressure: Quantity<'gauge pressure'>;
  readonly source: string;
}

/** Burst pressure by several methods, with their spread. */
export interface BurstPressure {
  /** The minimum of the methods. */
  readonly pressure: Quantity<'gauge pressure'>;
  /** The method of the minimum. */
  readonly method: BurstMethod;
  readonly estimates: readonly BurstEstimate[];
  readonly maxPressure: Quantity<'gauge pressure'>;
  /** Maximum/minimum − 1. */
  readonly spread: number;
  readonly cautions: readonly string[];
  toString(): string;
}

/**
 * Burst pressure by several published methods, with the minimum and the spread. No method includes holes, threads, scratches
 * or welds: a case with bolt holes fails at its joint first.
 *
 * @throws MeopError `missing-field` where a value required by the method is missing
 * @example burstPressure({ insideRadius: '1.5 in', outsideRadius: '1.75 in', ultimateStrength: '42 ksi', method: 'Barlow' }).pressure.in('psi') // => 6000
 */
export const burstPressure = /* @__PURE__ */ procedure({
  name: 'burstPressure',
  title: 'Burst pressure of a plain tube by several methods',
  source: 'the formula of each method, with its source',
  inputs,
  checks: [hasWall],
  gives: 'the minimum of the methods, every estimate and their spread',
  example: { insideRadius: '1.5 in', outsideRadius: '1.75 in', ultimateStrength: '42 ksi' },
  run: (tube): BurstPressure => burstOf(tube),
});

function burstOf({
  insideRadius,
  outsideRadius,
  ultimateStrength,
  yieldStrength,
  strainHardening,
  method,
}: Values<typeof inputs>): BurstPressure {
  const shown = unitFor('length', insideRadius.unit);
  const length = (si: number): Quantity<'length'> => fromSiValue(si, 'length', shown);
  const [outside, inside] = [outsideRadius.si, insideRadius.si];
  const tube = { outsideDiameter: length(2 * outside), wall: length(outside - inside), ultimateStrength };
  const unit = unitFor('gauge pressure', shown.us ? 'psi' : 'MPa');
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
  if (first === undefined) {
    const field = asked === 'Faupel' ? 'yieldStrength' : 'strainHardening';
    throw new MeopError({
      code: 'missing-field',
      procedure: 'burstPressure',
      path: field,
      expected: inputs[field].meaning,
    });
  }
  const by = (better: (a: number, b: number) => boolean): BurstEstimate =>
    estimates.reduce((best, next) => (better(next.pressure.si, best.pressure.si) ? next : best), first);
  const least = by((a, b) => a < b);
  const greatest = by((a, b) => a > b);
  const spread = greatest.pressure.si / least.pressure.si - 1;
  const cautions = [
    'The burst formulas are valid for a plain tube of ductile metal, without holes, threads, welds or scratches.',
    ...(asked === undefined
      ? [`${estimates.length} methods differ by ${(100 * spread).toFixed(0)} %; the minimum is used.`]
      : []),
  ];
  return printable(
    {
      pressure: least.pressure,
      method: least.method,
      estimates,
      maxPressure: greatest.pressure,
      spread,
      cautions,
    },
    () =>
      [
        table(estimates.map(({ method, pressure, source }) => ({ method, pressure, source }))),
        ...cautions.map((caution) => `caution: ${caution}`),
      ].join('\n'),
  );
}
