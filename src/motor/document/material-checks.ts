import { allowable, type Material, type StrengthProperty } from '../../structures';
import { MeopError, procedure } from '../../units';
import { motorSubject } from './motor-subject';
import type { Motor } from './parse-motor';
import { type DocumentProblem, givenAt, type Path, problemOf } from './problems';

const methods = ['joint', 'retainingRing', 'thread', 'axialBolts'] as const;
const ofTube: readonly StrengthProperty[] = ['yield', 'ultimate'];
const bolted: readonly StrengthProperty[] = ['bearing yield', 'bearing ultimate', 'shear ultimate'];
/** By the retention of the closure. */
const ofCase = {
  joint: bolted,
  retainingRing: ['shear ultimate'],
  thread: ['shear ultimate'],
  axialBolts: ['shear ultimate'],
} as const;
const ofClosure = {
  joint: bolted,
  retainingRing: [],
  thread: ['yield', 'shear ultimate'],
  axialBolts: ['yield'],
} as const;

const fieldOf: Readonly<Partial<Record<StrengthProperty, string>>> = {
  yield: 'yieldStrength',
  ultimate: 'ultimateStrength',
  'bearing yield': 'bearingYield',
  'bearing ultimate': 'bearingUltimate',
  'shear ultimate': 'shearUltimate',
};

/**
 * A prediction does without these strengths, so that they are not problems of the document as such.
 *
 * @example strengthProblems(demoMotor()).length // => 0
 */
export const strengthProblems = /* @__PURE__ */ procedure({
  name: 'strengthProblems',
  title: 'Strengths that the review of a motor requires and its materials lack',
  source: 'The strengths that the margins of case, closures and retention use',
  subject: motorSubject,
  inputs: {},
  gives: 'one entry for each strength that a material of case or closures lacks',
  example: 'strengthProblems(demoMotor())',
  run: strengthsLacking,
});

function strengthsLacking({ case: tube, closures = {}, document }: Motor): readonly DocumentProblem[] {
  const ends = (['head', 'aft'] as const).flatMap((end) => {
    const closure = closures[end];
    const method = methods.find((field) => closure?.[field] !== undefined);
    return closure === undefined || method === undefined ? [] : [{ end, closure, method }];
  });
  const required = new Set([
    ...ofTube,
    ...ends.flatMap(({ method }): readonly StrengthProperty[] => ofCase[method]),
  ]);
  const part = (owner: Owner, at: Path, hot: string, properties: readonly StrengthProperty[]) => [
    ...properties.flatMap((property) => lacking(document, owner.material, [...at, 'material'], property)),
    ...(owner.temperature === undefined ? [] : heatProblem(document, owner.material, [...at, hot])),
  ];
  return [
    ...part({ ...tube, temperature: tube.wallTemperature }, ['case'], 'wallTemperature', [...required]),
    ...ends.flatMap(({ end, closure, method }) =>
      part(closure, ['closures', end], 'temperature', ofClosure[method]),
    ),
  ];
}

interface Owner {
  readonly material: Material;
  readonly temperature?: unknown;
}

/** A strength that the review requires and a material does not have. */
function lacking(
  document: unknown,
  material: Material,
  path: Path,
  property: StrengthProperty,
): readonly DocumentProblem[] {
  try {
    allowable({ material, property, edgeRatio: 2 });
    return [];
  } catch (error) {
    if (!(error instanceof MeopError) || error.code !== 'no-allowable') throw error;
    const field = fieldOf[property] ?? property;
    const given = givenAt(document, path);
    const problem = new MeopError({
      code: 'no-allowable',
      given,
      problem: `${material.name} has no minimum value of ${property}, which the review requires`,
      remedy: `Add ${property.startsWith('bearing') ? `${field}.at2_0` : field} with basis A, B, S or specified minimum, or use another material`,
    });
    return [problemOf(problem, typeof given === 'object' ? [...path, field] : path)];
  }
}

/** A temperature for a material whose strength at elevated temperature is not known. */
function heatProblem(document: unknown, material: Material, path: Path): readonly DocumentProblem[] {
  if (material.atTemperature !== undefined) return [];
  const problem = new MeopError({
    code: 'missing-data',
    given: givenAt(document, path),
    problem: `the strength of ${material.name} at elevated temperature is not known`,
    remedy:
      'Use a material with its temperature curve, or give strengths at temperature and leave this field out',
  });
  return [problemOf(problem, path)];
}
