import type { FailureLimit } from './failure-mode';
import type { FailureModeId } from './mode-name';

/**
 * What a part does when a mode reaches its limit: it takes a permanent set, it breaks or comes apart, it leaks, or it
 * cracks and may stay in place.
 */
export type Consequence = 'stretches' | 'separates' | 'leaks' | 'cracks';

// Where the limit of the mode does not give it.
const others: Readonly<Partial<Record<FailureModeId, Consequence>>> = {
  // A plastic hinge: at this load the wall folds and releases the closure.
  'groove-wall-folding-yield': 'separates',
  'thread-wall-folding-yield': 'separates',
  // Graphite has no yield, and a cracked insert may stay on its seat.
  'insert-hoop': 'cracks',
  'insert-bending': 'cracks',
  'seat-bearing': 'cracks',
  // The faces open; the bolts still hold.
  'joint-separation': 'leaks',
};

/** The consequence of a mode: a yield limit is a permanent set, and a part at any other limit breaks or comes apart. */
export const consequenceOf = (id: FailureModeId, limit: FailureLimit): Consequence =>
  others[id] ?? (limit === 'yield' ? 'stretches' : 'separates');

// Elongated holes and a displaced closure, a worn groove, a larger diameter. The set of a bolt or of a narrow section is too
// small to be found.
const measurable: ReadonlySet<FailureModeId> = /* @__PURE__ */ new Set<FailureModeId>([
  'bore-hoop-yield',
  'bore-von-mises-yield',
  'oval-tube-yield',
  'case-bearing-yield',
  'closure-bearing-yield',
  'hole-row-hoop-yield',
  'groove-bearing-yield',
  'groove-hoop-yield',
  'thread-hoop-yield',
  'plate-bending-yield',
  'flange-bending-yield',
]);

/** Whether the permanent set of a mode can be measured on the hardware: only such a mode is a warning. */
export const isMeasurable = (id: FailureModeId): boolean => measurable.has(id);
