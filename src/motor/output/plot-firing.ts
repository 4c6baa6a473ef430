import type { Firing, ReducedFiring } from '../../firing';
import { analysedRecord } from '../../firing/analysis/analysed-record';
import {
  choice,
  fromSiArray,
  instance,
  list,
  MeopError,
  optional,
  procedure,
  type Series,
  type Values,
} from '../../units';
import { type GivenFiring, isGivenFiring, isReducedFiring } from '../given-firing';
import { plotLevel, width } from './plot-inputs';
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

type Channel = 'pressure' | 'thrust';

const isList = (given: unknown): given is readonly unknown[] => Array.isArray(given);

const areDrawable = (given: unknown): given is GivenFiring | readonly GivenFiring[] =>
  isList(given) ? given.every(isGivenFiring) : isGivenFiring(given);

const options = {
  width,
  levels: optional(list('horizontal lines in the pressure plot', plotLevel, { min: 0 }), []),
  pressureUnit: optional(choice('unit of the pressure axis', ['MPa', 'psi', 'bar']), 'MPa'),
  thrustUnit: optional(choice('unit of the thrust axis', ['N', 'lbf']), 'N'),
  timeFrom: optional(
    choice('time zero: that of each record, or the first 10 % point of each', [
      'own zero',
      'ten percent point',
    ]),
    'own zero',
  ),
};

type Options = Values<typeof options>;

/**
 * A gauge level is drawn at its absolute pressure. For a reduced firing with a saturated channel, the 95 % confidence
 * interval of the reconstructed part is drawn.
 *
 * @throws MeopError `nothing-to-plot` where there is neither pressure nor thrust; `missing-field` where a gauge
 * level is given and no firing has an ambient pressure
 * @example plotFiring(firing({ origin: 'measured', time: series([0, 1], 's'), thrust: series([0, 5], 'N') })).vconcat.length // => 1
 */
export const plotFiring = /* @__PURE__ */ procedure({
  name: 'plotFiring',
  title: 'Plot of pressure and thrust against time',
  source: 'definition',
  subject: instance(
    'one or several firings, predicted or measured, which share the axes',
    'a firing or a reduced firing, or a list of them',
    areDrawable,
  ),
  inputs: options,
  gives: 'a Vega-Lite specification with absolute pressure and thrust',
  example: 'plotFiring(predict(demoMotor()))',
  run: firingPlot,
});

function firingPlot(firings: GivenFiring | readonly GivenFiring[], values: Options): PlotSpec {
  const given: readonly GivenFiring[] = isList(firings) ? firings : [firings];
  const traces = given.map((one, i) => traceOf(one, nameOf(given, i), values.timeFrom));
  const panels = [...pressurePanel(traces, values), ...thrustPanel(traces, values)];
  if (panels.length > 0) return plotSpec({ vconcat: panels, spacing: 18 });
  throw new MeopError({
    code: 'nothing-to-plot',
    procedure: 'plotFiring',
    path: 'firings',
    given: given.length,
    problem: 'no firing has pressure or thrust',
    remedy: 'Pass a firing with at least one of them',
  });
}

interface Trace {
  readonly name: string;
  readonly record: Firing;
  readonly reduced: ReducedFiring | undefined;
  /** [s] */
  readonly zero: number;
}

function traceOf(one: GivenFiring, name: string, timeFrom: Options['timeFrom']): Trace {
  const [record, reduced] = isReducedFiring(one) ? [one.record, one] : [one, undefined];
  return { name, record, reduced, zero: timeFrom === 'own zero' ? 0 : tenPercentPoint(record) };
}

function tenPercentPoint(record: Firing): number {
  const { thrust, pressure } = analysedRecord(record).traces;
  if (thrust) return thrust.edges(0.1, 0).start; // without an ambient pressure: the lowest value
  return pressure?.edges(0.1, record.ambientPressure?.si ?? pressure.lowest()).start ?? 0;
}

function nameOf(all: readonly GivenFiring[], i: number): string {
  const firingOf = (one: GivenFiring): Firing => (isReducedFiring(one) ? one.record : one);
  const own = firingOf(all[i]);
  const alike = all.map(firingOf).filter(({ origin }) => origin === own.origin);
  if (alike.length === 1) return own.origin;
  const title = `${own.title ?? 'firing'}, ${own.origin}`;
  const same = alike.filter(({ title: other }) => other === own.title);
  return same.length === 1 ? title : `${title} ${same.indexOf(own) + 1}`;
}

function pressurePanel(traces: readonly Trace[], values: Options): JsonValue[] {
  const { pressureUnit: unit } = values;
  const inUnit = (trace: Series<'absolute pressure'>): Float64Array => trace.in(unit);
  const lines = traces.flatMap((trace) => lineRows(trace, 'pressure', trace.record.pressure, inUnit));
  if (lines.length === 0) return [];
  const bands = traces.flatMap((trace) =>
    bandRows(trace, 'pressure', (si) => inUnit(fromSiArray('absolute pressure', si))),
  );
  const levels = values.levels.map(({ label, at }) => {
    const si = at.kind === 'gauge pressure' ? at.si + ambientOf(traces) : at.si;
    return { label, value: inUnit(fromSiArray('absolute pressure', Float64Array.of(si)))[0] };
  });
  return [panel(`pressure, absolute (${unit})`, lines, bands, levels, traces, values)];
}

