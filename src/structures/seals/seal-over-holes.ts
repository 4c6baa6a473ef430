import {
  angle,
  fromSiValue,
  instance,
  length,
  optional,
  printable,
  procedure,
  type Quantity,
  table,
  unitFor,
} from '../../units';
import type { ORingGland } from './o-ring-gland';

/** Whether the seal passes the holes undamaged, and the edge break required. */
export interface SealOverHolesCheck {
  readonly passes: boolean;
  /** Maximum depth to which the ring bulges into a hole: its whole squeeze. */
  readonly bulge: Quantity<'length'>;
  /** Depth of edge break at which the ring cannot reach the sharp edge. */
  readonly edgeBreakNeeded: Quantity<'length'>;
  /** Width of the hole with its broken edge, in the bore. */
  readonly openingDiameter: Quantity<'length'>;
  /** Alternative: bore diameter at the holes at which the ring has clearance. */
  readonly reliefDiameter: Quantity<'length'>;
  /** Distance from the opening to the groove; negative where the seal is over the hole. */
  readonly sealLand: Quantity<'length'>;
  readonly cautions: readonly string[];
  toString(): string;
}

const isGland = (value: unknown): value is ORingGland =>
  typeof value === 'object' && value !== null && 'glandDepth' in value && 'crossSection' in value;

/**
 * Checks that an O-ring passes drilled holes on assembly without being cut. Squeezed rubber expands into a hole by at most
 * its interference, so that an edge broken deeper than that cannot cut it. Conservative for holes narrower than the ring.
 *
 * @example checkSealOverHoles({ gland: oRingGland({ ring: '228', bore: '2.5 in', grooveDiameter: '2.278 in', grooveWidth: '0.19 in', closureDiameter: '2.496 in' }), holeDiameter: '6.4 mm', edgeBreak: '0.2 mm', holeToGroove: '12 mm' }).passes // => false
 */
export const checkSealOverHoles = /* @__PURE__ */ procedure({
  name: 'checkSealOverHoles',
  title: 'O-ring that slides past drilled holes on assembly',
  source: 'Geometry',
  inputs: {
    gland: instance('gland of the O-ring', 'an ORingGland', isGland, { remedy: 'Make one with oRingGland' }),
    holeDiameter: length('d', 'diameter of the holes', { example: '6.4 mm' }),
    edgeBreak: length('c', 'radial depth of the broken edge on the bore side; zero for a sharp edge', {
      min: 0,
      example: '0.2 mm',
    }),
    countersinkAngle: optional(
      angle('α', 'included angle of the countersink that breaks the edge', {
        above: 0,
        below: Math.PI,
        example: '90 deg',
      }),
      Math.PI / 2,
    ),
    holeToGroove: length(
      'x',
      'distance from the hole centres to the near side of the groove, once assembled',
      {
        example: '12 mm',
      },
    ),
  },
  gives: 'whether the ring passes, and the edge break required',
  example:
    "checkSealOverHoles({ gland: oRingGland({ ring: '228', bore: '2.5 in', grooveDiameter: '2.278 in', grooveWidth: '0.19 in', closureDiameter: '2.496 in' }), holeDiameter: '6.4 mm', edgeBreak: '0.2 mm', holeToGroove: '12 mm' })",
  run: ({ gland, holeDiameter, edgeBreak: depth, countersinkAngle, holeToGroove }): SealOverHolesCheck => {
    const [hole, edgeBreak, angle] = [holeDiameter.si, depth.si, countersinkAngle.si];
    const show = (si: number): Quantity<'length'> =>
      fromSiValue(si, 'length', unitFor('length', holeDiameter.unit));
    const bulge = Math.max(0, gland.crossSection.max.si - gland.glandDepth.min.si);
    const opening = hole + 2 * edgeBreak * Math.tan(angle / 2);
    const sealLand = holeToGroove.si - opening / 2;
    const relief = gland.grooveDiameter.max.si + 2 * gland.crossSection.max.si;
    const cautions = [
      ...(edgeBreak < bulge
        ? [
            `The ring reaches the edge of the hole. Break the edge ${show(bulge)} deep, or open the bore there.`,
          ]
        : []),
      ...(angle > (2 * Math.PI) / 3
        ? []
        : ['A countersink has an edge itself. Blend it with abrasive cloth and lubricate the ring.']),
      ...(sealLand <= 0 ? ['The groove is over the hole once assembled and cannot seal there.'] : []),
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
    return printable(result, () =>
      [
        passes ? 'The seal passes the holes.' : 'The holes cut the seal, or the groove is over them.',
        table(
          (['bulge', 'edgeBreakNeeded', 'openingDiameter', 'reliefDiameter', 'sealLand'] as const).map(
            (what) => ({ what, value: result[what] }),
          ),
        ),
        ...cautions.map((caution) => `caution: ${caution}`),
      ].join('\n'),
    );
  },
});
