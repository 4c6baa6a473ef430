import type { Regression } from '../../ballistics';
import { isRegression } from '../../ballistics/inputs';
import { choice, instance, MeopError, optional, procedure, type Values } from '../../units';
import { width } from './plot-inputs';
import {
  type JsonValue,
  type PlotSpec,
  plotColours,
  plotSpec,
  plotTitle,
  seriesColours,
  seriesDashes,
} from './plot-spec';
import { thinTrace } from './thin-trace';

type Named = Readonly<Record<string, Regression>>;

const areRegressions = (value: unknown): value is Regression | Named =>
  isRegression(value) ||
  (typeof value === 'object' && value !== null && Object.values(value).every(isRegression));

const options = {
  width,
  depthUnit: optional(choice('unit of the depth axis', ['mm', 'in']), 'mm'),
  areaUnit: optional(choice('unit of the area axis', ['cm^2', 'in^2']), 'cm^2'),
};

/**
 * The web is marked where it is not the last depth.
 *
 * @throws MeopError `nothing-to-plot` where no regression is given
 * @example plotRegression(regress(tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '85 mm' }))).layer.length // => 1
 */
export const plotRegression = /* @__PURE__ */ procedure({
  name: 'plotRegression',
  title: 'Plot of burning area against burned depth',
  source: 'definition',
  subject: instance(
    'one regression, or several by name, such as a flaw-free grain and a cracked one',
    'a regression, or an object of regressions',
    areRegressions,
  ),
  inputs: options,
  gives: 'a Vega-Lite specification with one line for each grain',
  example:
    "plotRegression(regress(tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '85 mm' })))",
  run: regressionPlot,
});

function regressionPlot(
  regressions: Regression | Named,
  { width: size, depthUnit, areaUnit }: Values<typeof options>,
): PlotSpec {
  const named: Named = isRegression(regressions) ? { [regressions.grain]: regressions } : regressions;
  const names = Object.keys(named);
  if (names.length === 0)
    throw new MeopError({
      code: 'nothing-to-plot',
      procedure: 'plotRegression',
      path: 'regressions',
      given: 0,
      expected: 'at least one',
    });
  const rows = names.flatMap((name) => {
    const { depth, burningArea } = named[name];
    const [d, a] = [depth.in(depthUnit), burningArea.in(areaUnit)];
    return thinTrace(a).map((i) => ({ depth: short(d[i]), area: short(a[i]), grain: name }));
  });
  const webs = names.flatMap((name) => {
    const { web, burnout } = named[name];
    return web.si < 0.999 * burnout.si ? [{ depth: short(web.in(depthUnit)), label: 'web' }] : [];
  });
  const scaled = (range: readonly JsonValue[]): JsonValue => ({
    field: 'grain',
    type: 'nominal',
    scale: { domain: names, range: names.map((_, i) => range[i % range.length]) },
    legend: names.length > 1 ? {} : null,
  });
  const x = {
    field: 'depth',
    type: 'quantitative',
    title: `burned depth (${depthUnit})`,
    scale: { nice: false },
  };
  return plotSpec({
    title: plotTitle(`burning area (${areaUnit.replace('^2', '²')})`),
    width: size - 70,
    height: Math.round(Math.min(260, 150 + size / 6)),
    layer: [
      {
        data: { values: rows },
        mark: { type: 'line' },
        encoding: {
          x,
          y: { field: 'area', type: 'quantitative', title: null, scale: { zero: true } },
          color: scaled(seriesColours),
          strokeDash: scaled(seriesDashes),
          order: { field: 'depth' },
        },
      },
      ...(webs.length === 0 ? [] : [webLayer(webs, x)]),
    ],
  });
}

const webLayer = (webs: readonly JsonValue[], x: JsonValue): JsonValue => ({
  data: { values: webs },
  encoding: { x },
  layer: [
    { mark: { type: 'rule', strokeDash: [2, 3], color: plotColours.quiet } },
    {
      mark: { type: 'text', align: 'left', baseline: 'bottom', dx: 4, dy: -4, color: plotColours.quiet },
      encoding: { y: { value: 'height' }, text: { field: 'label' } },
    },
  ],
});

const short = (value: number): number => Number(value.toPrecision(6));
