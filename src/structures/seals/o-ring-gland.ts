import {
  type Arguments,
  fromSiValue,
  length,
  MeopError,
  named,
  optional,
  printable,
  procedure,
  type Quantity,
  table,
  temperatureDifference,
  unitOf,
  type Values,
} from '../../units';
import { materials } from '../materials/material-table';
import { tube } from '../shell/tube';
import { boreGrowth } from './bore-growth';
import { compressionBand, type GlandSizes, glandBands } from './gland-band';
import { rubberModulus } from './gland-formulas';
import { glandChecks, type SealCheck } from './gland-limits';
import type { ORing } from './o-ring';
import { refuseStretch } from './ring-in-groove';
import { boreGland, sealConditions } from './seal-groups';
import { sealRubber } from './seal-rubber';
import { around, type Band, showBand, toleranced } from './tolerance';

const { grooveDiameter, grooveWidth, closureDiameter } = boreGland.fields;

/** The inputs of a radial seal over its tolerances. */
export const glandInputs = {
  ...boreGland.fields,
  bore: toleranced(length('D_b', 'bore of the case at the seal', { example: '2.5 in' })),
  grooveDiameter: toleranced(grooveDiameter),
  grooveWidth: toleranced(grooveWidth),
  closureDiameter: toleranced(closureDiameter),
  ...sealConditions,
  caseWall: optional(tube.fields.wall),
  caseMaterial: optional(named('material of the case, for the growth of the bore', materials)),
  caseTemperatureRise: optional(
    temperatureDifference('ΔT', 'temperature of the case above that of the closure, which opens the gap', {
      example: '80 delta_K',
    }),
  ),
};

/** A static radial O-ring in a groove of the closure, sealing in the bore of the case. */
export type ORingGlandInput = Arguments<typeof glandInputs>;

/** An O-ring in its gland, over all tolerances. */
export interface ORingGland {
  readonly ring: ORing;
  readonly bore: Band<Quantity<'length'>>;
  readonly grooveDiameter: Band<Quantity<'length'>>;
  readonly stretch: Band<number>;
  /** Cross section in the groove, reduced by the stretch at constant volume. */
  readonly crossSection: Band<Quantity<'length'>>;
  readonly glandDepth: Band<Quantity<'length'>>;
  /** Squeeze as assembled. */
  readonly squeeze: Band<number>;
  /** Squeeze under pressure, with the bore grown. */
  readonly squeezeUnderPressure: Band<number>;
  /** Minimum squeeze under pressure where the closure is against the opposite side of the bore; the cross section is that of measured rings. */
  readonly squeezeOffCentre: number;
  readonly fill: Band<number>;
  /** Diametral clearance as assembled. */
  readonly clearance: Band<Quantity<'length'>>;
  /** Diametral clearance with the bore grown: the gap that the ring must bridge. */
  readonly clearanceUnderPressure: Band<Quantity<'length'>>;
  readonly boreGrowth: Quantity<'length'>;
  /** Maximum clearance that the ring bridges; `undefined` without a pressure or with backup rings. */
  readonly clearanceLimit: Quantity<'length'> | undefined;
  /** Estimated force that squeezes the whole ring. */
  readonly compressionForce: Band<Quantity<'force'>>;
  readonly checks: readonly SealCheck[];
  /** Whether all checks are satisfied. */
  readonly passes: boolean;
  readonly cautions: readonly string[];
  toString(): string;
}

/**
 * Squeeze, stretch, fill, gap and force of a static radial O-ring: minimum, nominal and maximum over all tolerances,
 * with the growth of the bore under pressure and heat.
 *
 * @example oRingGland({ ring: '228', bore: '2.5 in', grooveDiameter: '2.278 in', grooveWidth: '0.19 in', closureDiameter: '2.496 in' }).fill.nominal // => 0.7056223872
 */
export const oRingGland = /* @__PURE__ */ procedure({
  name: 'oRingGland',
  title: 'Radial O-ring seal over its tolerances',
  source: 'Geometry; the limits of each check with its source',
  inputs: glandInputs,
  gives: 'squeeze, stretch, fill, clearances and force, and whether each check is satisfied',
  example: {
    ring: '228',
    bore: '2.5 in',
    grooveDiameter: '2.278 in',
    grooveWidth: '0.19 in',
    closureDiameter: '2.496 in',
  },
  run: (input): ORingGland => glandOf(input),
});

const refused = (path: string, given: unknown, expected: string): MeopError =>
  new MeopError({ code: 'out-of-domain', procedure: 'oRingGland', path, given, expected });

function backupLength({ backupRings: rings = 0, backupThickness }: Values<typeof glandInputs>): number {
  if (rings === 0) return 0;
  if (backupThickness !== undefined) return rings * backupThickness.si;
  throw new MeopError({
    code: 'missing-field',
    procedure: 'oRingGland',
    path: 'backupThickness',
    expected: boreGland.fields.backupThickness.meaning,
  });
}

const mm = (si: number): string => `${Number((si * 1000).toPrecision(5))} mm`;

/** The same from values that are read. */
export function glandOf(input: Values<typeof glandInputs>): ORingGland {
  const { ring, bore, grooveWidth: groove, hardness, pressure, backupRings: rings = 0 } = input;
  const backup = backupLength(input);
  if (backup >= groove.min)
    throw refused(
      'backupThickness',
      input.backupThickness,
      `less than ${mm(groove.min / rings)} for ${rings} rings in this groove`,
    );
  const sizes: GlandSizes = {
    insideDiameter: around(ring.insideDiameter.si, ring.insideDiameterTolerance.si),
    crossSection: around(ring.crossSection.si, ring.crossSectionTolerance.si),
    bore,
    grooveDiameter: input.grooveDiameter,
    grooveWidth: { min: groove.min - backup, nominal: groove.nominal - backup, max: groove.max - backup },
    closureDiameter: input.closureDiameter,
    growth: 0,
  };
  if (sizes.closureDiameter.nominal >= bore.nominal)
    throw refused(
      'closureDiameter',
      mm(sizes.closureDiameter.nominal),
      `less than the bore (${mm(bore.nominal)})`,
    );
  if (sizes.grooveDiameter.nominal >= sizes.closureDiameter.nominal)
    throw refused(
      'grooveDiameter',
      mm(sizes.grooveDiameter.nominal),
      `less than the closure diameter (${mm(sizes.closureDiameter.nominal)})`,
    );
  refuseStretch(ring, sizes.grooveDiameter.nominal, 'oRingGland');

  const { thermal, limit } = sealRubber(input);
  const growth = boreGrowth({ ...input, pressure, bore: bore.nominal });
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
    ...(rings > 0 ? ['The backup ring closes the gap. Check its limits with its manufacturer.'] : []),
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
  return printable(gland, () => glandText(gland));
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
    ({ check, passes, message }) => `${passes ? 'satisfied' : 'FAILS'}  ${check}: ${message}`,
  );
  return [
    `${gland.ring.size}: ${gland.passes ? 'all checks satisfied' : 'not all checks satisfied'}`,
    table(rows),
    '',
    ...checks,
    ...gland.cautions.map((caution) => `caution: ${caution}`),
  ].join('\n');
}
