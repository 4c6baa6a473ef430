import { describe, expect, test } from 'vitest';
import { type Log, readLog } from '../../../src/firing';
import { codeOf } from '../../error-code';

// Expected values in this file follow from the text of each log itself.
const counted = (log: Log, finding: string): number =>
  log.report.findings.filter((run) => run.finding === finding).reduce((sum, { count }) => sum + count, 0);
const rows = (n: number, line: (i: number) => string): string =>
  Array.from({ length: n }, (_, i) => line(i)).join('\n');

describe('layouts', () => {
  test.each([
    [',', '.', '0.5,1.25,-3e2\n1.0,1.5,4\n'],
    [';', ',', '0,5;1,25;-3e2\n1,0;1,5;4\n'],
    ['tab', '.', '0.5\t1.25\t-3e2\n1.0\t1.5\t4\n'],
    ['blanks', '.', '  0.5   1.25 -3e2\n  1.0   1.5    4\n'],
    ['|', '.', '0.5|1.25|-3e2\n1.0|1.5|4\n'],
    ['quotes', '.', '"0.5","1.25","-3e2"\n"1.0","1.5","4"\n'],
    ['carriage returns', '.', '0.5,1.25,-3e2\r1.0,1.5,4\r'],
    ['both line ends', '.', '0.5,1.25,-3e2\r\n1.0,1.5,4\r\n'],
  ])('%s with decimal %s', (_, __, text) => {
    const log = readLog(text, {
      time: { column: 1, unit: 's' },
      channels: { thrust: { column: 2, unit: 'N' }, pressure: { column: 3, unit: 'barg' } },
    });
    expect([...log.channels.thrust.time]).toEqual([0.5, 1]);
    expect([...log.channels.thrust.values]).toEqual([1.25, 1.5]);
    expect(log.channels.pressure.values[0]).toBe(-300e5);
  });

  test('a delimiter of several characters, given', () => {
    const log = readLog('0 :: 1\n1 :: 2\n', {
      delimiter: '::',
      time: { column: 1, unit: 's' },
      channels: { thrust: { column: 2, unit: 'N' } },
    });
    expect([...log.channels.thrust.values]).toEqual([1, 2]);
  });

  test('headings with units name the channels; gauge is said to be assumed; grams become a weight', () => {
    const log = readLog(
      '# stand 2\nTime [ms];Chamber Pressure (psi);Load Cell [g]\n0;14.5;1000\n10;29;2000\n',
    );
    expect(log.channels.pressure.measures).toBe('gauge pressure');
    expect(log.channels.pressure.time[1]).toBe(0.01);
    expect(log.channels.pressure.values[0]).toBeCloseTo(14.5 * 6894.757293168361, 6);
    expect(log.channels.thrust.values[0]).toBeCloseTo(9.80665, 12);
    expect(log.cautions.join('\n')).toMatch(/gauge or absolute/);
    expect(log.cautions.join('\n')).toMatch(/not as newtons/);
  });

  test('units in a row of their own', () => {
    const log = readLog('t,p,F\n(s),(MPa),(N)\n0,1,5\n1,2,6\n');
    expect(log.channels.pressure.values[1]).toBe(2e6);
    expect(log.channels.thrust.values[1]).toBe(6);
  });

  test('a heading in a comment, a title above it, a byte-order mark', () => {
    const log = readLog('\ufeffFiring of a Tuesday\n# t_ms, thrust_N\n0,1\n5,2\n');
    expect([...log.channels.thrust.time]).toEqual([0, 0.005]);
  });

  test.each([
    ['12:00:00.5', '12:00:01.0', '12:00:01.5'],
    ['11:59:59.5 AM', '12:00:00.0 PM', '12:00:00.5 PM'],
    ['2025-04-16T23:59:59.5+02:00', '2025-04-17T00:00:00.0+02:00', '2025-04-17T00:00:00.5+02:00'],
    ['4/16/2025 23:59:59.5', '4/17/2025 00:00:00.0', '4/17/2025 00:00:00.5'],
    ['16.04.2025 12:00:00.5', '16.04.2025 12:00:01.0', '16.04.2025 12:00:01.5'],
  ])('clock times and dates count seconds: %s', (...stamps) => {
    const log = readLog(`time,thrust (N)\n${stamps.map((stamp, i) => `${stamp},${i}\n`).join('')}`);
    const { time } = log.channels.thrust;
    expect([...time].map((t) => t - time[0])).toEqual([0, 0.5, 1]);
  });

  test('every digit of a number counts, as in Number()', () => {
    const numbers = [
      '-22.626617272078896',
      '1.6884963106904483',
      '1e-5',
      '6.91401e-05',
      '.5',
      '+7',
      '123456789012345678',
      '0.1',
    ];
    const log = readLog(numbers.map((text, i) => `${i},${text}\n`).join(''), {
      time: { column: 1, unit: 's' },
      channels: { thrust: { column: 2, unit: 'N' } },
    });
    expect([...log.channels.thrust.values]).toEqual(numbers.map(Number));
  });
});

