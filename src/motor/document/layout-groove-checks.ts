import type { GroovePlace, Span } from '../layout/end-layout';
import { overlap, tiny, voidDiameter } from '../layout/metal';
import { type Findings, mm } from './fit-check';
import { type PlacedEnd, spaceAt } from './layout-end';
import type { Path } from './problems';

type Radial = Extract<GroovePlace, { readonly kind: 'radial' }>;
type Face = Extract<GroovePlace, { readonly kind: 'face' }>;

/** Checks that the grooves of the O-rings are in metal, in order, apart, and on the pressure side of the retention. */
export function checkGrooves(placed: PlacedEnd, found: Findings): void {
  const { at, closure, layout } = placed;
  closure.seals.forEach((seal, i) => {
    if (seal.seal !== 'face' && seal.position === undefined)
      found.note([...at, 'seals', i, 'position'], {
        code: 'missing-field',
        expected: `distance from the end face of the case to the groove, required with ${at.join('.')}.layout, for example '20 mm'`,
      });
  });
  const radial = layout.grooves.filter((one) => one.kind === 'radial');
  for (const groove of radial) checkRadial(groove, placed, found);
  radial.slice(1).forEach((groove, i) => {
    const nearer = radial[i];
    found.need(
      groove.span.to <= nearer.span.from + tiny,
      [...at, 'seals', groove.index, 'position'],
      `at most ${mm(nearer.span.from - (groove.span.to - groove.span.from))}: the groove is outside of that of the seal before it, which begins at ${mm(nearer.span.from)}`,
      'List the seals from the gas outwards',
    );
  });
  for (const groove of layout.grooves) if (groove.kind === 'face') checkFace(groove, placed, found);
}

function checkRadial({ index, span, bottomDiameter }: Radial, placed: PlacedEnd, found: Findings): void {
  const { at, layout } = placed;
  const place: Path = [...at, 'seals', index, 'position'];
  const { need } = found;
  const width = span.to - span.from;
  const outer = Math.max(0, layout.closure.span.from);
  need(
    span.from > outer && span.to < layout.closure.span.to,
    place,
    `between ${mm(outer)} and ${mm(layout.closure.span.to - width)}, with the whole groove in the closure and in the case`,
  );
  checkPressureSide(span, place, placed, found);
  const inside = voidDiameter(layout, span);
  need(
    inside < bottomDiameter,
    [...at, 'seals', index, 'grooveDiameter'],
    `more than the diameter of the ${spaceAt(layout, span)} at the groove (${mm(inside)})`,
    'The groove breaks into it',
  );
}

/** The seal is between the gas and the holes, the ring or the thread. */
function checkPressureSide(span: Span, place: Path, { layout }: PlacedEnd, { need }: Findings): void {
  for (const { position, holeDiameter } of layout.holeRows) {
    const holes = { from: position - holeDiameter / 2, to: position + holeDiameter / 2 };
    need(
      span.from >= holes.to - tiny,
      place,
      overlap(span, holes)
        ? `at least ${mm(holes.to)}: the holes, from ${mm(holes.from)} to ${mm(holes.to)}, go through the groove`
        : `at least ${mm(holes.to)}: the seal is on the pressure side of the holes`,
    );
  }
  const { thread, ring } = layout;
  const cut = thread?.relief?.span.to ?? thread?.span.to;
  if (cut !== undefined)
    need(
      span.from >= cut - tiny,
      place,
      `at least ${mm(cut)}: the seal is on the pressure side of the thread`,
    );
  if (ring !== undefined)
    need(
      span.from >= ring.groove.span.to - tiny,
      place,
      `at least ${mm(ring.groove.span.to)}: the seal is on the pressure side of the ring groove`,
    );
}

function checkFace(
  { index, span, outsideDiameter, insideDiameter }: Face,
  { at, layout, bore }: PlacedEnd,
  { need }: Findings,
): void {
  const own: Path = [...at, 'seals', index];
  const { shoulder, closure, innerFace } = layout;
  const isInShoulder = shoulder !== undefined && Math.abs(span.to) <= tiny;
  const isInFace = Math.abs(span.to - innerFace) <= tiny && closure.diameter > bore;
  need(
    isInShoulder || isInFace,
    [...own, 'position'],
    `${mm(0)} with a shoulder, or the inner face of a closure that is wider than the bore (${mm(innerFace)})`,
    'The case has no face elsewhere that closes the groove',
  );
  if (!isInShoulder && !isInFace) return;
  const outer = isInShoulder ? shoulder.diameter : closure.diameter;
  need(
    outsideDiameter < outer,
    [...own, 'grooveOutsideDiameter'],
    `less than the diameter of the ${isInShoulder ? 'shoulder' : 'closure'} (${mm(outer)})`,
    'The groove is open to the outside',
  );
  const inside = isInShoulder ? bore : voidDiameter(layout, span);
  need(
    insideDiameter > inside,
    [...own, 'grooveInsideDiameter'],
    `more than the diameter of the ${isInShoulder ? 'bore' : spaceAt(layout, span)} (${mm(inside)})`,
  );
  need(
    span.to - span.from <
      (isInShoulder ? shoulder.span.to - shoulder.span.from : span.to - closure.span.from),
    [...own, 'grooveDepth'],
    'less than the thickness of the metal behind the face',
  );
}
