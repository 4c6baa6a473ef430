import type { PartId } from '../../structures';
import type { Motor } from '../document';

type History = NonNullable<Motor['history']>;

/** A pressurisation of the ledger. */
export type Pressurisation = NonNullable<History['pressurisations']>[number];

/** A measurement of the ledger. */
export type Measurement = NonNullable<History['measurements']>[number];

/** How many pressurisations an entry of the ledger stands for. */
export const timesOf = ({ times }: Pressurisation): number => times ?? 1;

// The part that an entry may name for each part of the review.
const seenBy = (part: PartId, { parts }: Pressurisation): boolean =>
  parts === undefined || parts.some((one) => one === part);

/** The pressurisations that a part has seen. */
export const seen = (part: PartId, all: readonly Pressurisation[]): readonly Pressurisation[] =>
  all.filter((one) => seenBy(part, one));
