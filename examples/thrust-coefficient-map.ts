// Thrust coefficient against expansion ratio for several pressure ratios, with the line of optimum expansion and the band
// in which the published rules put separation.
import { mkdirSync, writeFileSync } from 'node:fs';
import {
  optimumExpansionRatio,
  separationPressure,
  thrustCoefficient,
  vacuumThrustCoefficient,
} from '../src/index';

const gamma = 1.2;
const pressureRatios = [10, 20, 50, 100, 200, 500];
const expansions = Array.from({ length: 141 }, (_, i) => 10 ** (i / 70)); // 1 to 100

interface Curve {
  readonly label: string;
  readonly colour: string;
  readonly dash: string;
  readonly points: readonly (readonly [epsilon: number, cf: number])[];
}

const at = (expansionRatio: number, ratio: number): number =>
  thrustCoefficient({ gamma, expansionRatio, chamberPressure: `${ratio} bar`, ambientPressure: '1 bar' });

const curves: Curve[] = pressureRatios.map((ratio) => {
  const { predictions } = separationPressure({
    gamma,
    chamberPressure: `${ratio} bar`,
    ambientPressure: '1 bar',
  });
  const last = Math.max(...predictions.map(({ areaRatio }) => areaRatio));
  const attached = expansions.filter((epsilon) => epsilon <= last);
  return {
    label: `${ratio}`,
    colour: '#1f4e79',
    dash: '',
    points: attached.map((epsilon) => [epsilon, at(epsilon, ratio)] as const),
  };
});
curves.push({
  label: 'vacuum',
  colour: '#555555',
  dash: '6 3',
  points: expansions.map(
    (expansionRatio) => [expansionRatio, vacuumThrustCoefficient({ gamma, expansionRatio })] as const,
  ),
});
const optimum: Curve = {
  label: 'optimum',
  colour: '#b4441c',
  dash: '',
  points: Array.from({ length: 120 }, (_, i) => 2 * 10 ** (i / 40)).map((ratio) => {
    const epsilon = optimumExpansionRatio({
      gamma,
      chamberPressure: `${ratio} bar`,
      ambientPressure: '1 bar',
    });
    return [epsilon, at(epsilon, ratio)] as const;
  }),
};

const bands = (['lowest', 'highest'] as const).map((edge) =>
  Array.from({ length: 80 }, (_, i) => 4 * 10 ** (i / 36)).map((ratio) => {
    const { predictions } = separationPressure({
      gamma,
      chamberPressure: `${ratio} bar`,
      ambientPressure: '1 bar',
    });
    const areas = predictions.map(({ areaRatio }) => areaRatio);
    const epsilon = edge === 'lowest' ? Math.max(...areas) : Math.min(...areas);
    return [epsilon, at(epsilon, ratio)] as const;
  }),
);

const size = { width: 860, height: 560, left: 70, right: 90, top: 40, bottom: 60 };
const x = (epsilon: number): number =>
  size.left + (Math.log10(epsilon) / 2) * (size.width - size.left - size.right);
const y = (cf: number): number =>
  size.height - size.bottom - ((cf - 0.6) / 1.4) * (size.height - size.top - size.bottom);
const inside = ([epsilon, cf]: readonly [number, number]): boolean =>
  epsilon >= 1 && epsilon <= 100 && cf >= 0.6 && cf <= 2;
const path = (points: readonly (readonly [number, number])[]): string =>
  points
    .filter(inside)
    .map(([epsilon, cf], i) => `${i === 0 ? 'M' : 'L'} ${x(epsilon).toFixed(1)} ${y(cf).toFixed(1)}`)
    .join(' ');

const gridX = [1, 2, 3, 5, 10, 20, 30, 50, 100];
const gridY = [0.6, 0.8, 1, 1.2, 1.4, 1.6, 1.8, 2];
const grid = [
  ...gridX.map(
    (e) =>
      `<line x1="${x(e)}" x2="${x(e)}" y1="${y(2)}" y2="${y(0.6)}"/><text x="${x(e)}" y="${y(0.6) + 20}" text-anchor="middle">${e}</text>`,
  ),
  ...gridY.map(
    (c) =>
      `<line x1="${x(1)}" x2="${x(100)}" y1="${y(c)}" y2="${y(c)}"/><text x="${x(1) - 8}" y="${y(c) + 4}" text-anchor="end">${c.toFixed(1)}</text>`,
  ),
].join('');
const drawn = [...curves, optimum]
  .map((curve) => {
    const shown = curve.points.filter(inside);
    const [epsilon, cf] = shown[shown.length - 1];
    const width = curve === optimum ? 2.6 : 1.6;
    return `<path d="${path(curve.points)}" fill="none" stroke="${curve.colour}" stroke-width="${width}" stroke-dasharray="${curve.dash}"/><text x="${x(epsilon) + 5}" y="${y(cf) + (curve === optimum ? 6 : 0)}" fill="${curve.colour}">${curve.label}</text>`;
  })
  .join('');
const band = `${path(bands[0])} ${path([...bands[1]].reverse()).replace('M', 'L')} Z`;

const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${size.width}" height="${size.height}" font-family="sans-serif" font-size="13">
<rect width="100%" height="100%" fill="white"/>
<text x="${size.left}" y="22" font-size="15">Thrust coefficient of an ideal nozzle, γ = ${gamma}, by chamber over ambient pressure</text>
<g stroke="#dddddd" stroke-width="1" fill="#333333"><g>${grid.replaceAll('<text', '<text stroke="none"')}</g></g>
<path d="${band}" fill="#e8b04a" fill-opacity="0.35"/>
<text x="${x(3)}" y="${y(0.99)}" fill="#8a5a00">separation lies in here, by the published rules</text>
${drawn}
<text x="${(x(1) + x(100)) / 2}" y="${size.height - 16}" text-anchor="middle">expansion ratio A_e/A_t</text>
<text transform="translate(20 ${(y(0.6) + y(2)) / 2}) rotate(-90)" text-anchor="middle">thrust coefficient</text>
</svg>
`;
mkdirSync('examples/out', { recursive: true });
writeFileSync('examples/out/thrust-coefficient-map.svg', svg);

for (const ratio of pressureRatios) {
  const epsilon = optimumExpansionRatio({ gamma, chamberPressure: `${ratio} bar`, ambientPressure: '1 bar' });
  console.log(
    `p_c/p_a ${String(ratio).padStart(3)}: optimum ε ${epsilon.toFixed(2).padStart(6)}, C_F ${at(epsilon, ratio).toFixed(4)}`,
  );
}
console.log('drawn in examples/out/thrust-coefficient-map.svg');
