import type { Envelope, Source } from '../surface';

/**
 * A defect of a cast grain: {@link crack}, {@link voidBubble}, {@link debond} or {@link chippedEdge}. Add it to a
 * grain with {@link withFlaws}. A flaw that meets the bore, a burning end or another open flaw burns from the start.
 * A buried flaw ignites when the front reaches it.
 */
export interface Flaw {
  readonly kind: 'crack' | 'void' | 'debond' | 'chipped edge';
  readonly label: string;
  readonly cautions: readonly string[];
  /** Places the flaw as a surface in a grain of this outer form. */
  readonly place: (envelope: Envelope) => PlacedFlaw;
}

/** Whether a value is a flaw. */
export const isFlaw = (value: unknown): value is Flaw =>
  typeof value === 'object' && value !== null && 'place' in value && 'label' in value;

/**
 * Effects in a narrow gap that the area model omits. Source: Kuo, Kumar and others, 1970s to 1980s; quoted from
 * memory, not verified.
 */
export const NARROW_GAP_CAUTION =
  'Narrow cracks and debonds can ignite late, run at a higher pressure than the bore, and propagate. Propagation is not modelled: the effect of the flaw may exceed the computed one.';

/** Caution on buried voids. */
export const VOID_CAUTION =
  'A void is assumed to ignite over its whole surface when the burning front first reaches it. Pressurised gas may break through earlier.';

/** A flaw placed in a grain. */
export interface PlacedFlaw {
  readonly source: Source;
  /**
   * True: burns from the start. False: buried until the front reaches it. Undefined: determined from the surfaces
   * that it meets.
   */
  readonly open: boolean | undefined;
}
