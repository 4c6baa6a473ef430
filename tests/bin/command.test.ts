import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  demoMotor,
  meop,
  motorJsonSchema,
  predict,
  type ReportJson,
  report,
  reportSchema,
} from '../../src/index';
import { type BuiltCommand, builtCommand } from './built-command';

let command: BuiltCommand;
const folder = mkdtempSync(join(tmpdir(), 'meop-motors-'));
beforeAll(async () => {
  command = await builtCommand();
}, 60_000);
afterAll(() => {
  command.remove();
  rmSync(folder, { recursive: true });
});

const tern = 'examples/motors/tern-54.json';
const log = 'examples/motors/tern-54-firing.csv';
const withThroat = (throatDiameter: `${number} mm` | 'wide') => {
  const motor = demoMotor();
  return JSON.stringify({ ...motor, nozzle: { ...motor.nozzle, throatDiameter } });
};
const lines = (out: string): ReportJson[] =>
  out
    .trim()
    .split('\n')
    .map((line) => reportSchema.parse(JSON.parse(line)));

describe('the command', () => {
  test('predicts what the library predicts, from a file or from standard input', () => {
    const expected = report(predict(demoMotor()));
    const fromFile = command.run(['predict', tern]);
    expect(fromFile).toEqual({ code: 0, out: expected, err: '' });
    expect(command.run(['predict'], readFileSync(tern, 'utf8'))).toEqual(fromFile);
    expect(command.run(['predict', '-'], readFileSync(tern, 'utf8'))).toEqual(fromFile);
  });

  test('reads one motor a line and writes one line each, in order', () => {
    const input = [withThroat('10.2 mm'), '', withThroat('10.6 mm'), withThroat('11 mm')].join('\n');
    const { code, out, err } = command.run(['predict', '--json'], input);
    expect([code, err]).toEqual([0, '']);
    const peaks = lines(out).map(({ summary }) => summary['peak pressure, absolute'].value ?? 0);
    expect(peaks.length).toBe(3);
    expect(peaks[0]).toBeGreaterThan(peaks[1]);
    expect(peaks[1]).toBeGreaterThan(peaks[2]);
    expect(peaks[1]).toBe(predict(JSON.parse(withThroat('10.6 mm'))).peakPressure.in('MPa'));
  });

  test('a motor with problems takes its own line, the others are done, and the exit code is 1', () => {
    const input = [withThroat('10.2 mm'), withThroat('wide'), withThroat('11 mm')].join('\n');
    const { code, out } = command.run(['predict', '--json'], input);
    const [first, second, third] = out.trim().split('\n');
    expect(code).toBe(1);
    expect(JSON.parse(second)).toMatchObject({
      source: 'standard input, line 2',
      error: { code: 'motor-document', message: expect.stringContaining('nozzle.throatDiameter') },
    });
    expect(lines(`${first}\n${third}`).length).toBe(2);
    const inText = command.run(['predict'], input);
    expect([inText.code, inText.err]).toEqual([1, expect.stringContaining('standard input, line 2')]);
  });

  test('finds MEOP', () => {
    const [found] = lines(command.run(['pressure', '--json', tern]).out);
    expect(found.summary.MEOP.value).toBe(meop(demoMotor()).pressure.in('MPa'));
  });

  test('reviews, with the firing where a log is given', () => {
    const plain = command.run(['review', '--json', tern]);
    const both = command.run(['review', '--json', '--log', log, tern]);
    expect([plain.code, both.code]).toEqual([0, 0]);
    const ids = ({ out }: { out: string }) => lines(out)[0].sections.map(({ id }) => id);
    expect(ids(plain)).toContain('margins');
    expect(ids(plain)).not.toContain('recorded');
    expect(ids(both)).toEqual(expect.arrayContaining(['margins', 'recorded', 'model', 'hardware']));
  });

  test('writes the page with its plots', () => {
    const { code, out, err } = command.run(['review', '--format', 'html', tern]);
    expect([code, err]).toEqual([0, '']);
    expect(out.startsWith('<!doctype html>')).toBe(true);
    expect(out.match(/<svg /g)?.length).toBe(8); // three plots and the section, each for a wide and a narrow page
  });

  test('reduces a log with what the document knows, or with the ambient pressure alone', () => {
    const known = lines(command.run(['reduce', '--json', '--motor', tern], readFileSync(log, 'utf8')).out);
    const alone = lines(command.run(['reduce', '--json', '--ambient', '101.3 kPa', log]).out);
    const rows = ([{ sections }]: ReportJson[]) =>
      sections[0].tables[0].rows.map(({ figure }) => figure.text);
    expect(rows(known)).toContain('characteristic velocity');
    expect(rows(alone)).toContain('total impulse');
    expect(rows(alone)).not.toContain('characteristic velocity');
  });

  test('compares a log with its motor', () => {
    const { code, out } = command.run(['compare', '--motor', tern, log]);
    expect(code).toBe(0);
    expect(out).toContain('Hardware after the firing');
  });

  test('checks documents: every problem with its place, and code 1', () => {
    expect(command.run(['check', tern])).toEqual({ code: 0, out: `${tern}: no errors\n`, err: '' });
    const { code, out } = command.run(['check'], '{ "version": 2, "name": "x" }');
    expect(code).toBe(1);
    for (const path of ['case', 'nozzle', 'propellant', 'grain', 'ambient'])
      expect(out).toContain(`standard input, line 1: missing required field ${path} (`);
    expect(command.run(['check'], 'no json').out).toContain('valid JSON');
    expect(command.run(['check'], '{\n "version": 2,\n}').out).toMatch(/line 3/);
    // What only the review would refuse.
    const motor = JSON.parse(JSON.stringify(demoMotor()));
    delete motor.closures.head.layout;
    motor.closures.head.joint.engagement = '40 mm';
    expect(command.run(['check'], JSON.stringify(motor)).out).toContain(
      'closures.head.joint.engagement must be at most the thickness of the closure',
    );
  });

  test('draws a motor; of a document with errors it says why', () => {
    const { code, out } = command.run(['draw', tern]);
    expect([code, out.slice(0, 5), out.trimEnd().slice(-6)]).toEqual([0, '<svg ', '</svg>']);
    expect(command.run(['draw'], '{ "version": 2 }')).toMatchObject({ code: 1, out: '' });
    expect(command.run(['draw', tern, tern]).err).toContain('takes one motor, got 2');
  });

  test('prints an example that reviews, and the schema', () => {
    const { out } = command.run(['example']);
    expect(JSON.parse(out)).toEqual(demoMotor());
    expect(command.run(['check'], out).code).toBe(0);
    expect(JSON.parse(command.run(['schema']).out)).toEqual(JSON.parse(JSON.stringify(motorJsonSchema())));
  });

  test.each([
    [['frobnicate']],
    [['predict', '--colour']],
    [['predict', '--format', 'pdf', tern]],
    [['predict', '--log', log, tern]],
    [['compare', log]],
    [['reduce', log]],
    [['reduce', '--motor', tern, log, log]],
    [['example', tern]],
    [['check', '--format', 'csv', tern]],
    [['schema', '--format', 'html']],
  ])('does not understand %j: code 2, and says why', (args) => {
    const { code, out, err } = command.run(args);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/^meop: .+\nRun meop --help for the list of commands\.\n$/);
  });

  test('a file that is not there is code 1 without a stack, and the other motors are done', () => {
    const none = join(folder, 'none.json');
    const { code, out, err } = command.run(['predict', '--json', none, folder, tern]);
    expect(code).toBe(1);
    const [first, second, third] = out.trim().split('\n');
    expect(JSON.parse(first)).toMatchObject({ source: none, error: { code: 'no-file' } });
    expect(JSON.parse(second)).toMatchObject({ source: folder, error: { code: 'no-file' } });
    expect(reportSchema.parse(JSON.parse(third)).title).toBe('Tern-54');
    expect(err).toBe('');
    expect(command.run(['predict', none]).err).toBe(`${none}: cannot be read (file not found).\n`);
    expect(command.run(['check', none, tern])).toMatchObject({
      code: 1,
      out: expect.stringContaining(`${tern}: no errors`),
    });
    expect(command.run(['compare', '--motor', tern, none])).toMatchObject({ code: 1, out: '' });
  });

  test('a document behind a byte order mark is read', () => {
    expect(command.run(['check'], `\uFEFF${JSON.stringify(demoMotor())}`).code).toBe(0);
  });

  test('helps: every verb has a line, and help of its own', () => {
    const { code, out } = command.run(['--help']);
    expect(code).toBe(0);
    for (const verb of 'predict pressure review flaws reduce compare check draw example schema'.split(' '))
      expect(out).toMatch(new RegExp(`^ {2}${verb} +\\S`, 'm'));
    for (const verb of ['predict', 'compare'])
      expect(command.run([verb, '--help'])).toMatchObject({
        code: 0,
        out: expect.stringContaining(`meop ${verb}`),
      });
    // What a verb takes is explained, and nothing that it does not take.
    expect(command.run(['review', '--help']).out).toContain('--log LOG.csv');
    expect(command.run(['reduce', '--help']).out).toMatch(
      /--motor MOTOR.json {2}\S[\s\S]*--ambient PRESSURE {2}\S/,
    );
    expect(command.run(['example', '--help']).out).not.toContain('--format');
    expect(command.run(['check', '--help']).out).not.toContain('html');
    const { version } = JSON.parse(readFileSync('package.json', 'utf8'));
    expect(command.run(['--version']).out).toBe(`${version}\n`);
  });

  test('without a verb it runs JavaScript, with the motor in scope', () => {
    expect(command.run([], 'predict(demoMotor()).end')).toEqual({ code: 0, out: 'burned out\n', err: '' });
    expect(command.run([], "q('1 furlong')").code).toBe(1);
    expect(command.run([], "Promise.resolve(q('1 in'))")).toEqual({ code: 0, out: '1 in\n', err: '' });
    expect(
      command.run([], "Promise.reject(new MeopError({ code: 'x', problem: 'not this time' }))").err,
    ).toBe('not this time.\n');
  });

  test('a reader that has seen enough is no failure', () => {
    const shell = `"${process.execPath}" "${command.file}" review ${tern} | head -n 1`;
    expect(execFileSync('bash', ['-o', 'pipefail', '-c', shell], { encoding: 'utf8' })).toContain('Tern-54');
  });

  test('xargs fans files out over processes', () => {
    const throats = ['10 mm', '10.2 mm', '10.4 mm', '10.6 mm', '10.8 mm', '11 mm'] as const;
    for (const throat of throats)
      writeFileSync(join(folder, `${throat.slice(0, -3)}.json`), withThroat(throat));
    const shell = `ls ${folder}/*.json | xargs -P 2 -n 3 "${process.execPath}" "${command.file}" predict --json`;
    const found = lines(execFileSync('sh', ['-c', shell], { encoding: 'utf8' }));
    const peaks = found.map(({ summary }) => summary['peak pressure, absolute'].value);
    expect(new Set(peaks).size).toBe(throats.length);
  });
});
