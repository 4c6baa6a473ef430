import type { QuantityInput } from '../../../units';
import { type FieldsOf, requireFields } from '../../../units/known-fields';
import { inMillimetres, readLength, requireFit } from '../measure';
import { annulusOutline, ball, circleOutline, line, outline, revolve, wallOutline } from '../surface';
import { type BurningEnds, type Grain, makeGrain, type OuterMeasures, outerFields, readEnds } from './grain';
import { throughCore } from './prism-core';
import {
  freeRodClosedForm,
  offsetBoreClosedForm,
  rodAndTubeClosedForm,
  solidClosedForm,
  tubeClosedForm,
} from './round-closed-form';

/** Outer dimensions and a round bore. */
export interface TubeMeasures extends OuterMeasures {
  /** Diameter of the bore [length, above zero and less than the outer diameter]. */
  readonly boreDiameter: QuantityInput<'length'>;
}

const tubeFields: FieldsOf<TubeMeasures> = { ...outerFields, boreDiameter: 'required' };
const offsetBoreFields: FieldsOf<Parameters<typeof offsetBore>[0]> = { ...tubeFields, offset: 'required' };

function tube(
  context: string,
  kind: string,
  options: TubeMeasures & { readonly offset?: QuantityInput<'length'> },
  ends: BurningEnds,
  offset = 0,
): Grain {
  if (context !== 'offsetBore') requireFields(context, options, tubeFields);
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
  requireFit(
    offset + bore < radius,
    context,
    'offset',
    options.offset,
    `less than ${inMillimetres(radius - bore)}, to keep the bore inside the grain`,
  );
  return makeGrain({
    kind,
    shape: {
      envelope: { form: 'cylinder', radius, length },
      ports: [throughCore('bore', circleOutline(bore, offset), length, 0)],
      inert: [],
    },
    burningEnds: readEnds(context, options.burningEnds, ends),
    closedForm: offset > 0 ? offsetBoreClosedForm(radius, bore, offset) : tubeClosedForm(radius, bore),
  });
}

/**
 * A cylindrical segment that burns on its bore and, by default, on both ends. Its outer surface is bonded to the
 * case.
 *
 * @throws MeopError `grain-measure` and the errors of its quantities
 * @example tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '85 mm' }).kind // => 'tubular segment'
 */
export const tubularSegment = (options: TubeMeasures): Grain =>
  tube('tubularSegment', 'tubular segment', options, 'both');

/**
 * A tube that burns on its bore. Ends are inhibited by default.
 *
 * @throws MeopError `grain-measure`
 * @example internalTube({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm' }).kind // => 'internal-burning tube'
 */
export const internalTube = (options: TubeMeasures): Grain =>
  tube('internalTube', 'internal-burning tube', options, 'none');

/**
 * A tube whose bore is offset from the axis, in the direction of angle 0: a moon burner, or a misaligned mandrel.
 * Ends are inhibited by default.
 *
 * @throws MeopError `grain-measure`, also when the bore is not inside the grain
 * @example offsetBore({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm', offset: '7 mm' }).kind // => 'offset bore'
 */
export const offsetBore = (
  options: TubeMeasures & {
    /** Distance between the axes of bore and grain [length, zero or more]. */
    readonly offset: QuantityInput<'length'>;
  },
): Grain => {
  requireFields('offsetBore', options, offsetBoreFields);
  const offset = readLength('offsetBore', 'offset', options.offset, 'zero');
  return tube('offsetBore', 'offset bore', options, 'none', offset);
};

/**
 * A solid grain that burns on its ends only, by default on the aft end.
 *
 * @throws MeopError `grain-measure`
 * @example endBurner({ outerDiameter: '40 mm', length: '60 mm' }).kind // => 'end burner'
 */
export function endBurner(options: OuterMeasures): Grain {
  requireFields('endBurner', options, outerFields);
  const radius = readLength('endBurner', 'outerDiameter', options.outerDiameter) / 2;
  const length = readLength('endBurner', 'length', options.length);
  const burningEnds = readEnds('endBurner', options.burningEnds, 'aft');
  requireFit(burningEnds !== 'none', 'endBurner', 'burningEnds', burningEnds, "'both', 'head' or 'aft'");
  return makeGrain({
    kind: 'end burner',
    shape: { envelope: { form: 'cylinder', radius, length }, ports: [], inert: [] },
    burningEnds,
    closedForm: solidClosedForm(radius),
  });
}

const rodAndTubeFields: FieldsOf<Parameters<typeof rodAndTube>[0]> = {
  ...outerFields,
  tubeBoreDiameter: 'required',
  rodDiameter: 'required',
};

/**
 * A rod held inside a tube. The outer surface of the rod and the bore of the tube burn: neutral while both last. Ends
 * are inhibited by default.
 *
 * @throws MeopError `grain-measure`
 * @example rodAndTube({ outerDiameter: '60 mm', tubeBoreDiameter: '40 mm', rodDiameter: '20 mm', length: '100 mm' }).kind // => 'rod and tube'
 */
