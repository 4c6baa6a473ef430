import { describe, expect, test } from 'vitest';
import { fitCalibration, readLog, reduceFiring } from '../../../src/firing';
import { codeOf } from '../../error-code';

// Invented logs: what is expected stands in them. A half sine of 200 N over 2 s at 50 Hz, pressure in step: 800/π N·s.
const rows = Array.from({ length: 300 }, (_, i) => {
  const t = i / 50;
  const share = Math.max(0, t > 2 && t < 4 ? Math.sin((Math.PI * (t - 2)) / 2) : 0);
  return { t, f: (200 * share).toFixed(2), p: (40 * share).toFixed(3), ms: Math.round(1000 * t) };
});
const impulse = 800 / Math.PI;
const clock = (t: number, tail: (seconds: number) => string): string =>
  `12:00:${String(Math.floor(t)).padStart(2, '0')}${tail(t % 1)}`;
const thousandths = (part: number): string => String(Math.round(1000 * part)).padStart(3, '0');
describe('dialects of loggers, read without being told anything', () => {
  const dialects: readonly (readonly [string, string])[] = [
    [
      'JSON, a line each',
      rows.map((r) => `{"time_ms": ${r.ms}, "thrust_N": ${r.f}, "pressure_bar": ${r.p}}`).join('\n'),
    ],
    ['key=value with units', rows.map((r) => `t=${r.ms}ms F=${r.f}N P=${r.p}bar`).join('\n')],
    ['label:value', rows.map((r) => `time:${r.ms} ms,thrust:${r.f} N,pressure:${r.p} bar`).join('\n')],
    [
      'units in the cells',
      `time,thrust,pressure\n${rows.map((r) => `${r.ms} ms,${r.f} N,${r.p} bar`).join('\n')}`,
    ],
    [
      'stamped by a terminal',
      `09:59:59.000 -> ms,thrust (N),pressure (bar)\n${rows.map((r) => `${clock(r.t + 7, (part) => `.${thousandths(part)}`)} -> ${r.ms},${r.f},${r.p}`).join('\n')}`,
    ],
    [
      'names and units run together',
      `TimeMs,ForceN,PressureBar\n${rows.map((r) => `${r.ms},${r.f},${r.p}`).join('\n')}`,
    ],
    [
      'names joined by underscores',
      `time_since_start_ms,load_cell_N,pt_bar\n${rows.map((r) => `${r.ms},${r.f},${r.p}`).join('\n')}`,
    ],
    [
      'another language',
      `Zeit (ms);Kraft (N);Druck (bar)\n${rows.map((r) => `${r.ms};${r.f};${r.p}`.replaceAll('.', ',')).join('\n')}`,
    ],
    [
      'milliseconds after a colon',
      `Time,Thrust (N),Pressure (bar)\n${rows.map((r) => `${clock(r.t, (part) => `:${Math.round(1000 * part)}`)},${r.f},${r.p}`).join('\n')}`,
    ],
    [
      'minutes and seconds',
      `Time,Thrust (N),Pressure (bar)\n${rows.map((r) => `${clock(r.t, (part) => `.${thousandths(part)}`).slice(3)},${r.f},${r.p}`).join('\n')}`,
    ],
    [
      'date and time apart',
      `Date,Time,Thrust (N),Pressure (bar)\n${rows.map((r) => `2024-04-14,${clock(r.t, (part) => `.${thousandths(part)}`)},${r.f},${r.p}`).join('\n')}`,
    ],
    [
      'settings above the headings',
      `Logger,3\nRate,50\nGain,128,64\n\nTime (ms),Thrust (N),Pressure (bar)\n${rows.map((r) => `${r.ms},${r.f},${r.p}`).join('\n')}`,
    ],
    [
      'talk above blanks and commas',
      `Scale v1.2\nStarting card... done\nTare: 84213\ntime (ms), thrust (N), pressure (bar)\n${rows.map((r) => `${r.ms}, ${r.f}, ${r.p}`).join('\n')}`,
    ],
    [
      'a sensor called by its make',
      `Sample #,Time (ms),Load Cell (N),Transducer (bar)\n${rows.map((r, i) => `${i},${r.ms},${r.f},${r.p}`).join('\n')}`,
    ],
  ];
  test.each(dialects)('%s', (_, text) => {
    const log = readLog(`${text}\n`);
    expect(log.report.dropped).toBe(0);
    expect(log.channels.thrust.time).toHaveLength(300);
    expect(log.channels.pressure.time).toHaveLength(300);
    const reduced = reduceFiring(log, { ambientPressure: '1 atm' });
    expect((reduced.totalImpulse?.value.si ?? 0) / impulse).toBeCloseTo(1, 2);
    expect(reduced.peakThrust?.value.in('N')).toBeCloseTo(200, 5);
    expect((reduced.peakPressure?.value.in('bar') ?? 0) - 1.01325).toBeCloseTo(40, 5);
  });

  test('a line in JSON without its end is cut back to what is whole, a key it lacks is a missing cell', () => {
    const log = readLog(
      '{"ms":0,"thrust_N":1.5,"temp_C":20}\n{"ms":10,"thrust_N":2.5}\n{"ms":20,"thrust_N":3.5,"temp_C":2',
    );
    expect([...log.channels.thrust.values]).toEqual([1.5, 2.5, 3.5]);
    expect(log.channels['temperature temp'].values).toHaveLength(1);
    expect(log.report.findings.map(({ finding }) => finding)).toContain('partial last line');
  });
});

