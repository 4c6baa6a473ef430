import { fromSiValue, type NamedKind, procedure, type Quantity, unitFor } from '../../units';
import { closureForce } from '../closure-force';
import { yieldAndUltimate } from '../factors-of-safety';
import { evaluated, numberOf, step } from '../failure-mode/calculation';
import { failureMargin } from '../failure-mode/failure-margin';
import type { PartId } from '../failure-mode/part-name';
import { boltStrengths } from '../joint/joint-strengths';
import { worstBoltLoad } from '../joint/worst-bolt';
import { boltEndurance, hasEndurance } from './bolt-endurance';
import {
  boltEllipticFactor,
  boltGerberFactor,
  boltGoodmanFactor,
  boltProofLineFactor,
  boltStressAmplitude,
} from './bolt-fatigue';
import { boltTension } from './combined-bolt-stress';
import { clampForce, tensionBoltForce } from './joint-constant';
import { jointPreload } from './joint-preload';
import { jointStiffness } from './joint-stiffness';
import { faceOpening, separationLoad } from './separating-capacity';
import { tensionBoltCautions } from './tension-bolt-cautions';
import { type TensionBoltJoint, type TensionBoltJointValues, tensionBoltJoint } from './tension-bolt-joint';
import { boltHeat, proofStress, type TensionBoltParts, tensionBoltModes } from './tension-bolt-modes';
import { type TensionBoltFatigue, type TensionBoltReview, tensionBoltReview } from './tension-bolt-review';

const name = 'reviewTensionBolts';

/**
 * Failure modes of bolts in tension that hold two parts together against a pressure: proof load, yield with the torsion of
 * tightening, breaking, both threads, the face under the heads, and separation. Strength is evaluated at maximum preload,
 * separation at minimum preload; the factor is on the separating load.
 *
 * @throws MeopError `out-of-domain` where the parts do not fit, `no-allowable` where a material has no minimum strength
 * @example reviewTensionBolts({ pressure: '5 MPa', sealDiameter: '50 mm', bolts: { thread: 'M6', boltClass: '8.8', count: 8, boltCircle: '66 mm', clampedThickness: '12 mm', engagement: '12 mm', holeDiameter: '6.6 mm', preload: '7 kN' }, clampedMaterial: '6061-T6 bar', tappedMaterial: '6061-T6 bar' }).boltLoad.in('N').toFixed(1) // => '1227.2'
 */
export const reviewTensionBolts = /* @__PURE__ */ procedure({
  name,
  title: 'Review of bolts in tension',
  source: 'the formula of each mode, with its source',
  inputs: tensionBoltJoint.fields,
  checks: tensionBoltJoint.checks,
  gives: 'the margin of safety of every failure mode of the bolts, the threads and the clamped parts',
  example: {
    pressure: '5 MPa',
    sealDiameter: '50 mm',
    bolts: {
      thread: 'M6',
      boltClass: '8.8',
      count: 8,
      boltCircle: '66 mm',
      clampedThickness: '12 mm',
      engagement: '12 mm',
      holeDiameter: '6.6 mm',
      preload: '7 kN',
    },
    clampedMaterial: '6061-T6 bar',
    tappedMaterial: '6061-T6 bar',
  },
  run: (joint): TensionBoltReview => reviewOf(joint, 'joint'),
});

/** {@link reviewTensionBolts} under the name of a part of a motor. */
export const reviewTensionBoltsAs = (joint: TensionBoltJoint, part: PartId): TensionBoltReview =>
  reviewOf(tensionBoltJoint.read(joint, { procedure: name, path: '' }), part);

