import { oRing, threadGeometry } from '../../structures';
import { type Closure, isFaceSeal } from '../document/closure-inputs';
import type { Insert } from '../document/nozzle-inputs';
import { type AxialBoltPlace, axialBoltPlace } from './axial-bolt-place';
import { type PocketPlace, pocketPlace } from './pocket-place';

/** Extent along the axis in metres, `from` less than `to`. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** A turned feature of a closure: its extent and its diameter. */
export interface Turned {
  readonly span: Span;
  readonly diameter: number;
}

/** The groove of an O-ring. */
export type GroovePlace = {
  /** Index in `seals` of the closure. */
  readonly index: number;
  readonly span: Span;
  /** Cross section of the free O-ring. */
  readonly crossSection: number;
} & (
  | {
      /** Around the closure: the bottom of the groove, and the closure next to it. */
      readonly kind: 'radial';
      readonly bottomDiameter: number;
      readonly closureDiameter: number;
    }
  | {
      /** In a face: the groove between two diameters, open on the side of the chamber. */
      readonly kind: 'face';
      readonly outsideDiameter: number;
      readonly insideDiameter: number;
    }
);

/** A row of radial bolts. */
export interface HoleRow {
  /** Position of the hole centres. */
  readonly position: number;
  readonly holeDiameter: number;
  readonly boltDiameter: number;
  /** Radial length of thread in the closure. */
  readonly engagement: number;
  readonly count: number;
}

/** The retaining ring and its groove in the case. */
export interface RingPlace {
  readonly groove: Turned;
  readonly ring: Span;
}

/** The thread of the closure in the case. */
export interface ThreadPlace {
  /** Full thread engaged. */
  readonly span: Span;
  readonly majorDiameter: number;
  readonly pitch: number;
  /** Runout groove in the case; undefined where its diameter or its length is not specified. */
  readonly relief: Turned | undefined;
}

/** One end of a motor along the axis; positions as in a motor layout. */
export interface EndLayout {
  readonly end: 'head' | 'aft';
  /** The closure in the case and what protrudes with the same diameter. */
  readonly closure: Turned;
  readonly innerFace: number;
  readonly outerFace: number;
  readonly shoulder: Turned | undefined;
  readonly cavity: Turned | undefined;
  readonly recess: Turned | undefined;
  /** The central hole, from the bottom of the recess to that of the cavity or the pocket of the insert. */
  readonly opening: Turned | undefined;
  readonly grooves: readonly GroovePlace[];
  readonly holeRows: readonly HoleRow[];
  readonly ring: RingPlace | undefined;
  readonly thread: ThreadPlace | undefined;
  readonly axialBolts: AxialBoltPlace | undefined;
  /** Pocket of the throat insert, of an aft closure with a described seat. */
  readonly pocket: PocketPlace | undefined;
}

/** What the layout of an end is resolved from. */
export interface EndParts {
  readonly end: 'head' | 'aft';
  readonly closure: Closure;
  /** Bore of the case. */
  readonly bore: number;
  readonly caseLength: number;
  /** The throat insert, of the aft end. */
  readonly insert: Insert | undefined;
  /** The sizes of standard parts, where they are known already. */
  readonly standard?: StandardSizes | undefined;
}

/** Sizes that standards give for bolts and O-rings, in metres. */
export interface StandardSizes {
  readonly boltDiameter: number;
  /** Of each seal. */
  readonly crossSections: readonly number[];
}

/** The sizes of the standard parts of a closure. */
export const standardSizes = ({ joint, seals }: Closure): StandardSizes => ({
  boltDiameter: joint === undefined ? 0 : threadGeometry(joint.thread).majorDiameter.si,
  crossSections: seals.map(({ ring }) => oRing(ring).crossSection.si),
});

