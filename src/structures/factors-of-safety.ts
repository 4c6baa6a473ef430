import { inputs, type NamedTable, named, optional, ratio, words } from '../units';
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
  optional(ratio(symbol, meaning, { min: 1, example }));

/** Factors of safety on the maximum expected operating pressure (MEOP). */
export const factorsOfSafety = /* @__PURE__ */ inputs(
  {
    set: optional(named('published or customary set of factors', factorSets, { example: 'ground test' })),
    yieldFactor: factor('FS_y', 'factor on MEOP up to which no part may yield', 1.5),
    ultimateFactor: factor('FS_u', 'factor on MEOP up to which no part may rupture', 2),
    proofFactor: factor('FS_p', 'proof pressure/MEOP', 1.5),
    source: optional(words('authority that requires these factors', { example: 'range safety officer' })),
  },
  {
    meaning: 'factors of safety: a set by name, factors of the user, or a set of which some are replaced',
  },
);
