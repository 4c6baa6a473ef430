import { describe, expect, test } from 'vitest';
import { readLog } from '../../../src/firing';

// Expected values in this file follow from the text of each log itself.
const rows = (n: number, line: (i: number) => string): string =>
  Array.from({ length: n }, (_, i) => line(i)).join('\n');

describe('numbers as people and spreadsheets spell them', () => {
  const thrusts = (text: string, columns: Parameters<typeof readLog>[1] = {}): number[] => [
    ...readLog(`time (ms);thrust (N)\n${text}`, columns).channels.thrust.values,
  ];

  test.each([
    ['thousands by commas', '998;1,024.5\n999;1,025\n1000;1,026.25\n', [1024.5, 1025, 1026.25]],
    ['by points, decimal comma', '0;1.024,5\n1;1.025,5\n2;12.026,0\n', [1024.5, 1025.5, 12026]],
    ['by apostrophes', "1'000;1'024.5\n1'001;998.5\n1'002;1'026.0\n", [1024.5, 998.5, 1026]],
    ['a decimal comma with three decimals', '0;1,024\n1;0,025\n2;1,026\n', [1.024, 0.025, 1.026]],
    ['hexadecimal', '0;0x1F\n1;0xff\n2;10\n', [31, 255, 10]],
    ['a typeset minus', '0;−1.5\n1;−2e1\n2;3\n', [-1.5, -20, 3]],
    ['blanks within quotes', '0;" 1.5"\n1;"2.5 "\n2;"3"\n', [1.5, 2.5, 3]],
  ])('%s', (_, text, expected) => {
    expect(thrusts(text)).toEqual(expected);
  });

  test('a quoted cell holds the delimiter: thousands, or a decimal comma', () => {
    const thousands = readLog('time (ms),thrust (N)\n0,"1,024.5"\n1,"998.0"\n');
    expect([...thousands.channels.thrust.values]).toEqual([1024.5, 998]);
    const decimals = readLog('time (s),thrust (N)\n"0,00","10,5"\n"0,10","11,5"\n');
    expect([...decimals.channels.thrust.time]).toEqual([0, 0.1]);
    expect([...decimals.channels.thrust.values]).toEqual([10.5, 11.5]);
  });

  test('thousands that first come far down are read as well', () => {
    const text = `time (ms),thrust (N)\n${rows(9000, (i) => `${i},"${i < 8990 ? '998.50' : '1,024.50'}"`)}\n`;
    expect(readLog(text).channels.thrust.values.at(-1)).toBe(1024.5);
  });

  test('where a comma may be either, it is said', () => {
    const doubtful = '998;1,024\n999;1,025\n1000;1,026\n';
    expect(readLog(`time (ms);thrust (N)\n${doubtful}`).cautions.join()).toMatch(/decimal comma/);
    expect(thrusts(doubtful, { decimal: '.' })).toEqual([1024, 1025, 1026]);
  });

  test('the reference of a pressure as headings write it', () => {
    const log = readLog('time (s),P1 (psi abs),P2 [bar(g)],PT-3 (kPa gauge)\n0,14.7,0,1\n1,14.7,5,2\n');
    expect(Object.values(log.channels).map(({ measures }) => measures)).toEqual([
      'absolute pressure',
      'gauge pressure',
      'gauge pressure',
    ]);
    expect(log.cautions).toEqual([]);
  });
});
