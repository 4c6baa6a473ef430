import { fromSiValue, type Quantity, unitFor } from '../../units';
import { numberOf } from '../failure-mode/calculation';
import { finishOf, methodOf } from './axial-bolts';
import type { TensionBoltParts } from './tension-bolt-modes';
import { boltHeat, proofStress } from './tension-bolt-modes';

const percent = (part: number): string => `${Number((100 * part).toPrecision(3))} %`;

/** The cautions for bolts in tension that no margin has. */
export function tensionBoltCautions({
  joint,
  unit,
  load,
  stiffness,
  preload,
}: TensionBoltParts): readonly string[] {
  const { bolts } = joint;
  const force = (si: number): Quantity<'force'> => fromSiValue(si, 'force', unitFor('force', unit.text));
  const proof = numberOf(proofStress(joint, boltHeat(joint))) * bolts.thread.tensileStressArea.si;
  const nominal = numberOf(preload.nominal);
  const { scatter, method } = methodOf(bolts.tightening);
  return [
    ...(joint.factors?.cautions ?? []),
    `Preload varies by ±${percent(scatter)} (${method}); strength is evaluated at ${force(preload.max.value)}, separation at ${force(preload.min.value)}.`,
    ...(stiffness.isNarrow || stiffness.constant === undefined
      ? joint.jointConstant === undefined
        ? [
            `The joint constant is not certain${stiffness.constant === undefined ? '' : ` (computed ${stiffness.constant.value.toFixed(2)})`}; strength is evaluated at ${numberOf(stiffness.high).toFixed(2)}, separation at ${numberOf(stiffness.low).toFixed(2)} (engineering practice, no published source).`,
          ]
        : []
      : []),
    ...(bolts.tightening === undefined
      ? [`tightening not specified; assumed '${method}' (scatter of preload from torque).`]
      : []),
    ...(bolts.torque !== undefined && bolts.finish === undefined
      ? [`finish not specified; assumed '${finishOf(bolts.finish).finish}' (usual finish).`]
      : []),
    ...(preload.max.value > 0.9 * proof
      ? [`The maximum preload exceeds 90 % of the proof load (${force(proof)}). Tighten less.`]
      : []),
    ...(nominal < 0.6 * proof
      ? [
          `The nominal preload is ${percent(nominal / proof)} of the proof load. Bolts at less than 60 % can loosen; 75 % is recommended (${force(0.75 * proof)}).`,
        ]
      : []),
    ...(load.value > preload.min.value / (1 - numberOf(stiffness.low))
      ? ['The parts separate below this pressure. Then the bolts carry the full load.']
      : []),
    ...(bolts.thread.provenance === 'from memory'
      ? ['The thread limits are computed by tolerance formulas quoted from memory, not verified.']
      : []),
    ...(joint.shareFactor === 1
      ? [
          'The bolts are assumed to share the load equally and without prying. A flange in contact outside the bolt circle adds a prying load of 30 % or more (quoted from memory, not verified); specify shareFactor.',
        ]
      : []),
    ...(preload.thermalGain || preload.thermalLoss
      ? [
          'The thermal change of preload uses the expansion of the clamped part; that of the bolts is quoted from memory unless specified.',
        ]
      : []),
    `A loss of ${percent(bolts.relaxation)} of the preload by embedding is included (quoted from memory, not verified).`,
  ];
}
