import { type QuantityInput, readInput, type Unit } from '../../units';
import { refusal } from '../../units/refusal';
import { type Step, step } from '../failure-mode/calculation';
import type { FailureMode } from '../failure-mode/failure-mode';
import type { FailureModeId } from '../failure-mode/mode-name';
import { boltClass } from '../fasteners';
import { datumCaution } from '../materials/datum';
import { threadGeometry } from '../threads';
import {
  anchorResultant,
  anchorResultantStrength,
  anchorShearLoad,
  anchorTensionLoad,
  boltBreakingLoad,
} from './anchor-load';

const name = 'ropeRestraint';

/** Bolts that hold a restraint, or a stand, to what it stands on. */
export interface AnchorBolts {
  /** That share the load alike. */
  readonly count: number;
  readonly thread: string;
  /** Such as `'8.8'`. */
  readonly boltClass: string;
  /** Between the pull and the surface: 0° shears the bolts, 90° pulls them out; 0° where left out. */
  readonly pullAngle?: QuantityInput<'angle'>;
  /** On the ultimate strength; 2 where left out. */
  readonly factor?: number;
}

/** The modes of anchor bolts under a pull: shear, tension, and both together. */
export function anchorModes(anchor: AnchorBolts, pull: Step, unit: Unit): readonly FailureMode[] {
  const { count, factor = 2 } = anchor;
  if (!(Number.isInteger(count) && count >= 1))
    throw refusal(name, 'anchor.count', count, 'a whole number from 1');
  if (!(factor >= 1 && Number.isFinite(factor)))
    throw refusal(name, 'anchor.factor', factor, 'a factor of safety of 1 or more');
  const thread = threadGeometry(anchor.thread);
  const bolt = boltClass(anchor.boltClass, { diameter: thread.majorDiameter });
  const angle =
    anchor.pullAngle === undefined ? 0 : readInput('angle', 'anchor.pullAngle', anchor.pullAngle, name).si;
  if (!(angle >= 0 && angle <= Math.PI / 2))
    throw refusal(name, 'anchor.pullAngle', anchor.pullAngle, '0 to 90 deg');
  const shear = step(anchorShearLoad, { load: pull, angle, count });
  const tension = step(anchorTensionLoad, { load: pull, angle, count });
  const area = thread.tensileStressArea.si;
  const shearStrength = step(boltBreakingLoad, { strength: bolt.shearUltimateThread.value.si, area });
  const tensileStrength = step(boltBreakingLoad, { strength: bolt.ultimateStrength.value.si, area });
  const cautions = [
    datumCaution(`shear strength of class ${bolt.name}`, bolt.shearUltimateThread),
    ...bolt.cautions,
    'concrete, timber or frame around the bolts is not analysed here: concrete often fails first',
  ].filter((text) => text !== undefined);
  const mode = (id: FailureModeId, calculation: Step, allowable: Step): FailureMode => ({
    id,
    part: 'restraint',
    limit: 'ultimate',
    calculation,
    allowable,
    factor,
    unit,
    sources: [`strength: ${bolt.standard}`, thread.source],
    cautions,
  });
  // A share below a thousandth of the other is the rounding of an angle.
  const isSheared = shear.value > tension.value * 1e-3;
  const isPulled = tension.value > shear.value * 1e-3;
  const both = { shear, tension };
  return [
    ...(isSheared ? [mode('anchor-bolt-shear', shear, shearStrength)] : []),
    ...(isPulled ? [mode('anchor-bolt-tension', tension, tensileStrength)] : []),
    ...(isSheared && isPulled
      ? [
          mode(
            'anchor-bolt-shear-and-tension',
            step(anchorResultant, both),
            step(anchorResultantStrength, { ...both, shearStrength, tensileStrength }),
          ),
        ]
      : []),
  ];
}
