import type { Arguments, Unit, Values } from '../../units';
import { type Step, step } from '../failure-mode/calculation';
import type { FailureMode } from '../failure-mode/failure-mode';
import type { FailureModeId } from '../failure-mode/mode-name';
import { boltClass } from '../fasteners';
import { datumCaution } from '../materials/datum';
import { sectionLoad } from '../tension-bolts/separating-capacity';
import { anchorResultant, anchorResultantStrength, anchorShearLoad, anchorTensionLoad } from './anchor-load';
import type { anchor } from './restraint-groups';

/** Bolts that anchor a restraint, or a stand. */
export type AnchorBolts = Arguments<typeof anchor.fields>;

/** The modes of anchor bolts under a pull: shear, tension, and both together. */
export function anchorModes(
  { count, thread, boltClass: name, pullAngle, factor }: Values<typeof anchor.fields>,
  pull: Step,
  unit: Unit,
): readonly FailureMode[] {
  const bolt = boltClass(name, { diameter: thread.majorDiameter });
  const angle = pullAngle.si;
  const shear = step(anchorShearLoad, { load: pull, angle, count });
  const tension = step(anchorTensionLoad, { load: pull, angle, count });
  const area = thread.tensileStressArea.si;
  const shearStrength = step(sectionLoad, { strength: bolt.shearUltimateThread.value.si, area });
  const tensileStrength = step(sectionLoad, { strength: bolt.ultimateStrength.value.si, area });
  const cautions = [
    datumCaution(`shear strength of class ${bolt.name}`, bolt.shearUltimateThread),
    ...bolt.cautions,
    'Concrete, timber or frame around the bolts is not analysed. Concrete often fails first.',
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
  // A component below a thousandth of the other is the rounding of an angle.
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
