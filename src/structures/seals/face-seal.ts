import { fromSiValue, type Quantity, type QuantityInput, table, unitOf } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { readNotNegative, refusal } from '../../units/refusal';
import type { Material, MaterialName } from '../materials';
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
import { type ORing, oRing } from './o-ring';
import { sealRubber } from './seal-rubber';
import { around, type Band, type BandSi, readBand, showBand, type TolerancedLength } from './tolerance';

/** An O-ring in a groove of a flat face, closed by another face that is bolted on: a bulkhead, a flange, an adapter. */
export interface FaceSealInput {
  /** A dash number, or a ring of other sizes. */
  readonly ring: string | ORing;
  readonly grooveOutsideDiameter: TolerancedLength;
  readonly grooveInsideDiameter: TolerancedLength;
  readonly grooveDepth: TolerancedLength;
  /** Where the pressure is; inside the ring where left out. */
  readonly pressureSide?: 'inside' | 'outside';
  /** Across the seal, at its greatest; without it no gap is judged. */
  readonly pressure?: QuantityInput<'gauge pressure'>;
  /** How far the faces stand apart under pressure, by stretched bolts and bent plates; metal on metal, 0, where left out. */
  readonly faceGap?: QuantityInput<'length'>;
  /** Shore A, 70 to 90; 70 where left out. */
  readonly hardness?: number;
  /** FKM where left out. */
  readonly compound?: Material | MaterialName;
  readonly coldest?: QuantityInput<'temperature'>;
  readonly hottest?: QuantityInput<'temperature'>;
}

/** What a face groove does to its ring, over all tolerances. */
export interface FaceSeal {
  readonly ring: ORing;
  /** The pressure pushes the faces apart on this diameter. */
  readonly sealDiameter: Quantity<'length'>;
  readonly squeeze: Band<number>;
  /** With the faces apart by the gap. */
  readonly squeezeUnderPressure: Band<number>;
  /** Interference with the wall that the pressure pushes the ring against, as a fraction of the ring's diameter there. */
  readonly seat: Band<number>;
  readonly fill: Band<number>;
  readonly grooveWidth: Band<Quantity<'length'>>;
  /** To close the faces on the ring: an estimate, and less than what the pressure adds. */
  readonly compressionForce: Band<Quantity<'force'>>;
  readonly checks: readonly SealCheck[];
  /** Whether every check holds. */
  readonly passes: boolean;
  readonly cautions: readonly string[];
  toString(): string;
}

const name = 'faceSeal';
const fields: FieldsOf<FaceSealInput> = {
  ring: 'required',
  grooveOutsideDiameter: 'required',
  grooveInsideDiameter: 'required',
  grooveDepth: 'required',
  pressureSide: 'optional',
  pressure: 'optional',
  faceGap: 'optional',
  hardness: 'optional',
  compound: 'optional',
  coldest: 'optional',
  hottest: 'optional',
};

/**
 * Squeeze, seat, fill and force of an O-ring in a groove of a flat face, least, nominal and greatest over all tolerances.
 * Pressure inside pushes the ring outward, so the outer wall of the groove is to touch it from the start; pressure outside, the
 * inner wall.
 *
 * @throws MeopError `out-of-domain` where the parts do not go together, `unknown-name`, `unknown-field`
 * @example faceSeal({ ring: '228', grooveOutsideDiameter: '2.5 in', grooveInsideDiameter: '2.136 in', grooveDepth: '0.104 in' }).squeeze.nominal.toFixed(3) // => '0.252'
 */
export function faceSeal(input: FaceSealInput): FaceSeal {
  requireFields(name, input, fields);
  const ring = typeof input.ring === 'object' ? input.ring : oRing(input.ring);
  const { pressureSide = 'inside' } = input;
  if (pressureSide !== 'inside' && pressureSide !== 'outside')
    throw refusal(name, 'pressureSide', pressureSide, "'inside' or 'outside'");
  const inside = pressureSide === 'inside';
  const outer = readBand('grooveOutsideDiameter', input.grooveOutsideDiameter, name);
  const inner = readBand('grooveInsideDiameter', input.grooveInsideDiameter, name);
  const depth = readBand('grooveDepth', input.grooveDepth, name);
  const width: BandSi = {
    min: (outer.min - inner.max) / 2,
    nominal: (outer.nominal - inner.nominal) / 2,
    max: (outer.max - inner.min) / 2,
  };
  const id = around(ring.insideDiameter.si, ring.insideDiameterTolerance.si);
  const cs = around(ring.crossSection.si, ring.crossSectionTolerance.si);
  if (width.min < cs.nominal * 0.9)
    throw refusal(
      name,
      'grooveInsideDiameter',
      input.grooveInsideDiameter,
      `less than the outside diameter, by a groove wide enough for the ring (${mm(cs.nominal)}),`,
    );
  const faceGap =
    input.faceGap === undefined ? 0 : readNotNegative('length', 'faceGap', input.faceGap, name).si;
  const { hardness, thermal, limit } = sealRubber(name, input);
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
        ? ['the groove is more than nine tenths full at the worst: seal makers ask for 85 to 90 % at most']
        : []),
      ...(input.pressure !== undefined && input.faceGap === undefined
        ? [
            'the faces are taken to stay closed under pressure: bolts that stretch and plates that bend open them',
          ]
        : []),
      'for gas the faces are to be smoother than 16 µin (0.4 µm), turned and not scratched across (Parker O-Ring Handbook)',
      ...checks.filter(({ passes }) => !passes).map(({ check, message }) => `${check}: ${message}`),
    ],
  };
  const text = (): string => faceSealText(result);
  return { ...result, toString: text, ...{ [Symbol.for('nodejs.util.inspect.custom')]: text } };
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
  // A ring that lies over the inner wall is stretched by it, and thinner.
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
    `${seal.ring.size} in a face: ${seal.passes ? 'every check holds' : 'not every check holds'}; the pressure acts on ${seal.sealDiameter}`,
    table([
      { what: 'squeeze', ...percent(seal.squeeze) },
      { what: 'squeeze under pressure', ...percent(seal.squeezeUnderPressure) },
      { what: 'interference with its seat', ...percent(seal.seat) },
      { what: 'fill', ...percent(seal.fill) },
      { what: 'groove width', ...seal.grooveWidth },
      { what: 'compression force (estimate)', ...seal.compressionForce },
    ]),
    '',
    ...seal.checks.map(({ check, passes, message }) => `${passes ? 'holds' : 'FAILS'}  ${check}: ${message}`),
    ...seal.cautions.map((caution) => `caution: ${caution}`),
  ].join('\n');
}

const mm = (si: number): string => `${Number((si * 1000).toPrecision(4))} mm`;
