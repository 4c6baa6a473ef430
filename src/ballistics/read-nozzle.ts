// The nozzle of a simulation in the kernel's plain numbers.
import { separationCriteria } from '../nozzle';
import { MeopError, readInput } from '../units';
import { atLeastZero, checkFields, context, missing, positive, refused, share } from './read-value';
import type { SimulatedNozzle, ThroatErosion } from './simulate-input';

const fields = [
  'throatDiameter',
  'expansionRatio',
  'exitDiameter',
  'dischargeCoefficient',
  'efficiency',
  'separation',
  'throatErosion',
] as const satisfies readonly (keyof SimulatedNozzle)[];

const erosionFields = [
  'referenceRate',
  'referencePressure',
  'exponent',
  'delay',
] as const satisfies readonly (keyof ThroatErosion)[];

/** Reads and checks the nozzle. */
export function readNozzle(nozzle: SimulatedNozzle) {
  checkFields(nozzle, fields, 'nozzle.');
  const throatRadius = positive('length', 'nozzle.throatDiameter', nozzle.throatDiameter) / 2;
  const throatArea = Math.PI * throatRadius ** 2;
  const { throatErosion: erosion, separation = 'summerfield' } = nozzle;
  if (separation !== 'none' && !separationCriteria.includes(separation))
    throw refused('nozzle.separation', separation, `${separationCriteria.join(', ')} or none`);
  if (erosion !== undefined) checkFields(erosion, erosionFields, 'nozzle.throatErosion.');
  const exponent = erosion?.exponent ?? 0;
  if (!Number.isFinite(exponent)) throw refused('nozzle.throatErosion.exponent', exponent, 'a finite number');
  if (erosion !== undefined && exponent !== 0 && erosion.referencePressure === undefined)
    throw missing('nozzle.throatErosion.referencePressure');
  return {
    throatRadius,
    exitArea: throatArea * readExpansion(nozzle, throatRadius),
    dischargeCoefficient: share('nozzle.dischargeCoefficient', nozzle.dischargeCoefficient ?? 1),
    thrustEfficiency: share('nozzle.efficiency', nozzle.efficiency ?? 1),
    separation,
    erosionRate:
      erosion === undefined
        ? 0
        : readInput('speed', 'nozzle.throatErosion.rate', erosion.referenceRate, context).si,
    erosionPressure:
      erosion?.referencePressure === undefined
        ? 1e6
        : positive('absolute pressure', 'nozzle.throatErosion.referencePressure', erosion.referencePressure),
    erosionExponent: exponent,
    erosionDelay:
      erosion?.delay === undefined ? 0 : atLeastZero('time', 'nozzle.throatErosion.delay', erosion.delay),
  };
}

function readExpansion(nozzle: SimulatedNozzle, throatRadius: number): number {
  if ((nozzle.expansionRatio === undefined) === (nozzle.exitDiameter === undefined))
    throw new MeopError(
      'missing-field',
      `${context}: nozzle: give expansionRatio or exitDiameter, one of them`,
      'nozzle.expansionRatio',
    );
  const ratio =
    nozzle.exitDiameter === undefined
      ? readInput('dimensionless', 'nozzle.expansionRatio', nozzle.expansionRatio, context).si
      : (positive('length', 'nozzle.exitDiameter', nozzle.exitDiameter) / (2 * throatRadius)) ** 2;
  if (ratio >= 1) return ratio;
  throw refused(
    'nozzle.expansionRatio',
    ratio,
    'a ratio of 1 or more: the exit is not narrower than the throat',
  );
}
