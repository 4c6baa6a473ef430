import type { Material } from '../../structures';
import { allowable } from '../../structures';
import type { LifeMetal } from '../../structures/life/local-life';
import { MeopError, type Quantity } from '../../units';

/** The metal of a part for its life at a temperature, or why there is none. */
export function lifeMetal(
  material: Material,
  temperature: Quantity<'temperature'> | undefined,
): LifeMetal | string {
  const { elasticModulus, elongation, name } = material;
  if (material.class !== 'metal') return `${name} is not a ductile metal`;
  if (elasticModulus === undefined) return `${name} has no elastic modulus`;
  if (elongation === undefined) return `${name} has no elongation at fracture`;
  try {
    const strength = (property: 'yield' | 'ultimate'): number =>
      allowable({ material, property, ...(temperature && { temperature }) }).value.si;
    return {
      yieldStrength: strength('yield'),
      ultimateStrength: strength('ultimate'),
      elasticModulus: elasticModulus.value.si,
      elongation: elongation.value,
      cyclic: material.cyclic,
    };
  } catch (error) {
    if (error instanceof MeopError) return error.statement;
    throw error;
  }
}
