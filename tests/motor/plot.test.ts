import fc from 'fast-check';
import * as vega from 'vega';
import * as vegaLite from 'vega-lite';
import { describe, expect, test } from 'vitest';
import {
  display,
  drawPlot,
  firing,
  MeopError,
  type PlotSpec,
  plotFiring,
  plotFlawEnvelope,
  plotMargins,
  plotRegression,
  q,
  regress,
  series,
  tubularSegment,
} from '../../src/index';
import { thinTrace } from '../../src/motor/output/thin-trace';
import { comparison, flaws, measured, reviewed } from './reviewed-demo';

const grain = tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '85 mm' });
const specs: readonly (readonly [string, (width: number) => PlotSpec])[] = [
  ['firing', (width) => plotFiring(reviewed.prediction, { width })],
  [
    'firings',
    (width) =>
      plotFiring([measured, reviewed.prediction], {
        width,
        timeFrom: 'ten percent point',
        levels: [{ label: 'MEOP', at: reviewed.meop.pressure }],
      }),
  ],
  ['regression', (width) => plotRegression(regress(grain), { width })],
  ['margins', (width) => plotMargins(reviewed, { width })],
  ['flaws', (width) => plotFlawEnvelope(flaws, { width })],
];

describe.each(specs)('the plot of %s', (_, spec) => {
  test('is plain data', () => {
    const made = spec(640);
    expect(JSON.parse(JSON.stringify(made))).toEqual(made);
  });

  test('is read by the compiler without a warning', () => {
    const warnings: string[] = [];
    const log = vega.logger(vega.Warn);
    log.warn = (...words: readonly unknown[]) => {
      warnings.push(words.join(' '));
      return log;
    };
    vegaLite.compile(JSON.parse(JSON.stringify(spec(640))), { logger: log });
    expect(warnings).toEqual([]);
  });

  test.each([350, 820])('is drawn %i px wide, in the colours of the page', async (width) => {
    const svg = await drawPlot(spec(width));
    expect(svg.slice(0, 4)).toBe('<svg');
    expect(svg).toContain('var(--plot-');
    expect(svg).not.toMatch(/NaN|undefined|null/);
    const drawn = Number(/width="([\d.]+)"/.exec(svg)?.[1]);
    expect(drawn).toBeGreaterThan(0.8 * width);
    expect(drawn).toBeLessThanOrEqual(width + 12);
  });
});

type Layers = { data?: { values: readonly Record<string, number>[] } }[];
const panels = (spec: PlotSpec): { layer: Layers }[] => JSON.parse(JSON.stringify(spec)).vconcat;
const valuesOf = (layers: Layers) => layers.flatMap(({ data }) => data?.values ?? []);

test('engines that are found and that are handed in draw the same', async () => {
  const spec = plotMargins(reviewed);
  expect(await drawPlot(spec, { vega, vegaLite })).toBe(await drawPlot(spec));
});

