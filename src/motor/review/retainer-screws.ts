import type { TensionBoltReview } from '../../structures';
import { reviewTensionBoltsAs } from '../../structures/tension-bolts/review-tension-bolts';
import { fromSiValue, type Quantity, unitOf } from '../../units';
import type { Closure } from '../document/closure-inputs';
import { nominal } from '../document/nominal';
import { closureHeat } from './closure-heat';
import type { PartConditions } from './part-review';
import { weakestCase } from './worst-sizes';

/**
 * Load of a screw over its equal share: a flat plate that rests on the closure outside its screws pries on them (quoted
 * from memory, not verified).
 */
const prying = 1.3;

/** Evaluates the screws of the retainer plate as bolts in tension; undefined where the document has no plate. */
export function retainerScrews(
  { motor, pressure, settings }: PartConditions,
  aft: Closure,
  sealDiameter: number,
): TensionBoltReview | undefined {
  const { retainer, insert } = motor.nozzle;
  if (retainer === undefined || insert?.seat === undefined) return undefined;
  const { depth: _, ...screws } = nominal(retainer.screws);
  const tappedTemperature = closureHeat(motor, aft);
  return reviewTensionBoltsAs(
    {
      pressure,
      sealDiameter: millimetres(sealDiameter),
      bolts: { ...screws, clampedThickness: retainer.thickness.value },
      clampedMaterial: retainer.material,
      tappedMaterial: aft.material,
      insideDiameter: insert.seat.pocketDiameter.value,
      outsideDiameter: weakestCase(motor).bore,
      shareFactor: prying,
      clampedTemperature: closureHeat(motor, retainer),
      tappedTemperature,
      coldest: motor.temperatureRange?.coldest.value,
      assemblyTemperature: motor.ambient.temperature.value,
      factors: settings.factors,
    },
    'nozzle-retainer',
  );
}

const millimetres = (si: number): Quantity<'length'> => fromSiValue<'length'>(si, 'length', unitOf('mm'));
