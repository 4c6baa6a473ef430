import { checkClosure } from './closure-checks';
import { both, fitCheck, mm, type Need, type Path, positive } from './fit-check';
import type { DocumentProblem } from './problems';
import { rawAt, rawList, rawSi } from './raw-value';

/** Checks the dimensions between the parts of a document, as far as they can be read. */
export function geometryProblems(json: unknown): DocumentProblem[] {
  const fit = fitCheck(json);
  const { problems, length, need } = fit;

  const outside = length('case', 'outsideDiameter');
  const wall = length('case', 'wall');
  const bore = positive(both(outside, wall, (d, t) => d - 2 * t));
  need(
    both(outside, wall, (d, t) => 2 * t < d),
    ['case', 'wall'],
    `must be less than half the outside diameter (${mm(outside)}), got ${mm(wall)}`,
  );
  const chamber = length('case', 'chamberLength');
  need(
    both(chamber, length('case', 'length'), (c, l) => c <= l),
    ['case', 'chamberLength'],
    `must be at most the length of the case (${mm(length('case', 'length'))}), got ${mm(chamber)}`,
  );
  const liner = rawAt(json, ['liner']) === undefined ? 0 : length('liner', 'thickness');
  const inside = positive(both(bore, liner, (b, t) => b - 2 * t));
  need(
    both(bore, liner, (b, t) => 2 * t < b),
    ['liner', 'thickness'],
    `must be less than half the bore of the case (${mm(bore)}), got ${mm(liner)}`,
  );

  const throat = length('nozzle', 'throatDiameter');
  const wider = (path: Path): void =>
    need(
      both(length(...path), throat, (d, t) => d > t),
      path,
      `must be more than the throat diameter (${mm(throat)}), got ${mm(length(...path))}`,
    );
  wider(['nozzle', 'exitDiameter']);
  wider(['nozzle', 'insert', 'outsideDiameter']);
  const [cast, ideal] = (['density', 'idealDensity'] as const).map((field) =>
    rawSi(json, ['propellant', field], 'density'),
  );
  need(
    both(cast, ideal, (rho, solid) => rho <= solid * 1.005),
    ['propellant', 'idealDensity'],
    'must be more than the density as cast, because a grain without voids is denser',
  );

  grainProblems(json, inside, chamber, need);
  const beyond = positive(both(length('case', 'length'), chamber, (l, c) => l - c));
  for (const end of ['head', 'aft'] as const) checkClosure(json, end, fit, { outside, wall, bore, beyond });
  return problems;
}

const inner = [
  'boreDiameter',
  'tubeBoreDiameter',
  'headBoreDiameter',
  'aftBoreDiameter',
  'finTipDiameter',
  'slotDiameter',
] as const;

function grainProblems(
  json: unknown,
  inside: number | undefined,
  chamber: number | undefined,
  need: Need,
): void {
  const segments = rawList(json, ['grain', 'segments']);
  let column: number | undefined = 0;
  segments.forEach((segment, i) => {
    const at = (field: string): Path => ['grain', 'segments', i, field];
    const read = (field: string): number | undefined => rawSi(segment, [field], 'length');
    const outer = read('outerDiameter');
    need(
      both(outer, inside, (d, room) => d <= room * (1 + 1e-9)),
      at('outerDiameter'),
      `must be at most the bore of case and liner (${mm(inside)}), got ${mm(outer)}`,
    );
    for (const field of inner)
      need(
        both(read(field), outer, (b, d) => b < d),
        at(field),
        `must be less than the outer diameter (${mm(outer)}), got ${mm(read(field))}`,
      );
    const count = rawAt(segment, ['count']) ?? 1;
    const one = read('length');
    column = both(column, one, (sum, l) => sum + l * (typeof count === 'number' ? count : 1));
    if (typeof count === 'number' && i < segments.length)
      column = both(column, spacingOf(json), (sum, gap) => sum + gap * (i === 0 ? count - 1 : count));
  });
  need(
    segments.length === 0 ? undefined : both(column, chamber, (sum, room) => sum <= room * (1 + 1e-9)),
    ['grain', 'segments'],
    `total length must be at most the chamber length (${mm(chamber)}), got ${mm(column)}`,
  );
  const assumed = rawAt(json, ['grain', 'assumedFlaw', 'segment']);
  need(
    typeof assumed === 'number' && segments.length > 0 ? assumed <= segments.length : undefined,
    ['grain', 'assumedFlaw', 'segment'],
    `must be 1 to ${segments.length} (the number of segments), got ${String(assumed)}`,
  );
}

const spacingOf = (json: unknown): number | undefined =>
  rawAt(json, ['grain', 'spacing']) === undefined ? 0 : rawSi(json, ['grain', 'spacing'], 'length');
