import { fromSiValue, type Quantity, type QuantityInput, readInput, unitOf } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { refusal } from '../../units/refusal';
import { type HolePattern, type HolePatternInput, holePattern, holePatternFields } from './hole-pattern';
import { type Sheet, type Strip, sheetSvg, stripSvg } from './template-drawing';

/** A template to print, cut out and wrap round the case. */
export interface WrapTemplateInput extends HolePatternInput {
  /** Printed on the template; nothing where left out. */
  readonly title?: string;
  /** Half of it adds to the radius at which the paper lies; 0.1 mm where left out. */
  readonly paperThickness?: QuantityInput<'length'>;
  /** Tab that is glued under the other end; 10 mm where left out. */
  readonly overlap?: QuantityInput<'length'>;
  /** Printable width of a sheet; a longer strip is cut over several sheets. 277 mm (A4 across) where left out. */
  readonly sheetWidth?: QuantityInput<'length'>;
}

/** The template as drawings at full size. */
export interface WrapTemplate {
  /** One SVG document a sheet, sized in millimetres: print at 100 %, without fitting to the page. */
  readonly sheets: readonly string[];
  /** Length of the strip between the two lines of the seam: the circumference at which the paper lies. */
  readonly stripLength: Quantity<'length'>;
  /** Length of the lines to measure on the print before drilling. */
  readonly checkLines: readonly Quantity<'length'>[];
  readonly pattern: HolePattern;
  readonly cautions: readonly string[];
  /** The first sheet. */
  toString(): string;
}

const name = 'wrapTemplate';
const matchOverlap = 10e-3; // metres that two sheets of one strip have in common, to line up by

const wrapTemplateFields: FieldsOf<WrapTemplateInput> = {
  title: 'optional',
  paperThickness: 'optional',
  overlap: 'optional',
  sheetWidth: 'optional',
  ...holePatternFields,
};

/**
 * A 1:1 template of the holes, wrapped flat: centres, circles, angles, a line to lay on the end of the case, and two
 * lines (100 mm and 4 in) to check the printer's scale with. Holes drilled through case and closure together match;
 * where the closure is already tapped, measure it and give `firstAngle` and the count it has.
 *
 * @throws MeopError as {@link holePattern} does
 * @example wrapTemplate({ outsideDiameter: '76.2 mm', count: 8, holeDiameter: '6.4 mm', edgeDistance: '12 mm' }).sheets.length // => 1
 */
export function wrapTemplate(input: WrapTemplateInput): WrapTemplate {
  requireFields('wrapTemplate', input, wrapTemplateFields);
  const length = (field: string, value: unknown, standard: number, least = 0): number => {
    const si = value === undefined ? standard : readInput('length', field, value, name).si;
    if (si >= least) return si;
    throw refusal(name, field, value, `at least ${least * 1000} mm`);
  };
  const { title, paperThickness, overlap: tab, sheetWidth: across, ...holes } = input;
  const pattern = holePattern(holes);
  const paper = length('paperThickness', paperThickness, 0.1e-3);
  const overlap = length('overlap', tab, 10e-3);
  const sheetWidth = length('sheetWidth', across, 277e-3, 120e-3); // room for the check lines
  const outside = readInput('length', 'outsideDiameter', input.outsideDiameter, name);
  const hole = readInput('length', 'holeDiameter', input.holeDiameter, name);
  const edge = readInput('length', 'edgeDistance', input.edgeDistance, name);

  // Paper does not stretch: its middle surface lies half a thickness over the case.
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
    'print at 100 %, not fitted to the page: both check lines must measure true',
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
      facts: several
        ? [...facts, `sheet ${i + 1} of ${starts.length}: lay the dashed lines over each other`]
        : facts,
      matches: several ? starts.slice(1).flatMap((x) => [x, x + matchOverlap * 1000]) : [],
    } satisfies Sheet),
  );
  const text = (): string => sheets[0];
  return {
    sheets,
    stripLength: fromSiValue(stripLength, 'length', unitOf('mm')),
    checkLines: [fromSiValue(0.1, 'length', unitOf('mm')), fromSiValue(0.1016, 'length', unitOf('in'))],
    pattern,
    cautions: [
      ...pattern.cautions,
      'measure both check lines on the print: a page fitted to the paper is a few per cent small',
    ],
    toString: text,
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: text },
  };
}

const turned = (angle: number): number => (angle + 2 * Math.PI) % (2 * Math.PI);
const round = (value: number): string => String(Number(value.toFixed(3)));
const inches = (si: number): string => String(Number((si / 0.0254).toFixed(4)));
