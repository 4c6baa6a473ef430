import {
  fromSiValue,
  length,
  optional,
  printable,
  procedure,
  type Quantity,
  unitOf,
  words,
} from '../../units';
import { type HolePattern, holePattern, holePatternInputs } from './hole-pattern';
import { type Sheet, type Strip, sheetSvg, stripSvg } from './template-drawing';

/** The template as drawings at full size. */
export interface WrapTemplate {
  /** One SVG document per sheet, sized in millimetres; print at 100 %, not fitted to the page. */
  readonly sheets: readonly string[];
  /** Length of the strip between the two lines of the seam: the circumference of the paper. */
  readonly stripLength: Quantity<'length'>;
  /** Length of the lines to measure on the print before drilling. */
  readonly checkLines: readonly Quantity<'length'>[];
  readonly pattern: HolePattern;
  readonly cautions: readonly string[];
  /** The first sheet. */
  toString(): string;
}

const matchOverlap = 10e-3; // metres that two sheets of one strip have in common, to align them

/**
 * A 1:1 template of the holes, wrapped flat: centres, circles, angles, a line for the end of the case, and two
 * lines (100 mm and 4 in) to check the scale of the printer. Holes drilled through case and closure together match;
 * where the closure is already tapped, measure it and give its `firstAngle` and count.
 *
 * @example wrapTemplate({ outsideDiameter: '76.2 mm', count: 8, holeDiameter: '6.4 mm', edgeDistance: '12 mm' }).sheets.length // => 1
 */
export const wrapTemplate = /* @__PURE__ */ procedure({
  name: 'wrapTemplate',
  title: 'Full-size paper template of a hole pattern',
  source: 'Geometry',
  inputs: {
    ...holePatternInputs,
    title: optional(words('title printed on the template', { example: 'aft closure' })),
    paperThickness: optional(
      length('t_p', 'thickness of the paper, half of which adds to the radius', {
        min: 0,
        example: '0.1 mm',
      }),
      0.1e-3,
    ),
    overlap: optional(
      length('l', 'length of the tab that is glued under the other end', { min: 0, example: '10 mm' }),
      10e-3,
    ),
    sheetWidth: optional(
      // At least the length of the check lines.
      length('w', 'printable width of a sheet; a longer strip is divided over several sheets', {
        min: 120e-3,
        example: '277 mm',
      }),
      277e-3,
    ),
  },
  gives: 'SVG drawings at full size, and the lines to measure on the print',
  example: { outsideDiameter: '76.2 mm', count: 8, holeDiameter: '6.4 mm', edgeDistance: '12 mm' },
  run: ({
    title,
    paperThickness: { si: paper },
    overlap: tab,
    sheetWidth: across,
    ...holes
  }): WrapTemplate => {
    const pattern = holePattern(holes);
    const [overlap, sheetWidth] = [tab.si, across.si];
    const { outsideDiameter: outside, holeDiameter: hole, edgeDistance: edge } = holes;

    // Paper does not stretch: its middle surface is half a thickness outside the case.
    const stripLength = Math.PI * (outside.si + paper);
    const furthest = Math.max(...pattern.holes.map(({ along }) => along.si));
    // The seam lies between holes, so that no centre is marked on it.
    const first = pattern.holes[0].angle.si;
    const seam = pattern.pitchAngle.si / (pattern.rowLigament === undefined ? 2 : 4);
    const strip: Strip = {
      length: stripLength * 1000,
      height: (furthest + Math.max(0.8 * hole.si, 3e-3) + 12e-3) * 1000, // room for the cross and its label
      overlap: overlap * 1000,
      hole: hole.si * 1000,
      holes: pattern.holes.map(({ row, number, angle, along }) => ({
        x: turned(angle.si - first + seam) * ((outside.si + paper) / 2) * 1000,
        y: along.si * 1000,
        label: `${pattern.rowLigament === undefined ? '' : `${row}.`}${number}: ${angle.format({ figures: 5 })}`,
      })),
    };
    const facts = [
      ...(title === undefined ? [] : [title]),
      `case outside diameter ${round(outside.si * 1000)} mm (${inches(outside.si)} in)`,
      `hole ${round(hole.si * 1000)} mm, edge distance ${round(edge.si * 1000)} mm, arc between holes ${round(pattern.arcSpacing.si * 1000)} mm`,
      'print at 100 %, not fitted to the page; measure both check lines',
      `the thick lines of the seam, ${round(strip.length)} mm apart, must meet when wrapped`,
    ];
    const body = stripSvg(strip);
    const total = strip.length + strip.overlap;
    const step = (sheetWidth - matchOverlap) * 1000;
    const several = total > sheetWidth * 1000;
    const starts = several
      ? Array.from({ length: Math.ceil((total - matchOverlap * 1000) / step) }, (_, i) => i * step)
      : [0];
    const sheets = starts.map((from, i) =>
      sheetSvg({
        strip,
        body,
        from,
        width: several ? sheetWidth * 1000 : total,
        least: 120,
        facts: several ? [...facts, `sheet ${i + 1} of ${starts.length}: align the dashed lines`] : facts,
        matches: several ? starts.slice(1).flatMap((x) => [x, x + matchOverlap * 1000]) : [],
      } satisfies Sheet),
    );
    return printable(
      {
        sheets,
        stripLength: fromSiValue<'length'>(stripLength, 'length', unitOf('mm')),
        checkLines: [
          fromSiValue<'length'>(0.1, 'length', unitOf('mm')),
          fromSiValue<'length'>(0.1016, 'length', unitOf('in')),
        ],
        pattern,
        cautions: [
          ...pattern.cautions,
          'Measure both check lines on the print. A print fitted to the page is a few per cent too small.',
        ],
      },
      () => sheets[0],
    );
  },
});

const turned = (angle: number): number => (angle + 2 * Math.PI) % (2 * Math.PI);
const round = (value: number): string => String(Number(value.toFixed(3)));
const inches = (si: number): string => String(Number((si / 0.0254).toFixed(4)));
