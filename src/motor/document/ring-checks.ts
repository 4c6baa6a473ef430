import { ringConflicts, sizesInBore } from '../../structures/closures/ring-sizes';
import type { ClosureParts } from './closure-inputs';
import type { Measured, Partly } from './document-types';
import { both, type Findings, mm, si } from './fit-check';
import type { Path } from './problems';
import { namedRing } from './ring-size';

type Ring = Partly<NonNullable<ClosureParts['retainingRing']>>;

/** The space in the case for a ring [m]. */
interface RingSpace {
  readonly wall: number | undefined;
  readonly bore: number | undefined;
}

/** The sizes of a ring [m], given or of its standard, as far as they are known. */
export interface RingLengths {
  readonly edgeMargin: number | undefined;
  readonly thickness: number | undefined;
}

const meanings = {
  grooveDepth: "radial depth of the groove, for example '1.2 mm'",
  edgeMargin: "length of case from the groove to its end, for example '5 mm'",
  thickness: "axial thickness of the ring, for example '1.75 mm'",
} as const;

/** Checks that a ring and its groove fit each other and the wall, and agree with the standard ring that is named. */
export function checkRingSizes(
  ring: Ring,
  at: Path,
  found: Findings,
  { wall, bore }: RingSpace,
): RingLengths {
  const { need, note, isGiven } = found;
  const standard = namedRing(ring);
  if (!isGiven([...at, 'ring']))
    for (const [field, meaning] of Object.entries(meanings))
      if (!isGiven([...at, field]))
        note([...at, field], {
          code: 'missing-field',
          expected: `${meaning}, or the name of a standard ring in 'ring', for example 'DIN 472 50'`,
        });
  if (standard !== undefined && bore !== undefined)
    for (const { field, expected } of ringConflicts(standard, bore, {
      grooveDepth: given(ring.grooveDepth),
      grooveWidth: given(ring.grooveWidth),
      thickness: given(ring.thickness),
    }))
      note([...at, field], { code: 'contradiction', expected });
  const sizes = standard && bore !== undefined ? sizesInBore(standard, bore) : undefined;
  const depth = si(ring.grooveDepth) ?? sizes?.grooveDepth;
  need(
    both(depth, wall, (d, t) => d < t),
    [...at, isGiven([...at, 'grooveDepth']) ? 'grooveDepth' : 'ring'],
    `less than the wall of the case (${mm(wall)})`,
  );
  const thickness = si(ring.thickness) ?? sizes?.thickness;
  const width = si(ring.grooveWidth) ?? sizes?.grooveWidth;
  need(
    both(
      thickness,
      width,
      (t, w) => t + (ring.thickness?.plusMinus ?? 0) < w - (ring.grooveWidth?.plusMinus ?? 0),
    ),
    [...at, isGiven([...at, 'thickness']) ? 'thickness' : 'grooveWidth'],
    isGiven([...at, 'thickness'])
      ? `less than the width of the groove, with both tolerances (${mm(width)})`
      : `more than the thickness of the ring (${mm(thickness)})`,
  );
  return { edgeMargin: si(ring.edgeMargin) ?? sizes?.edgeMargin, thickness };
}

const given = (one: Measured | undefined) => one && { si: one.value.si, plusMinus: one.plusMinus };
