import { boreOf, wallOf } from './case-size';
import { checkClosure } from './closure-checks';
import type { Measured } from './document-types';
import { both, type Findings, findings, mm, positive, type ReadDocument, si } from './fit-check';
import { checkLayouts } from './layout-checks';
import type { DocumentProblem } from './problems';
import { checkSeat } from './seat-checks';

/** Checks the dimensions between the parts of a document, as far as they could be parsed. */
export function geometryProblems(document: ReadDocument): readonly DocumentProblem[] {
  const { case: tube, liner, nozzle, propellant, closures } = document.parts;
  const found = findings(document.json);
  const { need } = found;

  const outside = si(tube?.outsideDiameter);
  const wall = si(tube && wallOf(tube));
  const bore = positive(si(tube && boreOf(tube)));
  checkWallOrBore(found);
  need(
    both(outside, si(tube?.wall), (d, t) => 2 * t < d),
    ['case', 'wall'],
    `less than half the outside diameter (${mm(outside)})`,
  );
  need(
    both(outside, si(tube?.insideDiameter), (d, b) => b < d),
    ['case', 'insideDiameter'],
    `less than the outside diameter (${mm(outside)})`,
  );
  const whole = si(tube?.length);
  const chamber = si(tube?.chamberLength);
  need(
    both(chamber, whole, (c, l) => c <= l),
    ['case', 'chamberLength'],
    `at most the length of the case (${mm(whole)})`,
  );
  const lined = document.isSound(['liner']) ? (si(liner?.thickness) ?? 0) : undefined;
  const inside = positive(both(bore, lined, (b, t) => b - 2 * t));
  need(
    both(bore, lined, (b, t) => 2 * t < b),
    ['liner', 'thickness'],
    `less than half the bore of the case (${mm(bore)})`,
  );

  const throat = si(nozzle?.throatDiameter);
  const wider = (measured: Measured | undefined, ...fields: string[]): void =>
    need(
      both(si(measured), throat, (d, t) => d > t),
      ['nozzle', ...fields],
      `more than the throat diameter (${mm(throat)})`,
    );
  wider(nozzle?.exitDiameter, 'exitDiameter');
  wider(nozzle?.insert?.outsideDiameter, 'insert', 'outsideDiameter');
  need(
    both(si(propellant?.density), si(propellant?.idealDensity), (cast, solid) => cast <= solid * 1.005),
    ['propellant', 'idealDensity'],
    `at least the density as cast (${propellant?.density?.value})`,
    'A grain without voids is denser',
  );

  const column = checkGrain(document, inside, chamber, found);
  const beyond = positive(both(whole, chamber, (l, c) => l - c));
  for (const end of ['head', 'aft'] as const) {
    const closure = closures?.[end];
    if (closure !== undefined) checkClosure(closure, end, found, { outside, wall, bore, beyond });
  }
  checkSeat(document.parts, found, { bore, outside, free: both(chamber, column, (c, l) => c - l) });
  checkLayouts(document, found);
  return found.problems;
}

/** A case has a wall or an inside diameter. */
function checkWallOrBore({ isGiven, note }: Findings): void {
  const wall = isGiven(['case', 'wall']);
  const bore = isGiven(['case', 'insideDiameter']);
  if (!wall && !bore)
    note(['case', 'wall'], {
      code: 'missing-field',
      expected: "wall thickness of the case, for example '3 mm', or its insideDiameter",
    });
  if (wall && bore)
    note(['case', 'insideDiameter'], {
      code: 'contradiction',
      problem: 'insideDiameter and wall are mutually exclusive',
      remedy: 'Give one of them',
    });
}

const inner = [
  'boreDiameter',
  'tubeBoreDiameter',
  'headBoreDiameter',
  'aftBoreDiameter',
  'finTipDiameter',
  'slotDiameter',
] as const;

type Sizes = { readonly [F in (typeof inner)[number] | 'outerDiameter']?: Measured | undefined };

/** Checks the grain and returns the length of its column. */
function checkGrain(
  { parts: { grain }, isSound }: ReadDocument,
  inside: number | undefined,
  chamber: number | undefined,
  { need }: Findings,
): number | undefined {
  const segments = grain?.segments ?? [];
  const spacing = isSound(['grain', 'spacing']) ? (si(grain?.spacing) ?? 0) : undefined;
  let column: number | undefined = 0;
  segments.forEach((segment, i) => {
    const outer = si(segment?.outerDiameter);
    need(
      both(outer, inside, (d, room) => d <= room * (1 + 1e-9)),
      ['grain', 'segments', i, 'outerDiameter'],
      `at most the bore of case and liner (${mm(inside)})`,
    );
    const sizes: Sizes = segment ?? {};
    for (const field of inner)
      need(
        both(si(sizes[field]), outer, (b, d) => b < d),
        ['grain', 'segments', i, field],
        `less than the outer diameter (${mm(outer)})`,
      );
    const count = segment?.count ?? 1;
    const gaps = i === 0 ? count - 1 : count;
    column = both(column, si(segment?.length), (sum, one) => sum + one * count);
    column = both(column, spacing, (sum, gap) => sum + gap * gaps);
  });
  need(
    segments.length === 0 ? undefined : both(column, chamber, (sum, room) => sum <= room * (1 + 1e-9)),
    ['grain', 'segments'],
    `at most as long as the chamber (${mm(chamber)}); the column is ${mm(column)} long`,
  );
  const assumed = grain?.assumedFlaw?.segment;
  need(
    assumed !== undefined && segments.length > 0 ? assumed <= segments.length : undefined,
    ['grain', 'assumedFlaw', 'segment'],
    `1 to ${segments.length}, the number of a segment`,
  );
  return segments.length === 0 ? undefined : column;
}
