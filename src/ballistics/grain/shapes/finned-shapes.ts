import { count, inputs, length, optional, procedure, type Quantity, type Values } from '../../../units';
import { endPosition, startPosition, tipShape } from '../grain-inputs';
import { inMillimetres, refused, requireFit } from '../misfit';
import { circleOutline, clippedOutline, finOutline, type Source, taperedFin } from '../surface';
import { apart, extentOf } from './core';
import { cylindricalGrain, type Grain } from './grain';
import { partialCore, throughCore } from './prism-core';
import { bored, boreInside } from './round-shapes';

type Length = Quantity<'length'>;
const tube = bored('none');

const finnedGrain = (kind: string, values: Values<typeof tube>, fins: Source): Grain =>
  cylindricalGrain(kind, values, [
    throughCore('bore', circleOutline(values.boreDiameter.si / 2), values.length.si),
    fins,
  ]);

/** Slots or fins of constant size; `wide` names the field of their width. */
function straightFins(
  context: string,
  name: string,
  { outerDiameter, length: whole }: Values<typeof tube>,
  fins: {
    readonly count: number;
    readonly width: Length;
    readonly wide: string;
    /** Distance of the tip from the axis [m]. */
    readonly tip: number;
    readonly end: 'square' | 'round';
    readonly extent: readonly [number, number];
  },
): Source {
  const half = fins.width.si / 2;
  const hasRoom = half < fins.tip * Math.sin(Math.PI / Math.max(fins.count, 2));
  const full = hasRoom ? finOutline(fins.count, half, fins.tip, fins.end) : undefined;
  const o = full && clippedOutline(full, outerDiameter.si / 2);
  if (o === undefined) throw refused(context, fins.wide, fins.width, apart);
  const [from, to] = fins.extent;
  return from <= 0 && to >= whole.si
    ? throughCore(name, o, whole.si, 0)
    : partialCore(name, o, from, to, whole.si, 0);
}

const beyondBore = (context: string, field: string, tip: Length | undefined, bore: Length): void =>
  requireFit(
    context,
    tip === undefined || tip.si > bore.si,
    field,
    tip,
    `greater than the bore diameter (${inMillimetres(bore.si)})`,
  );

export const slottedTube = /* @__PURE__ */ procedure({
  name: 'slottedTube',
  title: 'Tube with slots along part or all of its length; ends inhibited by default',
  source: 'geometry',
  inputs: {
    ...tube,
    slots: count('N', 'number of slots', { example: 4 }),
    slotWidth: length('w', 'width of a slot', { example: '3 mm', worse: 'neither' }),
    slotDiameter: optional(
      length(
        'd_s',
        'twice the distance of the bottom of a blind slot from the axis; if omitted, the slots extend to the wall',
        { example: '36 mm', worse: 'neither' },
      ),
    ),
    slotEnd: tipShape('shape of the bottom of a blind slot'),
    slotFrom: optional(startPosition('start of the slots'), 0),
    slotTo: optional(endPosition('end of the slots', '; the aft end if omitted')),
  },
  checks: [boreInside],
  gives: 'the grain',
  example: {
    outerDiameter: '50 mm',
    boreDiameter: '18 mm',
    length: '120 mm',
    slots: 4,
    slotWidth: '3 mm',
    slotFrom: '84 mm',
    slotTo: '120 mm',
  },
  run: (values) => {
    const context = 'slottedTube';
    beyondBore(context, 'slotDiameter', values.slotDiameter, values.boreDiameter);
    const slots = straightFins(context, 'slots', values, {
      count: values.slots,
      width: values.slotWidth,
      wide: 'slotWidth',
      tip: (values.slotDiameter?.si ?? 1.2 * values.outerDiameter.si) / 2,
      end: values.slotEnd,
      extent: extentOf(context, values, ['slotFrom', 'slotTo'], values.length.si),
    });
    return finnedGrain('slotted tube', values, slots);
  },
});

const finSize = {
  finThickness: length('t', 'thickness of a fin', { example: '3 mm', worse: 'neither' }),
  finTipDiameter: length('d_f', 'twice the distance of a fin tip from the axis', {
    example: '30 mm',
    worse: 'neither',
  }),
};

/** Tapered fins have square tips and a size at each end. */
export const finocyl = /* @__PURE__ */ procedure({
  name: 'finocyl',
  title: 'Bore with fins over part or all of its length; ends inhibited by default',
  source: 'geometry',
  inputs: {
    ...tube,
    fins: count('N', 'number of fins', { example: 6 }),
    ...finSize,
    finEnd: tipShape('shape of the tip'),
    finFrom: optional(startPosition('start of the fins'), 0),
    finTo: optional(endPosition('end of the fins', '; the aft end if omitted')),
    aft: optional(
      inputs(finSize, {
        meaning: 'size of tapered fins at their aft end; the other size is then that at their head end',
      }),
    ),
  },
  checks: [boreInside],
  gives: 'the grain',
  example: {
    outerDiameter: '76 mm',
    boreDiameter: '20 mm',
    length: '180 mm',
    fins: 6,
    finThickness: '4 mm',
    finTipDiameter: '44 mm',
    finFrom: '100 mm',
  },
  run: (values) => {
    const context = 'finocyl';
    const { aft, finTipDiameter } = values;
    const extent = extentOf(context, values, ['finFrom', 'finTo'], values.length.si);
    if (aft !== undefined) return finnedGrain('finocyl', values, taperedFins(values, aft, extent));
    beyondBore(context, 'finTipDiameter', finTipDiameter, values.boreDiameter);
    const fins = straightFins(context, 'fins', values, {
      count: values.fins,
      width: values.finThickness,
      wide: 'finThickness',
      tip: finTipDiameter.si / 2,
      end: values.finEnd,
      extent,
    });
    return finnedGrain('finocyl', values, fins);
  },
});

type FinSize = Values<typeof finSize>;

function taperedFins(
  values: Values<typeof tube> & FinSize & { readonly fins: number },
  aft: FinSize,
  [from, to]: readonly [number, number],
): Source {
  const { fins, boreDiameter, outerDiameter } = values;
  const sizes = [
    { at: '', ...values },
    { at: 'aft.', ...aft },
  ].map(({ at, finThickness, finTipDiameter }) => ({
    ...{ at, finThickness, finTipDiameter },
    halfWidth: finThickness.si / 2,
    tip: finTipDiameter.si / 2,
  }));
  for (const { at, finTipDiameter, halfWidth, tip } of sizes)
    requireFit(
      'finocyl',
      Math.hypot(tip, halfWidth) <= outerDiameter.si / 2,
      `${at}finTipDiameter`,
      finTipDiameter,
      'small enough for the tapered fins to end inside the wall',
    );
  for (const { at, finThickness, halfWidth, tip } of sizes)
    requireFit(
      'finocyl',
      fins === 1 ||
        Math.min(halfWidth / Math.sin(Math.PI / fins), Math.hypot(tip, halfWidth)) <=
          (boreDiameter.si / 2) * (1 + 1e-9),
      `${at}finThickness`,
      finThickness,
      'small enough for the tapered fins to meet inside the bore',
    );
  const [head, end] = sizes;
  return taperedFin({
    name: 'tapered fins',
    count: fins,
    phase: 0,
    from,
    to,
    tip: [head.tip, end.tip],
    halfWidth: [head.halfWidth, end.halfWidth],
    low: 0,
    high: values.length.si,
  });
}
