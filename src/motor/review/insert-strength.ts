import type { BrittleStrength } from '../../structures/retention/insert-modes';
import type { Insert } from '../document/nozzle-inputs';

/** Factor on a typical strength of graphite, whose grades differ by a factor of two (engineering practice, no published source). */
const typicalFactor = 4;

/**
 * A strength of the material of an insert: from the certificate of the block, or the minimum of its typical range with a
 * factor of at least 4. Undefined where neither is known.
 */
export function insertStrength(
  { material, tensileStrength, compressiveStrength }: Insert,
  kind: 'tensile' | 'compressive',
  ultimateFactor: number,
): BrittleStrength | undefined {
  const certified = kind === 'tensile' ? tensileStrength : compressiveStrength;
  if (certified !== undefined)
    return {
      si: certified.value.si,
      factor: ultimateFactor,
      source: 'the document: certificate of the block',
      cautions: [],
    };
  const range =
    kind === 'tensile' ? material.typical?.tensileStrength : material.typical?.compressiveStrength;
  if (range === undefined) return undefined;
  const factor = Math.max(ultimateFactor, typicalFactor);
  return {
    si: range.min.value.si,
    factor,
    source: range.min.source,
    cautions: [
      `The ${kind} strength of ${material.name} is the minimum of a supplier's typical range and is not an allowable. A factor of ${factor} is applied. Specify nozzle.insert.${kind}Strength from the certificate of the block.`,
    ],
  };
}
