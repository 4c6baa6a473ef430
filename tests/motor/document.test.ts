import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  demoMotor,
  type MotorDocument,
  migrateMotorDocument,
  motorJsonSchema,
  motorProblems,
  motorSchema,
  parseMotor,
  review,
  reviewProblems,
} from '../../src/motor';
import { q } from '../../src/units';
import { errorOf } from '../error-code';

const fresh = (): Record<string, never> => JSON.parse(JSON.stringify(demoMotor()));
const at = (path: string, change: (owner: Record<string, unknown>, key: string) => void): unknown => {
  const json: Record<string, unknown> = fresh();
  const keys = path.split('.');
  const last = keys.pop() ?? '';
  let owner = json;
  for (const key of keys) owner = owner[key] as Record<string, unknown>;
  change(owner, last);
  return json;
};
const set = (path: string, value: unknown): unknown => at(path, (owner, key) => (owner[key] = value));
const problem = (json: unknown, path: string) => motorProblems(json).find((one) => one.path === path);

describe('a motor document', () => {
  test('round-trips: what is written reads to the same document, bit for bit', () => {
    const motor = parseMotor(demoMotor());
    const text = JSON.stringify(motor);
    expect(JSON.stringify(parseMotor(text))).toBe(text);
    expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(demoMotor())));
  });

  test('takes quantities where it takes texts, and writes them as texts that read to the same bits', () => {
    const given = demoMotor();
    const length = q('1/3 m');
    const { closures: _, ...open } = given; // the layouts of its closures leave another length
    const motor = parseMotor({ ...open, case: { ...open.case, chamberLength: length } });
    expect(motor.case.chamberLength.value.si).toBe(length.si);
    expect(parseMotor(JSON.stringify(motor)).case.chamberLength.value.si).toBe(length.si);
  });

  test('the motors in examples/ read without a problem, and the sound one is the demo motor', () => {
    for (const name of ['tern-54', 'tern-54-cracked', 'plover-50']) {
      const text = readFileSync(`examples/motors/${name}.json`, 'utf8');
      expect(motorProblems(text), name).toEqual([]);
    }
    const { $schema: _, ...sound } = JSON.parse(readFileSync('examples/motors/tern-54.json', 'utf8'));
    expect(sound).toEqual(JSON.parse(JSON.stringify(demoMotor())));
  });

  test('motorSchema is a zod schema', () => {
    expect(motorSchema.safeParse(demoMotor()).success).toBe(true);
    expect(motorSchema.safeParse({}).success).toBe(false);
  });

  test('tolerances are absolute or in per cent of the value', () => {
    const motor = parseMotor(demoMotor());
    // 4 % of 7.2 mm/s and 0.05 mm, as the document says.
    const { referenceRate } = motor.propellant.burnLaw;
    expect(referenceRate?.plusMinus).toBeCloseTo(0.04 * 7.2e-3, 12);
    expect(motor.nozzle.throatDiameter.plusMinus).toBeCloseTo(5e-5, 15);
    expect(motor.nozzle.exitDiameter.plusMinus).toBe(0);
  });
});

