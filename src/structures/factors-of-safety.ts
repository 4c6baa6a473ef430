import {
  type Arguments,
  inputs,
  list,
  MeopError,
  type NamedTable,
  named,
  optional,
  procedure,
  ratio,
  type Values,
  words,
} from '../units';
import { type FactorSet, type FactorSetName, factorSet, factorSetNames } from './factor-sets';

/** Sets of factors of safety by name, or a set of the user's own. */
export const factorSets: NamedTable<FactorSet, FactorSetName> = {
  what: 'set of factors of safety',
  names: factorSetNames,
  get usual() {
    return factorSetNames();
  },
  find: factorSet,
  is: (value): value is FactorSet =>
    typeof value === 'object' && value !== null && 'name' in value && 'source' in value,
};

const factor = (symbol: string, meaning: string, example: number) =>
  optional(ratio(symbol, meaning, { min: 1, example, worse: 'neither' }));

/** Factors of safety on the maximum expected operating pressure (MEOP). */
export const factorsOfSafety = /* @__PURE__ */ inputs(
  {
    set: optional(named('published or customary set of factors', factorSets, { example: 'ground test' })),
    yieldFactor: factor('FS_y', 'factor on MEOP up to which no part may yield', 1.5),
    ultimateFactor: factor('FS_u', 'factor on MEOP up to which no part may rupture', 2),
    proofFactor: factor('FS_p', 'proof pressure/MEOP', 1.5),
    source: optional(words('authority that requires these factors', { example: 'range safety officer' })),
  },
  { meaning: 'factors of safety: a set by name, factors of the user, or a set of which some are replaced' },
);

/** The factors of a review; those of {@link designFactors} may be passed on whole. */
export const reviewFactors = /* @__PURE__ */ optional(
  inputs(
    {
      ...factorsOfSafety.fields,
      cautions: optional(list('cautions of the factors', words('caution'), { min: 0 }), []),
    },
    { meaning: factorsOfSafety.meaning },
  ),
);

/** Factors of safety as a review takes them. */
export type ReviewFactors = Arguments<typeof reviewFactors.fields>;

/** The factors of a review on yield and on rupture; 1.5 and 2 where none is given (engineering practice). */
export const yieldAndUltimate = (
  given: Values<typeof reviewFactors.fields> | undefined,
): { readonly yield: number; readonly ultimate: number } => ({
  yield: given?.yieldFactor ?? given?.set?.yieldFactor ?? 1.5,
  ultimate: given?.ultimateFactor ?? given?.set?.ultimateFactor ?? 2,
});

/** Factors of safety, complete. */
export interface DesignFactors {
  readonly yieldFactor: number;
  readonly ultimateFactor: number;
  readonly proofFactor: number;
  readonly source: string;
  readonly cautions: readonly string[];
}

/**
 * Complete factors from a set, factors of the user, or a set of which some are replaced.
 *
 * @throws MeopError `missing-field` where neither the set nor the input has one
 * @example designFactors({ set: 'solid motor 1961, manned', ultimateFactor: 1.5, proofFactor: 1.25 }).yieldFactor // => 1.25
 */
export const designFactors = /* @__PURE__ */ procedure({
  name: 'designFactors',
  title: 'Factors of safety for a design',
  source: 'the set of factors',
  inputs: factorsOfSafety.fields,
  gives: 'the yield, ultimate and proof factors with their source',
  example: { set: 'ground test' },
  run: (given): DesignFactors => completed(given),
});

const names = ['yieldFactor', 'ultimateFactor', 'proofFactor'] as const;

/** The same from values that are read; the cautions given come first. */
export function completed(given: Partial<Values<typeof reviewFactors.fields>>): DesignFactors {
  const isComplete = names.every((name) => given[name] !== undefined);
  const set = given.set ?? (isComplete ? undefined : factorSet('ground test'));
  const of = (field: (typeof names)[number]): number => {
    const value = given[field] ?? set?.[field];
    if (value !== undefined) return value;
    throw new MeopError({
      code: 'missing-field',
      procedure: 'designFactors',
      path: field,
      expected: `the set '${set?.name}' has none`,
      remedy: `Add one, such as ${field}: 1.5`,
    });
  };
  const source = given.source ?? set?.source ?? "user's own";
  const note = set?.note === undefined ? '' : `; ${set.note}`;
  const isPublished = set === undefined || set.provenance === undefined || set.provenance === 'published';
  return {
    yieldFactor: of('yieldFactor'),
    ultimateFactor: of('ultimateFactor'),
    proofFactor: of('proofFactor'),
    source,
    cautions: [
      ...(given.cautions ?? []),
      ...(isPublished ? [] : [`factors of safety: ${set.provenance} (${source}${note})`]),
    ],
  };
}
