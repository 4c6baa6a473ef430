import { MeopError, type QuantityInput, readInput } from '../../units';
import { readPositive } from '../../units/refusal';
import type { Material, MaterialName } from '../materials';
import { datumCaution } from '../materials/datum';
import { materialOf } from '../materials/library';
import { radialDisplacement } from '../shell/growth';
import { thickWallStressSi } from '../shell/thick-wall';

interface Grown {
  /** SI. */
  readonly pressure: number | undefined;
  /** SI. */
  readonly bore: number;
  readonly caseWall?: QuantityInput<'length'>;
  readonly caseMaterial?: Material | MaterialName;
  readonly caseTemperatureRise?: QuantityInput<'temperature difference'>;
}

/** Growth of a sealing bore in diameter, SI. */
export interface BoreGrowth {
  readonly si: number;
  readonly cautions: readonly string[];
}

/**
 * How much the bore opens: a thick cylinder with closed ends, since the wall at the seal carries the end thrust, far
 * from the closure that holds it back, and the expansion of a case that is hotter than its closure.
 */
export function boreGrowth({
  pressure,
  bore,
  caseWall,
  caseMaterial,
  caseTemperatureRise,
}: Grown): BoreGrowth {
  if (pressure === undefined && caseTemperatureRise === undefined) return { si: 0, cautions: [] };
  if (caseMaterial === undefined || caseWall === undefined)
    return {
      si: 0,
      cautions: [
        'caseWall and caseMaterial are not given: the growth of the bore is left out, so the gap is too small',
      ],
    };
  const record = materialOf(caseMaterial);
  const wall = readPositive('length', 'caseWall', caseWall, 'oRingGland').si;
  const { elasticModulus, poissonRatio, thermalExpansion } = record;
  const cautions: string[] = [];
  let si = 0;
  if (pressure !== undefined) {
    if (elasticModulus === undefined || poissonRatio === undefined)
      throw missing(record, 'elasticModulus and poissonRatio');
    si += 2 * lameGrowth(pressure, bore / 2, wall, elasticModulus.value.si, poissonRatio.value);
  }
  if (caseTemperatureRise !== undefined) {
    if (thermalExpansion === undefined) throw missing(record, 'thermalExpansion');
    const rise = readInput(
      'temperature difference',
      'caseTemperatureRise',
      caseTemperatureRise,
      'oRingGland',
    ).si;
    si += thermalExpansion.value.si * rise * bore;
    const note = datumCaution(`thermal expansion of ${record.name}`, { ...thermalExpansion, basis: 'S' });
    if (note !== undefined) cautions.push(note);
  }
  return { si, cautions };
}

function lameGrowth(
  pressure: number,
  inside: number,
  wall: number,
  elasticModulus: number,
  poissonRatio: number,
): number {
  const stresses = thickWallStressSi({
    pressure,
    insideRadius: inside,
    outsideRadius: inside + wall,
    radius: inside,
  });
  return radialDisplacement.si({ ...stresses, radius: inside, elasticModulus, poissonRatio });
}

function missing(record: Material, what: string): MeopError {
  return new MeopError(
    'missing-field',
    `oRingGland: caseMaterial: ${record.name} has no ${what}; add it to the material`,
    'caseMaterial',
    { value: record.name },
  );
}