describe('what cannot be known is not guessed in silence', () => {
  test('a calibration for volts is not put on millivolts', () => {
    const volts = fitCalibration({
      measures: 'force',
      points: [
        { reading: 0, load: '0 N' },
        { reading: 1, load: '100 N' },
      ],
    });
    const read = (unit?: string) =>
      readLog('ms,thrust (mV)\n0,1\n10,500\n', {
        channels: { thrust: { calibration: volts, ...(unit && { unit }) } },
      });
    expect(codeOf(() => read())).toBe('wrong-unit');
    expect(codeOf(() => read('mV'))).toBe('wrong-unit');
    expect(read('V').channels.thrust.values[1]).toBe(50_000);
  });

  test('whole stamps without a unit: the one that makes a log of a firing of them', () => {
    const lengthOf = (stamp: (i: number) => string, count: number): number => {
      const text = Array.from({ length: count }, (_, i) => `${stamp(i)},${i % 7}`).join('\n');
      const log = readLog(`time,thrust (N)\n${text}\n`);
      expect(log.cautions.join()).toMatch(/unit not specified/);
      return log.channels.thrust.time[count - 1] - log.channels.thrust.time[0];
    };
    // 2 kHz in µs, 1 kHz in ms with decimals, 10 Hz in ms, 100 Hz in s.
    expect(lengthOf((i) => String(500 * i), 12_000)).toBeCloseTo(6, 2);
    expect(lengthOf((i) => (i + 0.25 * (i % 2)).toFixed(2), 6000)).toBeCloseTo(6, 2);
    expect(lengthOf((i) => String(100 * i), 600)).toBeCloseTo(59.9, 2);
    expect(lengthOf((i) => (i / 100).toFixed(2), 3000)).toBeCloseTo(29.99, 2);
  });

  test('whole seconds at 10 Hz: the first and the last second are parts', () => {
    const text = rows
      .filter((_, i) => i % 5 === 0)
      .map((r) => `${clock(r.t + 0.4, () => '')},${r.f}`)
      .join('\n');
    const { time } = readLog(`time,thrust (N)\n${text}\n`).channels.thrust;
    expect(time[1] - time[0]).toBeCloseTo(0.1, 9);
    expect(time[59] - time[0]).toBeCloseTo(5.9, 9);
  });

  test('rows of several sensors one below the other are told', () => {
    const text = rows.map((r) => `${r.ms},F,${r.f}\n${r.ms + 3},P,${r.p}`).join('\n');
    const log = readLog(text, {
      time: { column: 1, unit: 'ms' },
      channels: { thrust: { column: 3, unit: 'N' } },
    });
    expect(log.cautions.join()).toMatch(/Column 2 alternates between F, P/);
  });

  test("the air's own pressure is not taken for the chamber's", () => {
    const log = readLog('ms,Chamber (bar),Ambient pressure (hPa)\n0,0.1,1013\n10,5.0,1013\n');
    expect(Object.keys(log.channels)).toEqual(['pressure', 'Ambient pressure']);
  });
});
