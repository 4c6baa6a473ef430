import type { PartId } from '../../structures';
import type { Measured } from '../document';
import type { Closure } from '../document/closure-inputs';
import type { EndLayout } from './end-layout';
import { type Ligament, practice } from './ligament';

/**
 * What is left of the bore between the O-ring grooves and the holes or grooves of the case when the closure has moved
 * outwards by its full play; positions of the end are distances from the end of the case.
 */
export function travelLigaments(end: EndLayout, closure: Closure, part: PartId): readonly Ligament[] {
  const travel = travelOf(end);
  if (travel === undefined) return [];
  const obstacle = Math.max(
    0,
    ...end.holeRows.map(({ position, holeDiameter }) => position + holeDiameter / 2),
    ...(end.ring === undefined ? [] : [end.ring.groove.span.to]),
  );
  const radial = end.grooves.filter(({ kind }) => kind === 'radial').map(({ span }) => span.from);
  return [
    ...(radial.length === 0
      ? []
      : [
          {
            part,
            check: 'bore under the O-ring at full travel',
            value: Math.min(...radial) - obstacle - travel,
            kind: 'length',
            least: 0,
            rule: 'the O-ring stays on its land',
            source: practice,
          } as const,
        ]),
    ...end.grooves.flatMap(({ kind, index }): readonly Ligament[] => {
      const gap = kind === 'face' ? gapOf(closure, index) : undefined;
      if (gap === undefined) return [];
      return [
        {
          part,
          check: 'gap specified for the face seal',
          value: gap.value.si,
          kind: 'length',
          least: travel,
          rule: 'the axial play of the closure',
          source: 'Geometry of the layout',
        },
      ];
    }),
  ];
}

/** Axial play of a closure: to the ring it rests on, or the clearance of the holes; undefined for a thread. */
function travelOf({ ring, holeRows, outerFace }: EndLayout): number | undefined {
  if (ring !== undefined) return Math.max(0, outerFace - ring.ring.to);
  const [row] = holeRows;
  return row && row.holeDiameter - row.boltDiameter;
}

function gapOf({ seals }: Closure, index: number): Measured<'length'> | undefined {
  const seal = seals[index];
  return seal?.seal === 'face' ? seal.faceGap : undefined;
}
