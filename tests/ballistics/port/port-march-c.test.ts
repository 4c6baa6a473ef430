import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { preparePort } from '../../../bench/chamber/port-kernel';

const folder = mkdtempSync(join(tmpdir(), 'port-march-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const hasCompiler = spawnSync('cc', ['--version']).status === 0;

// The same algorithm, written in C for the benchmark: a change of one of them only is noticed here.
test.skipIf(!hasCompiler)('the march along a port is that of the program in C', () => {
  const program = join(folder, 'port-march');
  execFileSync('cc', ['-O1', '-o', program, 'bench/chamber/port-march.c', '-lm']);
  for (const erodes of [false, true]) {
    const input = join(folder, `${erodes}.bin`);
    const { sums } = preparePort(40, 50, erodes, input)();
    const [, ...found] = execFileSync(program, [input, '1'], { encoding: 'utf8' })
      .trim()
      .split(' ')
      .map(Number);
    found.forEach((sum, i) => {
      expect(sums[i]).toBeGreaterThan(0);
      expect(Math.abs(sum / sums[i] - 1)).toBeLessThan(1e-12);
    });
  }
});
