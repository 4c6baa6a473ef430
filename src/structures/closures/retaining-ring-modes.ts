import { closureForce } from '../closure-force';
import { given, type Step, step } from '../failure-mode/calculation';
import type { PressureDrivenMode } from '../failure-mode/failure-mode';
import { materialMode, type StressedPart } from '../material-mode';
import { lameHoopStress } from '../shell/lame';
import { cutWallModes } from './cut-wall-modes';
import { grooveBearingStress, grooveLandShearStress, ringShearStress } from './retaining-ring';

/** A retaining ring in its groove, read and in SI. */
export interface RetainingRingSi {
  readonly boreDiameter: number;
  readonly sealDiameter: number;
  readonly grooveDepth: number;
  readonly edgeMargin: number;
  readonly wall: number;
  readonly ringThickness: number;
  readonly ringStrength: number;
}

/** The modes of a ring and its groove, and the force on the closure. */
export function retainingRingModes(
  ring: RetainingRingSi,
  tube: StressedPart,
): { readonly modes: readonly PressureDrivenMode[]; readonly load: Step } {
  const { boreDiameter, grooveDepth, edgeMargin, wall, ringThickness } = ring;
  const { part, pressure, factors, unit } = tube;
  const load = step(closureForce, { pressure, sealDiameter: ring.sealDiameter });
  const grooveDiameter = boreDiameter + 2 * grooveDepth;
  const [insideRadius, outsideRadius] = [grooveDiameter / 2, boreDiameter / 2 + wall];
  return {
    load,
    modes: [
      {
        id: 'ring-shear',
        part,
        limit: 'ultimate',
        calculation: step(ringShearStress, { load, boreDiameter, ringThickness }),
        allowable: given('stress', ring.ringStrength),
        factor: factors.ultimate,
        pressure,
        unit,
        sources: [],
        cautions: ['The shear strength of the ring is the value stated by its manufacturer.'],
      },
      materialMode(tube, {
        id: 'groove-bearing-yield',
        calculation: step(grooveBearingStress, { load, boreDiameter, grooveDepth }),
        property: 'yield', // of a wall that may tip, not the bearing strength of a bolt hole
      }),
      materialMode(tube, {
        id: 'land-shear',
        calculation: step(grooveLandShearStress, { load, grooveDiameter, edgeMargin }),
        property: 'shear ultimate',
      }),
      ...cutWallModes(tube, {
        cut: 'groove',
        load,
        hoop: step(lameHoopStress, { pressure, insideRadius, outsideRadius, radius: insideRadius }),
        insideRadius,
        outsideRadius,
        arm: wall / 2, // the ring bears on the middle of the groove's depth
      }),
    ],
  };
}
