import type * as z from 'zod/mini';
import { withFlaws } from '../../ballistics';
import { wireRope } from '../../structures';
import { fromSiValue, MeopError, unitOf } from '../../units';
import { type FlawPart, flawOf, flawSchema } from './flaw-schema';
import { type DocumentProblem, pathText } from './problems';
import { propellantOf } from './propellant-of';
import { propellantSchema } from './propellant-schema';
import { rawAt, rawList, rawSi } from './raw-value';
import { grainOf } from './segment-grain';
import { type SegmentPart, segmentSchema } from './segment-schema';

type Path = readonly (string | number)[];

/** Checks of propellant and grain by lower layers, and contradictions between fields. */
export function meaningProblems(json: unknown): DocumentProblem[] {
  return [
    ...lawProblems(json),
    ...propellantProblems(json),
    ...grainProblems(json),
    ...temperatureProblems(json),
    ...ignitionProblems(json),
    ...instrumentProblems(json),
    ...ropeProblems(json),
  ];
}

const problem = (json: unknown, path: Path, code: string, message: string): DocumentProblem => ({
  path: pathText(path),
  code,
  message,
  value: rawAt(json, path),
});

const law: Path = ['propellant', 'burnLaw'];

function lawProblems(json: unknown): DocumentProblem[] {
  const given = rawAt(json, law);
  if (typeof given !== 'object' || given === null || Array.isArray(given)) return [];
  const power = ['referenceRate', 'referencePressure', 'exponent'].filter(
    (field) => rawAt(given, [field]) !== undefined,
  );
  const bands = rawAt(given, ['bands']) !== undefined;
  if (bands && power.length > 0)
    return [problem(json, [...law, power[0]], 'contradiction', `mutually exclusive with bands; give one`)];
  if (bands) return [];
  return ['referenceRate', 'referencePressure', 'exponent']
    .filter((field) => !power.includes(field))
    .map((field) =>
      problem(
        json,
        [...law, field],
        'missing-field',
        'missing required field: a burn law needs referenceRate, referencePressure and exponent, or bands',
      ),
    );
}

function propellantProblems(json: unknown): DocumentProblem[] {
  const gas = ['molarMass', 'flameTemperature', 'idealCharacteristicVelocity'] as const;
  const raw = rawAt(json, ['propellant']);
  if (typeof raw !== 'object' || raw === null) return [];
  const known = gas.filter((field) => rawAt(raw, [field]) !== undefined);
  if (known.length < 2)
    return [
      problem(
        json,
        ['propellant', gas.find((field) => !known.includes(field)) ?? gas[0]],
        'missing-field',
        `missing required field: give two of ${gas.join(', ')}; the third is computed`,
      ),
    ];
  const read = propellantSchema().safeParse(raw);
  if (!read.success || lawProblems(json).length > 0) return [];
  return tried(json, ['propellant'], () => propellantOf(read.data)).map((one) =>
    one.code === 'burn-law-bands' ? { ...one, path: pathText([...law, 'bands']) } : one,
  );
}

function grainProblems(json: unknown): DocumentProblem[] {
  const schema = segmentSchema();
  const one = flawSchema();
  return rawList(json, ['grain', 'segments']).flatMap((segment, i) => {
    const at: Path = ['grain', 'segments', i];
    const sound = readSegment(schema, segment);
    if (sound === undefined) return [];
    const unfit = tried(json, at, () => grainOf(sound));
    if (unfit.length > 0) return unfit;
    const check = (raw: unknown, path: Path): DocumentProblem[] => {
      const flaw = one.safeParse(raw);
      return flaw.success ? flawProblems(json, path, sound, flaw.data) : [];
    };
    const assumed: Path = ['grain', 'assumedFlaw'];
    return [
      ...rawList(segment, ['flaws']).flatMap((flaw, k) => check(flaw, [...at, 'flaws', k])),
      ...(rawAt(json, [...assumed, 'segment']) === i + 1
        ? check(rawAt(json, [...assumed, 'flaw']), [...assumed, 'flaw'])
        : []),
    ];
  });
}

/** A segment without its flaws, which are checked one by one. */
function readSegment(schema: z.ZodMiniType<SegmentPart>, segment: unknown): SegmentPart | undefined {
  if (typeof segment !== 'object' || segment === null) return undefined;
  const { flaws: _, ...rest }: { flaws?: unknown } = { ...segment };
  const read = schema.safeParse(rest);
  return read.success ? read.data : undefined;
}

const flawProblems = (json: unknown, at: Path, segment: SegmentPart, flaw: FlawPart): DocumentProblem[] =>
  tried(json, at, () => withFlaws(grainOf(segment), flawOf(flaw)));

/** Errors of a lower layer, at the field that they name. */
function tried(json: unknown, at: Path, make: () => unknown): DocumentProblem[] {
  try {
    make();
    return [];
  } catch (error) {
    if (!(error instanceof MeopError)) throw error;
    const field =
      error.path !== undefined && rawAt(json, [...at, error.path]) !== undefined ? [error.path] : [];
    return [problem(json, [...at, ...field], error.code, error.message.replace(/^\w+: (?:\w+: )?/, ''))];
  }
}

function temperatureProblems(json: unknown): DocumentProblem[] {
  const read = (...path: Path): number | undefined => rawSi(json, path, 'temperature');
  const coldest = read('temperatureRange', 'coldest');
  const hottest = read('temperatureRange', 'hottest');
  const now = read('ambient', 'temperature');
  const found: DocumentProblem[] = [];
  if (coldest !== undefined && hottest !== undefined && coldest > hottest)
    found.push(
      problem(
        json,
        ['temperatureRange', 'hottest'],
        'contradiction',
        'must be at least the coldest temperature. Exchange the two.',
      ),
    );
  else if (now !== undefined && ((coldest ?? now) > now || (hottest ?? now) < now))
    found.push(
      problem(
        json,
        ['ambient', 'temperature'],
        'contradiction',
        'must be inside temperatureRange. Widen the range.',
      ),
    );
  return found;
}

function ignitionProblems(json: unknown): DocumentProblem[] {
  const given = (field: string): boolean => rawAt(json, ['ignition', field]) !== undefined;
  const lacking = (field: string, other: string): DocumentProblem[] =>
    given(other) && !given(field)
      ? [
          problem(
            json,
            ['ignition', field],
            'missing-field',
            `missing required field: required with ${other}`,
          ),
        ]
      : [];
  return [...lacking('igniterDuration', 'igniterMass'), ...lacking('igniterMass', 'igniterDuration')];
}

function instrumentProblems(json: unknown): DocumentProblem[] {
  const names = rawList(json, ['instruments']).map((one) => rawAt(one, ['name']));
  return names.flatMap((name, i) =>
    typeof name === 'string' && names.indexOf(name) < i
      ? [
          problem(
            json,
            ['instruments', i, 'name'],
            'contradiction',
            `must be unique; '${name}' is already used`,
          ),
        ]
      : [],
  );
}

function ropeProblems(json: unknown): DocumentProblem[] {
  const at: Path = ['stand', 'restraint', 'rope'];
  const diameter = rawSi(json, [...at, 'diameter'], 'length');
  const construction = rawAt(json, [...at, 'construction']);
  const grade = rawAt(json, [...at, 'grade']);
  if (diameter === undefined || typeof construction !== 'string' || typeof grade !== 'string') return [];
  const size = fromSiValue<'length'>(diameter, 'length', unitOf('mm'));
  return tried(json, at, () => wireRope({ diameter: size, construction, grade }));
}
