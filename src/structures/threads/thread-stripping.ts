import {
  fromSiValue,
  length,
  type NamedKind,
  named,
  optional,
  printable,
  procedure,
  type Quantity,
  stress,
  table,
  unitFor,
} from '../../units';
import { externalThreadShearArea, internalThreadShearArea } from './shear-area';
import { threads } from './thread-table';

const failureNames = {
  'screw-breaking': 'screw breaks',
  'screw-thread-stripping': 'screw threads strip',
  'hole-thread-stripping': 'hole threads strip',
} as const;

/** How a screw in a tapped hole can fail along its axis. */
export type StrippingFailure = keyof typeof failureNames;

/** The axial loads at which a screw in a tapped hole fails, and which failure governs. */
export interface Stripping {
  readonly externalArea: Quantity<'area'>;
  readonly internalArea: Quantity<'area'>;
  /** Load at which the screw breaks. */
  readonly screwBreakingLoad: Quantity<'force'>;
  /** Load at which the screw's threads strip. */
  readonly externalStrippingLoad: Quantity<'force'>;
  /** Load at which the hole's threads strip. */
  readonly internalStrippingLoad: Quantity<'force'>;
  readonly governingFailure: StrippingFailure;
  /** Engagement from which the screw breaks before any thread strips. */
  readonly fullStrengthEngagement: Quantity<'length'>;
  readonly source: string;
  readonly cautions: readonly string[];
  toString(): string;
}

/**
 * Compares stripping of the external and internal thread with breaking of the screw, at the worst-case limits of the
 * tolerance class. In aluminium the hole strips first below about two diameters of engagement.
 *
 * @example threadStripping({ thread: 'M6', engagement: '12 mm', screwUltimate: '800 MPa', holeShear: '186 MPa' }).governingFailure // => 'screw-breaking'
 */
export const threadStripping = /* @__PURE__ */ procedure({
  name: 'threadStripping',
  title: 'Thread stripping and breaking of a screw in a tapped hole',
  source: externalThreadShearArea.source,
  inputs: {
    thread: named('thread of the screw', threads, { example: 'M6' }),
    engagement: length('L_e', 'full threads engaged, without the chamfers: about one pitch at each end'),
    screwUltimate: stress('F_tu', 'ultimate tensile strength of the screw', { above: 0 }),
    screwShear: optional(
      stress('F_su', 'ultimate shear strength of the screw; half its tensile strength (FED-STD-H28)', {
        above: 0,
      }),
    ),
    holeShear: stress('F_su,h', 'ultimate shear strength of the tapped part', { above: 0 }),
  },
  gives: 'the axial load at which the screw breaks and at which each thread strips',
  example: { thread: 'M6', engagement: '12 mm', screwUltimate: '800 MPa', holeShear: '186 MPa' },
  run: ({ thread, engagement, screwUltimate, screwShear, holeShear }): Stripping => {
    const tension = screwUltimate.si;
    const ownShear = screwShear?.si ?? tension / 2;
    const { limits } = thread;
    const sizes = {
      pitch: thread.pitch.si,
      externalMajorMin: limits.externalMajorMin.si,
      externalPitchMin: limits.externalPitchMin.si,
      internalPitchMax: limits.internalPitchMax.si,
      internalMinorMax: limits.internalMinorMax.si,
      engagement: engagement.si,
    };
    const external = externalThreadShearArea.si(sizes);
    const internal = internalThreadShearArea.si(sizes);
    const loads = [
      { failure: 'screw-breaking' as const, load: tension * thread.tensileStressArea.si },
      { failure: 'screw-thread-stripping' as const, load: ownShear * external },
      { failure: 'hole-thread-stripping' as const, load: holeShear.si * internal },
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
        (engagement.si * breaks) / Math.min(externalStrippingLoad, internalStrippingLoad),
        'mm',
        'in',
      ),
      source: externalThreadShearArea.source,
      cautions: [
        ...(thread.provenance === 'from memory'
          ? ['The thread limits are computed by tolerance formulas quoted from memory, not verified.']
          : []),
        ...(weakest.failure === 'screw-breaking'
          ? []
          : [
              `The governing failure is: ${failureNames[weakest.failure]}. Stripping occurs without warning.`,
            ]),
      ],
    };
    const text = (): string =>
      [
        table([
          { failure: failureNames['screw-breaking'], load: result.screwBreakingLoad },
          { failure: failureNames['screw-thread-stripping'], load: result.externalStrippingLoad },
          { failure: failureNames['hole-thread-stripping'], load: result.internalStrippingLoad },
        ]),
        `governing failure: ${failureNames[result.governingFailure]}; from ${result.fullStrengthEngagement} of engagement the screw breaks first`,
        ...result.cautions.map((caution) => `caution: ${caution}`),
      ].join('\n');
    return printable(result, text);
  },
});
