import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { crack, internalTube, simulate, simulateMany, simulationPool, withFlaws } from '../../src/ballistics';
import { quantity } from '../../src/units';
import { segmentMotor } from './reference-motors';

const motor = segmentMotor();
const scatter = (count: number) => ({
  count,
  seed: 11,
  standardDeviations: { burnRate: 0.03, throatDiameter: 0.01, density: 0.01 },
});

describe('many firings in a plain loop', () => {
  it('one without change is the single firing', async () => {
    const batch = await simulateMany({ motor, variations: [{}] });
    const one = simulate(motor);
    expect(batch.peakPressure.si[0]).toBe(one.peakPressure.si);
    expect(batch.totalImpulse.si[0]).toBe(one.totalImpulse.si);
    expect(batch.burnTime.si[0]).toBe(one.burnoutTime?.si);
    expect(batch.ends).toEqual(['burned out']);
    expect(batch.threads).toBe(0);
  });

  it('factors do what the same change of the motor does', async () => {
    const batch = await simulateMany({
      motor,
      variations: [{ throatDiameter: 1.1 }, { chamberVolume: 1.2 }, { density: 0.95 }],
    });
    const wider = simulate({
      ...motor,
      nozzle: { throatDiameter: '7.7 mm', exitDiameter: '15.652476 mm', separation: 'none' },
    });
    expect(batch.peakPressure.si[0] / wider.peakPressure.si).toBeCloseTo(1, 9);
    expect(batch.totalImpulse.si[0] / wider.totalImpulse.si).toBeCloseTo(1, 6);
    const roomier = simulate({ ...motor, chamber: { innerDiameter: '50 mm', length: '132 mm' } });
    expect(batch.totalImpulse.si[1] / roomier.totalImpulse.si).toBeCloseTo(1, 9);
    expect(batch.totalImpulse.si[2]).toBeLessThan(batch.totalImpulse.si[1]);
  });

  it('temperatures and flawed grains are variations like any other', async () => {
    const propellant = {
      ...motor.propellant,
      law: {
        ...motor.propellant.law,
        temperatureSensitivity: quantity('temperature sensitivity', '0.002 1/K'),
      },
    };
    const tube = internalTube({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '85 mm' });
    const cracked = withFlaws(tube, {
      flaws: [
        crack({
          plane: 'radial',
          angle: '0 deg',
          innerRadius: '7 mm',
          outerRadius: '18 mm',
          from: '30 mm',
          to: '50 mm',
        }),
      ],
    });
    const tubeMotor = { ...motor, propellant, grain: tube };
    const batch = await simulateMany({
      motor: tubeMotor,
      grains: [cracked],
      variations: [{}, { grainTemperature: '40 degC' }, { grainTemperature: '-10 degC' }, { grain: 1 }],
    });
    const [plain, hot, cold, flawed] = batch.peakPressure.si;
    expect(hot).toBeGreaterThan(plain);
    expect(cold).toBeLessThan(plain);
    expect(flawed).toBe(simulate({ ...tubeMotor, grain: cracked }).peakPressure.si);
    // 19 K above the 21 °C of the law: π_K = σ_p / (1 − n), Sutton & Biblarz 7th ed., ch. 11 (gas storage aside).
    expect(hot / plain / Math.exp((0.002 * 19) / 0.68)).toBeCloseTo(1, 2);
  });

  it('the same seed gives the same motors, and more of them leaves the first as they were', async () => {
    const few = await simulateMany({ motor, variations: scatter(20) });
    const more = await simulateMany({ motor, variations: scatter(30) });
    expect(more.peakPressure.si.subarray(0, 20)).toEqual(few.peakPressure.si);
    const other = await simulateMany({ motor, variations: { ...scatter(20), seed: 12 } });
    expect(other.peakPressure.si).not.toEqual(few.peakPressure.si);
  });

  it('tells how far it is and stops when asked', async () => {
    const seen: number[] = [];
    await simulateMany({ motor, variations: scatter(250), onProgress: (fraction) => seen.push(fraction) });
    expect(seen).toEqual([0.4, 0.8, 1]);
    const controller = new AbortController();
    const stopped = simulateMany({
      motor,
      variations: scatter(400),
      signal: controller.signal,
      onProgress: () => controller.abort(new Error('enough')),
    });
    await expect(stopped).rejects.toThrow('enough');
    await expect(simulateMany({ motor, variations: [{}], signal: AbortSignal.abort() })).rejects.toThrow();
  });

  it('says how many did not burn out and how many left the range of the law; a law that refuses is heard', async () => {
    const limited = (outside: 'extrapolate' | 'error') => ({
      ...motor,
      propellant: {
        ...motor.propellant,
        law: { ...motor.propellant.law, outside, characterised: { from: 1e5, to: 4.4e6 } },
      },
    });
    const variations = [{}, { throatDiameter: 0.9 }, { throatDiameter: 0.05 }];
    const batch = await simulateMany({ motor: limited('extrapolate'), variations });
    expect(batch.ends[2]).toBe('pressure limit');
    expect(batch.cautions.join('\n')).toMatch(
      /^1 of 3 motors ended by 'pressure limit'[\s\S]*2 of 3 motors reach/,
    );
    await expect(simulateMany({ motor: limited('error'), variations })).rejects.toThrow(
      expect.objectContaining({ code: 'out-of-range', path: 'variations.1' }),
    );
    expect((await simulateMany({ motor, variations: [{}] })).cautions).toEqual([]);
  });

  it('says that a grain temperature changes nothing where the law does not know its effect', async () => {
    const list = await simulateMany({ motor, variations: [{}, { grainTemperature: '40 degC' }] });
    expect(list.peakPressure.si[1]).toBe(list.peakPressure.si[0]);
    expect(list.cautions.join()).toMatch(/no temperature sensitivity/);
    const drawn = {
      count: 1,
      seed: 1,
      standardDeviations: {},
      grainTemperature: ['0 degC', '40 degC'],
    } as const;
    expect((await simulateMany({ motor, variations: drawn })).cautions.join()).toMatch(/no temperature/);
  });

  it('refuses a misspelt factor instead of leaving it out', async () => {
    const misspelt: object = { burnrate: 1.1 };
    await expect(simulateMany({ motor, variations: [misspelt] })).rejects.toThrow(
      expect.objectContaining({ code: 'unknown-field' }),
    );
    await expect(
      simulateMany({ motor, variations: { count: 1, seed: 1, standardDeviations: misspelt } }),
    ).rejects.toThrow(expect.objectContaining({ code: 'unknown-field' }));
    // Without its deviations every motor of the batch would be the same one.
    const spelt = { count: 2, seed: 1, standardDeviations: {}, standardDeviation: { burnRate: 0.03 } };
    await expect(simulateMany({ motor, variations: spelt })).rejects.toThrow(
      expect.objectContaining({ code: 'unknown-field', path: 'variations.standardDeviation' }),
    );
    const option: object = { onprogress: () => {} };
    await expect(simulateMany({ motor, variations: [{}], ...option })).rejects.toThrow(
      expect.objectContaining({ code: 'unknown-field', path: 'onprogress' }),
    );
  });

  it.each(['[{}, null]', '[{}, "burnRate"]'])('refuses %s for a list of variations', async (list) => {
    await expect(simulateMany({ motor, variations: JSON.parse(list) })).rejects.toThrow(
      expect.objectContaining({ path: 'variations.1' }),
    );
  });

  it.each([
    [{ variations: [{ burnRate: 0 }] }],
    [{ variations: [{ grain: 1 }] }],
    [{ variations: [{ chamberVolume: 0.5 }] }],
    [{ variations: { count: 0, seed: 1, standardDeviations: {} } }],
    [{ variations: { count: 1, seed: 1, standardDeviations: { burnRate: 0.5 } } }],
  ])('refuses %o', async (options) => {
    await expect(simulateMany({ motor, ...options })).rejects.toThrow(
      expect.objectContaining({ code: 'out-of-domain' }),
    );
  });
});

