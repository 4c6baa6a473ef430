import { fromSiValue, type Quantity, type QuantityInput, table, unitOf } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { readPositive, refusal } from '../../units/refusal';
import type { Material, MaterialName } from '../materials';
import { boreGrowth } from './bore-growth';
import { compressionBand, type GlandSizes, glandBands } from './gland-band';
import { rubberModulus } from './gland-formulas';
import { glandChecks, type SealCheck } from './gland-limits';
import { type ORing, oRing } from './o-ring';
import { sealRubber } from './seal-rubber';
import { around, type Band, readBand, showBand, type TolerancedLength } from './tolerance';

/** A static radial O-ring in a groove of the closure, sealing in the bore of the case. */
export interface ORingGlandInput {
  /** A dash number, or a ring of other sizes. */
  readonly ring: string | ORing;
  /** Bore of the case where the seal runs. */
  readonly bore: TolerancedLength;
  /** Bottom of the groove. */
  readonly grooveDiameter: TolerancedLength;
  readonly grooveWidth: TolerancedLength;
  /** Land of the closure beside the groove. */
  readonly closureDiameter: TolerancedLength;
  /** Across the seal, at its greatest; without it nothing grows and no gap is judged. */
  readonly pressure?: QuantityInput<'gauge pressure'>;
  /** What the bore grows by: wall and material of the case, or the growth in diameter itself. */
  readonly caseWall?: QuantityInput<'length'>;
  readonly caseMaterial?: Material | MaterialName;
  /** Case hotter than the closure, which opens the gap further; none where left out. */
  readonly caseTemperatureRise?: QuantityInput<'temperature difference'>;
  /** Shore A, 70 to 90; 70 where left out. */
  readonly hardness?: number;
  /** FKM where left out. */
  readonly compound?: Material | MaterialName;
  readonly coldest?: QuantityInput<'temperature'>;
  readonly hottest?: QuantityInput<'temperature'>;
  /** 0, 1 or 2, of this thickness each; none where left out. */
  readonly backupRings?: number;
  readonly backupThickness?: QuantityInput<'length'>;
}

/** What a gland does to its ring, over all tolerances. */
export interface ORingGland {
  readonly ring: ORing;
  readonly bore: Band<Quantity<'length'>>;
  readonly grooveDiameter: Band<Quantity<'length'>>;
  readonly stretch: Band<number>;
  /** In the groove, thinned by the stretch at constant volume. */
  readonly crossSection: Band<Quantity<'length'>>;
  readonly glandDepth: Band<Quantity<'length'>>;
  /** As assembled. */
  readonly squeeze: Band<number>;
  /** Under pressure, with the bore grown. */
  readonly squeezeUnderPressure: Band<number>;
  /** Least, under pressure, of a ring thinned as measured ones are, where the closure lies against the other side of the bore. */
  readonly squeezeOffCentre: number;
  readonly fill: Band<number>;
  /** Diametral, as assembled. */
  readonly clearance: Band<Quantity<'length'>>;
  /** Diametral, with the bore grown: the gap that the ring must bridge. */
  readonly clearanceUnderPressure: Band<Quantity<'length'>>;
  readonly boreGrowth: Quantity<'length'>;
  /** The most that the ring may bridge; undefined where no pressure is given or backup rings close the gap. */
  readonly clearanceLimit: Quantity<'length'> | undefined;
  /** To squeeze the whole ring: an estimate. */
  readonly compressionForce: Band<Quantity<'force'>>;
  readonly checks: readonly SealCheck[];
  /** Whether every check holds. */
  readonly passes: boolean;
  readonly cautions: readonly string[];
  toString(): string;
}

const name = 'oRingGland';
const fields: FieldsOf<ORingGlandInput> = {
  ring: 'required',
  bore: 'required',
  grooveDiameter: 'required',
  grooveWidth: 'required',
  closureDiameter: 'required',
  pressure: 'optional',
  caseWall: 'optional',
  caseMaterial: 'optional',
  caseTemperatureRise: 'optional',
  hardness: 'optional',
  compound: 'optional',
  coldest: 'optional',
  hottest: 'optional',
  backupRings: 'optional',
  backupThickness: 'optional',
};

/**
 * Squeeze, stretch, fill, gap and force of a static radial O-ring, least, nominal and greatest over all tolerances,
 * with the bore as it grows under pressure and heat.
 *
 * @throws MeopError `out-of-domain` where the parts do not go together, `missing-field`, `unknown-name`, `unknown-field`
 * @example oRingGland({ ring: '228', bore: '2.5 in', grooveDiameter: '2.278 in', grooveWidth: '0.19 in', closureDiameter: '2.496 in' }).fill.nominal // => 0.7056223872
 */