describe('problems of a document', () => {
  test('are all reported at once, each with its path, and parseMotor lists them in one error', () => {
    const json = JSON.parse(JSON.stringify(demoMotor()));
    json.case.wall = '2.4';
    json.nozle = 1;
    delete json.nozzle.throatDiameter;
    json.propellant.burnLaw.exponent = 1.2;
    json.ambient.pressure = '0 psig';
    json.grain.segments[0].shape = 'tubular segmnt';
    json.closures.head.joint.thread = 'M5.5';
    const paths = motorProblems(json).map(({ path }) => path);
    expect(paths.sort()).toEqual(
      [
        'ambient.pressure',
        'case.wall',
        'closures.head.joint.thread',
        'grain.segments[0].shape',
        'nozle',
        'nozzle.throatDiameter',
        'propellant.burnLaw.exponent',
      ].sort(),
    );
    const error = errorOf(() => parseMotor(json));
    expect(error?.code).toBe('motor-document');
    for (const { path, message } of motorProblems(json)) {
      expect(message).toContain(path);
      expect(error?.message).toContain(`  ${message}`);
    }
    expect(error?.given).toEqual(motorProblems(json));
  });

  test.each([
    ['case.wall', '40 mm', 'does-not-fit'],
    ['case.chamberLength', '500 mm', 'does-not-fit'],
    ['liner.thickness', '30 mm', 'does-not-fit'],
    ['nozzle.exitDiameter', '5 mm', 'does-not-fit'],
    ['nozzle.insert.outsideDiameter', '5 mm', 'does-not-fit'],
    ['grain.segments.0.outerDiameter', '50 mm', 'does-not-fit'],
    ['grain.segments.0.boreDiameter', '49 mm', 'does-not-fit'],
    ['grain.assumedFlaw.segment', 2, 'does-not-fit'],
    ['grain.assumedFlaw.flaw.outerRadius', '5 mm', 'grain-measure'],
    ['closures.head.joint.edgeDistance', '2 mm', 'does-not-fit'],
    ['closures.head.joint.holeDiameter', '4 mm', 'does-not-fit'],
    ['closures.head.joint.count', 60, 'does-not-fit'],
    ['closures.aft.seals.0.closureDiameter', '51.1 mm', 'does-not-fit'],
    ['closures.aft.seals.0.grooveDiameter', '51 mm', 'does-not-fit'],
    ['temperatureRange.hottest', '-5 degC', 'contradiction'],
    ['ambient.temperature', '60 degC', 'contradiction'],
    ['case.material', '6061-T7', 'unknown-name'],
    ['version', 7, 'newer-document'],
    ['nozzle.throatDiameter', '1e30 m', 'out-of-domain'],
    ['nozzle.throatDiameter', -1, 'bare-number'],
    ['propellant.molarMass', '60 g', 'wrong-kind'],
  ])('%s: %s is refused as %s', (path, value, code) => {
    const json = set(path, value);
    const written = path.replace(/\.(\d+)(?=\.|$)/g, '[$1]');
    expect(problem(json, written)?.code, JSON.stringify(motorProblems(json))).toBe(code);
  });

  test('a misspelled field is named with the one that was meant', () => {
    const json = at('nozzle.throatDiameter', (owner) => {
      owner.throatDiamter = owner.throatDiameter;
    });
    expect(problem(json, 'nozzle.throatDiamter')?.message).toContain("did you mean 'throatDiameter'?");
  });

  test('two of molar mass, flame temperature and c* are needed, and a third must agree', () => {
    const one = at('propellant.molarMass', (owner, key) => delete owner[key]);
    expect(problem(one, 'propellant.molarMass')?.code).toBe('missing-field');
    const three = set('propellant.idealCharacteristicVelocity', '1500 m/s');
    expect(problem(three, 'propellant.idealCharacteristicVelocity')?.code).toBe('inconsistent');
  });
});

describe('version and JSON Schema', () => {
  test('older documents are migrated step by step, newer ones refused', () => {
    const steps = {
      1: (old: Readonly<Record<string, unknown>>) => ({ ...old, second: true }),
      2: (old: Readonly<Record<string, unknown>>) => ({ ...old, third: true }),
    };
    expect(migrateMotorDocument({ version: 1 }, steps, 3)).toEqual({ version: 3, second: true, third: true });
    expect(migrateMotorDocument({ version: 3 }, steps, 3)).toEqual({ version: 3 });
    expect(motorProblems(set('version', 3))[0]?.code).toBe('newer-document');
    expect(
      problem(
        at('version', (owner, key) => delete owner[key]),
        'version',
      )?.code,
    ).toBe('missing-field');
  });

  test('the JSON Schema that ships is the one that zod makes', () => {
    const shipped = JSON.parse(readFileSync('schema/motor.schema.json', 'utf8'));
    expect(shipped).toEqual(JSON.parse(JSON.stringify(motorJsonSchema())));
    expect(shipped.required).toEqual(['version', 'name', 'case', 'nozzle', 'propellant', 'grain', 'ambient']);
  });

  test('a typed literal is checked by the compiler', () => {
    const literal: MotorDocument['nozzle'] = {
      throatDiameter: { value: '9.6 mm', plusMinus: '0.05 mm' },
      exitDiameter: '1 in',
    };
    // @ts-expect-error a length is not a pressure
    const wrong: MotorDocument['nozzle'] = { throatDiameter: '9.6 psi', exitDiameter: '24 mm' };
    expect(literal).not.toEqual(wrong);
  });
});

