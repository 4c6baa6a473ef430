import type { Quantity, Unit } from '../../units';
import { type Step, step } from '../failure-mode/calculation';
import type { PressureDrivenMode } from '../failure-mode/failure-mode';
import type { FailureModeId } from '../failure-mode/mode-name';
import type { PartId } from '../failure-mode/part-name';
import { boltClass, boltRetention } from '../fasteners';
import { boltStrengths, type Strength } from '../joint/joint-strengths';
import { materialMode, type StressedPart } from '../material-mode';
import type { StrengthProperty } from '../materials';
import { externalThreadShearArea, internalThreadShearArea } from '../threads/shear-area';
import { yieldTensionWithTorsion } from './combined-bolt-stress';
import { headBearingArea } from './head-bearing';
import type { JointPreload } from './joint-preload';
import { faceOf, type JointStiffness } from './joint-stiffness';
import { proofStressFromYield } from './preload-range';
import { sectionLoad, separatingCapacity, separationLoad } from './separating-capacity';
import type { TensionBoltJointValues } from './tension-bolt-joint';

/** What the modes of bolts in tension are made of. */
export interface TensionBoltParts {
  readonly joint: TensionBoltJointValues;
  readonly part: PartId;
  readonly factors: { readonly yield: number; readonly ultimate: number };
  /** Of forces. */
  readonly unit: Unit;
  /** Separating load of the most heavily loaded bolt. */
  readonly load: Step;
  readonly stiffness: JointStiffness;
  readonly preload: JointPreload;
}

/**
 * The modes of bolts in tension. Each compares the separating load of a bolt with that at which its force reaches a strength, at
 * maximum preload; or at which the parts separate, at minimum preload. The factor is on the separating load: preload is not
 * multiplied.
 */
export function tensionBoltModes(parts: TensionBoltParts): readonly PressureDrivenMode[] {
  const { joint, part, factors, unit, load, stiffness, preload } = parts;
  const { thread, boltClass: name, engagement, holeDiameter } = joint.bolts;
  const temperature = boltHeat(joint);
  const area = thread.tensileStressArea.si;
  const bolt = boltStrengths(name, thread.majorDiameter, 'thread', temperature);
  const capacity = (strength: number | Step, of: number | Step): Step =>
    step(separatingCapacity, {
      sectionLoad: step(sectionLoad, { strength, area: of }),
      preload: preload.max,
      jointConstant: stiffness.high,
    });
  const ofBolt = (
    id: FailureModeId,
    limit: 'yield' | 'ultimate',
    { source, cautions }: Pick<Strength, 'source' | 'cautions'>,
    allowable: Step,
  ): PressureDrivenMode => ({
    id,
    part,
    limit,
    calculation: load,
    allowable,
    factor: factors[limit],
    pressure: joint.pressure.si,
    temperature,
    unit,
    sources: [`strength: ${source}`],
    cautions,
  });
  const all = { part, exposure: joint.exposure, factors, pressure: joint.pressure.si, unit };
  const tapped: StressedPart = {
    ...all,
    material: joint.tappedMaterial,
    temperature: joint.tappedTemperature,
  };
  const clamped: StressedPart = {
    ...all,
    material: joint.clampedMaterial,
    temperature: joint.clampedTemperature,
  };
  const { limits } = thread;
  const sizes = { engagement: engagement.si, pitch: thread.pitch.si };
  const holeThreads = step(internalThreadShearArea, {
    ...sizes,
    externalMajorMin: limits.externalMajorMin.si,
    internalPitchMax: limits.internalPitchMax.si,
  });
  const boltThreads = step(externalThreadShearArea, {
    ...sizes,
    internalMinorMax: limits.internalMinorMax.si,
    externalPitchMin: limits.externalPitchMin.si,
  });
  const head = step(headBearingArea, { faceDiameter: faceOf(joint), holeDiameter: holeDiameter.si });
  const inPart = (
    stressed: StressedPart,
    id: FailureModeId,
    property: StrengthProperty,
    of: Step,
  ): PressureDrivenMode =>
    materialMode(stressed, {
      id,
      calculation: load,
      property,
      allowable: (strength) => capacity(strength, of),
    });
  const tension = step(yieldTensionWithTorsion, {
    yieldStrength: bolt.boltYield.si,
    torsion: preload.torsion,
  });
  return [
    ofBolt('tension-bolt-proof', 'yield', bolt.boltYield, capacity(proofStress(joint, temperature), area)),
    ofBolt('tension-bolt-yield', 'yield', bolt.boltYield, capacity(tension, area)),
    ofBolt('tension-bolt-break', 'ultimate', bolt.boltUltimate, capacity(bolt.boltUltimate.si, area)),
    ofBolt('tension-bolt-thread-shear', 'ultimate', bolt.boltShear, capacity(bolt.boltShear.si, boltThreads)),
    inPart(tapped, 'tapped-thread-shear-yield', 'shear yield', holeThreads),
    inPart(tapped, 'tapped-thread-shear', 'shear ultimate', holeThreads),
    inPart(
      clamped,
      'bolt-head-bearing-yield',
      joint.clampedMaterial.compressiveYield === undefined ? 'yield' : 'compressive yield',
      head,
    ),
    {
      id: 'joint-separation',
      part,
      limit: 'disengagement',
      calculation: load,
      allowable: step(separationLoad, { preload: preload.min, jointConstant: stiffness.low }),
      factor: factors.yield,
      pressure: joint.pressure.si,
      unit,
      sources: [],
      cautions: [],
    },
  ];
}

/** The temperature of the bolts: as given, or that of the hotter part. */
export function boltHeat({
  boltTemperature,
  clampedTemperature: clamped,
  tappedTemperature: tapped,
}: TensionBoltJointValues): Quantity<'temperature'> | undefined {
  if (boltTemperature !== undefined) return boltTemperature;
  if (clamped === undefined || tapped === undefined) return clamped ?? tapped;
  return clamped.si >= tapped.si ? clamped : tapped;
}

/** The proof stress of the bolts; 85 % of the yield strength where their standard states none. */
export function proofStress(
  { bolts: { thread, boltClass: name } }: TensionBoltJointValues,
  temperature: Quantity<'temperature'> | undefined,
): Step | number {
  const bolt = boltClass(name, { diameter: thread.majorDiameter });
  const fraction = temperature === undefined ? 1 : boltRetention({ boltClass: name, temperature }).fraction;
  return bolt.proofStress === undefined
    ? step(proofStressFromYield, { yieldStrength: bolt.yieldStrength.value.si * fraction })
    : bolt.proofStress.value.si * fraction;
}
