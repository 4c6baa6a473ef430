import type { Motor } from '../document';
import type { EndLayout, MotorLayout, Span } from '../layout';
import type { AxialDimension, DiameterDimension } from './dimension-lines';
import { millimetres } from './svg-text';

/** The dimensions of one end: positions from the end face of the case, sizes, and what the view cannot show. */
export interface EndDimensions {
  readonly axial: readonly AxialDimension[];
  readonly diameters: readonly DiameterDimension[];
  readonly notes: readonly string[];
}

/** The dimensions of an end of a motor, as its document gives them. */
export function endDimensions(motor: Motor, layout: MotorLayout, end: EndLayout): EndDimensions {
  const { case: tube, nozzle } = layout;
  const face = end.end === 'head' ? tube.span.from : tube.span.to;
  /** The edge of a span nearest the end face. */
  const outerEdge = ({ from, to }: Span): number => (end.end === 'head' ? from : to);
  const innerEdge = ({ from, to }: Span): number => (end.end === 'head' ? to : from);
  const fromFace = (to: number): readonly AxialDimension[] => (to === face ? [] : [{ from: face, to }]);
  const along = ({ from, to }: Span): AxialDimension => ({ from, to });
  const radial = end.grooves.filter((groove) => groove.kind === 'radial');
  const insert = end.end === 'aft' ? nozzle.insert : undefined;
  const axial = [
    ...end.holeRows.flatMap(({ position }) => fromFace(position)),
    ...end.grooves.flatMap(({ span }) => [...fromFace(outerEdge(span)), along(span)]),
    ...(end.ring === undefined
      ? []
      : [...fromFace(outerEdge(end.ring.groove.span)), along(end.ring.groove.span)]),
    ...(end.thread === undefined ? [] : [...fromFace(outerEdge(end.thread.span)), along(end.thread.span)]),
    ...[end.cavity, end.recess, end.shoulder].flatMap((one) => (one === undefined ? [] : [along(one.span)])),
    ...(end.pocket === undefined ? [] : [along(end.pocket.span)]),
    ...(insert?.span === undefined ? [] : [along(insert.span)]),
    ...fromFace(end.innerFace),
    ...(end.outerFace === face ? [] : [along(end.closure.span)]),
  ];
  const middle = ({ from, to }: Span): number => (from + to) / 2;
  const turned = [end.cavity, end.recess, end.opening, end.shoulder, end.pocket].flatMap((one) =>
    one === undefined ? [] : [{ diameter: one.diameter, position: middle(one.span) }],
  );
  const diameters = [
    { diameter: tube.outsideDiameter, position: face },
    { diameter: tube.insideDiameter, position: face },
    { diameter: end.closure.diameter, position: innerEdge(end.closure.span) },
    ...turned,
    ...radial.map(({ bottomDiameter, span }) => ({ diameter: bottomDiameter, position: middle(span) })),
    ...(end.ring === undefined
      ? []
      : [{ diameter: end.ring.groove.diameter, position: middle(end.ring.groove.span) }]),
    ...(insert?.span === undefined
      ? []
      : [
          { diameter: insert.outsideDiameter, position: middle(insert.span) },
          { diameter: nozzle.throatDiameter, position: middle(insert.span) },
        ]),
  ];
  const { joint, seals = [], material } = motor.closures?.[end.end] ?? {};
  const notes = [
    ...(material === undefined ? [] : [`Closure: ${material.name}`]),
    ...(joint === undefined
      ? []
      : end.holeRows.map(
          ({ count, holeDiameter }) =>
            `${count} × ${joint.thread}, class ${joint.boltClass}, holes ⌀${millimetres(holeDiameter)}`,
        )),
    ...(end.axialBolts === undefined
      ? []
      : [
          `${end.axialBolts.count} bolts along the axis of ${millimetres(end.axialBolts.boltDiameter)} on a circle of ⌀${millimetres(end.axialBolts.boltCircle)}`,
        ]),
    ...(end.thread === undefined
      ? []
      : [`Thread ⌀${millimetres(end.thread.majorDiameter)} × ${millimetres(end.thread.pitch)}`]),
    ...end.grooves.map((groove) =>
      groove.kind === 'face'
        ? `O-ring ${seals[groove.index]?.ring} in the face, groove ⌀${millimetres(groove.insideDiameter)} to ⌀${millimetres(groove.outsideDiameter)}`
        : `O-ring ${seals[groove.index]?.ring}`,
    ),
    ...(insert === undefined ? [] : [`Insert: ${motor.nozzle.insert?.material.name}`]),
  ];
  return {
    axial: distinct(axial, ({ from, to }) => [from, to].sort().join()),
    diameters: distinct(diameters, ({ diameter }) => String(diameter)),
    notes: [...new Set(notes)],
  };
}

/** Each dimension once: two features of one size have one dimension line. */
const distinct = <T>(all: readonly T[], key: (one: T) => string): readonly T[] => [
  ...new Map(all.map((one) => [key(one), one])).values(),
];