describe('many firings on threads', () => {
  const folder = mkdtempSync(join(tmpdir(), 'batch-'));
  const program = join(folder, 'batch.js');

  beforeAll(async () => {
    // Threads need built files, so the batch is built as the package is: shared chunks beside the worker's file.
    await build({
      stdin: {
        contents: `
          import { simulateMany, simulationPool } from './src/ballistics';
          import { segmentMotor } from './tests/ballistics/reference-motors';
          const motor = segmentMotor();
          const variations = ${JSON.stringify(scatter(600))};
          const pool = await simulationPool({ threads: 2 });
          const batch = await simulateMany({ motor, variations, pool });
          const again = await simulateMany({ motor, variations, pool });
          const controller = new AbortController();
          const aborted = await simulateMany({ motor, variations, pool, signal: controller.signal,
            onProgress: () => controller.abort(new Error('enough')) }).catch((error) => error.message);
          const after = await simulateMany({ motor, variations: [{}], pool });
          const own = await simulateMany({ motor, variations });
          await pool.close();
          const closed = await pool.run([], new Float64Array(0)).catch((error) => error.code);
          await simulationPool({ threads: 1 }); // left idle: must not keep the program alive
          console.log(JSON.stringify({ threads: batch.threads, own: own.threads, left: pool.threads, aborted, closed,
            after: after.count, peaks: [...batch.peakPressure.si],
            same: again.peakPressure.si.every((p, i) => p === batch.peakPressure.si[i] && p === own.peakPressure.si[i]) }));
        `,
        resolveDir: process.cwd(),
        sourcefile: 'batch.ts',
        loader: 'ts',
      },
      bundle: true,
      format: 'esm',
      platform: 'node',
      splitting: false,
      outfile: program,
      banner: {
        js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
      },
    });
    await build({
      entryPoints: ['src/ballistics/simulate-worker.ts'],
      bundle: true,
      format: 'esm',
      platform: 'node',
      outfile: join(folder, 'simulate-worker.js'),
    });
    writeFileSync(join(folder, 'package.json'), '{ "type": "module" }');
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  it('gives the bits of the plain loop, serves again, stops when asked, and lets the program end', async () => {
    const { stdout } = await promisify(execFile)(process.execPath, [program], { timeout: 50_000 });
    const seen = JSON.parse(stdout);
    const loop = await simulateMany({
      motor,
      variations: scatter(600),
      pool: await simulationPool({ threads: 0 }),
    });
    expect(seen.threads).toBe(2);
    expect(seen.own).toBeGreaterThan(0);
    expect(seen.peaks).toEqual([...loop.peakPressure.si]);
    expect(seen.same).toBe(true);
    expect(seen.aborted).toBe('enough');
    expect(seen.after).toBe(1);
    expect(seen.left).toBe(0);
    expect(seen.closed).toBe('pool-closed');
  });

  it('a CommonJS program has threads, too', async () => {
    const outfile = join(folder, 'batch.cjs');
    await build({
      stdin: {
        contents: `
          import { simulationPool } from './src/ballistics';
          simulationPool({ threads: 1 }).then((pool) => { console.log(pool.threads); return pool.close(); });
        `,
        resolveDir: process.cwd(),
        loader: 'ts',
      },
      bundle: true,
      format: 'cjs',
      platform: 'node',
      define: { 'import.meta.url': 'undefined' }, // as in the package
      outfile,
    });
    const { stdout } = await promisify(execFile)(process.execPath, [outfile], { timeout: 50_000 });
    expect(stdout.trim()).toBe('1');
  });

  it.each([
    [-1, 'out-of-domain'],
    [1.5, 'out-of-domain'],
    [Number.NaN, 'not-finite'],
    [Number.POSITIVE_INFINITY, 'not-finite'],
  ])('refuses %s threads', async (threads, code) => {
    await expect(simulationPool({ threads })).rejects.toThrow(
      expect.objectContaining({ code, path: 'threads' }),
    );
  });

  it('without the worker file there is no thread and the loop runs', async () => {
    const pool = await simulationPool({ threads: 2 });
    expect(pool.threads).toBe(0);
    const batch = await simulateMany({ motor, variations: [{}], pool });
    expect(batch.count).toBe(1);
  });
});
