import { MeopError, type QuantityInput } from '../../units';
import { type BoltClass, boltClass, boltRetention } from '../fasteners';
import { allowable, type Material, type StrengthProperty, type StressDatum } from '../materials';
import { datumCaution } from '../materials/datum';

/** One strength in SI, with what it rests on. */
export interface Strength {
  readonly si: number;
  readonly source: string;
  readonly cautions: readonly string[];
}

/** What the parts of a joint stand. */
export interface JointStrengths {
  readonly boltShear: Strength;
  readonly boltShearYield: Strength;
  readonly boltUltimate: Strength;
  readonly boltYield: Strength;
  readonly caseBearing: Strength;
  readonly caseBearingYield: Strength;
  readonly closureBearing: Strength;
  readonly closureBearingYield: Strength;
  readonly caseShear: Strength;
  readonly caseUltimate: Strength;
  readonly caseYield: Strength;
  readonly hoopUltimate: Strength;
  readonly hoopYield: Strength;
  readonly closureShear: Strength;
}

/** A part with its temperature. */
export interface HeatedPart {
  readonly material: Material;
  readonly temperature?: QuantityInput<'temperature'> | undefined;
  readonly exposure?: QuantityInput<'time'> | undefined;
  /** Edge distance over hole diameter. */
  readonly edgeRatio: number;
}

const strength = (
  { material, temperature, exposure, edgeRatio }: HeatedPart,
  property: StrengthProperty,
  direction: 'least' | 'longitudinal' | 'transverse' = 'least',
): Strength => {
  const found = allowable({ material, property, temperature, exposure, edgeRatio, direction });
  return { si: found.value.si, source: found.source, cautions: found.cautions };
};

/** The strengths of bolts, by class, diameter and temperature. */
export function boltStrengths(
  name: string,
  diameter: QuantityInput<'length'>,
  shearPlane: 'thread' | 'root' | 'shank',
  temperature?: QuantityInput<'temperature'>,
): Pick<JointStrengths, 'boltShear' | 'boltShearYield' | 'boltUltimate' | 'boltYield'> {
  const bolt: BoltClass = boltClass(name, { diameter });
  const hot = temperature === undefined ? undefined : boltRetention({ boltClass: name, temperature });
  const fraction = hot?.fraction ?? 1;
  const of = (what: string, datum: StressDatum, part = 1): Strength => {
    const caution = datumCaution(`${what} of class ${bolt.name}`, datum);
    const source = part === 1 ? datum.source : `yield/√3 (distortion energy) of ${datum.source}`;
    return {
      si: datum.value.si * part * fraction,
      source: hot === undefined || fraction === 1 ? source : `${source}; at temperature: ${hot.source}`,
      cautions: [...(caution === undefined ? [] : [caution]), ...bolt.cautions, ...(hot?.cautions ?? [])],
    };
  };
  return {
    boltShear: of(
      'shear strength',
      shearPlane === 'shank' ? bolt.shearUltimateShank : bolt.shearUltimateThread,
    ),
    boltShearYield: of('yield', bolt.yieldStrength, 1 / Math.sqrt(3)),
    boltUltimate: of('ultimate strength', bolt.ultimateStrength),
    boltYield: of('yield', bolt.yieldStrength),
  };
}

/** The strengths of case and closure at their temperatures and edge distances. */
export function partStrengths(
  tube: HeatedPart,
  closure: HeatedPart,
): Omit<JointStrengths, 'boltShear' | 'boltShearYield' | 'boltUltimate' | 'boltYield'> {
  for (const { material } of [tube, closure])
    if (material.class !== 'metal')
      throw new MeopError(
        'out-of-domain',
        `reviewJoint: ${material.name} is of class ${String(material.class)}: the joint is worked out for ductile metals ('metal'), whose holes stretch; plastic, laminate and graphite crack at them without warning, and no mode here holds for them`,
        material === tube.material ? 'caseMaterial' : 'closureMaterial',
        { value: material.name, expected: "a material of class 'metal'" },
      );
  return {
    caseBearing: strength(tube, 'bearing ultimate'),
    caseBearingYield: strength(tube, 'bearing yield'),
    closureBearing: strength(closure, 'bearing ultimate'),
    closureBearingYield: strength(closure, 'bearing yield'),
    caseShear: strength(tube, 'shear ultimate'),
    caseUltimate: strength(tube, 'ultimate'),
    caseYield: strength(tube, 'yield'),
    hoopUltimate: strength(tube, 'ultimate', 'transverse'),
    hoopYield: strength(tube, 'yield', 'transverse'),
    closureShear: strength(closure, 'shear ultimate'),
  };
}
