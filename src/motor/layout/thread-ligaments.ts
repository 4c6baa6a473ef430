import type { PartId } from '../../structures';
import type { EndLayout } from './end-layout';
import { type Ligament, practice } from './ligament';
import { voidDiameter } from './metal';

/** Depth of the thread of the closure, in pitches: 17/24 of the height of its triangle, √3/2 pitches. */
const threadDepth = 0.6134;

/** Ligaments around the thread of an end; positions are distances from the end of the case. */
export function threadLigaments(end: EndLayout, joint: PartId, closure: PartId): readonly Ligament[] {
  const { thread } = end;
  if (thread === undefined) return [];
  const { span, pitch, majorDiameter, relief } = thread;
  const inside = voidDiameter(end, span);
  const root = majorDiameter - 2 * threadDepth * pitch;
  return [
    ...(relief === undefined
      ? []
      : [
          {
            part: joint,
            check: 'length of the runout groove',
            value: relief.span.to - relief.span.from,
            kind: 'length',
            least: 2 * pitch,
            rule: '2 pitches of the thread',
            source: practice,
          } as const,
        ]),
    ...(inside === 0
      ? []
      : [
          {
            part: closure,
            check: 'metal left under the thread of the closure',
            value: (root - inside) / (majorDiameter - inside),
            kind: 'ratio',
            least: 0.6,
            rule: '60 % of the metal to its outside',
            source: practice,
          } as const,
        ]),
  ];
}
