import { threadGeometry } from '../../structures';
import type { Closure } from '../document/closure-inputs';
import type { Span, SpanOf, Turned } from './end-layout';

/** Bolts along the axis, through the shoulder of a closure into the end of the case. */
export interface AxialBoltPlace {
  /** From the face under the heads to the end of the engaged thread. */
  readonly shank: Span;
  readonly head: Span;
  readonly boltCircle: number;
  readonly boltDiameter: number;
  readonly headDiameter: number;
  readonly count: number;
  /** Flange at the end of the case; undefined where the bolts are in its wall. */
  readonly flange: Turned | undefined;
}

/** The bolts of a closure; the head as high as the bolt is thick (ISO 4762). */
export function axialBoltPlace({ axialBolts }: Closure, span: SpanOf): AxialBoltPlace | undefined {
  if (axialBolts === undefined) return undefined;
  const { thread, boltCircle, clampedThickness, engagement, headDiameter, count, flange } = axialBolts;
  const boltDiameter = threadGeometry(thread).majorDiameter.si;
  const under = -clampedThickness.value.si;
  return {
    shank: span(under, engagement.value.si),
    head: span(under - boltDiameter, under),
    boltCircle: boltCircle.value.si,
    boltDiameter,
    headDiameter: headDiameter?.value.si ?? 1.5 * boltDiameter,
    count,
    flange: flange && {
      span: span(0, flange.thickness.value.si),
      diameter: flange.outsideDiameter.value.si,
    },
  };
}
