import { fromSiValue, type Quantity, type Unit } from '../../units';
import { numberOf, type Step } from '../failure-mode/calculation';
import { holePeakStress } from './hole-concentration';
import type { ModeRule } from './joint-modes';
import type { JointStresses } from './joint-stresses';

/** A local peak that the mode's stress leaves out, and why. */
export interface PeakStress {
  readonly concentration: number;
  readonly stress: Quantity<'stress'>;
  readonly reason: string;
}

// Peak principal stress over F/(d·t), CalculiX 2.20, elastic; the record is in tests/fea.
const loadedHolePeak = 5.4;

/** The peak stress of a mode that has a stress concentration, for fatigue. */
export function peakOf(
  { stress }: ModeRule,
  stresses: JointStresses<Step>,
  unit: Unit,
): PeakStress | undefined {
  const show = (si: number): Quantity<'stress'> => fromSiValue(si, 'stress', unit);
  if (stress === 'netSection') {
    const concentration = stresses.netSectionConcentration.value * stresses.headConcentration;
    return {
      concentration,
      stress: show(numberOf(stresses.netSection) * concentration),
      reason:
        'for fatigue only: a ductile wall yields at the hole edge and the section levels out before it parts; a hole loaded by its bolt concentrates more than this open one',
    };
  }
  if (stress === 'offsetFolding') {
    const peak =
      numberOf(stresses.offsetSurface) * stresses.netSectionConcentration.value * stresses.headConcentration;
    return {
      concentration: peak / numberOf(stresses.offsetFolding),
      stress: show(peak),
      reason:
        'for fatigue only: elastic tension and bending at the surface with the concentration of a hole in tension, which is an upper bound for bending',
    };
  }
  if (stress === 'caseBearing')
    return {
      concentration: loadedHolePeak * stresses.headConcentration,
      stress: show(stresses.caseBearing.value * loadedHolePeak * stresses.headConcentration),
      reason:
        'for fatigue only: the maximum tension at the side of a hole that its bolt loads, from a finite-element model of one tube end (30° sector, edge distance of two diameters)',
    };
  const [hoop, longitudinal] = [stresses.hoop.value, stresses.longitudinal.value];
  if (stress !== 'hoop' || hoop <= 0) return undefined;
  // Beyond the seal the hoop stress falls below the longitudinal one, which belongs to the net section: then it counts alone.
  const peak =
    holePeakStress.si({ greater: hoop, lesser: hoop >= longitudinal ? longitudinal : 0 }) *
    stresses.headConcentration;
  return {
    concentration: peak / hoop,
    stress: show(peak),
    reason: 'for fatigue only: a ductile wall yields at the hole edge without bursting',
  };
}
