import { angle, count, formatNumber, optional, procedure, type Values } from '../../../units';
import { depthField, litSources } from '../front';
import { startPosition } from '../grain-inputs';
import { requireFit } from '../misfit';
import { type Grain, grainValue } from '../shapes';
import { wallRadius } from '../surface';
import { flawDirection, flawMiddle } from './longitudinal-section';
import { flawMark, frontBands, type SectionView } from './section-view';

const drawingInputs = {
  position: optional(
    startPosition(
      'cross-section',
      '; if omitted, through the first flaw, otherwise through the middle of a core of partial length, otherwise at mid-length',
    ),
  ),
  angle: optional(
    angle('θ', 'direction of the longitudinal section; through the first flaw if omitted, otherwise 0'),
  ),
  fronts: optional(count('n', 'number of burn fronts', { max: 40 }), 8),
};

const STYLE = `
  svg { --paper: #fbf9f5; --ink: #26323d; --quiet: #6d7681; --near: #b5532d; --far: #f1d9a7; --flaw: #0b7f8c; font-family: 'Source Sans 3', 'DejaVu Sans', system-ui, sans-serif; }
  @media (prefers-color-scheme: dark) { svg { --paper: #171b21; --ink: #e8e4da; --quiet: #99a3ae; --near: #d8734a; --far: #5b4a35; --flaw: #4fd0dd; } }
  .paper { fill: var(--paper); } .title { font-size: 17px; font-weight: 600; fill: var(--ink); } .note { font-size: 13px; fill: var(--quiet); }
  .front { fill: color-mix(in oklab, var(--near), var(--far) calc(var(--t) * 100%)); stroke: var(--paper); stroke-width: .8; fill-rule: evenodd; }
  .cast { fill: var(--far); } .port { fill: var(--paper); stroke: var(--ink); stroke-width: 1.4; fill-rule: evenodd; }
  .flaw { fill: var(--flaw); stroke: var(--flaw); stroke-width: .6; fill-rule: evenodd; } .wall { fill: none; stroke: var(--ink); stroke-width: 3; } .bare { fill: none; stroke: var(--ink); stroke-width: 1.4; }
  .axis { stroke: var(--quiet); stroke-width: .8; stroke-dasharray: 14 4 3 4; } .ruler { stroke: var(--ink); stroke-width: 1.2; fill: none; }
  .cut { stroke: var(--flaw); stroke-width: 1; stroke-dasharray: 5 4; }`;

const escaped = (text: string): string =>
  text.replace(/[&<>]/g, (c) => (c === '&' ? '&amp;' : c === '<' ? '&lt;' : '&gt;'));

/**
 * A cross-section and a longitudinal section with burn fronts at equal steps of depth burned; flaws are marked. Colours
 * follow the light or dark setting of the viewer. Heavy lines mark surfaces that do not burn.
 *
 * @example drawGrain(internalTube({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm' })).slice(0, 4) // => '<svg'
 */
export const drawGrain = /* @__PURE__ */ procedure({
  name: 'drawGrain',
  title: 'Drawing of a grain with its burn fronts',
  source: 'depths of the regression',
  subject: grainValue,
  inputs: drawingInputs,
  gives: 'SVG text',
  example: "drawGrain(internalTube({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm' }))",
  run: drawing,
});

