import type { BuriedCandidate } from './contact';
import type { Envelope } from './source';

/**
 * A defect of a cast grain: {@link crack}, {@link voidBubble}, {@link debond} or {@link chippedEdge}. Put it into a grain with {@link withFlaws}.
 * A flaw that meets the bore, a burning end or another open flaw burns from the start; a buried one lights
 * when the front reaches it.
 */
export interface Flaw {
  readonly kind: 'crack' | 'void' | 'debond' | 'chipped edge';
  readonly label: string;
  readonly cautions: readonly string[];
  /** The flaw as a surface in a grain of this outer form. */
  readonly place: (envelope: Envelope) => BuriedCandidate;
}

/** What the area model of a narrow gap does not know. Kuo, Kumar and others, 1970s to 80s: from memory. */
export const NARROW_GAP_CAUTION =
  'a narrow crack or debond may light late, and once lit may run at a higher pressure than the bore and drive itself open: the burning area computed here is a lower bound of its effect';

/** The caution on buried voids. */
export const VOID_CAUTION =
  'a void lights as a whole when the front first touches it; gas trapped under pressure may break through earlier';
