import { fromSiValue, type NamedKind, type Quantity, type QuantityInput, table, unitFor } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { readPositive } from '../../units/refusal';
import { externalThreadShearArea, internalThreadShearArea } from './shear-area';
import { type ThreadGeometry, threadGeometry } from './thread-geometry';

/** A screw in a tapped hole. */
export interface StrippingInput {
  /** A name as {@link threadGeometry} takes it, or a geometry with limits of one's own. */
  readonly thread: string | ThreadGeometry;
  /** Full threads engaged: take off the chamfers, about one pitch at each end. */
  readonly engagement: QuantityInput<'length'>;
  /** Ultimate tensile strength of the screw. */
  readonly screwUltimate: QuantityInput<'stress'>;
  /** Ultimate shear strength of the screw; half its tensile strength (FED-STD-H28) where left out. */
  readonly screwShear?: QuantityInput<'stress'>;
  /** Ultimate shear strength of the tapped part. */
  readonly holeShear: QuantityInput<'stress'>;
}

/** What a screw in a tapped hole carries along its axis, and what gives way first. */
export interface Stripping {
  readonly externalArea: Quantity<'area'>;
  readonly internalArea: Quantity<'area'>;
  /** Load at which the screw breaks. */
  readonly screwBreakingLoad: Quantity<'force'>;
  /** Load at which the screw's threads strip. */
  readonly externalStrippingLoad: Quantity<'force'>;
  /** Load at which the hole's threads strip. */
  readonly internalStrippingLoad: Quantity<'force'>;
  readonly governingFailure: 'screw breaks' | 'screw threads strip' | 'hole threads strip';
  /** Engagement from which the screw breaks before any thread strips. */
  readonly fullStrengthEngagement: Quantity<'length'>;
  readonly source: string;
  readonly cautions: readonly string[];
  toString(): string;
}

const threadStrippingFields: FieldsOf<StrippingInput> = {
  thread: 'required',
  engagement: 'required',
  screwUltimate: 'required',
  screwShear: 'optional',
  holeShear: 'required',
};

/**
 * Stripping of external and internal thread against breaking of the screw, at the worst limits of the tolerance class. In
 * aluminium the hole strips first below about two diameters of engagement.
 *
 * @throws MeopError `out-of-domain` and as {@link threadGeometry}
 * @example threadStripping({ thread: 'M6', engagement: '12 mm', screwUltimate: '800 MPa', holeShear: '186 MPa' }).governingFailure // => 'screw breaks'
 */
export function threadStripping(input: StrippingInput): Stripping {
  requireFields('threadStripping', input, threadStrippingFields);
  const thread = typeof input.thread === 'string' ? threadGeometry(input.thread) : input.thread;
  const engagement = positive('length', 'engagement', input.engagement);
  const tension = positive('stress', 'screwUltimate', input.screwUltimate);
  const ownShear =
    input.screwShear === undefined ? tension / 2 : positive('stress', 'screwShear', input.screwShear);
  const holeShear = positive('stress', 'holeShear', input.holeShear);
  const { limits } = thread;
  const sizes = {
    pitch: thread.pitch.si,
    externalMajorMin: limits.externalMajorMin.si,
    externalPitchMin: limits.externalPitchMin.si,
    internalPitchMax: limits.internalPitchMax.si,
    internalMinorMax: limits.internalMinorMax.si,
  };
  const external = externalThreadShearArea.si({ ...sizes, engagement });
  const internal = internalThreadShearArea.si({ ...sizes, engagement });
  const loads = [
    { failure: 'screw breaks' as const, load: tension * thread.tensileStressArea.si },
    { failure: 'screw threads strip' as const, load: ownShear * external },
    { failure: 'hole threads strip' as const, load: holeShear * internal },
  ];
  const [breaks, externalStrippingLoad, internalStrippingLoad] = loads.map(({ load }) => load);
  const weakest = loads.reduce((a, b) => (b.load < a.load ? b : a));
  const metric = thread.system === 'ISO metric';
  const show = <const K extends NamedKind>(kind: K, si: number, mm: string, inch: string): Quantity<K> =>
    fromSiValue<K>(si, kind, unitFor(kind, metric ? mm : inch));
  const force = (si: number): Quantity<'force'> => show('force', si, 'N', 'lbf');
  const result = {
    externalArea: show('area', external, 'mm^2', 'in^2'),
    internalArea: show('area', internal, 'mm^2', 'in^2'),
    screwBreakingLoad: force(breaks),
    externalStrippingLoad: force(externalStrippingLoad),
    internalStrippingLoad: force(internalStrippingLoad),
    governingFailure: weakest.failure,
    fullStrengthEngagement: show(
      'length',
      (engagement * breaks) / Math.min(externalStrippingLoad, internalStrippingLoad),
      'mm',
      'in',
    ),
    source: externalThreadShearArea.source,
    cautions: [
      ...(thread.provenance === 'from memory' ? ['thread limits by tolerance formulas from memory'] : []),
      ...(weakest.failure === 'screw breaks'
        ? []
        : [`the ${weakest.failure} first: a thread that strips gives no warning`]),
    ],
  };
  const text = (): string =>
    [
      table([
        { 'gives way': 'screw breaks', load: result.screwBreakingLoad },
        { 'gives way': 'screw threads strip', load: result.externalStrippingLoad },
        { 'gives way': 'hole threads strip', load: result.internalStrippingLoad },
      ]),
      `first: ${result.governingFailure}; the screw breaks first from ${result.fullStrengthEngagement} of engagement`,
      ...result.cautions.map((caution) => `caution: ${caution}`),
    ].join('\n');
  return { ...result, toString: text, ...{ [Symbol.for('nodejs.util.inspect.custom')]: text } };
}

const positive = (kind: 'length' | 'stress', field: string, value: unknown): number =>
  readPositive(kind, field, value, 'threadStripping').si;
