import { unknownName } from '../units';
import type { Provenance } from './materials';

/** Factors on the maximum expected operating pressure (MEOP), with their source. */
export interface FactorSet {
  readonly name: string;
  /** No yield up to this times MEOP; absent where the source has none. */
  readonly yieldFactor?: number;
  /** No burst up to this times MEOP; absent where the source has none. */
  readonly ultimateFactor?: number;
  /** Proof pressure/MEOP; absent where the source has none. */
  readonly proofFactor?: number;
  readonly source: string;
  readonly provenance: Provenance;
  readonly note?: string;
}

const flight =
  'assumes tested material, inspected cases, a proof test of every unit and an MEOP at three standard deviations';

const sets = {
  'ground test': {
    yieldFactor: 1.5,
    ultimateFactor: 2,
    proofFactor: 1.5,
    source: 'amateur ground testing of metal cases',
    provenance: 'engineering practice, no published source',
  },
  'ground test, least': {
    yieldFactor: 1.5,
    ultimateFactor: 1.5,
    proofFactor: 1.5,
    source: 'amateur ground testing of metal cases, the minimum in use',
    provenance: 'engineering practice, no published source',
    note: 'proof by water at 1.5 MEOP without yield',
  },
  'NASA SP-8025, upper': {
    yieldFactor: 1.2,
    ultimateFactor: 1.5,
    proofFactor: 1.2,
    source: 'NASA SP-8025, Solid Rocket Motor Metal Cases',
    provenance: 'from memory',
    note: `upper end of a range quoted from memory; the document was not read; ${flight}`,
  },
  'NASA SP-8025, lower': {
    yieldFactor: 1.1,
    ultimateFactor: 1.25,
    proofFactor: 1.05,
    source: 'NASA SP-8025, Solid Rocket Motor Metal Cases',
    provenance: 'from memory',
    note: `lower end of a range quoted from memory; the document was not read; ${flight}`,
  },
  'NASA-STD-5001 metallic': {
    yieldFactor: 1.25,
    ultimateFactor: 1.4,
    proofFactor: 1.05,
    source: 'NASA-STD-5001, metallic structures, prototype',
    provenance: 'from memory',
    note: flight,
  },
  'AIAA S-080 vessel': {
    ultimateFactor: 1.5,
    proofFactor: 1.25,
    source: 'MIL-STD-1522A and AIAA S-080, approach A, proof (1 + burst factor)/2',
    provenance: 'from memory',
  },
  'solid motor 1961, unmanned': {
    yieldFactor: 1.1,
    source: 'General Electric, Project Apollo feasibility study, vol. IV book 2 (15 May 1961)',
    provenance: 'published',
    note: flight,
  },
  'solid motor 1961, manned': {
    yieldFactor: 1.25,
    source: 'General Electric, Project Apollo feasibility study, vol. IV book 2 (15 May 1961)',
    provenance: 'published',
    note: flight,
  },
  'solid motor 1963, unmanned': {
    ultimateFactor: 1.15,
    source: 'J. R. Henry, general structural criteria for boost vehicles (8 April 1963)',
    provenance: 'published',
    note: flight,
  },
  'solid motor 1963, manned': {
    ultimateFactor: 1.25,
    source: 'J. R. Henry, general structural criteria for boost vehicles (8 April 1963)',
    provenance: 'published',
    note: flight,
  },
  'pneumatic vessel 1963': {
    ultimateFactor: 2.22,
    proofFactor: 1.67,
    source: 'J. R. Henry, general structural criteria for boost vehicles (8 April 1963), pneumatic vessels',
    provenance: 'published',
  },
  'pneumatic lines 1963': {
    ultimateFactor: 4,
    proofFactor: 2,
    source: 'J. R. Henry, general structural criteria for boost vehicles (8 April 1963), pneumatic lines',
    provenance: 'published',
  },
  'solid motor 1963, people near': {
    ultimateFactor: 1.5,
    source:
      'J. R. Henry, general structural criteria for boost vehicles (8 April 1963), non-flight loads dangerous to people',
    provenance: 'published',
  },
} as const satisfies Readonly<Record<string, Omit<FactorSet, 'name'>>>;

/** The names of the factor sets. */
export type FactorSetName = keyof typeof sets;

/**
 * A set of factors of safety by name, with its source. The default of every review is `'ground test'`: 1.5 on yield,
 * 2 on burst, which allows for untested material and an estimated MEOP.
 *
 * @throws MeopError `unknown-name`
 * @example factorSet('ground test').ultimateFactor // => 2
 */
export function factorSet(name: FactorSetName | (string & Readonly<Record<never, never>>)): FactorSet {
  if (isFactorSetName(name)) return { name, ...sets[name] };
  throw unknownName(name, factorSetNames(), 'set of factors of safety', {
    procedure: 'factorSet',
    path: '',
  });
}

/**
 * The names of the sets of factors of safety.
 *
 * @example factorSetNames()[0] // => 'ground test'
 */
export function factorSetNames(): readonly FactorSetName[] {
  return Object.keys(sets).filter(isFactorSetName);
}

const isFactorSetName = (name: string): name is FactorSetName => Object.hasOwn(sets, name);