describe('what is wrong is counted and listed', () => {
  const base = (text: string) => readLog(`t (s),thrust (N),pressure (barg)\n${text}`);

  test('comments, blank lines, repeated headings, text, missing and surplus cells', () => {
    const log = base(
      '0,1,2\n# note\n\nt (s),thrust (N),pressure (barg)\n1,2,3\n2,oops,4\n3,,5\nvalve opened\n4,5,6,7\n5,6,7\n',
    );
    expect(log.report.rows).toBe(6);
    expect(counted(log, 'comment')).toBe(1);
    expect(counted(log, 'blank line')).toBe(1);
    expect(counted(log, 'repeated header')).toBe(1);
    expect(counted(log, 'unreadable cell')).toBe(1);
    expect(counted(log, 'missing cell')).toBe(1);
    expect(counted(log, 'unreadable line')).toBe(1);
    expect(counted(log, 'surplus cells')).toBe(1);
    expect([...log.channels.thrust.time]).toEqual([0, 1, 4, 5]);
    expect([...log.channels.pressure.time]).toEqual([0, 1, 2, 3, 4, 5]);
    expect(log.report.findings.find(({ finding }) => finding === 'unreadable line')?.firstLine).toBe(9);
  });

  test('a last line cut by the power failing is not believed', () => {
    const log = base(`${rows(70, (i) => `${100 + i},${200 + i},${300 + i}`)}\n170,27`);
    expect(counted(log, 'partial last line')).toBe(1);
    expect(log.channels.thrust.values.at(-1)).toBe(269);
    const whole = base(`${rows(70, (i) => `${100 + i},${200 + i},${300 + i}`)}\n170,270,370`);
    expect(whole.channels.thrust.values.at(-1)).toBe(270);
  });

  test.each([
    ['fewer decimals than all above', (i: number) => `${900 + i},${(1.5 * i).toFixed(2)}`, '990,135.0', 1],
    ['as many decimals as all above', (i: number) => `${900 + i},${(1.5 * i).toFixed(2)}`, '990,135.00', 0],
    [
      'a whole number shorter than the longest above',
      (i: number) => `${900 + i},${i % 3 ? 195 : 5}`,
      '990,19',
      1,
    ],
    ['a whole number as long as any above', (i: number) => `${900 + i},${i % 3 ? 195 : 5}`, '990,195', 0],
    ['fewer digits of many', (i: number) => `${900 + i},${Math.sqrt(i + 3)}`, '990,9.64', 1],
    ['a delimiter after it', (i: number) => `${900 + i},${i % 3 ? 195 : 5},`, '990,19,', 0],
    ['a quote that never closes', (i: number) => `"${900 + i}","${195 + i}"`, '"990","28', 1],
  ])('a last number without a line end: %s', (_, line, end, dropped) => {
    const log = readLog(`${rows(90, line)}\n${end}`, {
      time: { column: 1, unit: 'ms' },
      channels: { thrust: { column: 2, unit: 'N' } },
    });
    expect(log.report.dropped).toBe(dropped);
    expect(log.channels.thrust.values.length).toBe(91 - dropped);
  });

  test('a comment after the numbers and a bare carriage return between two rows cost no sample', () => {
    const log = base('0,1,2\n1,2,3 # valve\r\n2,3,4\r3,4,5\n4,5,6\n');
    expect([...log.channels.thrust.values]).toEqual([1, 2, 3, 4, 5]);
    expect([...log.channels.pressure.values]).toEqual([2e5, 3e5, 4e5, 5e5, 6e5]);
    expect(counted(log, 'comment')).toBe(1);
    expect(log.report.dropped).toBe(0);
  });

  test('several sensors at different rates each keep their own samples', () => {
    const log = base(rows(100, (i) => (i % 10 === 0 ? `${i / 100},${i},${i}` : `${i / 100},${i},`)));
    expect(log.channels.thrust.values.length).toBe(100);
    expect(log.channels.pressure.values.length).toBe(10);
    expect(counted(log, 'missing cell')).toBe(90);
    expect(log.report.findings.filter(({ finding }) => finding === 'missing cell').length).toBe(1);
  });
});

