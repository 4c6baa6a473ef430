import type { EndLayout, MotorLayout } from '../layout';
import { boxes, circles, turned, type View } from './section-view';
import { type Cut, outlineOf, type Point } from './turned-part';

/** The half-section of a closure: its blank less everything machined from it. */
export function closureOutline({
  closure,
  shoulder,
  cavity,
  recess,
  opening,
  pocket,
  grooves,
}: EndLayout): readonly Point[] {
  const inside = [cavity, recess, opening, pocket].flatMap((one): readonly Cut[] =>
    one === undefined ? [] : [{ ...one.span, radius: one.diameter / 2, side: 'inside' }],
  );
  const around = grooves.flatMap((one): readonly Cut[] =>
    one.kind === 'radial' ? [{ ...one.span, radius: one.bottomDiameter / 2, side: 'outside' }] : [],
  );
  // A shoulder is left standing where the rest is turned down to the bore.
  const { from, to } = closure.span;
  const turnedDown: readonly Cut[] =
    shoulder === undefined
      ? []
      : [
          { from, to: shoulder.span.from, radius: closure.diameter / 2, side: 'outside' },
          { from: shoulder.span.to, to, radius: closure.diameter / 2, side: 'outside' },
        ];
  return outlineOf({
    from,
    to,
    outer: (shoulder?.diameter ?? closure.diameter) / 2,
    inner: 0,
    cuts: [...inside, ...around, ...turnedDown.filter((cut) => cut.to > cut.from)],
  });
}

/** The half-section of the case: the tube, with flanges for bolts, less the grooves and threads in its ends. */
export function caseOutline({ case: tube, head, aft }: MotorLayout): readonly Point[] {
  const flanges = [head?.axialBolts?.flange, aft?.axialBolts?.flange].filter((one) => one !== undefined);
  const outer = Math.max(tube.outsideDiameter, ...flanges.map(({ diameter }) => diameter)) / 2;
  const from = Math.max(
    tube.span.from,
    ...(head?.axialBolts?.flange ? [head.axialBolts.flange.span.to] : []),
  );
  const to = Math.min(tube.span.to, ...(aft?.axialBolts?.flange ? [aft.axialBolts.flange.span.from] : []));
  // Between the flanges the tube has its outside diameter.
  const turnedDown: Cut = { from, to, radius: tube.outsideDiameter / 2, side: 'outside' };
  const cuts = [head, aft].flatMap((end): readonly Cut[] => {
    const { ring, thread } = end ?? {};
    return [
      ring?.groove,
      thread && { span: thread.span, diameter: thread.majorDiameter },
      thread?.relief,
    ].flatMap((one): readonly Cut[] =>
      one === undefined ? [] : [{ ...one.span, radius: one.diameter / 2, side: 'inside' }],
    );
  });
  return outlineOf({ ...tube.span, outer, inner: tube.insideDiameter / 2, cuts: [...cuts, turnedDown] });
}

/** A closure with its seals and its retention. */
export function endSection(view: View, end: EndLayout, { case: tube }: MotorLayout): string {
  const bore = tube.insideDiameter / 2;
  const outside = tube.outsideDiameter / 2;
  const seals = end.grooves.map((groove) => {
    const middle = (groove.span.from + groove.span.to) / 2;
    if (groove.kind === 'face')
      return (
        boxes(
          view,
          [groove.span.from, groove.span.to],
          [groove.insideDiameter / 2, groove.outsideDiameter / 2],
          'void',
        ) +
        circles(
          view,
          middle,
          groove.outsideDiameter / 2 - groove.crossSection / 2,
          Math.min(groove.crossSection, groove.span.to - groove.span.from),
          'seal',
        )
      );
    const bottom = groove.bottomDiameter / 2;
    return circles(view, middle, (bore + bottom) / 2, Math.min(bore - bottom, groove.crossSection), 'seal');
  });
  const screws = end.holeRows.map(({ position, holeDiameter, boltDiameter: d, engagement }) =>
    [
      boxes(view, [position - holeDiameter / 2, position + holeDiameter / 2], [bore, outside], 'void'),
      boxes(
        view,
        [position - d / 2, position + d / 2],
        [end.closure.diameter / 2 - engagement, outside],
        'screw',
      ),
      boxes(view, [position - 0.8 * d, position + 0.8 * d], [outside, outside + d], 'screw'),
    ].join(''),
  );
  const ring =
    end.ring &&
    boxes(
      view,
      [end.ring.ring.from, end.ring.ring.to],
      [bore - 1.5 * (end.ring.ring.to - end.ring.ring.from), end.ring.groove.diameter / 2],
      'ring',
    );
  const thread =
    end.thread &&
    boxes(
      view,
      [end.thread.span.from, end.thread.span.to],
      // Depth of the basic profile: 5/8 of the height of the triangle (ISO 68-1).
      [end.thread.majorDiameter / 2 - 0.5413 * end.thread.pitch, end.thread.majorDiameter / 2],
      'thread',
    );
  const bolts =
    end.axialBolts &&
    [
      [end.axialBolts.shank, end.axialBolts.boltDiameter] as const,
      [end.axialBolts.head, end.axialBolts.headDiameter] as const,
    ]
      .map(([span, diameter]) => {
        const middle = (end.axialBolts?.boltCircle ?? 0) / 2;
        return boxes(view, [span.from, span.to], [middle - diameter / 2, middle + diameter / 2], 'screw');
      })
      .join('');
  return [turned(view, closureOutline(end), 'closure'), ...seals, ...screws, ring, thread, bolts]
    .filter((one) => one !== undefined)
    .join('\n');
}