/** The layout of one end; undefined where the document does not give it. */
export function endLayout(parts: EndParts): EndLayout | undefined {
  const { end, closure, bore, caseLength, insert } = parts;
  const { layout, opening, seals } = closure;
  if (layout === undefined) return undefined;
  const { boltDiameter, crossSections } = parts.standard ?? standardSizes(closure);
  const point = (depth: number): number => (end === 'head' ? depth : caseLength - depth);
  /** From the side of the end of the case to the side of the chamber. */
  const span: SpanOf = (outer, inner) =>
    end === 'head' ? { from: outer, to: inner } : { from: caseLength - inner, to: caseLength - outer };
  const innerFace = layout.innerFace.value.si;
  const outerFace = innerFace - layout.length.value.si;
  const { shoulder, cavity, recess } = layout;
  const cavityBottom = innerFace - (cavity?.depth.value.si ?? 0);
  const recessBottom = outerFace + (recess?.depth.value.si ?? 0);
  const pocket =
    insert?.seat !== undefined
      ? pocketPlace(insert, insert.seat, cavityBottom, recessBottom, span)
      : undefined;
  const through = pocket?.opening ?? [recessBottom, cavityBottom];
  return {
    end,
    closure: { span: span(outerFace, innerFace), diameter: layout.diameter.value.si },
    innerFace: point(innerFace),
    outerFace: point(outerFace),
    shoulder: shoulder && {
      span: span(-shoulder.thickness.value.si, 0),
      diameter: shoulder.diameter.value.si,
    },
    cavity: cavity && { span: span(cavityBottom, innerFace), diameter: cavity.diameter.value.si },
    recess: recess && { span: span(outerFace, recessBottom), diameter: recess.diameter.value.si },
    opening: opening && { span: span(...through), diameter: opening.value.si },
    grooves: seals.flatMap((seal, index) =>
      groovePlace(seal, index, innerFace, shoulder !== undefined, crossSections[index] ?? 0, span),
    ),
    holeRows: holeRows(closure, boltDiameter, point),
    ring: ringPlace(closure, bore, span),
    thread: threadPlace(closure, span),
    axialBolts: axialBoltPlace(closure, span),
    pocket: pocket?.place,
  };
}

/** A span from its depth nearest the end of the case and its depth nearest the chamber. */
export type SpanOf = (outer: number, inner: number) => Span;

function groovePlace(
  seal: Closure['seals'][number],
  index: number,
  innerFace: number,
  hasShoulder: boolean,
  crossSection: number,
  span: SpanOf,
): readonly GroovePlace[] {
  const position = seal.position?.value.si;
  if (isFaceSeal(seal)) {
    const face = position ?? (hasShoulder ? 0 : innerFace);
    return [
      {
        index,
        kind: 'face',
        span: span(face - seal.grooveDepth.value.si, face),
        crossSection,
        outsideDiameter: seal.grooveOutsideDiameter.value.si,
        insideDiameter: seal.grooveInsideDiameter.value.si,
      },
    ];
  }
  if (position === undefined) return [];
  return [
    {
      index,
      kind: 'radial',
      span: span(position, position + seal.grooveWidth.value.si),
      crossSection,
      bottomDiameter: seal.grooveDiameter.value.si,
      closureDiameter: seal.closureDiameter.value.si,
    },
  ];
}

function holeRows(
  { joint }: Closure,
  boltDiameter: number,
  point: (depth: number) => number,
): readonly HoleRow[] {
  if (joint === undefined) return [];
  const { edgeDistance, holeDiameter, engagement, count, rows = 1, rowSpacing } = joint;
  return Array.from({ length: rows }, (_, row) => ({
    position: point(edgeDistance.value.si + row * (rowSpacing?.value.si ?? 0)),
    holeDiameter: holeDiameter.value.si,
    boltDiameter,
    engagement: engagement.value.si,
    count,
  }));
}

function ringPlace({ retainingRing }: Closure, bore: number, span: SpanOf): RingPlace | undefined {
  if (retainingRing === undefined) return undefined;
  const { edgeMargin, thickness, grooveDepth, grooveWidth = thickness } = retainingRing;
  const outer = edgeMargin.value.si;
  const ring = span(outer, outer + thickness.value.si);
  const groove = span(outer, outer + Math.max(grooveWidth.value.si, thickness.value.si));
  return { groove: { span: groove, diameter: bore + 2 * grooveDepth.value.si }, ring };
}

function threadPlace({ thread, layout }: Closure, span: SpanOf): ThreadPlace | undefined {
  const start = layout?.threadStart?.value.si;
  if (thread === undefined || start === undefined) return undefined;
  const end = start + thread.engagement.value.si;
  const runout = layout?.reliefLength?.value.si;
  return {
    span: span(start, end),
    majorDiameter: thread.majorDiameter.value.si,
    pitch: thread.pitch.value.si,
    relief:
      thread.reliefDiameter === undefined || runout === undefined
        ? undefined
        : { span: span(end, end + runout), diameter: thread.reliefDiameter.value.si },
  };
}
