import { randomStream } from '../numerics';
import {
  type Argument,
  count,
  either,
  inputs,
  list,
  MeopError,
  optional,
  ratio,
  type Values,
} from '../units';
import { temperatureFactorSi } from './burn-law';
import { grainTemperature } from './motor-inputs';
import type { Propellant } from './propellant';
import { variationColumns } from './simulation/batch-kernel';

/** What varies, by field, as a factor on the simulated motor. */
const meanings = {
  burnRate: 'burning rate',
  density: 'propellant density',
  characteristicVelocity: 'characteristic velocity, with the gas temperature in proportion to its square',
  throatDiameter: 'throat diameter',
  thrust: 'thrust alone',
  chamberVolume: 'volume of the empty chamber',
};
type Varied = keyof typeof meanings;
const factorFields = [
  'burnRate',
  'density',
  'characteristicVelocity',
  'throatDiameter',
  'thrust',
  'chamberVolume',
] as const satisfies readonly Varied[];

const factor = (field: Varied) =>
  optional(ratio('f', `factor on the ${meanings[field]}`, { above: 0, example: 1.02 }), 1);
const deviation = (field: Varied) =>
  optional(ratio('s', `relative standard deviation of the ${meanings[field]}`, { min: 0, below: 0.33 }), 0);

/** One motor of a batch. */
const variation = inputs(
  {
    burnRate: factor('burnRate'),
    density: factor('density'),
    characteristicVelocity: factor('characteristicVelocity'),
    throatDiameter: factor('throatDiameter'),
    thrust: factor('thrust'),
    chamberVolume: factor('chamberVolume'),
    grainTemperature: optional(grainTemperature),
    grain: optional(
      ratio('i', 'number of the grain; 0 is the grain of the motor, others are those of grains', {
        min: 0,
        whole: true,
      }),
      0,
    ),
  },
  { meaning: 'one motor of the batch: factors on the simulated motor' },
);

/** Random motors: normal dispersion about the simulated motor, truncated at three standard deviations. */
const scatter = inputs(
  {
    count: count('N', 'number of random motors'),
    seed: ratio(
      'seed',
      'seed of the random numbers; the same seed gives the same motors on any number of threads',
      {
        min: 0,
        whole: true,
      },
    ),
    standardDeviations: inputs(
      {
        burnRate: deviation('burnRate'),
        density: deviation('density'),
        characteristicVelocity: deviation('characteristicVelocity'),
        throatDiameter: deviation('throatDiameter'),
        thrust: deviation('thrust'),
        chamberVolume: deviation('chamberVolume'),
      },
      { meaning: 'relative standard deviations' },
    ),
    grainTemperature: optional(
      list('limits between which grain temperatures are distributed evenly', grainTemperature, {
        min: 2,
        max: 2,
      }),
    ),
  },
  { meaning: 'random motors' },
);

/** One motor of a batch: factors on the simulated motor; omitted factors are 1. */
export type Variation = Argument<typeof variation>;

/** Random motors: normal dispersion about the simulated motor, truncated at three standard deviations. */
export type Scatter = Argument<typeof scatter>;

/** The motors of a batch. */
export const variations = either('motors of the batch: a list of variations, or random ones', [
  scatter,
  list('variations', variation, { min: 0 }),
]);

type Given = ReturnType<typeof variations.read>;
type OneMotor = Pick<Values<typeof variation.fields>, (typeof factorFields)[number]> & {
  /** Grain temperature [K]; `undefined`: that of the motor. */
  readonly temperature: number | undefined;
  readonly grain: number;
};

/** Factors of every motor, a column for each of `variationColumns`. The motor's grain temperature is already in its law. */
export function variationTable(
  given: Given,
  { law }: Propellant,
  ownTemperature: number,
  grains: number,
): readonly Float64Array[] {
  const ownFactor = temperatureFactorSi(law, ownTemperature);
  const motors = isList(given) ? given.length : given.count;
  // Random motors are made one by one: a list of a hundred thousand would be most of the memory of the batch.
  const at = isList(given) ? (i: number): OneMotor => listed(given[i]) : draws(given);
  const table = variationColumns.map(() => new Float64Array(motors));
  const [burnRate] = table;
  for (let i = 0; i < motors; i++) {
    const one = at(i);
    factorFields.forEach((name, j) => {
      table[j][i] = one[name];
    });
    if (one.temperature !== undefined) burnRate[i] *= temperatureFactorSi(law, one.temperature) / ownFactor;
    if (one.grain >= grains)
      throw new MeopError({
        code: 'out-of-domain',
        procedure: 'simulateMany',
        path: `variations.${i}.grain`,
        given: one.grain,
        expected: `a whole number from 0 to ${grains - 1}`,
      });
    table[factorFields.length][i] = one.grain;
  }
  return table;
}

const listed = (one: Values<typeof variation.fields>): OneMotor => ({
  ...one,
  temperature: one.grainTemperature?.si,
});

/** Whether any motor has another grain temperature. */
export const variesTemperature = (given: Given): boolean =>
  isList(given)
    ? given.some((one) => one.grainTemperature !== undefined)
    : given.grainTemperature !== undefined;

const isList = (given: Given): given is Extract<Given, readonly unknown[]> => Array.isArray(given);

/** Gives the random motor of a number. */
function draws({
  seed,
  standardDeviations,
  grainTemperature: range,
}: Values<typeof scatter.fields>): (i: number) => OneMotor {
  const stream = randomStream(seed);
  return (i) => {
    // Each motor has its own stream, so that it stays the same when others are added.
    const own = stream.split(i);
    const drawn = (field: Varied): number =>
      1 + standardDeviations[field] * Math.max(-3, Math.min(3, own.normal()));
    return {
      burnRate: drawn('burnRate'),
      density: drawn('density'),
      characteristicVelocity: drawn('characteristicVelocity'),
      throatDiameter: drawn('throatDiameter'),
      thrust: drawn('thrust'),
      chamberVolume: drawn('chamberVolume'),
      temperature: range && range[0].si + own.uniform() * (range[1].si - range[0].si),
      grain: 0,
    };
  };
}
