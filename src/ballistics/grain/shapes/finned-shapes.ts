import type { QuantityInput } from '../../../units';
import { type FieldsOf, requireFields } from '../../../units/known-fields';
import { inMillimetres, readChoice, readCount, readLength, refused, requireFit } from '../measure';
import { circleOutline, clippedOutline, finOutline, type Source, taperedFin } from '../surface';
import { type Grain, makeGrain, outerFields, readEnds } from './grain';
import { partialCore, throughCore } from './prism-core';
import type { TubeMeasures } from './round-shapes';

/** Slots or fins around a bore. */
interface Fins {
  readonly count: number;
  readonly halfWidth: number;
  readonly tip: number;
  readonly end: 'square' | 'round';
  readonly from: number;
  readonly to: number;
}

function finnedGrain(
  context: string,
  kind: string,
  options: TubeMeasures,
  fins: (bore: number, length: number, radius: number) => Source,
): Grain {
  const radius = readLength(context, 'outerDiameter', options.outerDiameter) / 2;
  const bore = readLength(context, 'boreDiameter', options.boreDiameter) / 2;
  const length = readLength(context, 'length', options.length);
  requireFit(
    bore < radius,
    context,
    'boreDiameter',
    options.boreDiameter,
    `less than the outer diameter (${inMillimetres(2 * radius)})`,
  );
  return makeGrain({
    kind,
    shape: {
      envelope: { form: 'cylinder', radius, length },
      ports: [throughCore('bore', circleOutline(bore), length), fins(bore, length, radius)],
      inert: [],
    },
    burningEnds: readEnds(context, options.burningEnds, 'none'),
  });
}

function straightFins(context: string, name: string, fins: Fins, radius: number, length: number): Source {
  const field = name === 'slots' ? 'slotWidth' : 'finThickness';
  const width = `${2e3 * fins.halfWidth} mm`;
  requireFit(
    fins.halfWidth < fins.tip * Math.sin(Math.PI / Math.max(fins.count, 2)),
    context,
    field,
    width,
    'small enough to leave propellant between the fins',
  );
  const whole = finOutline(fins.count, fins.halfWidth, fins.tip, fins.end);
  const o = whole === undefined ? undefined : clippedOutline(whole, radius);
  if (o === undefined)
    throw refused(context, field, width, 'small enough to leave propellant between the fins');
  return fins.from <= 0 && fins.to >= length
    ? throughCore(name, o, length, 0)
    : partialCore(name, o, fins.from, fins.to, length, 0);
}

const slottedTubeFields: FieldsOf<Parameters<typeof slottedTube>[0]> = {
  ...outerFields,
  boreDiameter: 'required',
  slots: 'required',
  slotWidth: 'required',
  slotDiameter: 'optional',
  slotEnd: 'optional',
  slotFrom: 'optional',
  slotTo: 'optional',
};

/**
 * A tube with slots along part or all of its length, through the whole web or ending at `slotDiameter`. Ends are
 * inhibited by default.
 *
 * @throws MeopError `grain-measure`
 * @example slottedTube({ outerDiameter: '50 mm', boreDiameter: '18 mm', length: '120 mm', slots: 4, slotWidth: '3 mm', slotFrom: '84 mm', slotTo: '120 mm' }).kind // => 'slotted tube'
 */
export function slottedTube(
  options: TubeMeasures & {
    /** Number of slots [whole, at least 1]. */
    readonly slots: number;
    /** Width of a slot [length]. */
    readonly slotWidth: QuantityInput<'length'>;
    /** Twice the distance from the axis to the bottom of a blind slot [length]. Default: the slots extend to the wall. */
    readonly slotDiameter?: QuantityInput<'length'>;
    /** Shape of the bottom of a blind slot. Default square. */
    readonly slotEnd?: 'square' | 'round';
    /** Start of the slots [length from the head end]. Default: the head end. */
    readonly slotFrom?: QuantityInput<'length'>;
    /** End of the slots [length from the head end]. Default: the aft end. */
    readonly slotTo?: QuantityInput<'length'>;
  },
): Grain {
  const context = 'slottedTube';
  requireFields(context, options, slottedTubeFields);
  return finnedGrain(context, 'slotted tube', options, (bore, length, radius) => {
    const tip =
      options.slotDiameter === undefined
        ? 1.2 * radius
        : readLength(context, 'slotDiameter', options.slotDiameter) / 2;
    requireFit(
      tip > bore,
      context,
      'slotDiameter',
      options.slotDiameter,
      `greater than the bore diameter (${inMillimetres(2 * bore)})`,
    );
    const from =
      options.slotFrom === undefined ? 0 : readLength(context, 'slotFrom', options.slotFrom, 'zero');
    const to = options.slotTo === undefined ? length : readLength(context, 'slotTo', options.slotTo);
    requireFit(
      from < length,
      context,
      'slotFrom',
      options.slotFrom,
      `less than the length of the grain (${inMillimetres(length)})`,
    );
    requireFit(
      to > from,
      context,
      'slotTo',
      options.slotTo,
      `greater than slotFrom (${inMillimetres(from)})`,
    );
    const count = readCount(context, 'slots', options.slots, 1);
    const halfWidth = readLength(context, 'slotWidth', options.slotWidth) / 2;
    const end = readChoice(context, 'slotEnd', options.slotEnd ?? 'square', ['square', 'round']);
    return straightFins(context, 'slots', { count, halfWidth, tip, end, from, to }, radius, length);
  });
}

