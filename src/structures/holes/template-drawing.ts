/** Contents of the drawing in millimetres; y from the end of the case. */
export interface Strip {
  readonly length: number;
  readonly height: number;
  readonly overlap: number;
  readonly hole: number;
  readonly holes: readonly { readonly x: number; readonly y: number; readonly label: string }[];
}

/** One sheet of paper that shows part of a strip. */
export interface Sheet {
  readonly strip: Strip;
  /** The drawing of the whole strip. */
  readonly body: string;
  /** Position on the strip at which the sheet begins. */
  readonly from: number;
  readonly width: number;
  /** Minimum width, for the check lines. */
  readonly least: number;
  readonly facts: readonly string[];
  /** Positions at which the sheets overlap. */
  readonly matches: readonly number[];
}

const labelWidth = 13; // of the longest label at its size
const fixed = (value: number): string => String(Number(value.toFixed(3)));
const escaped = (text: string): string =>
  text.replace(/[&<>"]/g, (c) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[c] ?? c);

const line = (x1: number, y1: number, x2: number, y2: number, extra = ''): string =>
  `<line x1="${fixed(x1)}" y1="${fixed(y1)}" x2="${fixed(x2)}" y2="${fixed(y2)}"${extra}/>`;
const write = (x: number, y: number, text: string, extra = ''): string =>
  `<text x="${fixed(x)}" y="${fixed(y)}"${extra}>${escaped(text)}</text>`;

/** The strip, wrapped flat: the end of the case is the line at the bottom. */
export function stripSvg({ length, height, overlap, hole, holes }: Strip): string {
  const bottom = height;
  const arm = Math.max(hole * 0.8, 3);
  const along = holes.map(({ x }) => x).sort((a, b) => a - b);
  const nearest = Math.min(...along.slice(1).map((x, i) => x - along[i]));
  const upright = nearest < labelWidth; // labels side by side would run into each other
  const marks = holes.map(({ x, y, label }) => {
    const at = bottom - y;
    return [
      line(x, 0, x, bottom, ' stroke="#999" stroke-dasharray="4 1 1 1"'),
      line(x - arm, at, x + arm, at),
      line(x, at - arm, x, at + arm),
      `<circle cx="${fixed(x)}" cy="${fixed(at)}" r="${fixed(hole / 2)}"/>`,
      upright
        ? write(
            x - 0.6,
            0.8,
            label,
            ` class="small" text-anchor="end" transform="rotate(-90 ${fixed(x - 0.6)} 0.8)"`,
          )
        : write(x + 0.8, 3.2, label, ' class="small"'),
    ].join('');
  });
  return [
    `<rect x="0" y="0" width="${fixed(length + overlap)}" height="${fixed(bottom)}"/>`,
    line(0, 0, 0, bottom, ' stroke-width="0.4"'),
    line(length, 0, length, bottom, ' stroke-width="0.4"'),
    write(length + 1, bottom / 2, 'glue', ' class="small"'),
    line(0, bottom, length + overlap, bottom, ' stroke-width="0.6"'),
    write(
      length / 2,
      bottom - 1.2,
      'align this line with the end of the case',
      ' class="small" text-anchor="middle"',
    ),
    ...marks,
  ].join('\n');
}

/** A whole SVG document at full size. */
export function sheetSvg({ strip, body, from, width, least, facts, matches }: Sheet): string {
  const margin = 5;
  const shown = Math.max(width, least);
  const below = margin + strip.height + 6;
  const page = { width: shown + 2 * margin, height: below + 22 + facts.length * 4.5 };
  const check = (y: number, size: number, text: string): string =>
    [
      line(margin, y, margin + size, y, ' stroke-width="0.3"'),
      line(margin, y - 2, margin, y + 2, ' stroke-width="0.3"'),
      line(margin + size, y - 2, margin + size, y + 2, ' stroke-width="0.3"'),
      write(margin + size + 2, y + 1, text),
    ].join('');
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${fixed(page.width)}mm" height="${fixed(page.height)}mm" viewBox="0 0 ${fixed(page.width)} ${fixed(page.height)}">`,
    '<style>text{font:3px sans-serif;fill:#000;stroke:none}.small{font-size:2.2px}</style>',
    `<rect width="100%" height="100%" fill="#fff"/>`,
    `<clipPath id="sheet"><rect x="${fixed(margin - 1)}" y="${fixed(margin - 1)}" width="${fixed(width + 2)}" height="${fixed(strip.height + 2)}"/></clipPath>`,
    '<g fill="none" stroke="#000" stroke-width="0.15">',
    `<g clip-path="url(#sheet)"><g transform="translate(${fixed(margin - from)} ${margin})">`,
    body,
    ...matches.map((x) => line(x, 0, x, strip.height, ' stroke-dasharray="3 2" stroke="#00f"')),
    '</g></g>',
    check(below + 3, 100, '100 mm'),
    check(below + 11, 101.6, '4 in'),
    ...facts.map((fact, i) => write(margin, below + 20 + i * 4.5, fact)),
    '</g>',
    '</svg>',
  ].join('\n');
}
