import { metalAtRow, tapped, tiny } from '../layout/metal';
import { type Findings, mm } from './fit-check';
import { type PlacedEnd, spaceAt } from './layout-end';
import type { Path } from './problems';

/** Checks that the bolts, the ring or the thread of a closure are where the closure and the case have metal. */
export function checkRetentionPlace(placed: PlacedEnd, found: Findings): void {
  checkBoltPlaces(placed, found);
  checkRingPlace(placed, found);
  checkThreadPlace(placed, found);
}

function checkBoltPlaces(placed: PlacedEnd, { need, note, isGiven }: Findings): void {
  const { at, closure, layout } = placed;
  const { joint } = closure;
  const own: Path = [...at, 'joint'];
  if (joint === undefined) return;
  const { from, to } = layout.closure.span;
  layout.holeRows.forEach((row, i) => {
    const radius = row.boltDiameter / 2;
    const place: Path = [...own, i === 0 ? 'edgeDistance' : 'rowSpacing'];
    const shift = i === 0 ? 0 : layout.holeRows[0].position;
    const [least, most] = [Math.max(0, from) + radius - shift, to - radius - shift];
    need(
      row.position - radius > from && row.position + radius < to,
      place,
      `between ${mm(least)} and ${mm(most / Math.max(1, i))}, with the holes in the closure, which is from ${mm(from)} to ${mm(to)}`,
    );
    const metal = metalAtRow(layout, row);
    need(
      row.engagement < metal + tiny,
      [...own, 'engagement'],
      `at most the radial metal of the closure at the holes (${mm(metal)})`,
      `The bolts reach the ${spaceAt(layout, tapped(row))}`,
    );
  });
  if (isGiven([...own, 'sealToHoles']))
    note([...own, 'sealToHoles'], {
      code: 'contradiction',
      problem: 'sealToHoles and layout are mutually exclusive',
      remedy: 'Omit sealToHoles: it follows from the layout',
    });
}

function checkRingPlace({ at, closure, layout }: PlacedEnd, { need }: Findings): void {
  const { ring } = layout;
  if (ring === undefined || closure.retainingRing === undefined) return;
  need(
    layout.outerFace >= ring.ring.to - tiny,
    [...at, 'layout', 'length'],
    `at most ${mm(layout.innerFace - ring.ring.to)}: the retaining ring is between ${mm(ring.ring.from)} and ${mm(ring.ring.to)}`,
    'The closure rests against its inner side',
  );
}

function checkThreadPlace({ at, closure, layout }: PlacedEnd, { need, note, isGiven }: Findings): void {
  const own: Path = [...at, 'layout'];
  if (closure.thread === undefined) {
    for (const field of ['threadStart', 'reliefLength'])
      if (isGiven([...own, field]))
        note([...own, field], {
          code: 'contradiction',
          problem: `${field} belongs to a thread on the closure`,
          remedy: `Omit it, or give ${at.join('.')}.thread`,
        });
    return;
  }
  const { thread } = layout;
  if (thread === undefined) {
    note([...own, 'threadStart'], {
      code: 'missing-field',
      expected:
        "distance from the end face of the case to the start of the engaged thread, for example '2 mm'",
    });
    return;
  }
  const { span, relief } = thread;
  const { from, to } = layout.closure.span;
  need(
    span.from >= Math.max(0, from) - tiny,
    [...own, 'threadStart'],
    `at least ${mm(Math.max(0, from))}, where closure and case overlap`,
  );
  need(
    span.to <= to + tiny,
    [...at, 'thread', 'engagement'],
    `at most ${mm(to - span.from)}, the length of the closure behind the start of the thread`,
  );
  need(
    relief === undefined || relief.span.to <= to + tiny,
    [...own, 'reliefLength'],
    `at most ${mm(to - span.to)}, the length of the closure behind the thread`,
  );
}