describe('what is drawn', () => {
  test('peaks are kept, however many samples there are', () => {
    const { prediction } = reviewed;
    const [pressure, thrust] = panels(plotFiring(prediction, { pressureUnit: 'psi', thrustUnit: 'lbf' }));
    const top = (layers: Layers) => Math.max(...valuesOf(layers).map(({ y }) => y));
    expect(top(pressure.layer)).toBeCloseTo(prediction.pressure.max().in('psi'), 1);
    expect(top(thrust.layer)).toBeCloseTo(prediction.thrust.max().in('lbf'), 2);
  });

  test('a gauge level is drawn at its absolute pressure', () => {
    const trace = firing({
      origin: 'measured',
      time: series([0, 1], 's'),
      pressure: series([0.1, 2], 'MPaa'),
      ambientPressure: q('0.1 MPaa'),
    });
    const [{ layer }] = panels(plotFiring(trace, { levels: [{ label: 'limit', at: q('1 MPag') }] }));
    expect(valuesOf(layer).find(({ label }) => String(label) === 'limit')?.y).toBeCloseTo(1.1, 9);
  });

  test('a gauge level without an ambient pressure is refused', () => {
    const trace = firing({
      origin: 'measured',
      time: series([0, 1], 's'),
      pressure: series([0.1, 2], 'MPaa'),
    });
    expect(() => plotFiring(trace, { levels: [{ label: 'limit', at: q('1 MPag') }] })).toThrow(/ambient/);
  });

  test('a channel that clipped is drawn with its band around it', () => {
    const [{ layer }] = panels(plotFiring(measured));
    const band = valuesOf(layer).filter((row) => 'low' in row);
    expect(band.length).toBeGreaterThan(5);
    for (const { low, high } of band) expect(low).toBeLessThan(high);
  });

  test('margins come the least first, and ample ones are cut off but for their number', () => {
    const spec = JSON.parse(
      JSON.stringify(
        plotMargins(
          [
            { mode: 'ample', marginOfSafety: 12.5 },
            { mode: 'scarce', marginOfSafety: -0.25 },
          ],
          { maxMargin: 2 },
        ),
      ),
    );
    type Bar = { label: string; number: string };
    expect(spec.data.values.map(({ label, number }: Bar) => `${label} ${number}`)).toEqual([
      'scarce −0.25',
      'ample +12.50',
    ]);
    expect(spec.data.values.map(({ drawn }: { drawn: number }) => drawn)).toEqual([-0.25, 2]);
    expect(spec.data.values[0].passes).toBe('negative');
  });

  test('nothing to plot is an error that says so', () => {
    for (const empty of [() => plotMargins([]), () => plotRegression({}), () => plotFiring([])])
      expect(empty).toThrow(MeopError);
  });

  test('a thinned trace keeps its ends, its least and its greatest, in order', () => {
    const trace = fc.array(fc.double({ noNaN: true, min: -1e9, max: 1e9 }), { minLength: 1, maxLength: 900 });
    fc.assert(
      fc.property(trace, fc.integer({ min: 8, max: 200 }), (given, most) => {
        const values = Float64Array.from(given);
        const kept = thinTrace(values, most);
        expect(kept.length).toBeLessThanOrEqual(Math.max(most, 0));
        expect([kept[0], kept.at(-1)]).toEqual([0, values.length - 1]);
        for (let i = 1; i < kept.length; i++) expect(kept[i]).toBeGreaterThan(kept[i - 1]);
        const drawn = kept.map((i) => values[i]);
        expect(Math.max(...drawn)).toBe(Math.max(...given));
        expect(Math.min(...drawn)).toBe(Math.min(...given));
      }),
    );
  });
});

describe('in a notebook', () => {
  const bundle = (thing: object): Readonly<Record<string, unknown>> => {
    const method: unknown = Reflect.get(thing, Symbol.for('Jupyter.display'));
    if (typeof method !== 'function') throw new Error('no notebook display');
    return method.call(thing);
  };

  test.each([
    ['a review', reviewed],
    ['a comparison', comparison],
    ['MEOP', reviewed.meop],
    ['a flaw envelope', flaws],
    ['a reduced firing', measured],
    ['a firing', reviewed.prediction],
    ['a regression', regress(grain)],
  ])('%s shows as text, HTML and a plot', (_, thing) => {
    const shown = bundle(display(thing));
    expect(Object.keys(shown)).toEqual([
      'text/plain',
      'text/html',
      'application/vnd.vegalite.v6+json',
      'application/vnd.vegalite.v5+json',
    ]);
    expect(String(shown['text/html'])).not.toMatch(/<script/);
  });

  test('rows show as a table', () => {
    const shown = bundle(display([{ size: 'M6 <', pitch: '1 mm' }]));
    expect(String(shown['text/html'])).toContain('M6 &lt;');
    expect(shown['text/plain']).toBe('size  pitch\n╌╌╌╌╌╌╌╌╌╌╌\nM6 <   1 mm');
  });

  test('a specification draws itself', () => {
    const spec = plotMargins(reviewed);
    expect(bundle(spec)['application/vnd.vegalite.v5+json']).toBe(spec);
  });
});