export function rodAndTube(
  options: OuterMeasures & {
    /** Bore of the tube [length]. */
    readonly tubeBoreDiameter: QuantityInput<'length'>;
    /** Diameter of the rod [length, less than the bore]. */
    readonly rodDiameter: QuantityInput<'length'>;
  },
): Grain {
  const context = 'rodAndTube';
  requireFields(context, options, rodAndTubeFields);
  const radius = readLength(context, 'outerDiameter', options.outerDiameter) / 2;
  const bore = readLength(context, 'tubeBoreDiameter', options.tubeBoreDiameter) / 2;
  const rod = readLength(context, 'rodDiameter', options.rodDiameter) / 2;
  const length = readLength(context, 'length', options.length);
  requireFit(
    bore < radius,
    context,
    'tubeBoreDiameter',
    options.tubeBoreDiameter,
    `less than the outer diameter (${inMillimetres(2 * radius)})`,
  );
  requireFit(
    rod < bore,
    context,
    'rodDiameter',
    options.rodDiameter,
    `less than the bore diameter of the tube (${inMillimetres(2 * bore)})`,
  );
  return makeGrain({
    kind: 'rod and tube',
    shape: {
      envelope: { form: 'cylinder', radius, length },
      ports: [throughCore('gap', annulusOutline(rod, bore), length)],
      inert: [],
    },
    burningEnds: readEnds(context, options.burningEnds, 'none'),
    closedForm: rodAndTubeClosedForm(radius, bore, rod),
  });
}

/**
 * A solid rod that burns on its outer surface and, by default, on both ends: regressive.
 *
 * @throws MeopError `grain-measure`
 * @example freeRod({ outerDiameter: '30 mm', length: '80 mm' }).kind // => 'free rod'
 */
export function freeRod(options: OuterMeasures): Grain {
  requireFields('freeRod', options, outerFields);
  const radius = readLength('freeRod', 'outerDiameter', options.outerDiameter) / 2;
  const length = readLength('freeRod', 'length', options.length);
  return makeGrain({
    kind: 'free rod',
    shape: {
      envelope: { form: 'cylinder', radius, length },
      ports: [throughCore('outside', wallOutline(radius, 0, 2 * Math.PI), length)],
      inert: [],
    },
    burningEnds: readEnds('freeRod', options.burningEnds, 'both'),
    closedForm: freeRodClosedForm(radius),
  });
}

const taperedCoreFields: FieldsOf<Parameters<typeof taperedCore>[0]> = {
  ...outerFields,
  headBoreDiameter: 'required',
  aftBoreDiameter: 'required',
};

/**
 * A tube whose bore widens or narrows linearly along its length, as left by a mandrel with draft. Ends are inhibited
 * by default.
 *
 * @throws MeopError `grain-measure`
 * @example taperedCore({ outerDiameter: '50 mm', headBoreDiameter: '16 mm', aftBoreDiameter: '24 mm', length: '100 mm' }).kind // => 'tapered core'
 */
export function taperedCore(
  options: OuterMeasures & {
    /** Diameter of the bore at the head end [length, zero or more]. */
    readonly headBoreDiameter: QuantityInput<'length'>;
    /** Diameter of the bore at the aft end [length, zero or more]. */
    readonly aftBoreDiameter: QuantityInput<'length'>;
  },
): Grain {
  const context = 'taperedCore';
  requireFields(context, options, taperedCoreFields);
  const radius = readLength(context, 'outerDiameter', options.outerDiameter) / 2;
  const head = readLength(context, 'headBoreDiameter', options.headBoreDiameter, 'zero') / 2;
  const aft = readLength(context, 'aftBoreDiameter', options.aftBoreDiameter, 'zero') / 2;
  const length = readLength(context, 'length', options.length);
  requireFit(
    head < radius,
    context,
    'headBoreDiameter',
    options.headBoreDiameter,
    `less than the outer diameter (${inMillimetres(2 * radius)})`,
  );
  requireFit(
    aft < radius,
    context,
    'aftBoreDiameter',
    options.aftBoreDiameter,
    `less than the outer diameter (${inMillimetres(2 * radius)})`,
  );
  requireFit(
    head + aft > 0,
    context,
    'aftBoreDiameter',
    options.aftBoreDiameter,
    'above zero where headBoreDiameter is zero',
  );
  const profile = outline([line(head, 0, aft, length)]);
  return makeGrain({
    kind: 'tapered core',
    shape: {
      envelope: { form: 'cylinder', radius, length },
      ports: [revolve({ name: 'tapered bore', profile, low: 0, high: length })],
      inert: [],
    },
    burningEnds: readEnds(context, options.burningEnds, 'none'),
  });
}

const sphericalGrainFields: FieldsOf<Parameters<typeof sphericalGrain>[0]> = {
  outerDiameter: 'required',
  boreDiameter: 'required',
};

/**
 * A hollow sphere that burns on its inner surface.
 *
 * @throws MeopError `grain-measure`
 * @example sphericalGrain({ outerDiameter: '100 mm', boreDiameter: '30 mm' }).kind // => 'hollow sphere'
 */
export function sphericalGrain(options: {
  /** Outer diameter [length, above zero]. */
  readonly outerDiameter: QuantityInput<'length'>;
  /** Inner diameter [length, above zero and less than the outer diameter]. */
  readonly boreDiameter: QuantityInput<'length'>;
}): Grain {
  requireFields('sphericalGrain', options, sphericalGrainFields);
  const radius = readLength('sphericalGrain', 'outerDiameter', options.outerDiameter) / 2;
  const bore = readLength('sphericalGrain', 'boreDiameter', options.boreDiameter) / 2;
  requireFit(
    bore < radius,
    'sphericalGrain',
    'boreDiameter',
    options.boreDiameter,
    `less than the outer diameter (${inMillimetres(2 * radius)})`,
  );
  return makeGrain({
    kind: 'hollow sphere',
    shape: {
      envelope: { form: 'ball', radius, length: 2 * radius },
      ports: [ball({ name: 'hollow', x: 0, y: 0, z: radius, radius: bore })],
      inert: [],
    },
    burningEnds: 'none',
  });
}
