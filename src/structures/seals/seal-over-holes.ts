import { fromSiValue, type Quantity, type QuantityInput, readInput, table } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { readNotNegative, readPositive, refusal } from '../../units/refusal';
import type { ORingGland } from './o-ring-gland';

/** A seal that slides past drilled holes when the closure goes in. */
export interface SealOverHolesInput {
  readonly gland: ORingGland;
  readonly holeDiameter: QuantityInput<'length'>;
  /** Depth of the broken edge on the bore side, radially; zero for a sharp edge. */
  readonly edgeBreak: QuantityInput<'length'>;
  /** Included angle of the countersink that breaks the edge; 90° where left out. */
  readonly countersinkAngle?: QuantityInput<'angle'>;
  /** From the centre of the holes to the near side of the groove, once assembled. */
  readonly holeToGroove: QuantityInput<'length'>;
}

/** Whether the seal survives the holes, and what would make it. */
export interface SealOverHolesCheck {
  readonly passes: boolean;
  /** How far the ring can bulge into a hole: all that it is squeezed by. */
  readonly bulge: Quantity<'length'>;
  /** Depth of edge break that keeps the sharp edge out of reach. */
  readonly edgeBreakNeeded: Quantity<'length'>;
  /** Width of the hole with its broken edge, in the bore. */
  readonly openingDiameter: Quantity<'length'>;
  /** The other way: open the bore where the holes are to this diameter, and the ring touches nothing there. */
  readonly reliefDiameter: Quantity<'length'>;
  /** From the opening to the groove; below zero the seal would sit on the hole. */
  readonly sealLand: Quantity<'length'>;
  readonly cautions: readonly string[];
  toString(): string;
}

const name = 'checkSealOverHoles';

const sealOverHolesFields: FieldsOf<SealOverHolesInput> = {
  gland: 'required',
  holeDiameter: 'required',
  edgeBreak: 'required',
  countersinkAngle: 'optional',
  holeToGroove: 'required',
};

/**
 * Whether an O-ring passes drilled holes on assembly without being cut: squeezed rubber springs into a hole by at most
 * its own interference, so an edge broken deeper than that never meets it. Geometry; conservative for holes narrower
 * than the ring.
 *
 * @throws MeopError `out-of-domain`
 * @example checkSealOverHoles({ gland: oRingGland({ ring: '228', bore: '2.5 in', grooveDiameter: '2.278 in', grooveWidth: '0.19 in', closureDiameter: '2.496 in' }), holeDiameter: '6.4 mm', edgeBreak: '0.2 mm', holeToGroove: '12 mm' }).passes // => false
 */
export function checkSealOverHoles(input: SealOverHolesInput): SealOverHolesCheck {
  requireFields('checkSealOverHoles', input, sealOverHolesFields);
  const length = (field: 'holeDiameter' | 'edgeBreak' | 'holeToGroove', read = readPositive): number =>
    read('length', field, input[field], name).si;
  const { gland } = input;
  const hole = length('holeDiameter');
  const edgeBreak = length('edgeBreak', readNotNegative);
  const toGroove = length('holeToGroove');
  const angle =
    input.countersinkAngle === undefined
      ? Math.PI / 2
      : readInput('angle', 'countersinkAngle', input.countersinkAngle, name).si;
  if (!(angle > 0 && angle < Math.PI))
    throw refusal(name, 'countersinkAngle', input.countersinkAngle, 'an angle between 0 and 180 deg');

  const unit = readInput('length', 'holeDiameter', input.holeDiameter, name).unit;
  const show = (si: number): Quantity<'length'> => fromSiValue(si, 'length', unit);
  const bulge = Math.max(0, gland.crossSection.max.si - gland.glandDepth.min.si);
  const opening = hole + 2 * edgeBreak * Math.tan(angle / 2);
  const sealLand = toGroove - opening / 2;
  const relief = gland.grooveDiameter.max.si + 2 * gland.crossSection.max.si;
  const cautions = [
    ...(edgeBreak < bulge
      ? [
          `the edge of the hole stands within reach of the ring: break it ${show(bulge)} deep or open the bore there`,
        ]
      : []),
    ...(angle > (2 * Math.PI) / 3
      ? []
      : ['a countersink leaves an edge of its own: blend it with abrasive cloth and lubricate the ring']),
    ...(sealLand <= 0 ? ['the groove lies over the hole once assembled: it cannot seal there'] : []),
  ];
  const passes = edgeBreak >= bulge && sealLand > 0;
  const result = {
    passes,
    bulge: show(bulge),
    edgeBreakNeeded: show(bulge),
    openingDiameter: show(opening),
    reliefDiameter: show(relief),
    sealLand: show(sealLand),
    cautions,
  };
  const text = (): string =>
    [
      passes ? 'the seal passes the holes' : 'the seal is cut by the holes or sits on them',
      table(
        (['bulge', 'edgeBreakNeeded', 'openingDiameter', 'reliefDiameter', 'sealLand'] as const).map(
          (what) => ({
            what,
            value: result[what],
          }),
        ),
      ),
      ...cautions.map((caution) => `caution: ${caution}`),
    ].join('\n');
  return { ...result, toString: text, ...{ [Symbol.for('nodejs.util.inspect.custom')]: text } };
}
