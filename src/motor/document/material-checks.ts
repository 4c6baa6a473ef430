import * as z from 'zod/mini';
import { allowable, type Material, type StrengthProperty } from '../../structures';
import { MeopError } from '../../units';
import { materialField } from './material-field';
import type { MotorInput } from './parse-motor';
import { type DocumentProblem, pathText } from './problems';
import { rawAt } from './raw-value';

type Path = readonly (string | number)[];

const ofTube: readonly StrengthProperty[] = ['yield', 'ultimate'];
const bolted: readonly StrengthProperty[] = ['bearing yield', 'bearing ultimate', 'shear ultimate'];
/** Strengths required by each retention. */
const ofCase = { joint: bolted, retainingRing: ['shear ultimate'], thread: ['shear ultimate'] } as const;
const ofClosure = { joint: bolted, retainingRing: [], thread: ['yield', 'shear ultimate'] } as const;

const fieldOf: Readonly<Partial<Record<StrengthProperty, string>>> = {
  yield: 'yieldStrength',
  ultimate: 'ultimateStrength',
  'bearing yield': 'bearingYield',
  'bearing ultimate': 'bearingUltimate',
  'shear ultimate': 'shearUltimate',
};

/**
 * Lists strengths that a review requires and that the materials of case and closures lack. A prediction does not
 * require them, so that they are not errors of the document.
 *
 * @example strengthProblems(demoMotor()).length // => 0
 */
export function strengthProblems(input: MotorInput): readonly DocumentProblem[] {
  const json: unknown = JSON.parse(JSON.stringify(input));
  const ends = (['head', 'aft'] as const).flatMap((end) => {
    const held = (['joint', 'retainingRing', 'thread'] as const).find(
      (field) => rawAt(json, ['closures', end, field]) !== undefined,
    );
    return held === undefined ? [] : [{ end, held }];
  });
  const wanted = new Set([
    ...ofTube,
    ...ends.flatMap(({ held }): readonly StrengthProperty[] => ofCase[held]),
  ]);
  return [
    ...lacking(json, ['case', 'material'], [...wanted]),
    ...heatProblems(json, ['case', 'material'], ['case', 'wallTemperature']),
    ...ends.flatMap(({ end, held }) => [
      ...lacking(json, ['closures', end, 'material'], ofClosure[held]),
      ...heatProblems(json, ['closures', end, 'material'], ['closures', end, 'temperature']),
    ]),
  ];
}

function materialAt(json: unknown, path: Path): Material | undefined {
  const raw = rawAt(json, path);
  const read = raw === undefined ? undefined : z.safeParse(materialField('a material'), raw);
  return read?.success ? read.data : undefined;
}

function lacking(json: unknown, path: Path, wanted: readonly StrengthProperty[]): DocumentProblem[] {
  const material = materialAt(json, path);
  if (material === undefined) return [];
  return wanted.flatMap((property): DocumentProblem[] => {
    try {
      allowable({ material, property, edgeRatio: 2 });
      return [];
    } catch (error) {
      if (!(error instanceof MeopError) || error.code !== 'no-allowable') throw error;
      const field = fieldOf[property] ?? property;
      const inPart = property.startsWith('bearing') ? `${field}.at2_0` : field;
      return [
        {
          path: pathText([...path, ...(typeof rawAt(json, path) === 'object' ? [field] : [])]),
          code: 'no-allowable',
          message: `${material.name} has no minimum value of ${property}, which the review requires. Add ${inPart} with basis A, B, S or specified minimum, or use another material.`,
          value: rawAt(json, path),
        },
      ];
    }
  });
}

/** A temperature for a material without strength data at elevated temperature. */
function heatProblems(json: unknown, path: Path, temperature: Path): DocumentProblem[] {
  const given = rawAt(json, temperature);
  const material = given === undefined ? undefined : materialAt(json, path);
  return material === undefined || material.atTemperature !== undefined
    ? []
    : [
        {
          path: pathText(temperature),
          code: 'missing-data',
          message: `the strength of ${material.name} at elevated temperature is not known. Use a material with its temperature curve, or give strengths at temperature and omit this field.`,
          value: given,
        },
      ];
}