function thrustPanel(traces: readonly Trace[], values: Options): JsonValue[] {
  const { thrustUnit: unit } = values;
  const inUnit = (trace: Series<'force'>): Float64Array => trace.in(unit);
  const lines = traces.flatMap((trace) => lineRows(trace, 'thrust', trace.record.thrust, inUnit));
  if (lines.length === 0) return [];
  const bands = traces.flatMap((trace) =>
    bandRows(trace, 'thrust', (si) => inUnit(fromSiArray('force', si))),
  );
  return [panel(`thrust (${unit})`, lines, bands, [], traces, values)];
}

function ambientOf(traces: readonly Trace[]): number {
  const known = traces.find(({ record }) => record.ambientPressure !== undefined);
  if (known?.record.ambientPressure !== undefined) return known.record.ambientPressure.si;
  throw new MeopError({
    code: 'missing-field',
    procedure: 'plotFiring',
    path: 'levels',
    problem: 'a gauge level requires the ambient pressure of a firing',
    remedy: 'Give the level as an absolute pressure',
  });
}

type Row = { readonly t: number; readonly y: number; readonly firing: string };
type BandRow = { readonly t: number; readonly low: number; readonly high: number };

function lineRows<S extends { readonly si: Float64Array }>(
  { name, record, zero }: Trace,
  _: Channel,
  channel: S | undefined,
  inUnit: (values: S) => Float64Array,
): readonly Row[] {
  if (channel === undefined) return [];
  const values = inUnit(channel);
  const time = record.time.si;
  return thinTrace(values).map((i) => ({ t: short(time[i] - zero), y: short(values[i]), firing: name }));
}

function bandRows(
  { reduced, zero }: Trace,
  channel: Channel,
  inUnit: (si: Float64Array) => Float64Array,
): readonly BandRow[] {
  const recovery = reduced?.recovery;
  if (recovery?.channel !== channel) return [];
  const { time, low, high } = recovery.band;
  const [lows, highs] = [inUnit(low.si), inUnit(high.si)];
  return thinTrace(highs, 200).map((i) => ({
    t: short(time.si[i] - zero),
    low: short(lows[i]),
    high: short(highs[i]),
  }));
}

// Enough digits to draw; a plot is not a source of numbers.
const short = (value: number): number => Number(value.toPrecision(6));

function panel(
  title: string,
  lines: readonly Row[],
  bands: readonly BandRow[],
  levels: readonly { readonly label: string; readonly value: number }[],
  traces: readonly Trace[],
  { width: size, timeFrom }: Options,
): JsonValue {
  const names = traces.map(({ name }) => name);
  const timeTitle = timeFrom === 'ten percent point' ? 'time from 10 % point (s)' : 'time (s)';
  const x = { field: 't', type: 'quantitative', title: timeTitle, scale: { nice: false } };
  const y = { field: 'y', type: 'quantitative', title: null };
  const several = names.length > 1;
  const scaled = (range: readonly JsonValue[], legend: JsonValue): JsonValue => ({
    field: 'firing',
    type: 'nominal',
    scale: { domain: names, range: names.map((_, i) => range[i % range.length]) },
    legend: several ? legend : null,
  });
  return {
    title: plotTitle(title),
    width: size - 70,
    height: Math.round(Math.min(260, 150 + size / 6)),
    layer: [
      ...(bands.length === 0
        ? []
        : [
            {
              data: { values: bands },
              mark: { type: 'area', opacity: 0.22, color: seriesColours[0] },
              encoding: { x, y: { ...y, field: 'low' }, y2: { field: 'high' } },
            },
          ]),
      ...levels.flatMap(({ label, value }) => levelLayers(label, value)),
      {
        data: { values: lines },
        mark: { type: 'line' },
        encoding: {
          x,
          y,
          color: scaled(seriesColours, {}),
          strokeDash: scaled(seriesDashes, {}),
          order: { field: 't' },
        },
      },
    ],
  };
}

function levelLayers(label: string, value: number): JsonValue[] {
  const data = { values: [{ y: short(value), label }] };
  const y = { field: 'y', type: 'quantitative' };
  return [
    {
      data,
      mark: { type: 'rule', strokeDash: [2, 3], strokeWidth: 1.5, color: plotColours.fail },
      encoding: { y },
    },
    {
      data,
      mark: { type: 'text', align: 'right', baseline: 'bottom', dy: -3, color: plotColours.fail },
      encoding: { x: { value: 'width' }, y, text: { field: 'label' } },
    },
  ];
}
