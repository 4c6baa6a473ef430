import type { Quantity } from '../../units';
import { type BoltClassName, boltClass, boltRetention } from '../fasteners';
import type { Material, StrengthProperty, StressDatum } from '../materials';
import { allowableOf } from '../materials/allowable';
import { datumCaution } from '../materials/datum';

/** One strength in SI with its source and cautions. */
export interface Strength {
  readonly si: number;
  readonly source: string;
  readonly cautions: readonly string[];
}

/** The strengths of the parts of a joint. */
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
  readonly temperature: Quantity<'temperature'> | undefined;
  readonly exposure: Quantity<'time'>;
  /** Edge distance/hole diameter. */
  readonly edgeRatio: number;
}

const strength = (
  part: HeatedPart,
  property: StrengthProperty,
  direction: 'least' | 'longitudinal' | 'transverse' = 'least',
): Strength => {
  const found = allowableOf({ ...part, property, direction, basis: 'minimum' });
  return { si: found.value.si, source: found.source, cautions: found.cautions };
};

/** The strengths of bolts, by class, diameter and temperature. */
export function boltStrengths(
  name: BoltClassName,
  diameter: Quantity<'length'>,
  shearPlane: 'thread' | 'root' | 'shank',
  temperature: Quantity<'temperature'> | undefined,
): Pick<JointStrengths, 'boltShear' | 'boltShearYield' | 'boltUltimate' | 'boltYield'> {
  const bolt = boltClass(name, { diameter });
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

/** The strengths of the case in bearing, which depend on its edge distance. */
export const caseBearingStrengths = (
  tube: HeatedPart,
): Pick<JointStrengths, 'caseBearing' | 'caseBearingYield'> => ({
  caseBearing: strength(tube, 'bearing ultimate'),
  caseBearingYield: strength(tube, 'bearing yield'),
});

/** The strengths of case and closure at their temperatures and edge distances. */
export function partStrengths(
  tube: HeatedPart,
  closure: HeatedPart,
): Omit<JointStrengths, 'boltShear' | 'boltShearYield' | 'boltUltimate' | 'boltYield'> {
  return {
    ...caseBearingStrengths(tube),
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
