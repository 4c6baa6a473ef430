// The flow at chosen places of a marched port; plain SI numbers, unchecked.
import { rateOfLaw } from '../simulation/chamber-rate';
import { erosiveRate } from './erosion-law';
import type { PortGas, PortMarch } from './port-march';
import { hydraulicDiameterAt, type PortSections } from './port-shape';

/** Flow at stations, column by column. */
export interface StationColumns {
  readonly pressure: Float64Array;
  readonly rate: Float64Array;
  readonly massFlux: Float64Array;
  readonly mach: Float64Array;
}

const rateWork = new Float64Array(2);

/**
 * Flow at stations of a port that was marched in equal cells. Pressure and mass flow are interpolated, as they are smooth where the
 * rate has a kink; rate and Mach number follow from them.
 */
export function stationColumns(
  sections: PortSections,
  gas: PortGas,
  headPressure: number,
  march: PortMarch,
  count: number,
  stations: Float64Array,
): StationColumns {
  const step = sections.length / count;
  const at = Float64Array.from({ length: count + 2 }, (_, i) =>
    i === 0 ? 0 : i === count + 1 ? sections.length : (i - 0.5) * step,
  );
  const column = (head: number, inside: Float64Array, aft: number): Float64Array => {
    const whole = new Float64Array(count + 2);
    whole.set(inside.subarray(0, count), 1);
    whole[0] = head;
    whole[count + 1] = aft;
    return whole;
  };
  const pressures = column(headPressure, march.pressure, march.exitPressure);
  const flows = column(0, march.massFlow, march.exitFlow);
  const found = {
    pressure: stations.map((z) => cubicAt(at, pressures, z)),
    rate: new Float64Array(stations.length),
    massFlux: stations.map((z) => cubicAt(at, flows, z) / sections.area(z)),
    mach: new Float64Array(stations.length),
  };
  const t = (gas.gamma - 1) / 2;
  stations.forEach((z, i) => {
    const p = found.pressure[i];
    const flux = found.massFlux[i];
    // γ·M²·(1 + t·M²) = G²·R·T_0/p².
    const s = (flux * flux * gas.gasEnergy) / (p * p * gas.gamma);
    const square = (2 * s) / (1 + Math.sqrt(1 + 4 * t * s));
    found.mach[i] = Math.sqrt(square);
    rateOfLaw(gas.law, Math.log(p), rateWork);
    found.rate[i] = erosiveRate(
      gas.erosion,
      gas.density,
      rateWork[0],
      flux,
      hydraulicDiameterAt(sections, z),
      z,
      (flux * gas.gasEnergy) / (p * (1 + t * square)),
    );
  });
  return found;
}

/** The cubic through the four points around a place. */
function cubicAt(x: Float64Array, y: Float64Array, at: number): number {
  let k = 0;
  while (k < x.length - 2 && at > x[k + 1]) k++;
  const first = Math.max(0, Math.min(x.length - 4, k - 1));
  let sum = 0;
  for (let i = first; i < first + 4; i++) {
    let weight = 1;
    for (let j = first; j < first + 4; j++) if (j !== i) weight *= (at - x[j]) / (x[i] - x[j]);
    sum += weight * y[i];
  }
  return sum;
}
