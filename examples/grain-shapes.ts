// Compares six grain shapes of equal volume in one case: burning area against burned depth, as an SVG plot on standard output,
//   npx tsx examples/grain-shapes.ts > grain-shapes.svg
// and as a table on the screen.
import {
  finocyl,
  type Grain,
  internalTube,
  q,
  type Regression,
  regress,
  rodAndTube,
  star,
  tubularSegment,
  wagonWheel,
} from '../src/index';

type Millimetres = `${number} mm`;
const outerDiameter = '60 mm';
const volume = q('250 cm^3');

// The cast volume of each of these is proportional to its length, so one trial length settles it.
const shapes: readonly (readonly [string, (length: Millimetres) => Grain])[] = [
  ['tubular segment', (length) => tubularSegment({ outerDiameter, boreDiameter: '20 mm', length })],
  ['internal-burning tube', (length) => internalTube({ outerDiameter, boreDiameter: '20 mm', length })],
  [
    'rod and tube',
    (length) => rodAndTube({ outerDiameter, tubeBoreDiameter: '42 mm', rodDiameter: '18 mm', length }),
  ],
  [
    'star',
    (length) =>
      star({
        outerDiameter,
        points: 5,
        webThickness: '10 mm',
        filletRadius: '1.5 mm',
        angularFraction: 0.75,
        openingAngle: '62.26 deg',
        length,
      }),
  ],
  [
    'finned bore',
    (length) =>
      finocyl({
        outerDiameter,
        boreDiameter: '16 mm',
        fins: 6,
        finThickness: '3 mm',
        finTipDiameter: '36 mm',
        length,
      }),
  ],
  [
    'wagon wheel',
    (length) =>
      wagonWheel({
        outerDiameter,
        spokes: 6,
        ringInnerDiameter: '46 mm',
        spokeThickness: '5 mm',
        spokeTipDiameter: '16 mm',
        length,
      }),
  ],
];

const results = shapes.map(([name, make]) => {
  const trial = regress(make('100 mm'), { stations: 1 });
  const grain = make(`${(100 * volume.si) / trial.castVolume.si} mm`);
  return { name, grain, result: regress(grain) };
});

const table = results.map(({ name, grain, result }) =>
  [
    name.padEnd(22),
    String(grain.length.to('mm')).padStart(9),
    String(result.castVolume).padStart(10),
    String(result.web).padStart(10),
    String(result.burnout).padStart(10),
    result.neutrality.toFixed(2).padStart(7),
    `${(100 * result.sliverFraction).toFixed(1)} %`.padStart(8),
  ].join('  '),
);
console.error(
  ['shape                      length      volume         web     burnout  max/mean   sliver', ...table].join(
    '\n',
  ),
);

const colours = ['#0b7f8c', '#b5532d', '#5a6fb0', '#8a8d1f', '#9c3f72', '#4b4f58'];
const [left, top, width, height] = [64, 58, 620, 340];
const deepest = Math.max(...results.map(({ result }) => result.burnout.in('mm')));
const most = Math.max(...results.map(({ result }) => result.burningArea.max().in('cm^2')));
const x = (mm: number): number => left + (width * mm) / deepest;
const y = (cm2: number): number => top + height * (1 - cm2 / (1.08 * most));
const curve = (result: Regression): string => {
  const depth = result.depth.in('mm');
  return `M${Array.from(result.burningArea.in('cm^2'), (a, k) => `${x(depth[k]).toFixed(1)} ${y(a).toFixed(1)}`).join('L')}`;
};
const ticks = (to: number, step: number): number[] =>
  Array.from({ length: Math.floor(to / step + 1e-9) + 1 }, (_, k) => k * step);

console.log(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 900 460" width="900" height="460">
<style>text { font: 13px 'DejaVu Sans', system-ui, sans-serif; fill: #26323d; } .title { font-size: 17px; font-weight: 600; } .grid { stroke: #d9d5cb; }</style>
<rect width="100%" height="100%" fill="#fbf9f5"/>
<text class="title" x="${left}" y="30">Six shapes of ${String(volume)} in a ${outerDiameter} case</text>
${ticks(deepest, 5)
  .map((t) => `<text x="${x(t)}" y="${top + height + 20}" text-anchor="middle">${t}</text>`)
  .join('')}
${ticks(most, 100)
  .map(
    (t) =>
      `<line class="grid" x1="${left}" x2="${left + width}" y1="${y(t)}" y2="${y(t)}"/><text x="${left - 8}" y="${y(t) + 4}" text-anchor="end">${t}</text>`,
  )
  .join('')}
<text x="${left + width / 2}" y="${top + height + 44}" text-anchor="middle">burned depth, mm</text>
<text x="${left}" y="${top - 8}">burning area, cm²</text>
${results.map(({ result }, k) => `<path d="${curve(result)}" fill="none" stroke="${colours[k]}" stroke-width="2.4"/>`).join('\n')}
${results
  .map(
    ({ name }, k) =>
      `<path d="M${left + width + 20} ${top + 12 + 24 * k}h22" stroke="${colours[k]}" stroke-width="3"/><text x="${left + width + 50}" y="${top + 16 + 24 * k}">${name}</text>`,
  )
  .join('\n')}
</svg>`);
