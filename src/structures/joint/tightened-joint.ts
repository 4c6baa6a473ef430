import { fromSiValue, type Quantity, type Unit, unitFor } from '../../units';
import { numberOf, type Step, step } from '../failure-mode/calculation';
import type { PressureDrivenMode } from '../failure-mode/failure-mode';
import type { PartId } from '../failure-mode/part-name';
import { bendingOverShear, boltTension, tightenedShearLoad } from '../tension-bolts/combined-bolt-stress';
import { circularInteraction, shankInteraction, threadInteraction } from '../tension-bolts/interaction';
import { type TightenedBolt, tightenedBolt } from '../tension-bolts/tightened-bolt';
import type { ThreadGeometry } from '../threads';
import type { JointParts } from './joint-inputs';
import type { JointSi } from './joint-si';
import type { JointStrengths } from './joint-strengths';

/** The radial bolts of a joint as tightened; undefined where no preload or torque is specified. */
export const tightenedJoint = (given: JointParts, thread: ThreadGeometry): TightenedBolt | undefined =>
  given.torque === undefined && !given.preload?.si ? undefined : tightenedBolt(given, thread);

/** Shear load of a bolt at which preload, torsion, bending and shear together make it yield. */
export const shearLoadAtYield = (
  { max, torsion }: TightenedBolt,
  { shearArea, bendingArm, rootDiameter }: JointSi,
  thread: ThreadGeometry,
  { boltYield }: Pick<JointStrengths, 'boltYield'>,
): Step =>
  step(tightenedShearLoad, {
    tension: step(boltTension, { load: max, area: thread.tensileStressArea.si }),
    torsion,
    yieldStrength: boltYield.si,
    area: shearArea,
    ...(bendingArm > 0 && {
      bendingRatio: step(bendingOverShear, { arm: bendingArm, area: shearArea, rootDiameter }),
    }),
  });

/** What the mode of tightened bolts is made of. */
export interface TightenedParts {
  readonly part: PartId;
  readonly bolt: TightenedBolt;
  readonly joint: JointSi;
  readonly thread: ThreadGeometry;
  readonly strengths: JointStrengths;
  /** Load of the worst bolt. */
  readonly load: Step;
  readonly factors: { readonly yield: number; readonly ultimate: number };
  readonly temperature: Quantity<'temperature'> | undefined;
  /** Of stresses. */
  readonly unit: Unit;
}

/** Yield of a tightened radial bolt: its shear load against that which preload and torsion leave. */
export function tightenedMode(parts: TightenedParts): PressureDrivenMode {
  const { part, bolt, joint, thread, strengths, load, factors, temperature, unit } = parts;
  return {
    id: 'bolt-combined-yield',
    part,
    limit: 'yield',
    calculation: load,
    allowable: shearLoadAtYield(bolt, joint, thread, strengths),
    factor: factors.yield,
    pressure: joint.pressure,
    temperature,
    unit: unitFor('force', unit.us ? 'lbf' : 'N'),
    sources: [`strength: ${strengths.boltYield.source}`],
    cautions: strengths.boltYield.cautions,
  };
}

const curves = { thread: threadInteraction, root: circularInteraction, shank: shankInteraction };

/** The cautions for preload in radial bolts. */
export function tightenedCautions(
  { bolt, joint, thread, strengths, load, factors, unit }: TightenedParts,
  { shearPlane, tightening }: JointParts,
): readonly string[] {
  const show = (si: number): Quantity<'force'> =>
    fromSiValue(si, 'force', unitFor('force', unit.us ? 'lbf' : 'N'));
  const area = thread.tensileStressArea.si;
  const curve = curves[shearPlane];
  const interaction = curve.si({
    tensionRatio: bolt.max.value / (strengths.boltUltimate.si * area),
    shearRatio: (factors.ultimate * load.value) / (strengths.boltShear.si * joint.shearArea),
  });
  return [
    'A radial bolt through the wall has little grip and almost no useful clamp force. Its preload is counted as a load on bolt and threads; friction of the joint is not credited. Tighten lightly and lock the bolts.',
    `Preload is evaluated at ${show(bolt.max.value)} (nominal ${show(numberOf(bolt.nominal))}${tightening === undefined ? ", tightening not specified; assumed 'torque wrench'" : ''}).`,
    `At rupture the preload of a ductile bolt does not reduce its shear strength and is not counted (from memory). If it were, the interaction at maximum preload would be ${interaction.toFixed(2)} of an allowed 1 (${curve.source}).`,
  ];
}
