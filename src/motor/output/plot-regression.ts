import type { Regression } from '../../ballistics';
import { MeopError } from '../../units';
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

/** Options of a regression plot. */
export interface PlotRegressionOptions {
  /** Width of the drawing [px]. Default 640. */
  readonly width?: number;
  /** Unit of the depth axis. Default `'mm'`. */
  readonly depthUnit?: 'mm' | 'in';
  /** Unit of the area axis. Default `'cm^2'`. */
  readonly areaUnit?: 'cm^2' | 'in^2';
}

/**
 * Plots burning area against burned depth as a Vega-Lite specification: of one regression, or of several by name,
 * such as a flaw-free grain and a cracked one. The web is marked where it is not the last depth.
 *
 * @throws MeopError `nothing-to-plot` where no regression is given
 * @example plotRegression(regress(tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '85 mm' }))).layer.length // => 1
 */
export function plotRegression(
  regressions: Regression | Readonly<Record<string, Regression>>,
  options: PlotRegressionOptions = {},
): PlotSpec {
  const { width = 640, depthUnit = 'mm', areaUnit = 'cm^2' } = options;
  const named = isRegression(regressions) ? { [regressions.grain]: regressions } : regressions;
  const names = Object.keys(named);
  if (names.length === 0)
    throw new MeopError('nothing-to-plot', 'plotRegression: at least one regression is required, got none');
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
    width: width - 70,
    height: Math.round(Math.min(260, 150 + width / 6)),
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

const isRegression = (given: Regression | Readonly<Record<string, Regression>>): given is Regression =>
  typeof given.grain === 'string';
