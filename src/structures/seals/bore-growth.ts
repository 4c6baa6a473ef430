import { MeopError, type Quantity } from '../../units';
import type { Material } from '../materials';
import { datumCaution } from '../materials/datum';
import { radialDisplacement } from '../shell/growth';
import { thickWallStressSi } from '../shell/thick-wall';

interface Grown {
  readonly pressure: Quantity<'gauge pressure'> | undefined;
  /** Diameter [m]. */
  readonly bore: number;
  readonly caseWall: Quantity<'length'> | undefined;
  readonly caseMaterial: Material | undefined;
  readonly caseTemperatureRise: Quantity<'temperature difference'> | undefined;
}

/** Growth of a sealing bore in diameter, SI. */
export interface BoreGrowth {
  readonly si: number;
  readonly cautions: readonly string[];
}

/**
 * Growth of the bore: that of a thick cylinder with closed ends, since the wall at the seal carries the end thrust far
 * from the closure, and the thermal expansion of a case that is hotter than its closure.
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
        'caseWall and caseMaterial not specified; the growth of the bore is neglected, so the computed gap is too small.',
      ],
    };
  const { elasticModulus, poissonRatio, thermalExpansion } = caseMaterial;
  const cautions: string[] = [];
  let si = 0;
  if (pressure !== undefined) {
    if (elasticModulus === undefined || poissonRatio === undefined)
      throw missing(caseMaterial, 'elasticModulus and poissonRatio');
    si += 2 * lameGrowth(pressure.si, bore / 2, caseWall.si, elasticModulus.value.si, poissonRatio.value);
  }
  if (caseTemperatureRise !== undefined) {
    if (thermalExpansion === undefined) throw missing(caseMaterial, 'thermalExpansion');
    si += thermalExpansion.value.si * caseTemperatureRise.si * bore;
    const note = datumCaution(`thermal expansion of ${caseMaterial.name}`, {
      ...thermalExpansion,
      basis: 'S',
    });
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
  return new MeopError({
    code: 'missing-field',
    procedure: 'oRingGland',
    path: 'caseMaterial',
    given: record.name,
    problem: `${record.name} has no ${what}`,
    remedy: 'Add it to the material',
  });
}