describe('clocks', () => {
  const stamped = (stamps: readonly number[], unit: string, more: Readonly<Record<string, unknown>> = {}) =>
    readLog(stamps.map((t, i) => `${t},${i}`).join('\n'), {
      time: { column: 1, unit, ...more },
      channels: { thrust: { column: 2, unit: 'N' } },
    });
  const steps = (time: Float64Array): number[] => Array.from(time.subarray(1), (t, i) => t - time[i]);

  test('a 32-bit counter of microseconds wraps and goes on', () => {
    const stamps = Array.from({ length: 60 }, (_, i) => (2 ** 32 - 30_000 + 1000 * i) % 2 ** 32);
    const log = stamped(stamps, 'µs');
    expect(counted(log, 'clock wrap')).toBe(1);
    for (const step of steps(log.channels.thrust.time)) expect(step).toBeCloseTo(1e-3, 9);
  });

  test('a 16-bit counter of milliseconds wraps twice', () => {
    const log = stamped(
      Array.from({ length: 15_000 }, (_, i) => (10 * i) % 65_536),
      'ms',
    );
    expect(counted(log, 'clock wrap')).toBe(2);
    expect(log.channels.thrust.time.at(-1)).toBeCloseTo(149.99, 6);
  });

  test('a logger that restarted goes on one step later, with a caution', () => {
    const log = stamped(
      [...Array.from({ length: 500 }, (_, i) => 10 * i), ...Array.from({ length: 500 }, (_, i) => 10 * i)],
      'ms',
    );
    expect(counted(log, 'clock restart')).toBe(1);
    expect(log.cautions.join()).toMatch(/restarted at line 501/);
    expect(log.channels.thrust.values.length).toBe(1000);
    for (const step of steps(log.channels.thrust.time)) expect(step).toBeCloseTo(0.01, 9);
  });

  test('one false stamp is interpolated, rows out of order are sorted', () => {
    const jump = stamped(
      Array.from({ length: 50 }, (_, i) => (i === 20 ? 999_999 : 10 * i)),
      'ms',
    );
    expect(counted(jump, 'false stamp')).toBe(1);
    expect(jump.channels.thrust.time[20]).toBeCloseTo(0.2, 9);
    const order = Array.from({ length: 50 }, (_, i) => (i % 2 === 0 ? 10 * (i + 1) : 10 * (i - 1)));
    const sorted = stamped(order, 'ms');
    expect(counted(sorted, 'out of order')).toBe(50);
    expect([...sorted.channels.thrust.values.subarray(0, 4)]).toEqual([1, 0, 3, 2]);
  });

  test('repeated stamps: few are spread to the next stamp, many mean an even device clock', () => {
    const few = stamped([0, 10, 20, 20, 30, ...Array.from({ length: 60 }, (_, i) => 40 + 10 * i)], 'ms');
    expect(counted(few, 'repeated stamp')).toBe(1);
    expect(few.channels.thrust.time[3]).toBeCloseTo(0.025, 9);
    const many = stamped(
      Array.from({ length: 400 }, (_, i) => 20 * Math.floor(i / 2)),
      'ms',
    );
    expect(counted(many, 'repeated stamp')).toBe(200);
    const [first, ...others] = steps(many.channels.thrust.time);
    for (const step of others) expect(step).toBeCloseTo(first, 9);
    const asked = stamped(
      Array.from({ length: 400 }, (_, i) => 20 * Math.floor(i / 2)),
      'ms',
      { repeats: 'spread' },
    );
    expect(asked.channels.thrust.time[1]).toBeCloseTo(0.01, 9);
  });

  test('a stamp that cannot be read is interpolated', () => {
    const log = readLog('t (s),thrust (N)\n0,1\n?,2\n2,3\n3,4\n4,5\n');
    expect(log.channels.thrust.time[1]).toBe(1);
    expect(counted(log, 'missing stamp')).toBe(1);
  });

  test('a window of time, and a limit on rows', () => {
    const text = `t (ms),thrust (N)\n${rows(100, (i) => `${10 * i},${i}`)}`;
    const log = readLog(text, { window: { from: '0.2 s', to: '0.3 s' } });
    expect([...log.channels.thrust.values]).toEqual([20, 21, 22, 23, 24, 25, 26, 27, 28, 29, 30]);
    expect(counted(log, 'outside the window')).toBe(89);
    expect(counted(readLog(text, { maxRows: 10 }), 'beyond the reading limit')).toBe(90);
  });
});