function drawing(grain: Grain, options: Values<typeof drawingInputs>): string {
  const { envelope } = grain.shape;
  const { radius, length } = envelope;
  const lit = litSources(grain.shape);
  const field = depthField(lit);
  const flaws = lit.slice(lit.length - grain.flaws.length).map((l) => l.source);
  const seen = flaws.map((s) => flawMiddle(s.samples()));
  const z = options.position?.si ?? seen[0]?.[2] ?? middleOfPartial(grain);
  requireFit(
    'drawGrain',
    z >= 0 && z <= length,
    'position',
    options.position,
    `between 0 mm and ${grain.length}`,
  );
  const towards = options.angle?.si ?? flawDirection(grain) ?? 0;
  const depth = deepestInSight(field.opensAt, envelope, z, towards);
  const step = roundStep(depth / options.fronts);
  const fronts = Array.from({ length: Math.ceil(depth / step) }, (_, k) => (k + 1) * step);

  const names = wrapped(
    grain.flaws.map((f) => f.label),
    84,
  );
  const top = 92 + 20 * names.length;
  const scale = Math.min(360 / (2 * radius), 560 / length);
  const [c, s] = [Math.cos(towards), Math.sin(towards)];
  const local = wallRadius(envelope, z);
  const across: SectionView = {
    width: 2 * radius,
    height: 2 * radius,
    point: (x, y) => [x - radius, y - radius, z],
    scale,
    left: 40,
    top,
  };
  const along: SectionView = {
    width: length,
    height: 2 * radius,
    point: (x, y) => [(y - radius) * c, (y - radius) * s, x],
    scale,
    left: 40 + Math.max(2 * radius * scale + 64, 270),
    top,
  };
  const width = Math.max(640, along.left + Math.max(length * scale, 180) + 40);
  const bottom = top + 2 * radius * scale;
  const height = bottom + 78;
  // A free rod burns on its outer surface, so there is no bonded wall to draw.
  const wall = grain.shape.ports.some((port) => port.name === 'outside') ? 'bare' : 'wall';
  const [cx, cy] = [40 + radius * scale, top + radius * scale];
  const box = `x="${along.left}" y="${top}" width="${length * scale}" height="${2 * radius * scale}"`;
  const form =
    envelope.form === 'ball'
      ? `<ellipse cx="${along.left + radius * scale}" cy="${cy}" rx="${radius * scale}" ry="${radius * scale}"/>`
      : `<rect ${box}/>`;
  const ruler = rulerLength(length);
  const cutX = along.left + z * scale;
  const degrees = formatNumber(Math.round((towards * 1800) / Math.PI) / 10);
  const mm = (m: number): string => formatNumber(Math.round(m * 1e5) / 100);
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width.toFixed(0)} ${height.toFixed(0)}" width="${width.toFixed(0)}" height="${height.toFixed(0)}" role="img" aria-label="${escaped(String(grain))}">
<style>${STYLE}</style>
<rect class="paper" width="100%" height="100%"/>
<text class="title" x="40" y="36">${escaped(`${grain.kind}, ${grain.outerDiameter} × ${grain.length}`)}</text>
<text class="note" x="40" y="60">burn fronts every ${mm(step)} mm of depth burned${grain.flaws.length > 0 ? '; flaws marked' : ''}; heavy lines: surfaces that do not burn</text>
${names.map((line, k) => `<text class="note" x="40" y="${80 + 20 * k}">${escaped(line)}</text>`).join('\n')}
<text class="note" x="40" y="${top - 10}">section at ${mm(z)} mm from the head end</text>
<text class="note" x="${along.left}" y="${top - 10}">plane at ${degrees}°, head end left</text>
<clipPath id="across"><circle cx="${cx}" cy="${cy}" r="${local * scale}"/></clipPath>
<clipPath id="along">${form}</clipPath>
<g clip-path="url(#across)"><circle class="cast" cx="${cx}" cy="${cy}" r="${local * scale}"/>
${frontBands(across, field, fronts)}</g>
<circle class="${wall}" cx="${cx}" cy="${cy}" r="${local * scale}"/>
<g clip-path="url(#across)">${flaws.map((f) => flawMark(across, f, radius)).join('\n')}</g>
<line class="cut" x1="${cx - radius * scale * c}" y1="${cy + radius * scale * s}" x2="${cx + radius * scale * c}" y2="${cy - radius * scale * s}"/>
<g clip-path="url(#along)"><rect class="cast" ${box}/>
${frontBands(along, field, fronts)}</g>
${outlineOf(grain, along, cy, bottom, wall, field.opensAt)}
<g clip-path="url(#along)">${flaws.map((f) => flawMark(along, f, radius)).join('\n')}</g>
<line class="axis" x1="${along.left - 14}" y1="${cy}" x2="${along.left + length * scale + 14}" y2="${cy}"/>
<line class="cut" x1="${cutX}" y1="${top - 6}" x2="${cutX}" y2="${bottom + 6}"/>
<path class="ruler" d="M${along.left} ${bottom + 26}v8h${ruler * scale}v-8"/>
<text class="note" x="${along.left + ruler * scale + 10}" y="${bottom + 36}">${mm(ruler)} mm</text>
</svg>`;
}

/** Joins names to lines of at most `most` characters. */
function wrapped(names: readonly string[], most: number): string[] {
  const lines: string[] = [];
  for (const name of names) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + name.length + 2 <= most)
      lines[lines.length - 1] = `${last}; ${name}`;
    else lines.push(name);
  }
  return lines;
}

/** Middle of the last core of partial length (of the fins, for example); otherwise that of the grain. */
function middleOfPartial(grain: Grain): number {
  const { length } = grain.shape.envelope;
  const spans = grain.shape.ports.map(({ span: [from, to] = [0, length] }) => [
    Math.max(from, 0),
    Math.min(to, length),
  ]);
  const [from, to] = spans.findLast(([low, high]) => high - low < length) ?? [0, length];
  return (from + to) / 2;
}

/** The wall, and the propellant faces of inhibited ends. */
function outlineOf(
  grain: Grain,
  along: SectionView,
  cy: number,
  bottom: number,
  wall: 'wall' | 'bare',
  opensAt: (x: number, y: number, z: number) => number,
): string {
  const right = along.left + along.width * along.scale;
  if (grain.shape.envelope.form === 'ball')
    return `<circle class="wall" cx="${(along.left + right) / 2}" cy="${cy}" r="${(along.height * along.scale) / 2}"/>`;
  const line = (d: string): string => `<path class="wall" d="${d}"/>`;
  // Stretches of the end face that are propellant; the port is left open.
  const inhibited = (x: number, page: number): string => {
    const cells = 400;
    const y = (j: number): number => (along.height * j) / cells;
    const solid = (j: number): boolean => j < cells && opensAt(...along.point(x, (y(j) + y(j + 1)) / 2)) > 0;
    let d = '';
    for (let j = 0, open = true; j <= cells; j++)
      if (solid(j) === open) {
        d += `${open ? `M${page} ` : 'V'}${(along.top + along.scale * (along.height - y(j))).toFixed(2)}`;
        open = !open;
      }
    return d;
  };
  return [
    `<path class="${wall}" d="M${along.left} ${along.top}H${right}M${along.left} ${bottom}H${right}"/>`,
    grain.shape.headBurns ? '' : line(inhibited(0, along.left)),
    grain.shape.aftBurns ? '' : line(inhibited(along.width, right)),
  ].join('');
}

/** Maximum depth in either section, which sets the spacing of the fronts. */
function deepestInSight(
  depth: (x: number, y: number, z: number) => number,
  envelope: Grain['shape']['envelope'],
  z: number,
  angle: number,
): number {
  let most = 0;
  for (let i = 0; i <= 40; i++)
    for (let k = 0; k < 48; k++) {
      const a = (k * Math.PI) / 24;
      const r = (wallRadius(envelope, z) * i) / 40;
      most = Math.max(most, depth(r * Math.cos(a), r * Math.sin(a), z));
      const along = (envelope.length * k) / 47;
      for (const side of [1, -1]) {
        const q = (side * wallRadius(envelope, along) * i) / 40;
        most = Math.max(most, depth(q * Math.cos(angle), q * Math.sin(angle), along));
      }
    }
  return most;
}

const roundStep = (raw: number): number => {
  const power = 10 ** Math.floor(Math.log10(raw));
  return power * ([1, 2, 2.5, 5].find((m) => m * power >= raw * 0.99) ?? 10);
};

const rulerLength = (length: number): number => {
  const power = 10 ** Math.floor(Math.log10(length / 2));
  return power * ([5, 2, 1].find((m) => m * power <= length / 2) ?? 1);
};