function reviewOf(joint: TensionBoltJointValues, part: PartId): TensionBoltReview {
  const { us } = unitFor('gauge pressure', joint.pressure.unit);
  const show = <const K extends NamedKind>(kind: K, si: number, metric: string, inch: string): Quantity<K> =>
    fromSiValue<K>(si, kind, unitFor(kind, us ? inch : metric));
  const force = (si: number): Quantity<'force'> => show('force', si, 'N', 'lbf');
  const endForce = step(closureForce, { pressure: joint.pressure.si, sealDiameter: joint.sealDiameter.si });
  const load = step(worstBoltLoad, {
    load: endForce,
    count: joint.bolts.count,
    shareFactor: joint.shareFactor,
  });
  const stiffness = jointStiffness(joint);
  const preload = jointPreload(joint, stiffness);
  const parts: TensionBoltParts = {
    joint,
    part,
    factors: yieldAndUltimate(joint.factors),
    unit: unitFor('force', us ? 'lbf' : 'N'),
    load,
    stiffness,
    preload,
  };
  const modes = tensionBoltModes(parts);
  const [low, high] = [numberOf(stiffness.low), numberOf(stiffness.high)];
  const margins = modes.map((mode) => failureMargin(mode));
  const separates = margins[margins.length - 1].failurePressure;
  return tensionBoltReview({
    endForce: force(endForce.value),
    boltLoad: force(load.value),
    preload: {
      min: force(preload.min.value),
      nominal: force(numberOf(preload.nominal)),
      max: force(preload.max.value),
    },
    jointConstant: { low, computed: stiffness.constant?.value, high },
    boltStiffness: show('stiffness', stiffness.bolt.value, 'kN/mm', 'lbf/in'),
    memberStiffness: stiffness.members && show('stiffness', stiffness.members.value, 'kN/mm', 'lbf/in'),
    boltForce: force(
      evaluated(tensionBoltForce, { preload: preload.max.value, jointConstant: high, load: load.value }),
    ),
    clampForce: force(
      evaluated(clampForce, { preload: preload.min.value, jointConstant: low, load: load.value }),
    ),
    separationPressure: separates,
    faceOpening: show(
      'length',
      evaluated(faceOpening, {
        load: load.value,
        separationLoad: evaluated(separationLoad, { preload: preload.min.value, jointConstant: low }),
        boltStiffness: stiffness.bolt.value,
      }),
      'mm',
      'in',
    ),
    fatigue: fatigueOf(parts, (si) => show('stress', si, 'MPa', 'ksi')),
    margins,
    unjudged: preload.isHeatUnknown
      ? [
          `${joint.clampedMaterial.name} has no thermalExpansion or elasticModulus; the thermal change of preload is not evaluated.`,
        ]
      : [],
    cautions: [...new Set([...margins.flatMap(({ cautions }) => cautions), ...tensionBoltCautions(parts)])],
  });
}

/** Fatigue at the maximum preload. The number of firings is small: a measure of good proportion. */
function fatigueOf(
  { joint, load, stiffness, preload }: TensionBoltParts,
  show: (si: number) => Quantity<'stress'>,
): TensionBoltFatigue {
  const { thread, boltClass: className } = joint.bolts;
  const temperature = boltHeat(joint);
  const area = thread.tensileStressArea.si;
  const amplitude = boltStressAmplitude.si({
    jointConstant: numberOf(stiffness.high),
    load: load.value,
    stressArea: area,
  });
  const preloadStress = boltTension.si({ load: preload.max.value, area });
  const proof = numberOf(proofStress(joint, temperature));
  const ultimate = boltStrengths(className, thread.majorDiameter, 'thread', temperature).boltUltimate.si;
  const endurance = hasEndurance(className) ? boltEndurance(className).value : undefined;
  const bolt = endurance && { amplitude, preloadStress, endurance: endurance.si };
  return {
    amplitude: show(amplitude),
    preloadStress: show(preloadStress),
    endurance,
    goodman: bolt && boltGoodmanFactor.si({ ...bolt, ultimate }),
    gerber: bolt && boltGerberFactor.si({ ...bolt, ultimate }),
    elliptic:
      bolt && preloadStress <= proof ? boltEllipticFactor.si({ ...bolt, proofStress: proof }) : undefined,
    proofLine: boltProofLineFactor.si({ amplitude, preloadStress, proofStress: proof }),
  };
}
