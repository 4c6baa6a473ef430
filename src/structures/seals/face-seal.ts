import {
  type Arguments,
  choice,
  fromSiValue,
  MeopError,
  optional,
  printable,
  procedure,
  type Quantity,
  table,
  unitOf,
  type Values,
} from '../../units';
import { type FaceSealBands, faceSealChecks } from './face-seal-checks';
import { measuredLoss } from './gland-band';
import {
  glandFill,
  glandSqueeze,
  oRingCompressionForce,
  oRingStretch,
  rubberModulus,
} from './gland-formulas';
import type { SealCheck } from './gland-limits';
import type { ORing } from './o-ring';
import { refuseSeat, refuseStretch } from './ring-in-groove';
import { faceGland, sealConditions } from './seal-groups';
import { sealRubber } from './seal-rubber';
import { around, type Band, type BandSi, showBand, toleranced } from './tolerance';

const { grooveOutsideDiameter, grooveInsideDiameter, grooveDepth } = faceGland.fields;
const inputs = {
  ...faceGland.fields,
  grooveOutsideDiameter: toleranced(grooveOutsideDiameter),
  grooveInsideDiameter: toleranced(grooveInsideDiameter),
  grooveDepth: toleranced(grooveDepth),
  pressureSide: optional(
    choice('side of the ring on which the pressure is', ['inside', 'outside']),
    'inside',
  ),
  ...sealConditions,
};

/** An O-ring in a groove of a flat face, which another face closes. */
export type FaceSealInput = Arguments<typeof inputs>;

/** A face seal over all tolerances. */
export interface FaceSeal {
  readonly ring: ORing;
  /** Diameter on which the pressure acts between the faces. */
  readonly sealDiameter: Quantity<'length'>;
  readonly squeeze: Band<number>;
  /** Squeeze with the faces open by the gap. */
  readonly squeezeUnderPressure: Band<number>;
  /** Interference with the wall that the pressure pushes the ring against, as a fraction of the ring's diameter there. */
  readonly seat: Band<number>;
  readonly fill: Band<number>;
  readonly grooveWidth: Band<Quantity<'length'>>;
  /** Estimated force that closes the faces on the ring; it is less than the force of the pressure. */
  readonly compressionForce: Band<Quantity<'force'>>;
  readonly checks: readonly SealCheck[];
  /** Whether all checks are satisfied. */
  readonly passes: boolean;
  readonly cautions: readonly string[];
  toString(): string;
}

/**
 * Squeeze, seat, fill and force of an O-ring in a groove of a flat face: minimum, nominal and maximum over all tolerances.
 * Pressure inside pushes the ring outward, so the outer wall of the groove must touch it from the start; pressure outside, the
 * inner wall.
 *
 * @example faceSeal({ ring: '228', grooveOutsideDiameter: '2.5 in', grooveInsideDiameter: '2.136 in', grooveDepth: '0.104 in' }).squeeze.nominal.toFixed(3) // => '0.252'
 */
export const faceSeal = /* @__PURE__ */ procedure({
  name: 'faceSeal',
  title: 'Face seal over its tolerances',
  source: 'Geometry; the limits of each check with its source',
  inputs,
  gives: 'squeeze, seat, fill and force, and whether each check is satisfied',
  example: {
    ring: '228',
    grooveOutsideDiameter: '2.5 in',
    grooveInsideDiameter: '2.136 in',
    grooveDepth: '0.104 in',
  },
  run: (input): FaceSeal => faceSealOf(input),
});

function faceSealOf(input: Values<typeof inputs>): FaceSeal {
  const {
    ring,
    hardness,
    grooveOutsideDiameter: outer,
    grooveInsideDiameter: inner,
    grooveDepth: depth,
  } = input;
  const inside = input.pressureSide === 'inside';
  const width: BandSi = {
    min: (outer.min - inner.max) / 2,
    nominal: (outer.nominal - inner.nominal) / 2,
    max: (outer.max - inner.min) / 2,
  };
  const id = around(ring.insideDiameter.si, ring.insideDiameterTolerance.si);
  const cs = around(ring.crossSection.si, ring.crossSectionTolerance.si);
  if (width.min < cs.nominal * 0.9)
    throw new MeopError({
      code: 'out-of-domain',
      procedure: 'faceSeal',
      path: 'grooveInsideDiameter',
      given: mm(inner.nominal),
      expected: `less than ${mm(outer.min - 1.8 * cs.nominal - (inner.max - inner.nominal))}`,
      remedy: `Cut a groove wide enough for the ring (${mm(cs.nominal)})`,
    });
  if (inside) refuseSeat(ring, outer.nominal, 'faceSeal');
  else refuseStretch(ring, inner.nominal, 'faceSeal');
  const faceGap = input.faceGap?.si ?? 0;
  const { thermal, limit } = sealRubber(input);
  const bands = bandsOf({ inside, outer, inner, depth, width, id, cs, faceGap });
  const checks = faceSealChecks(bands, {
    inside,
    swell: thermal.swell,
    limit: limit && { gap: limit.clearance.si, source: limit.source },
    temperatures: thermal.checks,
  });
  const unit = ring.crossSection.unit === 'in' ? 'in' : 'mm';
  const result = {
    ring,
    sealDiameter: fromSiValue<'length'>(inside ? outer.max : inner.min, 'length', unitOf(unit)),
    squeeze: bands.squeeze,
    squeezeUnderPressure: bands.squeezeUnderPressure,
    seat: bands.seat,
    fill: bands.fill,
    grooveWidth: showBand('length', width, unit),
    compressionForce: showBand(
      'force',
      forceOf(bands.squeeze, id.nominal + cs.nominal, cs, hardness),
      unit === 'in' ? 'lbf' : 'N',
    ),
    checks,
    passes: checks.every(({ passes }) => passes),
    cautions: [
      ...ring.cautions,
      ...(limit?.cautions ?? []),
      ...thermal.cautions,
      ...(bands.fill.max * (1 + thermal.swell) > 0.9
        ? ['The groove is more than 90 % full in the worst case. Seal manufacturers allow 85 to 90 %.']
        : []),
      ...(input.pressure !== undefined && input.faceGap === undefined
        ? [
            'faceGap not specified; assumed 0 (metal to metal). Bolt stretch and plate bending open the faces under pressure.',
          ]
        : []),
      'For gas the faces must be smoother than 16 µin (0.4 µm), turned, without radial scratches (Parker O-Ring Handbook).',
      ...checks.filter(({ passes }) => !passes).map(({ check, message }) => `${check}: ${message}`),
    ],
  };
  return printable(result, () => faceSealText(result));
}