describe('sources', () => {
  const text = `t (ms),thrust (N)\n${rows(5000, (i) => `${i},${(i * 7) % 13}`)}\n`;
  const whole = readLog(text);

  test.each([1, 7, 1000, 100_000])('pieces of %i characters read as the whole does', async (size) => {
    const short = size === 1 ? text.slice(0, 20_000) : text;
    const pieces = Array.from({ length: Math.ceil(short.length / size) }, (_, i) =>
      short.slice(i * size, (i + 1) * size),
    );
    const log = await readLog(pieces);
    const expected = size === 1 ? readLog(short) : whole;
    expect(log.channels.thrust.values).toEqual(expected.channels.thrust.values);
    expect(log.channels.thrust.time).toEqual(expected.channels.thrust.time);
    expect(log.report.lines).toBe(expected.report.lines);
  });

  test('bytes, a Blob, a ReadableStream and UTF-16', async () => {
    const bytes = new TextEncoder().encode(text);
    const wide = new Uint8Array(2 + 2 * 2000);
    wide.set([0xff, 0xfe]);
    for (let i = 0; i < 2000; i++) wide[2 + 2 * i] = text.charCodeAt(i);
    expect((await readLog([bytes.subarray(0, 777), bytes.subarray(777)])).channels.thrust.values).toEqual(
      whole.channels.thrust.values,
    );
    expect((await readLog(new Blob([text]))).channels.thrust.values).toEqual(whole.channels.thrust.values);
    expect((await readLog(new Blob([text]).stream())).channels.thrust.values).toEqual(
      whole.channels.thrust.values,
    );
    expect((await readLog([wide])).channels.thrust.values[5]).toBe(35 % 13);
    // Without its mark, and in a first piece of one byte.
    expect((await readLog([wide.subarray(2)])).channels.thrust.values[5]).toBe(35 % 13);
    expect((await readLog([wide.subarray(0, 1), wide.subarray(1)])).channels.thrust.values[5]).toBe(35 % 13);
  });
});

describe('refusals', () => {
  test.each([
    ['an empty text', () => readLog(''), 'log-empty'],
    ['a byte-order mark alone', () => readLog('\ufeff'), 'log-empty'],
    ['headings and no row', () => readLog('t (s),thrust (N)\n'), 'log-empty'],
    [
      'no number at all',
      () =>
        readLog('hello\nworld\n', { time: { rate: '1 Hz' }, channels: { thrust: { column: 1, unit: 'N' } } }),
      'log-empty',
    ],
    [
      'an unknown heading',
      () => readLog('t (s),x\n1,2\n', { channels: { thrust: { column: 'force', unit: 'N' } } }),
      'log-columns',
    ],
    ['column 0', () => readLog('1,2\n', { channels: { thrust: { column: 0 } } }), 'log-columns'],
    [
      'a column too far',
      () => readLog('1,2\n2,3\n', { channels: { thrust: { column: 9, unit: 'N' } } }),
      'log-columns',
    ],
    [
      'a unit of something else',
      () => readLog('1,2\n2,3\n', { channels: { thrust: { column: 2, unit: 'MPa', measures: 'force' } } }),
      'wrong-unit',
    ],
    [
      'no unit of time',
      () =>
        readLog('1,2\n2,3\n', {
          time: { column: 1, unit: 'N' },
          channels: { thrust: { column: 2, unit: 'N' } },
        }),
      'wrong-unit',
    ],
  ])('%s', (_, call, code) => {
    expect(codeOf(call)).toBe(code);
  });

  test('a column map with several problems names each path', () => {
    const call = () => readLog('1,2', { channels: { thrust: { column: -1 } }, skipLines: -2 });
    expect(codeOf(call)).toBe('log-columns');
    expect(call).toThrow(/channels\.thrust\.column[\s\S]*skipLines/);
  });
});
