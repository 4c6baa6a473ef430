import { choice, count, inputs, massFlux, optional, ratio } from '../../units';

const atLeastOne = { min: 1, worse: 'neither' } as const;

/** Limits of the review. */
export const limitsInputs = /* @__PURE__ */ optional(
  inputs(
    {
      portToThroat: optional(
        ratio('A_p/A_t', 'minimum port/throat area at ignition', { ...atLeastOne, example: 2 }),
      ),
      massFlux: optional(
        massFlux('G', 'maximum mass flux at the aft end of the port', {
          above: 0,
          example: '2 lb/(in^2*s)',
          worse: 'neither',
        }),
      ),
      headroom: optional(
        ratio('h', 'minimum sensor range/expected maximum', { ...atLeastOne, example: 1.25 }),
      ),
      samplesPerRise: optional(
        ratio('n', 'minimum number of samples in the rise at ignition', { ...atLeastOne, example: 10 }),
      ),
    },
    { meaning: 'limits of the review' },
  ),
);

/** Settings for the maximum expected operating pressure. */
export const meopInputs = /* @__PURE__ */ optional(
  inputs(
    {
      basis: optional(
        choice('basis of the maximum expected operating pressure', ['worst case', 'percentile', 'nominal']),
      ),
      percentile: optional(
        ratio('P', 'fraction of motors below the percentile pressure', {
          above: 0.5,
          below: 1,
          example: 0.9987,
          worse: 'neither',
        }),
      ),
      samples: optional(count('N', 'number of random samples', { min: 100, example: 10_000 })),
      seed: optional(count('s', 'seed of the random numbers', { min: 0, example: 1 })),
      distribution: optional(
        choice(
          'distribution of values within their tolerances; normal takes plusMinus as two standard deviations',
          ['uniform', 'normal'],
        ),
      ),
      allowance: optional(
        ratio('k', 'factor for effects outside the model, such as an ignition peak', {
          ...atLeastOne,
          example: 1.05,
        }),
      ),
    },
    { meaning: 'method for the maximum expected operating pressure' },
  ),
);
