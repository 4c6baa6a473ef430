import { fromSiValue, type QuantityInput, readInput, type Unit } from '../../units';
import { refusal } from '../../units/refusal';
import { boltClass } from '../fasteners';
import { type Margin, margin } from '../margin';
import { datumCaution } from '../materials';
import { threadGeometry } from '../threads';

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

/** Margins of anchor bolts under a pull, SI: shear, tension, and both together. */
export function anchorMargins(anchor: AnchorBolts, pull: number, unit: Unit): readonly Margin[] {
  const { count, factor = 2 } = anchor;
  if (!(Number.isInteger(count) && count >= 1))
    throw refusal(name, 'anchor.count', count, 'a whole number from 1');
  if (!(factor >= 1 && Number.isFinite(factor)))
    throw refusal(name, 'anchor.factor', factor, 'a factor of safety of 1 or more');
  const thread = threadGeometry(anchor.thread);
  const strength = boltClass(anchor.boltClass, { diameter: thread.majorDiameter });
  const angle =
    anchor.pullAngle === undefined ? 0 : readInput('angle', 'anchor.pullAngle', anchor.pullAngle, name).si;
  if (!(angle >= 0 && angle <= Math.PI / 2))
    throw refusal(name, 'anchor.pullAngle', anchor.pullAngle, '0 to 90 deg');
  const shear = (pull * Math.cos(angle)) / count;
  const tension = (pull * Math.sin(angle)) / count;
  const shearStrength = strength.shearUltimateThread.value.si * thread.tensileStressArea.si;
  const tensileStrength = strength.ultimateStrength.value.si * thread.tensileStressArea.si;
  const cautions = [
    datumCaution(`shear strength of class ${strength.name}`, strength.shearUltimateThread),
    ...strength.cautions,
    'concrete, timber or frame around the bolts is not judged here: concrete often fails first',
  ].filter((text) => text !== undefined);
  const from = `${strength.standard}; ${thread.source}`;
  const one = (mode: string, applied: number, allowable: number, source: string): Margin =>
    margin({
      mode,
      applied: fromSiValue(applied, 'force', unit),
      allowable: fromSiValue(allowable, 'force', unit),
      factor,
      source,
      cautions,
    });
  const margins: Margin[] = [];
  // A share below a thousandth of the other is the rounding of an angle.
  if (shear > tension * 1e-3) margins.push(one('anchor bolt, shear', shear, shearStrength, from));
  if (tension > shear * 1e-3) margins.push(one('anchor bolt, tension', tension, tensileStrength, from));
  if (margins.length === 2) {
    const used = Math.hypot(shear / shearStrength, tension / tensileStrength);
    const both = Math.hypot(shear, tension);
    margins.push(
      one('anchor bolt, both', both, both / used, `${from}; elliptical interaction (from memory)`),
    );
  }
  return margins;
}
