import type { Firing, ReducedFiring } from '../../firing';
import { analysedRecord } from '../../firing/analysis/analysed-record';
import { fromSiArray, MeopError, type Series } from '../../units';
import {
  type JsonValue,
  type PlotLevel,
  type PlotSpec,
  plotColours,
  plotSpec,
  plotTitle,
  seriesColours,
  seriesDashes,
} from './plot-spec';
import { thinTrace } from './thin-trace';

/** Options of a firing plot. */
export interface PlotFiringOptions {
  /** Width of the drawing [px]. Default 640. */
  readonly width?: number;
  /** Horizontal lines in the pressure plot. A gauge level is drawn at its absolute pressure. */
  readonly levels?: readonly PlotLevel[];
  /** Unit of the pressure axis. Default `'MPa'`. */
  readonly pressureUnit?: 'MPa' | 'psi' | 'bar';
  /** Unit of the thrust axis. Default `'N'`. */
  readonly thrustUnit?: 'N' | 'lbf';
  /** Time zero: that of each record, or the first 10 % point of each. Default `'own zero'`. */
  readonly timeFrom?: 'own zero' | 'ten percent point';
}

type Drawable = Firing | ReducedFiring;
type Channel = 'pressure' | 'thrust';

/**
 * Plots absolute pressure and thrust against time as a Vega-Lite specification. Several firings, predicted or
 * measured, share the axes. For a reduced firing with a saturated channel, the 95 % confidence interval of the
 * reconstructed part is drawn.
 *
 * @throws MeopError `nothing-to-plot` where there is neither pressure nor thrust; `missing-field` where a gauge
 * level is given and no firing has an ambient pressure
 * @example plotFiring(firing({ origin: 'measured', time: series([0, 1], 's'), thrust: series([0, 5], 'N') })).vconcat.length // => 1
 */
export function plotFiring(
  firings: Drawable | readonly Drawable[],
  options: PlotFiringOptions = {},
): PlotSpec {
  const given = isList(firings) ? firings : [firings];
  const traces = given.map((one, i) => traceOf(one, nameOf(given, i), options.timeFrom ?? 'own zero'));
  const panels = [...pressurePanel(traces, options), ...thrustPanel(traces, options)];
  if (panels.length === 0)
    throw new MeopError(
      'nothing-to-plot',
      'plotFiring: the firing has neither pressure nor thrust. Pass a firing with at least one of them.',
      'firings',
    );
  return plotSpec({ vconcat: panels, spacing: 18 });
}

interface Trace {
  readonly name: string;
  readonly record: Firing;
  readonly reduced: ReducedFiring | undefined;
  /** [s] */
  readonly zero: number;
}

function traceOf(one: Drawable, name: string, timeFrom: NonNullable<PlotFiringOptions['timeFrom']>): Trace {
  const [record, reduced] = 'record' in one ? [one.record, one] : [one, undefined];
  return { name, record, reduced, zero: timeFrom === 'own zero' ? 0 : tenPercentPoint(record) };
}

function tenPercentPoint(record: Firing): number {
  const { thrust, pressure } = analysedRecord(record).traces;
  if (thrust) return thrust.edges(0.1, 0).start; // without an ambient pressure: the lowest value
  return pressure?.edges(0.1, record.ambientPressure?.si ?? pressure.lowest()).start ?? 0;
}

function nameOf(all: readonly Drawable[], i: number): string {
  const firingOf = (one: Drawable): Firing => ('record' in one ? one.record : one);
  const own = firingOf(all[i]);
  const alike = all.map(firingOf).filter(({ origin }) => origin === own.origin);
  if (alike.length === 1) return own.origin;
  const title = `${own.title ?? 'firing'}, ${own.origin}`;
  const same = alike.filter(({ title: other }) => other === own.title);
  return same.length === 1 ? title : `${title} ${same.indexOf(own) + 1}`;
}

function pressurePanel(traces: readonly Trace[], options: PlotFiringOptions): JsonValue[] {
  const { pressureUnit: unit = 'MPa' } = options;
  const inUnit = (values: Series<'absolute pressure'>): Float64Array => values.in(unit);
  const lines = traces.flatMap((trace) => lineRows(trace, 'pressure', trace.record.pressure, inUnit));
  if (lines.length === 0) return [];
  const bands = traces.flatMap((trace) =>
    bandRows(trace, 'pressure', (si) => inUnit(fromSiArray('absolute pressure', si))),
  );
  const levels = (options.levels ?? []).map(({ label, at }) => {
    const si = at.kind === 'gauge pressure' ? at.si + ambientOf(traces) : at.si;
    return { label, value: inUnit(fromSiArray('absolute pressure', Float64Array.of(si)))[0] };
  });
  return [panel(`pressure, absolute (${unit})`, lines, bands, levels, traces, options)];
}

function thrustPanel(traces: readonly Trace[], options: PlotFiringOptions): JsonValue[] {
  const { thrustUnit: unit = 'N' } = options;
  const inUnit = (values: Series<'force'>): Float64Array => values.in(unit);
  const lines = traces.flatMap((trace) => lineRows(trace, 'thrust', trace.record.thrust, inUnit));
  if (lines.length === 0) return [];
  const bands = traces.flatMap((trace) =>
    bandRows(trace, 'thrust', (si) => inUnit(fromSiArray('force', si))),
  );
  return [panel(`thrust (${unit})`, lines, bands, [], traces, options)];
}

function ambientOf(traces: readonly Trace[]): number {
  const known = traces.find(({ record }) => record.ambientPressure !== undefined);
  if (known?.record.ambientPressure !== undefined) return known.record.ambientPressure.si;
  throw new MeopError(
    'missing-field',
    'plotFiring: a gauge level requires the ambient pressure of a firing. Give the level as an absolute pressure.',
    'levels',
  );
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
  { width = 640, timeFrom }: PlotFiringOptions,
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
    width: width - 70,
    height: Math.round(Math.min(260, 150 + width / 6)),
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

const isList = (given: Drawable | readonly Drawable[]): given is readonly Drawable[] => Array.isArray(given);
