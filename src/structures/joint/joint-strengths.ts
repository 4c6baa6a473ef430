import { MeopError, type QuantityInput } from '../../units';
import { type BoltClass, boltClass } from '../fasteners';
import {
  allowable,
  datumCaution,
  type Material,
  type StrengthProperty,
  type StressDatum,
} from '../materials';

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

const ofDatum = (what: string, datum: StressDatum, part = 1): Strength => {
  const caution = datumCaution(what, datum);
  return {
    si: datum.value.si * part,
    source: part === 1 ? datum.source : `yield/√3 (distortion energy) of ${datum.source}`,
    cautions: caution === undefined ? [] : [caution],
  };
};

/** The strengths of bolts, by class and diameter. */
export function boltStrengths(
  name: string,
  diameter: QuantityInput<'length'>,
  shearPlane: 'thread' | 'root' | 'shank',
): Pick<JointStrengths, 'boltShear' | 'boltShearYield' | 'boltUltimate' | 'boltYield'> {
  const bolt: BoltClass = boltClass(name, { diameter });
  const shear = shearPlane === 'shank' ? bolt.shearUltimateShank : bolt.shearUltimateThread;
  return {
    boltShear: ofDatum(`shear strength of class ${bolt.name}`, shear),
    boltShearYield: ofDatum(`yield of class ${bolt.name}`, bolt.yieldStrength, 1 / Math.sqrt(3)),
    boltUltimate: ofDatum(`ultimate strength of class ${bolt.name}`, bolt.ultimateStrength),
    boltYield: ofDatum(`yield of class ${bolt.name}`, bolt.yieldStrength),
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
        `reviewJoint: ${material.name} is a ${material.class}: the joint is worked out for metals that yield`,
        material === tube.material ? 'caseMaterial' : 'closureMaterial',
        { value: material.name, expected: 'a metal' },
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
