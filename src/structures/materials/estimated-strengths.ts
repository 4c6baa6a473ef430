import { fromSiValue, MeopError, named, procedure, unitFor } from '../../units';
import { allowable } from './allowable';
import type { StressDatum } from './datum';
import type { Material } from './material';
import { materials } from './material-table';
import { printedMaterial } from './material-text';

// No metal of the handbook tables here has less, over its tensile strength of the same kind and the same table.
const least = {
  shearUltimate: 0.49,
  bearingUltimate: { at1_5: 1.36, at2_0: 1.63 },
  bearingYield: { at1_5: 1.2, at2_0: 1.4 },
} as const;

/**
 * Tensile strength times the minimum ratio of any metal of the library, each value with a caution. Values that the material
 * has remain unchanged.
 *
 * @throws MeopError `out-of-domain` for a material other than a metal, `no-allowable` where it has no minimum tensile strength
 * @example withEstimatedStrengths('6063-T6').shearUltimate?.value.in('ksi').toFixed(1) // => '14.7'
 */
export const withEstimatedStrengths = /* @__PURE__ */ procedure({
  name: 'withEstimatedStrengths',
  title: 'Shear and bearing strengths estimated from the tensile strengths of a metal',
  source:
    'minimum ratios of the metals of MIL-HDBK-5J in this library (engineering practice, no published source)',
  subject: named('metal whose certificate has only yield and ultimate strength', materials),
  inputs: {},
  gives: 'the material with its missing shear and bearing strengths',
  example: "withEstimatedStrengths('6063-T6')",
  run: (material): Material => estimated(material),
});

function estimated(material: Material): Material {
  if (material.class !== 'metal')
    throw new MeopError({
      code: 'out-of-domain',
      procedure: 'withEstimatedStrengths',
      path: 'class',
      given: material.class,
      expected: "'metal'",
      remedy: 'The ratios are those of ductile metals',
    });
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
      source: `${ratio} × the ${of} strength (${source}): the minimum ratio of the metals of MIL-HDBK-5J in this library`,
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
