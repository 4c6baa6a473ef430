// Which model of the port a firing needs.
import type { PortAtStation } from '../grain';
import { type ErosionLaw, erosiveRate } from '../port/erosion-law';
import { lumpedPortToThroat } from '../port/lumped-criterion';
import { openStations, type PortFlow } from '../port-diagnosis';
import { rateOfLaw } from '../simulation/chamber-rate';
import type { MotorModel } from '../simulation/motor-model';
import type { RunSamples } from '../simulation/sample-recorder';

/** The model of the port, and the reason for it in words. */
export interface PortChoice {
  readonly model: 'lumped' | 'coupled';
  readonly reason: string;
}

// Below this a rate is no better known.
const noticed = 1.001;

/** Port and throat of a lumped firing, for the choice. */
export interface LumpedPort {
  readonly motor: MotorModel;
  readonly stations: readonly PortAtStation[];
  /** Depths at which the stations are tabulated [m]. */
  readonly depth: Float64Array;
  readonly samples: RunSamples;
  readonly flow: PortFlow | undefined;
}

/**
 * One pressure for the chamber is enough where every port area is above three throat areas at the start and no station
 * burns erosively at any time of the lumped firing; otherwise the port is solved along its axis.
 */
export function portChoice(port: LumpedPort, erosion: ErosionLaw): PortChoice {
  const { flow, motor, stations } = port;
  if (flow === undefined) return { model: 'lumped', reason: 'the grain has no port' };
  const throat = motor.dischargeCoefficient * Math.PI * motor.throatRadius ** 2;
  const narrowest = Math.min(...openStations(stations).map(({ area }) => area.si[0])) / throat;
  if (narrowest < lumpedPortToThroat)
    return {
      model: 'coupled',
      reason: `the smallest port area is ${narrowest.toPrecision(3)} throat areas, below ${lumpedPortToThroat}`,
    };
  const augmented = largestAugmentation(port, erosion);
  if (augmented > noticed)
    return {
      model: 'coupled',
      reason: `erosive burning raises the burn rate by up to ${(100 * (augmented - 1)).toPrecision(2)} % in the lumped firing`,
    };
  return {
    model: 'lumped',
    reason: `the smallest port area is ${narrowest.toPrecision(3)} throat areas, not below ${lumpedPortToThroat}${erosion.law === 'none' ? '' : ', and no erosive burning is expected'}`,
  };
}

const work = new Float64Array(2);
const looked = 200;

/** Maximum of rate/rate without cross-flow over stations and time, by the flux of the lumped firing. */
export function largestAugmentation(port: LumpedPort, erosion: ErosionLaw): number {
  const { motor, stations, depth, samples, flow } = port;
  if (flow === undefined || erosion.law === 'none') return 1;
  const open = openStations(stations);
  const stride = Math.max(1, Math.floor(samples.time.length / looked));
  let most = 1;
  let k = 0;
  for (let i = 0; i < samples.time.length; i += stride) {
    if (!(samples.burningArea[i] > 0)) continue;
    while (k < depth.length - 2 && samples.depth[i] > depth[k + 1]) k++;
    rateOfLaw(motor.law, Math.log(samples.pressure[i]), work);
    const base = work[0];
    for (let s = 0; s < open.length; s++) {
      const flux = flow.massFlux[s].si[i];
      const around = open[s].perimeter.si[k];
      if (!(around > 0)) continue;
      const diameter = (4 * open[s].area.si[k]) / around;
      const velocity = (flux * motor.gasEnergy) / samples.pressure[i];
      const rate = erosiveRate(erosion, motor.density, base, flux, diameter, open[s].position.si, velocity);
      most = Math.max(most, rate / base);
    }
  }
  return most;
}
