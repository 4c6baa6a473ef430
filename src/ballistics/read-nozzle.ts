// The nozzle of a simulation in plain numbers of the kernel.
import type { GivenMotor } from './read-motor';

/** Brings the nozzle into SI numbers. */
export function readNozzle({ throatErosion: erosion, ...nozzle }: GivenMotor['nozzle']) {
  const throatRadius = nozzle.throatDiameter.si / 2;
  const throatArea = Math.PI * throatRadius ** 2;
  const expansionRatio =
    nozzle.exitDiameter === undefined
      ? (nozzle.expansionRatio ?? Number.NaN)
      : (nozzle.exitDiameter.si / (2 * throatRadius)) ** 2;
  return {
    throatRadius,
    exitArea: throatArea * expansionRatio,
    dischargeCoefficient: nozzle.dischargeCoefficient,
    thrustEfficiency: nozzle.efficiency,
    separation: nozzle.separation,
    erosionRate: erosion?.referenceRate.si ?? 0,
    erosionPressure: erosion?.referencePressure?.si ?? 1e6,
    erosionExponent: erosion?.exponent ?? 0,
    erosionDelay: erosion?.delay.si ?? 0,
  };
}
