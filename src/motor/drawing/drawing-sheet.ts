import type { Motor } from '../document';
import type { EndLayout, MotorLayout } from '../layout';
import { axialDimensions, diameterDimensions, diameterFits } from './dimension-lines';
import { drawingStyle, hatchings } from './drawing-style';
import { endDimensions } from './end-dimensions';
import { caseOutline, endSection } from './end-section';
import { grainColumn } from './grain-section';
import { nozzleSection } from './nozzle-section';
import { boxes, turned, type View, widthOf, xOf, yOf } from './section-view';
import { at, escaped, line, millimetres, textHeight, write } from './svg-text';

/** Scales of a drawing, largest first: those of ISO 5455 and, to use the paper, the steps between them. */
const scales = [
  5,
  2,
  1.5,
  1,
  2 / 3,
  1 / 2,
  1 / 2.5,
  1 / 3,
  1 / 4,
  1 / 5,
  1 / 6,
  1 / 8,
  1 / 10,
  1 / 15,
  1 / 20,
  1 / 50,
  1 / 100,
];

const margin = 4;
const lineHeight = textHeight + 1.4;

interface Block {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
}

/** The drawing of a motor on paper of a width [mm]. */
export function drawingSheet(motor: Motor, layout: MotorLayout, width: number): string {
  const room = width - 2 * margin;
  const whole = wholeView(motor, layout, room);
  const ends = [layout.head, layout.aft].filter((end) => end !== undefined);
  const beside = ends.length === 2 && room >= 150;
  const details = ends.map((end) => endView(motor, layout, end, beside ? (room - 6) / 2 : room));
  const rows = beside ? [details] : details.map((one) => [one]);
  let y = margin + 5 + lineHeight + 2;
  const placed: string[] = [];
  const place = (block: Block, x: number): void => {
    placed.push(`<g transform="translate(${at(x)} ${at(y)})">${block.svg}</g>`);
  };
  place(whole, margin);
  y += whole.height + 6;
  for (const row of rows) {
    row.forEach((block, k) => {
      place(block, margin + k * (room / 2 + 3));
    });
    y += Math.max(...row.map(({ height }) => height)) + 6;
  }
  const missing = (['head', 'aft'] as const).filter((end) => layout[end] === undefined);
  const { assumedFlaw } = motor.grain;
  const remarks = [
    `Case: ${motor.case.material.name}${motor.liner === undefined ? '' : `; liner: ${motor.liner.material.name}`}.`,
    ...(assumedFlaw === undefined
      ? []
      : [`The ${assumedFlaw.flaw.flaw} of segment ${assumedFlaw.segment} is assumed.`]),
    ...missing.map((end) => `${end} end: the document gives no layout; its closure is not drawn.`),
    ...(layout.nozzle.insert?.span === undefined
      ? []
      : ['Inlet of the nozzle drawn at 45°; the document does not specify it.']),
  ];
  const foot = remarks.map((text, k) => write(margin, y + k * lineHeight, text, { look: 'quiet' }));
  const height = y + remarks.length * lineHeight + margin - (remarks.length === 0 ? 6 : 2);
  return `<svg xmlns="http://www.w3.org/2000/svg" class="motor-section" viewBox="0 0 ${at(width)} ${at(height)}" width="${at(width)}mm" height="${at(height)}mm"><title>${escaped(`Section of ${motor.name}: case ${millimetres(layout.case.outsideDiameter)} mm × ${millimetres(layout.case.span.to)} mm`)}</title>
${drawingStyle}${hatchings}
${write(margin, margin + 3.2, motor.name, { look: 'title' })}
${write(margin, margin + 3.2 + lineHeight + 0.8, 'Section along the axis, head end left. Dimensions in mm, nominal.', { look: 'quiet' })}
${placed.join('\n')}
${foot.join('\n')}
</svg>`;
}

/** The parts in a view, from the inside outwards. */
function parts(view: View, motor: Motor, layout: MotorLayout): string {
  const { liner } = layout;
  return [
    liner &&
      boxes(
        view,
        [liner.span.from, liner.span.to],
        [liner.insideDiameter / 2, liner.outsideDiameter / 2],
        'liner',
      ),
    grainColumn(view, motor, layout),
    turned(view, caseOutline(layout), 'case'),
    ...[layout.head, layout.aft].map((end) => end && endSection(view, end, layout)),
    nozzleSection(view, layout),
    line(xOf(view, view.from) - 3, view.axis, xOf(view, view.to) + 3, view.axis, 'axis'),
  ]
    .filter((one) => one !== undefined)
    .join('\n');
}

/** The positions [m] between which a motor has parts. */
function extent({ case: tube, head, aft, nozzle }: MotorLayout): readonly [number, number] {
  const spans = [
    tube.span,
    head?.closure.span,
    aft?.closure.span,
    head?.axialBolts?.head,
    aft?.axialBolts?.head,
    nozzle.insert?.span,
  ].filter((one) => one !== undefined);
  return [Math.min(...spans.map(({ from }) => from)), Math.max(...spans.map(({ to }) => to))];
}