interface Sizes {
  readonly inside: boolean;
  readonly outer: BandSi;
  readonly inner: BandSi;
  readonly depth: BandSi;
  readonly width: BandSi;
  readonly id: BandSi;
  readonly cs: BandSi;
  readonly faceGap: number;
}

function bandsOf({ inside, outer, inner, depth, width, id, cs, faceGap }: Sizes): FaceSealBands {
  // A ring stretched over the inner wall is thinner.
  const stretch = Math.max(0, oRingStretch.si({ insideDiameter: id.min, grooveDiameter: inner.max }));
  const sectionAtWorst = cs.min * Math.min(1 - measuredLoss(stretch), 1 / Math.sqrt(1 + stretch));
  const squeeze = (gap: number): BandSi => ({
    min: glandSqueeze.si({ crossSection: sectionAtWorst, glandDepth: depth.max + gap }),
    nominal: glandSqueeze.si({ crossSection: cs.nominal, glandDepth: depth.nominal + gap }),
    max: glandSqueeze.si({ crossSection: cs.max, glandDepth: depth.min + gap }),
  });
  const fill = (crossSection: number, glandDepth: number, grooveWidth: number): number =>
    glandFill.si({ crossSection, glandDepth, grooveWidth });
  const onOuter = (ring: number, groove: number): number => (ring - groove) / ring;
  return {
    section: cs.nominal,
    sectionAtWorst,
    squeeze: squeeze(0),
    squeezeUnderPressure: squeeze(faceGap),
    deepest: depth.max,
    seat: inside
      ? {
          min: onOuter(id.min + 2 * cs.min, outer.max),
          nominal: onOuter(id.nominal + 2 * cs.nominal, outer.nominal),
          max: onOuter(id.max + 2 * cs.max, outer.min),
        }
      : {
          min: oRingStretch.si({ insideDiameter: id.max, grooveDiameter: inner.min }),
          nominal: oRingStretch.si({ insideDiameter: id.nominal, grooveDiameter: inner.nominal }),
          max: oRingStretch.si({ insideDiameter: id.min, grooveDiameter: inner.max }),
        },
    fill: {
      min: fill(cs.min, depth.max, width.max),
      nominal: fill(cs.nominal, depth.nominal, width.nominal),
      max: fill(cs.max, depth.min, width.min),
    },
    faceGap,
  };
}

function forceOf(squeeze: BandSi, ringDiameter: number, cs: BandSi, hardness: number): BandSi {
  const modulus = rubberModulus.si({ hardness: Math.min(hardness, 80) }); // the relation ends at 80
  const force = (at: number, crossSection: number): number =>
    at <= 0 ? 0 : oRingCompressionForce.si({ ringDiameter, crossSection, modulus, squeeze: at });
  return {
    min: force(squeeze.min, cs.min),
    nominal: force(squeeze.nominal, cs.nominal),
    max: force(squeeze.max, cs.max),
  };
}

function faceSealText(seal: Omit<FaceSeal, 'toString'>): string {
  const percent = ({ min, nominal, max }: Band<number>): Record<string, string> => {
    const show = (value: number): string => `${(value * 100).toFixed(1)} %`;
    return { min: show(min), nominal: show(nominal), max: show(max) };
  };
  return [
    `${seal.ring.size} face seal: ${seal.passes ? 'all checks satisfied' : 'not all checks satisfied'}; the pressure acts on ${seal.sealDiameter}`,
    table([
      { what: 'squeeze', ...percent(seal.squeeze) },
      { what: 'squeeze under pressure', ...percent(seal.squeezeUnderPressure) },
      { what: 'interference with its seat', ...percent(seal.seat) },
      { what: 'fill', ...percent(seal.fill) },
      { what: 'groove width', ...seal.grooveWidth },
      { what: 'compression force (estimate)', ...seal.compressionForce },
    ]),
    '',
    ...seal.checks.map(
      ({ check, passes, message }) => `${passes ? 'satisfied' : 'FAILS'}  ${check}: ${message}`,
    ),
    ...seal.cautions.map((caution) => `caution: ${caution}`),
  ].join('\n');
}

const mm = (si: number): string => `${Number((si * 1000).toPrecision(4))} mm`;
