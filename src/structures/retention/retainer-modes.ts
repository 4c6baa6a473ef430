import type { Step } from '../failure-mode/calculation';
import { given, step } from '../failure-mode/calculation';
import type { PressureDrivenMode } from '../failure-mode/failure-mode';
import type { FailureModeId } from '../failure-mode/mode-name';
import type { Strength } from '../joint/joint-strengths';
import { materialMode, type StressedPart } from '../material-mode';
import { externalThreadShearArea, internalThreadShearArea } from '../threads/shear-area';
import type { ThreadGeometry } from '../threads/thread-geometry';
import { threadShearStress } from '../threads/thread-shear';
import { flangeBendingStress, flangeMoment, ringTwistStress } from './flange-formulas';
import { contactShare } from './insert-modes';
import { loadOfScrew, screwTensionStress } from './screw-tension';
import { lipShearStress, seatBearingStress } from './seat-formulas';

/** A retainer plate with its insert, in SI. */
export interface RetainerSi {
  readonly load: Step;
  readonly insertDiameter: number;
  readonly opening: number;
  readonly outsideDiameter: number;
  readonly thickness: number;
  readonly poissonRatio: number;
  readonly boltCircle: number;
}

/** True for a plate whose section turns as a whole rather than bends: thicker than half its width. */
export const isStiffRing = ({ boltCircle, opening, thickness }: RetainerSi): boolean =>
  thickness > (boltCircle - opening) / 4;

/** How a retainer plate fails, supported at its screws and loaded at the edge of its opening. */
export function retainerModes(part: StressedPart, plate: RetainerSi): readonly PressureDrivenMode[] {
  const { load, insertDiameter, opening, outsideDiameter, thickness, poissonRatio, boltCircle } = plate;
  const bearing = step(seatBearingStress, { load, insertDiameter, opening, contactShare });
  const shear = step(lipShearStress, { load, insertDiameter, lipThickness: thickness });
  const bending = isStiffRing(plate)
    ? step(ringTwistStress, {
        load,
        arm: (boltCircle - opening) / 2,
        thickness,
        outsideRadius: outsideDiameter / 2,
        innerRadius: opening / 2,
      })
    : step(flangeBendingStress, {
        moment: step(flangeMoment, {
          load,
          outerRadius: boltCircle / 2,
          innerRadius: opening / 2,
          poissonRatio,
        }),
        thickness,
      });
  return [
    materialMode(part, { id: 'retainer-bearing-yield', calculation: bearing, property: 'yield' }),
    materialMode(part, { id: 'retainer-shear-yield', calculation: shear, property: 'shear yield' }),
    materialMode(part, { id: 'retainer-shear', calculation: shear, property: 'shear ultimate' }),
    materialMode(part, { id: 'retainer-bending-yield', calculation: bending, property: 'yield' }),
    materialMode(part, { id: 'retainer-bending', calculation: bending, property: 'ultimate' }),
  ];
}

/** The screws of a retainer plate, in SI, with their strengths at temperature. */
export interface RetainerScrews {
  readonly thread: ThreadGeometry;
  readonly count: number;
  readonly engagement: number;
  readonly yield: Strength;
  readonly ultimate: Strength;
}

/** How the screws of a retainer plate and their tapped holes in the closure fail. */
export function retainerScrewModes(
  closure: StressedPart,
  load: Step,
  { thread, count, engagement, ...strength }: RetainerScrews,
): readonly PressureDrivenMode[] {
  const { part, pressure, factors, unit } = closure;
  const { limits } = thread;
  const tension = step(screwTensionStress, { load, count, stressArea: thread.tensileStressArea.si });
  const own = step(loadOfScrew, { load, count });
  const sizes = { engagement, pitch: thread.pitch.si };
  const onScrew = step(threadShearStress, {
    load: own,
    area: step(externalThreadShearArea, {
      ...sizes,
      internalMinorMax: limits.internalMinorMax.si,
      externalPitchMin: limits.externalPitchMin.si,
    }),
  });
  const inHole = step(threadShearStress, {
    load: own,
    area: step(internalThreadShearArea, {
      ...sizes,
      externalMajorMin: limits.externalMajorMin.si,
      internalPitchMax: limits.internalPitchMax.si,
    }),
  });
  const ofScrew = (
    id: FailureModeId,
    limit: 'yield' | 'ultimate',
    calculation: Step,
    share = 1,
  ): PressureDrivenMode => {
    const { si, source, cautions } = strength[limit];
    return {
      id,
      part,
      limit,
      calculation,
      allowable: given('stress', si * share),
      factor: factors[limit],
      pressure,
      unit,
      sources: [
        share === 1
          ? `strength: ${source}`
          : `strength: ${source}; shear strength half the tensile strength (FED-STD-H28)`,
      ],
      cautions,
    };
  };
  return [
    ofScrew('retainer-screw-tension-yield', 'yield', tension),
    ofScrew('retainer-screw-tension', 'ultimate', tension),
    ofScrew('retainer-screw-thread-shear', 'ultimate', onScrew, 0.5),
    materialMode(closure, {
      id: 'retainer-hole-thread-shear',
      calculation: inHole,
      property: 'shear ultimate',
    }),
  ];
}