describe('slips that would pass for a motor', () => {
  // Each would give a pressure that is too low, or a margin that is too good, without a word.
  test.each([
    ['ambient.pressure', '101.3 MPaa', 'kPa'],
    ['ambient.temperature', '20 K', '°C'],
    ['temperatureRange.hottest', '40 K', '°C'],
    ['propellant.density', '1.75 kg/m^3', 'kg/m^3'],
    ['propellant.density', '17500 kg/m^3', 'kg/m^3'],
    ['propellant.burnLaw.referenceRate', '7.2 m/s', 'mm/s'],
    ['propellant.burnLaw.referenceRate', '7.2 um/s', 'mm/s'],
    ['propellant.burnLaw.temperatureSensitivity', '0.12 1/K', '1/K'],
    ['propellant.molarMass', '39.9 kg/mol', 'g/mol'],
    ['propellant.flameTemperature', '160 K', 'K'],
    ['propellant.gamma', 11.36, 'at most'],
    ['propellant.idealDensity', '1500 kg/m^3', 'density as cast'],
    ['closures.aft.opening', '60 mm', 'bore of the case'],
    ['closures.head.joint.edgeDistance', '100 mm', 'beyond the chamber'],
  ])('%s of %s', (path, value, says) => {
    expect(problem(set(path, value), path)?.message).toContain(says);
  });

  test('fins and slots that reach through the wall', () => {
    const segment = { outerDiameter: '48 mm', boreDiameter: '16 mm', length: '300 mm' };
    const fins = { shape: 'finocyl', ...segment, fins: 4, finThickness: '3 mm', finTipDiameter: '50 mm' };
    const slots = { shape: 'slotted tube', ...segment, slots: 4, slotWidth: '3 mm', slotDiameter: '50 mm' };
    const both = set('grain', { segments: [fins, slots] });
    expect(problem(both, 'grain.segments[0].finTipDiameter')?.code).toBe('does-not-fit');
    expect(problem(both, 'grain.segments[1].slotDiameter')?.code).toBe('does-not-fit');
  });
});

describe('what a newcomer is told', () => {
  test('how a coefficient and an exponent are written', () => {
    const json = set('propellant.burnLaw', { a: 8.3, n: 0.3, source: 'a test' });
    expect(problem(json, 'propellant.burnLaw.a')?.message).toContain(
      "referenceRate 'a mm/s' at referencePressure '1 MPaa'",
    );
    expect(problem(json, 'propellant.burnLaw.n')?.message).toContain("'exponent'");
  });

  test('which fields a missing part needs, and which it may have', () => {
    const json = at('nozzle', (owner, key) => delete owner[key]);
    expect(problem(json, 'nozzle')?.message).toMatch(/throatDiameter, exitDiameter and optionally div/);
  });

  test('what a number without a unit should look like in this field', () => {
    expect(problem(set('ambient.temperature', 20), 'ambient.temperature')?.message).toContain('20 degC');
    expect(problem(set('propellant.density', 1750), 'propellant.density')?.message).toContain('kg/m^3');
  });

  test('what a material of one’s own looks like in a document', () => {
    const { message } = problem(set('case.material', '6061-t6 pipe'), 'case.material') ?? {};
    expect(message).toContain('an object with name, form, class');
    expect(message).not.toContain('type Material');
  });

  test('problems in the order of the document, and where a text is no JSON', () => {
    const json = { version: 2, name: 'x', case: {}, propellant: { burnLaw: {} }, grain: { segments: [{}] } };
    const order = ['case', 'nozzle', 'propellant', 'grain', 'ambient'];
    const parts = motorProblems(json).map(({ path }) => order.indexOf(path.split(/[.[]/, 1)[0]));
    expect(parts).toEqual([...parts].sort((a, b) => a - b));
    expect(motorProblems('{\n  "version": 2,\n}')[0].message).toContain('line 3');
    expect(problem(set('version', '1'), 'version')?.message).toContain(
      'must be 2 (document version), got "1"',
    );
  });
});

describe('reviewProblems', () => {
  test('finds what only the checks of a part refuse, each at its place', () => {
    const json = JSON.parse(JSON.stringify(demoMotor()));
    delete json.closures.head.layout; // with it the engagement is refused when the document is read
    json.closures.head.joint.engagement = '40 mm';
    json.case.wallTemperature = '900 degC';
    expect(motorProblems(json)).toEqual([]);
    const paths = reviewProblems(json).map(({ path }) => path);
    expect(paths).toContain('closures.head.joint.engagement');
    expect(paths).toContain('case.wallTemperature');
    expect(() => review(json)).toThrow(/closures\.head\.joint\.engagement/);
  });
});

test('the document of the how-to is sound, and its review says what nobody described', () => {
  const page = readFileSync('docs/how-to/review.md', 'utf8');
  const [, json = ''] = /```json\n([\s\S]+?)```/.exec(page) ?? [];
  expect(motorProblems(json)).toEqual([]);
  expect(reviewProblems(JSON.parse(json))).toEqual([]);
  expect(String(review(JSON.parse(json)))).toContain('closures.head not specified');
});
