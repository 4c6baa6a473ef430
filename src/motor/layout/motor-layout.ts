import type { Motor } from '../document';
import { boreOf } from '../document/case-size';
import { type EndLayout, endLayout, type Span } from './end-layout';
import { type SegmentPlace, segmentPlaces } from './segment-places';

/**
 * A motor along its axis, nominal sizes in metres. Positions are measured from the head end of the case towards the
 * nozzle: they are negative before the head end and exceed the length of the case behind the aft end. In each span, `from` is
 * less than `to`. Every other size is a diameter, a thickness or a length.
 */
export interface MotorLayout {
  readonly case: {
    readonly outsideDiameter: number;
    readonly insideDiameter: number;
    readonly wall: number;
    readonly span: Span;
  };
  /**
   * Space between the inner faces of the closures. With one layout it begins at that closure; with none it is assumed in the middle
   * of the case.
   */
  readonly chamber: Span & { readonly isAssumed: boolean };
  readonly liner:
    | { readonly outsideDiameter: number; readonly insideDiameter: number; readonly span: Span }
    | undefined;
  /** Undefined where the closure is not specified or has no layout. */
  readonly head: EndLayout | undefined;
  readonly aft: EndLayout | undefined;
  /** Every segment of the grain, the column placed against the head end of the chamber. */
  readonly segments: readonly SegmentPlace[];
  readonly nozzle: NozzlePlace;
}

/** The nozzle along the axis. */
export interface NozzlePlace {
  readonly throatDiameter: number;
  readonly exitDiameter: number;
  /** Radians; undefined where not specified. */
  readonly divergenceHalfAngle: number | undefined;
  /** The exit plane: the outer face of the aft closure; undefined where it has no layout. */
  readonly exit: number | undefined;
  /** The insert in its pocket; `span` is undefined where nothing says where it is. */
  readonly insert:
    | { readonly outsideDiameter: number; readonly length: number; readonly span: Span | undefined }
    | undefined;
}

/** The layout of a motor along its axis. */
export function motorLayout(motor: Motor): MotorLayout {
  const { case: tube, closures, liner, nozzle } = motor;
  const length = tube.length.value.si;
  const bore = boreOf(tube).value.si;
  const at = (end: 'head' | 'aft') => {
    const closure = closures?.[end];
    return (
      closure &&
      endLayout({ end, closure, bore, caseLength: length, insert: end === 'aft' ? nozzle.insert : undefined })
    );
  };
  const [head, aft] = [at('head'), at('aft')];
  const chamber = chamberOf(motor, head, aft);
  const lined = liner && bore - 2 * liner.thickness.value.si;
  return {
    case: {
      outsideDiameter: tube.outsideDiameter.value.si,
      insideDiameter: bore,
      wall: tube.wall.value.si,
      span: { from: 0, to: length },
    },
    chamber,
    liner:
      lined === undefined
        ? undefined
        : {
            outsideDiameter: bore,
            insideDiameter: lined,
            span: { from: chamber.from, to: chamber.to },
          },
    head,
    aft,
    segments: segmentPlaces(motor, chamber.from),
    nozzle: {
      throatDiameter: nozzle.throatDiameter.value.si,
      exitDiameter: nozzle.exitDiameter.value.si,
      divergenceHalfAngle: nozzle.divergenceHalfAngle?.value.si,
      exit: aft?.outerFace,
      insert: nozzle.insert && {
        outsideDiameter: nozzle.insert.outsideDiameter.value.si,
        length: nozzle.insert.length.value.si,
        span: aft?.pocket?.insert,
      },
    },
  };
}

function chamberOf(
  { case: tube }: Motor,
  head: EndLayout | undefined,
  aft: EndLayout | undefined,
): MotorLayout['chamber'] {
  const length = tube.chamberLength.value.si;
  if (head !== undefined)
    return { from: head.innerFace, to: aft?.innerFace ?? head.innerFace + length, isAssumed: false };
  if (aft !== undefined) return { from: aft.innerFace - length, to: aft.innerFace, isAssumed: false };
  const from = (tube.length.value.si - length) / 2;
  return { from, to: from + length, isAssumed: true };
}
