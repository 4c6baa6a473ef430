import type { PartId } from '../../structures';
import type { EndLayout, HoleRow } from './end-layout';
import { type Ligament, practice } from './ligament';
import { metalAtRow, solidAt, tapped, voidDiameter } from './metal';

/** Ligaments around the bolts of a closure; positions of the end are distances from the end of the case. */
export function boltLigaments(end: EndLayout, part: PartId, bore: number): readonly Ligament[] {
  const [first] = end.holeRows;
  const last = end.holeRows.at(-1);
  if (first === undefined || last === undefined) return [];
  const { boltDiameter: d } = first;
  const of = (check: string, value: number, least: number, preferred: number, rule = ''): Ligament => ({
    part,
    check,
    value,
    kind: 'length',
    least: least * d,
    ...(preferred > least && { preferred: preferred * d }),
    rule: rule || `${least} bolt diameter${least === 1 ? '' : 's'}`,
    source: practice,
  });
  const solid = solidAt(end, end.closure.diameter / 2 - first.engagement);
  const groove = nearestGroove(end, last);
  return [
    of('edge distance of the hole row', first.position, 1.5, 2),
    ...(first.count < 2 ? [] : [of('pitch of the holes', bore * Math.sin(Math.PI / first.count), 2.5, 3)]),
    ...betweenRows(end, bore).map((distance) => of('distance between the hole rows', distance, 2.5, 3)),
    of('metal outside the hole row', first.position - solid.from, 1.5, 1.5),
    of('metal inside the hole row', solid.to - last.position, 1.5, 1.5),
    ...(groove === undefined ? [] : [of('metal between hole and O-ring groove', groove, 1, 1)]),
    ...end.holeRows.flatMap((row) => [
      ...(voidDiameter(end, tapped(row)) > 0
        ? [of('metal between bolt and opening', metalAtRow(end, row) - row.engagement, 0.5, 1)]
        : []),
    ]),
    ...(first.count < 2 ? [] : [of('metal between the ends of the bolts', betweenTips(end, first), 0.5, 1)]),
  ];
}

/** From the edge of the holes to the nearest groove towards the chamber. */
function nearestGroove({ grooves }: EndLayout, row: HoleRow): number | undefined {
  const inside = grooves.filter(({ kind, span }) => kind === 'radial' && span.to > row.position);
  return inside.length === 0
    ? undefined
    : Math.min(...inside.map(({ span }) => span.from)) - row.position - row.holeDiameter / 2;
}

/** Distances of the hole centres of neighbouring rows, which are staggered. */
function betweenRows({ holeRows }: EndLayout, bore: number): readonly number[] {
  return holeRows.slice(1).map((row, i) => {
    const half = bore * Math.sin(Math.PI / (2 * row.count));
    return Math.hypot(row.position - holeRows[i].position, half);
  });
}

/** Between neighbouring tapped holes where they are nearest, at the ends of the threads. */
function betweenTips({ closure }: EndLayout, { engagement, count, boltDiameter }: HoleRow): number {
  const radius = Math.max(0, closure.diameter / 2 - engagement);
  return 2 * radius * Math.sin(Math.PI / count) - boltDiameter;
}
