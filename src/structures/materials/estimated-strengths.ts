import { fromSiValue, MeopError, unitFor } from '../../units';
import { allowable } from './allowable';
import type { StressDatum } from './datum';
import { type MaterialName, materialOf } from './library';
import type { Material } from './material';
import { printedMaterial } from './material-text';

// No metal of the handbook tables here has less, over its tensile strength of the same kind and the same table.
const least = {
  shearUltimate: 0.49,
  bearingUltimate: { at1_5: 1.36, at2_0: 1.63 },
  bearingYield: { at1_5: 1.2, at2_0: 1.4 },
} as const;

/**
 * A metal whose certificate has only yield and ultimate strength, with the shear and bearing strengths that it lacks put in:
 * tensile strength times the least ratio of any metal here, each with a caution. What it has stays as it is.
 *
 * @throws MeopError `out-of-domain` for what is no metal, `no-allowable` where it has no minimum tensile strength
 * @example withEstimatedStrengths('6063-T6').shearUltimate?.value.in('ksi').toFixed(1) // => '14.7'
 */
export function withEstimatedStrengths(given: Material | MaterialName): Material {
  const material = materialOf(given);
  if (material.class !== 'metal')
    throw new MeopError(
      'out-of-domain',
      `withEstimatedStrengths: ${material.name} is of class ${String(material.class)}: the ratios are those of ductile metals`,
      'class',
      { value: material.class, expected: 'metal' },
    );
  const tensile = {
    ultimate: allowable({ material, property: 'ultimate' }),
    yield: allowable({ material, property: 'yield' }),
  };
  const estimate = (of: 'ultimate' | 'yield', ratio: number): StressDatum => {
    const { value, source } = tensile[of];
    return {
      value: fromSiValue(ratio * value.si, 'stress', unitFor('stress', value.unit)),
      basis: 'computed',
      provenance: 'engineering practice, no published source',
      source: `${ratio} × the ${of} strength (${source}): the least ratio of the metals in MIL-HDBK-5J that ship here`,
    };
  };
  const bearing = (of: 'ultimate' | 'yield', ratios: { readonly at1_5: number; readonly at2_0: number }) => ({
    at1_5: estimate(of, ratios.at1_5),
    at2_0: estimate(of, ratios.at2_0),
  });
  return printedMaterial({
    ...material,
    shearUltimate: material.shearUltimate ?? estimate('ultimate', least.shearUltimate),
    bearingUltimate: material.bearingUltimate ?? bearing('ultimate', least.bearingUltimate),
    bearingYield: material.bearingYield ?? bearing('yield', least.bearingYield),
  });
}