/** Maximum radius [m], screw heads included. */
const maximumRadius = ({ case: tube, head, aft }: MotorLayout): number =>
  Math.max(
    ...[head, aft].flatMap((end) => [
      (end?.shoulder?.diameter ?? 0) / 2,
      (end?.axialBolts?.flange?.diameter ?? 0) / 2,
      ...(end?.holeRows ?? []).map(({ boltDiameter }) => tube.outsideDiameter / 2 + boltDiameter),
    ]),
    tube.outsideDiameter / 2,
  );

const scaleText = (scale: number): string =>
  scale >= 1 ? `${Number(scale.toFixed(2))} : 1` : `1 : ${Number((1 / scale).toFixed(2))}`;

function wholeView(motor: Motor, layout: MotorLayout, room: number): Block {
  const { case: tube, chamber, segments, nozzle } = layout;
  const [from, to] = extent(layout);
  const column = 2 * 4.8 + 3;
  const scale = fitting(to - from, room - 2 * column);
  const radius = maximumRadius(layout);
  const top = lineHeight + 1;
  const view: View = { scale: 1000 * scale, from, to, left: column, axis: top + radius * scale * 1000 };
  const [first, last] = [segments[0], segments.at(-1)];
  const axial = axialDimensions(
    view,
    [
      { from: tube.span.from, to: tube.span.to, name: 'case' },
      ...(chamber.isAssumed ? [] : [{ from: chamber.from, to: chamber.to, name: 'chamber' }]),
      ...(first === undefined || last === undefined
        ? []
        : [{ from: first.span.from, to: last.span.to, name: 'grain' }]),
    ],
    yOf(view, -radius),
    tube.outsideDiameter / 2,
  );
  const sizes = [
    { diameter: tube.outsideDiameter, position: 0, name: 'case' },
    { diameter: tube.insideDiameter, position: 0, name: 'bore' },
    { diameter: nozzle.throatDiameter, position: nozzle.insert?.span?.to ?? chamber.to, name: 'throat' },
    { diameter: nozzle.exitDiameter, position: nozzle.exit ?? to, name: 'exit' },
  ];
  // A dimension line that is shorter than its text is written out below.
  const [drawn, written] = [true, false].map((fits) =>
    sizes.filter((one) => diameterFits(view, one) === fits),
  );
  const below = yOf(view, -radius) + axial.height + (written.length === 0 ? 0 : lineHeight);
  const clip = 'whole';
  return {
    svg: [
      write(0, textHeight, `Whole motor, scale ${scaleText(scale)}`, { look: 'mark' }),
      clipped(view, clip, radius, parts(view, motor, layout)),
      axial.svg,
      diameterDimensions(
        view,
        drawn.filter(({ position }) => position === 0),
        'left',
      ).svg,
      diameterDimensions(
        view,
        drawn.filter(({ position }) => position !== 0),
        'right',
      ).svg,
      written.length === 0
        ? ''
        : write(
            0,
            below,
            written.map(({ diameter, name }) => `${name} ⌀${millimetres(diameter)}`).join(', '),
          ),
    ].join('\n'),
    width: room,
    height: below,
  };
}

function endView(motor: Motor, layout: MotorLayout, end: EndLayout, room: number): Block {
  const { axial, diameters, notes } = endDimensions(motor, layout, end);
  const [first, last] = extent(layout);
  const beyond = 0.12 * layout.case.outsideDiameter;
  const insert = end.end === 'aft' ? layout.nozzle.insert?.span : undefined;
  const from = end.end === 'head' ? first : Math.min(end.innerFace, insert?.from ?? end.innerFace) - beyond;
  const to = end.end === 'head' ? end.innerFace + beyond : last;
  const column = diameters.length * 4.8 + 3;
  const scale = fitting(to - from, room - column - 4);
  const radius = maximumRadius(layout);
  const top = 2 * lineHeight;
  const side = end.end === 'head' ? 'left' : 'right';
  const view: View = {
    scale: 1000 * scale,
    from,
    to,
    left: side === 'left' ? column : 3,
    axis: top + radius * scale * 1000,
  };
  const lengths = axialDimensions(view, axial, yOf(view, -radius), layout.case.outsideDiameter / 2);
  const sizes = diameterDimensions(view, diameters, side);
  const below = yOf(view, -radius) + lengths.height + lineHeight;
  return {
    svg: [
      write(0, textHeight, `${end.end === 'head' ? 'Head' : 'Aft'} end, scale ${scaleText(scale)}`, {
        look: 'mark',
      }),
      clipped(view, end.end, radius, parts(view, motor, layout)),
      lengths.svg,
      sizes.svg,
      ...notes.map((note, k) => write(0, below + k * lineHeight, note)),
    ].join('\n'),
    width: room,
    height: below + notes.length * lineHeight,
  };
}

/** The largest scale at which a length [m] fits [mm]. */
const fitting = (length: number, room: number): number =>
  scales.find((scale) => length * 1000 * scale <= room) ?? Math.max(room, 1) / (length * 1000);

/** Cuts parts off at the ends of a view. */
const clipped = (view: View, id: string, radius: number, svg: string): string =>
  `<clipPath id="clip-${id}"><rect x="${at(xOf(view, view.from) - 0.3)}" y="${at(yOf(view, radius) - 0.3)}" width="${at(widthOf(view) + 0.6)}" height="${at(2 * radius * view.scale + 0.6)}"/></clipPath><g clip-path="url(#clip-${id})">${svg}</g>`;
