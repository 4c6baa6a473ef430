import { randomStream } from '../numerics';
import { MeopError, type QuantityInput, readInput } from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { refusal } from '../units/refusal';
import { temperatureFactorSi } from './burn-law';
import type { Propellant } from './propellant';
import { variationColumns } from './simulation/batch-kernel';

/** One motor of a batch: factors on the motor simulated; what is left out does not change. */
export interface Variation {
  readonly burnRate?: number;
  readonly density?: number;
  /** Carried into the gas temperature, as a real loss would be. */
  readonly characteristicVelocity?: number;
  readonly throatDiameter?: number;
  /** On the thrust alone. */
  readonly thrust?: number;
  readonly chamberVolume?: number;
  /** Grain temperature of this motor. */
  readonly grainTemperature?: QuantityInput<'temperature'>;
  /** Number of the grain among those given; 0 is the motor's own. */
  readonly grain?: number;
}

/** Random motors: normal scatter around the motor simulated, cut off at three standard deviations. */
export interface Scatter {
  /** Motors to draw. */
  readonly count: number;
  /** Whole number; the same seed gives the same motors whatever the number of threads. */
  readonly seed: number;
  /** Relative standard deviation by field. */
  readonly standardDeviations: Partial<
    Record<Exclude<keyof Variation, 'grainTemperature' | 'grain'>, number>
  >;
  /** Grain temperatures, drawn evenly between two. */
  readonly grainTemperature?: readonly [QuantityInput<'temperature'>, QuantityInput<'temperature'>];
}

const context = 'simulateMany';
const factors = [
  'burnRate',
  'density',
  'characteristicVelocity',
  'throatDiameter',
  'thrust',
  'chamberVolume',
] as const;

/** Factors of every motor, a column for each of `variationColumns`. The motor's own grain temperature is already in its law. */
export function variationTable(
  variations: readonly Variation[] | Scatter,
  propellant: Propellant,
  ownTemperature: number,
  grains: number,
): readonly Float64Array[] {
  const { law } = propellant;
  const ownFactor = temperatureFactorSi(law, ownTemperature);
  if (typeof variations !== 'object' || variations === null)
    throw refusal(
      context,
      'variations',
      variations,
      'a list of variations, or { count, seed, standardDeviations }',
    );
  if (!isList(variations)) requireFields(`${context}: variations`, variations, scatterFields);
  const count = isList(variations) ? variations.length : wholeNumber('count', variations.count, 1);
  // Drawn one by one: a list of a hundred thousand would be most of the memory of the batch.
  const at = isList(variations) ? (i: number): Variation => variations[i] : draws(variations);
  const table = variationColumns.map(() => new Float64Array(count));
  const [burnRate] = table;
  for (let i = 0; i < count; i++) {
    const variation = at(i);
    if (typeof variation !== 'object' || variation === null)
      throw refusal(context, `variations[${i}]`, variation, 'an object of factors');
    for (const name of Object.keys(variation))
      if (!variationFields.includes(name)) throw unknown(`variations[${i}].${name}`, variationFields);
    factors.forEach((name, j) => {
      const value = variation[name] ?? 1;
      if (!(value > 0) || !Number.isFinite(value))
        throw refusal(context, `variations[${i}].${name}`, value, 'a factor above zero');
      table[j][i] = value;
    });
    if (variation.grainTemperature !== undefined) {
      const { si } = readInput(
        'temperature',
        `variations[${i}].grainTemperature`,
        variation.grainTemperature,
        context,
      );
      burnRate[i] *= temperatureFactorSi(law, si) / ownFactor;
    }
    const grain = variation.grain ?? 0;
    if (!Number.isInteger(grain) || grain < 0 || grain >= grains)
      throw refusal(context, `variations[${i}].grain`, grain, `a whole number from 0 to ${grains - 1}`);
    table[factors.length][i] = grain;
  }
  return table;
}

/** Whether any motor has a grain temperature of its own. */
export const variesTemperature = (given: readonly Variation[] | Scatter): boolean =>
  isList(given)
    ? given.some(({ grainTemperature }) => grainTemperature !== undefined)
    : given.grainTemperature !== undefined;

const isList = (given: readonly Variation[] | Scatter): given is readonly Variation[] => Array.isArray(given);

const scatterFields: FieldsOf<Scatter> = {
  count: 'required',
  seed: 'required',
  standardDeviations: 'required',
  grainTemperature: 'optional',
};
const variationFields: readonly string[] = [...factors, 'grainTemperature', 'grain'];

function wholeNumber(field: string, value: number, least: number): number {
  if (Number.isInteger(value) && value >= least) return value;
  throw refusal(context, field, value, `a whole number of at least ${least}`);
}

/** Gives the random motor of a number. */
function draws({ seed, standardDeviations, grainTemperature }: Scatter): (i: number) => Variation {
  wholeNumber('seed', seed, 0);
  for (const name of Object.keys(standardDeviations))
    if (!factors.some((factor) => factor === name)) throw unknown(`standardDeviations.${name}`, factors);
  const spreads = factors.map((name) => {
    const value = standardDeviations[name] ?? 0;
    if (!(value >= 0 && value < 0.33))
      throw refusal(context, `standardDeviations.${name}`, value, 'at least 0 and below 0.33');
    return [name, value] as const;
  });
  const range = grainTemperature?.map(
    (value) => readInput('temperature', 'grainTemperature', value, context).si,
  );
  const stream = randomStream(seed);
  return (i) => {
    // Each motor has a stream of its own, so that it stays the same when others are added.
    const own = stream.split(i);
    const variation = Object.fromEntries(
      spreads.map(([name, deviation]) => [name, 1 + deviation * Math.max(-3, Math.min(3, own.normal()))]),
    );
    if (range === undefined) return variation;
    const kelvin = range[0] + own.uniform() * (range[1] - range[0]);
    return { ...variation, grainTemperature: `${kelvin} K` as const };
  };
}

const unknown = (field: string, known: readonly string[]): MeopError =>
  new MeopError(
    'unknown-field',
    `${context}: there is no field '${field}'; ${known.join(', ')} are the fields`,
    field,
    { expected: known.join(', ') },
  );
