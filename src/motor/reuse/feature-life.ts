import { type LifeMetal, type LocalLife, localLife } from '../../structures/life/local-life';
import { fromSiValue, unitOf } from '../../units';
import { type Pressurisation, timesOf } from './cycles-seen';
import type { LifeFeature } from './life-features';
import { lifeMetal } from './life-metal';
import type { FeatureLife } from './reuse-result';

/** The life of a feature with what the ledger used of it, or why it is not estimated. */
export function featureLife(
  feature: LifeFeature,
  meop: number,
  seen: readonly Pressurisation[],
): FeatureLife | string {
  const { part, margin, material, notchFactor, basis, isBound } = feature;
  const hot = lifeMetal(material, margin.temperature);
  const cold = lifeMetal(material, undefined);
  if (typeof hot === 'string') return hot;
  if (typeof cold === 'string') return cold;
  const { applied, allowable, failurePressure } = margin;
  // A mode without any strength, such as bearing with no credit at a short edge, fails at zero pressure.
  const perPressure =
    failurePressure !== undefined && failurePressure.si > 0
      ? allowable.si / failurePressure.si
      : applied.si / meop;
  const nominalAt = (pressure: number): number => perPressure * pressure;
  // Bearing has its own yield strength, above that of the section: the local stress alone counts.
  const lifeAt = (pressure: number, metal: LifeMetal): LocalLife => {
    const nominal = nominalAt(pressure);
    const carried = isBound ? Math.min(nominal, metal.yieldStrength) : nominal;
    return localLife(carried, (notchFactor * nominal) / carried, metal);
  };
  const { verdict, localStress, cyclesToFailure, allowedCycles } = lifeAt(meop, hot);
  // Each pressurisation uses its share of the life at its own pressure (Miner); a proof test is cold.
  const used = seen.reduce((total, entry) => {
    const { allowedCycles: allowed } = lifeAt(entry.pressure.value.si, entry.kind === 'proof' ? cold : hot);
    return total + timesOf(entry) / allowed;
  }, 0);
  const stress = (si: number) => fromSiValue<'stress'>(si, 'stress', unitOf('MPa'));
  return {
    part,
    feature: feature.feature,
    mode: margin.id,
    nominal: stress(nominalAt(meop)),
    notchFactor,
    basis: material.cyclic === undefined ? basis : `${basis}; constants of life: ${material.cyclic.source}`,
    isBound,
    localStress: stress(localStress),
    verdict,
    cyclesToFailure,
    plannedFirings: Math.floor(allowedCycles),
    used,
    remainingFirings: used < 1 ? Math.floor((1 - used) * allowedCycles) : 0,
  };
}
