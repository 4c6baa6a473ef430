// Cautions of a predicted firing about its ignition and about steady burning as such.

import {
  chamberResidenceTime,
  characteristicLength,
  extinctionVentingRate,
  thermalWaveTime,
  usualDiffusivity,
} from './low-pressure-limits';
import { rateOfLaw } from './simulation/chamber-rate';
import type { MotorModel } from './simulation/motor-model';
import type { RunSamples } from './simulation/sample-recorder';

const fromMemory = 'form and factor quoted from memory, not verified';
const mpa = (pressure: number): string => `${(pressure / 1e6).toPrecision(3)} MPa`;

/**
 * Stable pressures of a burning area [Pa], ascending: where gas generation falls below the outflow as pressure rises. On a grid
 * of 1 % in pressure, then by bisection.
 */
export function stableLevels(m: MotorModel, area: number): readonly number[] {
  const rate = new Float64Array(2);
  const throatArea = m.dischargeCoefficient * Math.PI * m.throatRadius ** 2;
  const excess = (lnP: number): number => {
    rateOfLaw(m.law, lnP, rate);
    const p = Math.exp(lnP);
    return (m.density - p / m.gasEnergy) * area * rate[0] - (p * throatArea) / m.characteristicVelocity;
  };
  const step = 0.01;
  const top = Math.log(m.pressureLimit);
  const levels: number[] = [];
  let below = true;
  for (let lnP = Math.log(Math.max(m.ambientPressure, 1e3)); lnP < top; lnP += step) {
    const generates = excess(lnP) > 0;
    if (below && !generates && lnP > 0) {
      let [low, high] = [lnP - step, lnP];
      for (let i = 0; i < 40; i++) {
        const middle = 0.5 * (low + high);
        if (excess(middle) > 0) low = middle;
        else high = middle;
      }
      levels.push(Math.exp(high));
    }
    below = generates;
  }
  return levels;
}

/** Hang-fire, a law with several levels, low characteristic length, venting that can extinguish. */
export function transientCautions(m: MotorModel, samples: RunSamples): readonly string[] {
  return [...hangCautions(m, samples), ...levelCautions(m), ...steadyCautions(m, samples)];
}

function hangCautions(m: MotorModel, { pressure }: RunSamples): readonly string[] {
  if (m.partialFraction === 1) return [];
  const [level] = stableLevels(m, m.partialFraction * m.table.area[0]);
  if (level === undefined) return [];
  const settles = `${(100 * m.partialFraction).toPrecision(3)} % of the surface alone settles at ${mpa(level)}`;
  const full = `the ${mpa(m.fullIgnitionPressure)} at which the remaining surface ignites`;
  // The pressure is landed on to 1e-11 of itself, or passed.
  const isReached = pressure.some((p) => p >= (1 - 1e-6) * m.fullIgnitionPressure);
  if (!isReached) return [`hang-fire: ${settles}, below ${full}; the remaining surface does not ignite`];
  return level < m.fullIgnitionPressure
    ? [`hang-fire is possible: ${settles}, below ${full}; only the gas of the igniter reaches that pressure`]
    : [];
}

function levelCautions(m: MotorModel): readonly string[] {
  if (m.law.lnBoundaries.length === 0) return [];
  const levels = stableLevels(m, m.table.area[0]);
  return levels.length < 2
    ? []
    : [
        `the burn law gives ${levels.length} stable pressures for the initial burning area: ${levels.map(mpa).join(' and ')}; ignition and any disturbance decide which is reached`,
      ];
}

function steadyCautions(m: MotorModel, samples: RunSamples): readonly string[] {
  const { time, pressure, depth, throatRadius, volume } = samples;
  const rate = new Float64Array(2);
  let least = Number.POSITIVE_INFINITY;
  let leastAt = 0;
  let venting = 0;
  let ventingAt = 0;
  for (let i = 1; i < time.length; i++) {
    // At the ends of the burn the area rises and falls; these are no steady states.
    const share = depth[i] / m.table.burnout;
    if (share > 0.95) break;
    rateOfLaw(m.law, Math.log(pressure[i]), rate);
    if (share > 0.02) {
      const residence = chamberResidenceTime.si({
        characteristicLength: characteristicLength.si({
          freeVolume: m.chamberVolume - volume[i],
          throatArea: Math.PI * throatRadius[i] ** 2,
        }),
        characteristicVelocity: m.characteristicVelocity,
        gamma: m.gamma,
      });
      const ratio = residence / thermalWaveTime.si({ burnRate: rate[0], diffusivity: usualDiffusivity });
      if (ratio < least) [least, leastAt] = [ratio, i];
    }
    const fall = Math.log(pressure[i - 1] / pressure[i]) / (time[i] - time[i - 1]);
    const limit = extinctionVentingRate.si({ burnRate: rate[0], diffusivity: usualDiffusivity });
    if (fall / limit > venting) [venting, ventingAt] = [fall / limit, i];
  }
  const when = (i: number): string => `at ${time[i].toPrecision(3)} s (${mpa(pressure[i])})`;
  return [
    ...(least < 1
      ? [
          `low characteristic length ${when(leastAt)}: the gas stays ${least.toPrecision(2)} times the time of the thermal wave in the propellant; below about 1 (0.2 to 3) a motor can burn in pulses (chuffing) or oscillate (Sehgal & Strand 1964, ${fromMemory})`,
        ]
      : []),
    ...(venting > 1
      ? [
          `the pressure falls ${when(ventingAt)} at ${venting.toPrecision(2)} times the rate r²/α that can extinguish the surface (${fromMemory}); the simulation assumes that it burns on`,
        ]
      : []),
  ];
}