export function oRingGland(input: ORingGlandInput): ORingGland {
  requireFields(name, input, fields);
  const ring = typeof input.ring === 'object' ? input.ring : oRing(input.ring);
  const bore = readBand('bore', input.bore, name);
  const rings = input.backupRings ?? 0;
  if (!(rings === 0 || rings === 1 || rings === 2)) throw refusal(name, 'backupRings', rings, '0, 1 or 2');
  const backup = rings === 0 ? 0 : rings * length('backupThickness', input.backupThickness);
  const groove = readBand('grooveWidth', input.grooveWidth, name);
  if (backup >= groove.min)
    throw refusal(
      name,
      'backupThickness',
      input.backupThickness,
      'a thickness that leaves room for the O-ring',
    );
  const sizes: GlandSizes = {
    insideDiameter: around(ring.insideDiameter.si, ring.insideDiameterTolerance.si),
    crossSection: around(ring.crossSection.si, ring.crossSectionTolerance.si),
    bore,
    grooveDiameter: readBand('grooveDiameter', input.grooveDiameter, name),
    grooveWidth: { min: groove.min - backup, nominal: groove.nominal - backup, max: groove.max - backup },
    closureDiameter: readBand('closureDiameter', input.closureDiameter, name),
    growth: 0,
  };
  if (sizes.closureDiameter.nominal >= bore.nominal)
    throw refusal(name, 'closureDiameter', input.closureDiameter, 'less than the bore');
  if (sizes.grooveDiameter.nominal >= sizes.closureDiameter.nominal)
    throw refusal(name, 'grooveDiameter', input.grooveDiameter, 'less than the closure diameter');

  const { hardness, pressure, thermal, limit } = sealRubber(name, input);
  const growth = boreGrowth({ ...input, pressure: pressure?.si, bore: bore.nominal });
  const cold = glandBands(sizes);
  const pressed = glandBands({ ...sizes, growth: growth.si });
  const modulus = rubberModulus.si({ hardness: Math.min(hardness, 80) }); // the relation ends at 80
  const checks = glandChecks({
    section: ring.crossSection.si,
    cold,
    pressed,
    swell: thermal.swell,
    ...(limit && { limit: { clearance: limit.clearance.si, source: limit.source } }),
    backed: rings > 0,
    temperatures: thermal.checks,
  });
  const unit = ring.crossSection.unit === 'in' ? 'in' : 'mm';
  const cautions = [
    ...ring.cautions,
    ...growth.cautions,
    ...(limit && rings === 0 ? limit.cautions : []),
    ...(rings > 0 ? ['the gap is closed by the backup ring: check its own limits with its maker'] : []),
    ...thermal.cautions,
    ...checks.filter(({ passes }) => !passes).map(({ check, message }) => `${check}: ${message}`),
  ];
  const gland = {
    ring,
    bore: showBand('length', bore, unit),
    grooveDiameter: showBand('length', sizes.grooveDiameter, unit),
    stretch: cold.stretch,
    crossSection: showBand('length', cold.section, unit),
    glandDepth: showBand('length', cold.depth, unit),
    squeeze: cold.squeeze,
    squeezeUnderPressure: pressed.squeeze,
    squeezeOffCentre: pressed.squeezeOffCentre,
    fill: cold.fill,
    clearance: showBand('length', cold.clearance, unit),
    clearanceUnderPressure: showBand('length', pressed.clearance, unit),
    boreGrowth: fromSiValue<'length'>(growth.si, 'length', unitOf(unit)),
    clearanceLimit: limit === undefined || rings > 0 ? undefined : limit.clearance.to(unit),
    compressionForce: showBand(
      'force',
      compressionBand(cold, bore.nominal / 2, modulus),
      unit === 'in' ? 'lbf' : 'N',
    ),
    checks,
    passes: checks.every(({ passes }) => passes),
    cautions,
  };
  const text = (): string => glandText(gland);
  return { ...gland, toString: text, ...{ [Symbol.for('nodejs.util.inspect.custom')]: text } };
}

function glandText(gland: Omit<ORingGland, 'toString'>): string {
  const percent = ({ min, nominal, max }: Band<number>): Record<string, string> => {
    const show = (value: number): string => `${(value * 100).toFixed(1)} %`;
    return { min: show(min), nominal: show(nominal), max: show(max) };
  };
  const rows = [
    { what: 'stretch', ...percent(gland.stretch) },
    { what: 'cross section in the groove', ...gland.crossSection },
    { what: 'gland depth', ...gland.glandDepth },
    { what: 'squeeze', ...percent(gland.squeeze) },
    { what: 'squeeze under pressure', ...percent(gland.squeezeUnderPressure) },
    { what: 'fill', ...percent(gland.fill) },
    { what: 'diametral clearance', ...gland.clearance },
    { what: 'clearance under pressure', ...gland.clearanceUnderPressure },
    { what: 'compression force (estimate)', ...gland.compressionForce },
  ];
  const checks = gland.checks.map(
    ({ check, passes, message }) => `${passes ? 'holds' : 'FAILS'}  ${check}: ${message}`,
  );
  return [
    `${gland.ring.size}: ${gland.passes ? 'every check holds' : 'not every check holds'}`,
    table(rows),
    '',
    ...checks,
    ...gland.cautions.map((caution) => `caution: ${caution}`),
  ].join('\n');
}

const length = (field: string, value: QuantityInput<'length'> | undefined): number =>
  readPositive('length', field, value, name).si;
