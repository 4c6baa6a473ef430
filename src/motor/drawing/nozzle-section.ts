import type { MotorLayout } from '../layout';
import { turned, type View } from './section-view';
import type { Point } from './turned-part';

/** Half angle drawn where the document specifies none. */
const usualHalfAngle = Math.PI / 12;

/**
 * The half-section of the throat insert. The document specifies throat, exit and half angle of the exit cone; the inlet is
 * drawn at 45°.
 */
export function insertOutline({ nozzle }: MotorLayout): readonly Point[] | undefined {
  const { insert, exit, throatDiameter, exitDiameter, divergenceHalfAngle = usualHalfAngle } = nozzle;
  if (insert?.span === undefined) return undefined;
  const { from, to } = insert.span;
  const outer = insert.outsideDiameter / 2;
  const throat = throatDiameter / 2;
  const slope = Math.tan(divergenceHalfAngle);
  const cone = slope > 0 ? (exitDiameter / 2 - throat) / slope : 0;
  // The cone ends at the exit plane; its throat is inside the insert wherever that leaves it.
  const inlet = Math.min(0.8 * outer - throat, 0.6 * (to - from));
  const position = Math.min(Math.max((exit ?? to) - cone, from + inlet), to - 0.05 * (to - from));
  const mouth = Math.min(throat + (position - from), 0.9 * outer);
  const lip = Math.min(throat + (to - position) * slope, 0.95 * outer);
  return [
    [from, outer],
    [to, outer],
    [to, lip],
    [position, throat],
    [position - (mouth - throat), throat + (mouth - throat)],
    [from, mouth],
  ];
}

/**
 * The exit cone behind the insert, where the document has a larger exit than the opening of the closure: it widens from the
 * opening by the half angle. Undefined for a cylindrical opening.
 */
export function coneOutline({ aft, nozzle }: MotorLayout): readonly Point[] | undefined {
  const { opening } = aft ?? {};
  const { exitDiameter, divergenceHalfAngle = usualHalfAngle } = nozzle;
  if (opening === undefined || exitDiameter <= opening.diameter) return undefined;
  const { from, to } = opening.span;
  const widened = Math.min(
    opening.diameter / 2 + (to - from) * Math.tan(divergenceHalfAngle),
    exitDiameter / 2,
  );
  return [
    [from, opening.diameter / 2],
    [to, widened],
    [to, 0],
    [from, 0],
  ];
}

/** The throat insert in its pocket, and the exit cone behind it. */
export function nozzleSection(view: View, layout: MotorLayout): string {
  const [insert, cone] = [insertOutline(layout), coneOutline(layout)];
  return [cone && turned(view, cone, 'cone'), insert && turned(view, insert, 'insert')].join('');
}