const finocylFields: FieldsOf<Parameters<typeof finocyl>[0]> = {
  ...outerFields,
  boreDiameter: 'required',
  fins: 'required',
  finThickness: 'required',
  finTipDiameter: 'required',
  finEnd: 'optional',
  finFrom: 'optional',
  finTo: 'optional',
  aft: 'optional',
};
const aftFinFields: FieldsOf<NonNullable<Parameters<typeof finocyl>[0]['aft']>> = {
  finThickness: 'required',
  finTipDiameter: 'required',
};

/**
 * A bore with fins over part or all of its length. Tapered fins have square tips and a size at each end. Ends are
 * inhibited by default.
 *
 * @throws MeopError `grain-measure`
 * @example finocyl({ outerDiameter: '76 mm', boreDiameter: '20 mm', length: '180 mm', fins: 6, finThickness: '4 mm', finTipDiameter: '44 mm', finFrom: '100 mm' }).kind // => 'finocyl'
 */
export function finocyl(
  options: TubeMeasures & {
    /** Number of fins [whole, at least 1]. */
    readonly fins: number;
    /** Thickness of a fin [length]. */
    readonly finThickness: QuantityInput<'length'>;
    /** Twice the distance of the tip of a fin from the axis [length]. */
    readonly finTipDiameter: QuantityInput<'length'>;
    /** Shape of the tip. Default square. */
    readonly finEnd?: 'square' | 'round';
    /** Start of the fins [length from the head end]. Default: the head end. */
    readonly finFrom?: QuantityInput<'length'>;
    /** End of the fins [length from the head end]. Default: the aft end. */
    readonly finTo?: QuantityInput<'length'>;
    /** Size of tapered fins at their aft end; the sizes above are then those at their head end. */
    readonly aft?: {
      readonly finThickness: QuantityInput<'length'>;
      readonly finTipDiameter: QuantityInput<'length'>;
    };
  },
): Grain {
  const context = 'finocyl';
  requireFields(context, options, finocylFields);
  return finnedGrain(context, 'finocyl', options, (bore, length, radius) => {
    const count = readCount(context, 'fins', options.fins, 1);
    const tip = readLength(context, 'finTipDiameter', options.finTipDiameter) / 2;
    const halfWidth = readLength(context, 'finThickness', options.finThickness) / 2;
    const from = options.finFrom === undefined ? 0 : readLength(context, 'finFrom', options.finFrom, 'zero');
    const to = Math.min(
      length,
      options.finTo === undefined ? length : readLength(context, 'finTo', options.finTo),
    );
    requireFit(
      from < length,
      context,
      'finFrom',
      options.finFrom,
      `less than the length of the grain (${inMillimetres(length)})`,
    );
    requireFit(to > from, context, 'finTo', options.finTo, `greater than finFrom (${inMillimetres(from)})`);
    const { aft } = options;
    requireFit(
      tip > bore || aft !== undefined,
      context,
      'finTipDiameter',
      options.finTipDiameter,
      `greater than the bore diameter (${inMillimetres(2 * bore)})`,
    );
    if (aft === undefined) {
      const end = readChoice(context, 'finEnd', options.finEnd ?? 'square', ['square', 'round']);
      return straightFins(context, 'fins', { count, halfWidth, tip, end, from, to }, radius, length);
    }
    requireFields('finocyl: aft', aft, aftFinFields);
    const aftTip = readLength(context, 'aft.finTipDiameter', aft.finTipDiameter) / 2;
    const aftHalf = readLength(context, 'aft.finThickness', aft.finThickness) / 2;
    for (const [field, t, h] of [
      ['finTipDiameter', tip, halfWidth],
      ['aft.finTipDiameter', aftTip, aftHalf],
    ] as const)
      requireFit(
        Math.hypot(t, h) <= radius,
        context,
        field,
        `${2e3 * t} mm`,
        'small enough for the tapered fins to end inside the wall',
      );
    for (const [field, t, h] of [
      ['finThickness', tip, halfWidth],
      ['aft.finThickness', aftTip, aftHalf],
    ] as const)
      requireFit(
        count === 1 || Math.min(h / Math.sin(Math.PI / count), Math.hypot(t, h)) <= bore * (1 + 1e-9),
        context,
        field,
        `${2e3 * h} mm`,
        'small enough for the tapered fins to meet inside the bore',
      );
    return taperedFin({
      name: 'tapered fins',
      count,
      phase: 0,
      from,
      to,
      tip: [tip, aftTip],
      halfWidth: [halfWidth, aftHalf],
      low: 0,
      high: length,
    });
  });
}
