import { force, formula, gaugePressure, MeopError, type Quantity, ratio, stress, table } from '../units';
import { checkMargin } from './margin-check';

/** One failure mode with what it must carry, what it can carry and what is left. */
export interface Margin {
  /** What would fail, such as `tear-out of the case end`. */
  readonly mode: string;
  /** The stress, load or pressure applied at the limit condition, without factor. */
  readonly applied: Quantity;
  /** What is allowed, of the same kind. */
  readonly allowable: Quantity;
  /** The factor of safety asked for. */
  readonly factor: number;
  /** allowable / (factor × applied) − 1; negative where the mode does not hold. */
  readonly marginOfSafety: number;
  /** The temperature of the failing part, where it was considered. */
  readonly temperature?: Quantity<'temperature'>;
  /** Where the equation of the mode is published. */
  readonly source: string;
  /** What this margin rests on that could be wrong. */
  readonly cautions: readonly string[];
}

/** What a margin is made of. */
export interface MarginInput {
  readonly mode: string;
  /** Above zero. */
  readonly applied: Quantity;
  /** Zero or more; zero where the handbook gives no credit at all. */
  readonly allowable: Quantity;
  /** Above zero. */
  readonly factor: number;
  readonly temperature?: Quantity<'temperature'> | undefined;
  readonly source: string;
  readonly cautions?: readonly string[];
}

interface Judged {
  readonly applied: number;
  readonly allowable: number;
  readonly factor: number;
}
const equation = 'MS = F / (FS·f) − 1';
const definition =
  'Definition as in MIL-HDBK-5, NASA-STD-5001 and Bruhn, Analysis and Design of Flight Vehicle Structures (from memory)';
const factor = /* @__PURE__ */ ratio('FS', 'factor of safety', { above: 0 });
const output = /* @__PURE__ */ ratio('MS', 'margin of safety');
const marginSi = ({ applied, allowable, factor: fs }: Judged): number => allowable / (fs * applied) - 1;
const solved = {
  applied: (margin: number, { allowable, factor: fs }: Judged) => allowable / (fs * (1 + margin)),
  allowable: (margin: number, { applied, factor: fs }: Judged) => (1 + margin) * fs * applied,
  factor: (margin: number, { applied, allowable }: Judged) => allowable / (applied * (1 + margin)),
};

/**
 * Margin of safety of a stress; zero is exactly enough, negative is too little. For loads and pressures use
 * {@link margin}, which takes quantities of any one kind.
 *
 * @example marginOfSafety({ applied: '20000 psi', allowable: '42000 psi', factor: 1.5 }) // => 0.4
 */
export const marginOfSafety = /* @__PURE__ */ formula({
  name: 'marginOfSafety',
  title: 'Margin of safety',
  equation,
  source: definition,
  inputs: {
    applied: stress('f', 'applied stress', { above: 0 }),
    allowable: stress('F', 'allowable stress', { min: 0 }),
    factor,
  },
  output,
  example: { applied: '20000 psi', allowable: '42000 psi', factor: 1.5 },
  si: marginSi,
  solve: solved,
});

/**
 * Margin of safety of a load.
 *
 * @example loadMarginOfSafety({ applied: '10 kN', allowable: '30 kN', factor: 2 }) // => 0.5
 */
export const loadMarginOfSafety = /* @__PURE__ */ formula({
  name: 'loadMarginOfSafety',
  title: 'Margin of safety of a load',
  equation,
  source: definition,
  inputs: {
    applied: force('f', 'applied load', { above: 0 }),
    allowable: force('F', 'allowable load', { min: 0 }),
    factor,
  },
  output,
  example: { applied: '10 kN', allowable: '30 kN', factor: 2 },
  si: marginSi,
  solve: solved,
});

/**
 * Margin of safety of a pressure.
 *
 * @example pressureMarginOfSafety({ applied: '7 MPa', allowable: '21 MPa', factor: 2 }) // => 0.5
 */
export const pressureMarginOfSafety = /* @__PURE__ */ formula({
  name: 'pressureMarginOfSafety',
  title: 'Margin of safety of a pressure',
  equation,
  source: definition,
  inputs: {
    applied: gaugePressure('f', 'applied pressure', { above: 0 }),
    allowable: gaugePressure('F', 'allowable pressure', { min: 0 }),
    factor,
  },
  output,
  example: { applied: '7 MPa', allowable: '21 MPa', factor: 2 },
  si: marginSi,
  solve: solved,
});

/**
 * A margin from quantities of one kind: stresses, loads or pressures.
 *
 * @throws MeopError `wrong-kind` where their kinds differ, `out-of-domain` where applied or factor is not above zero
 * @example margin({ mode: 'burst', applied: q('7 MPa'), allowable: q('21 MPa'), factor: 2, source: 'a test' }).marginOfSafety // => 0.5
 */
export function margin({
  mode,
  applied,
  allowable,
  factor,
  temperature,
  source,
  cautions = [],
}: MarginInput): Margin {
  if (family(applied) !== family(allowable))
    throw new MeopError(
      'wrong-kind',
      `margin of '${mode}': allowable is of kind ${allowable.kind}, applied of kind ${applied.kind}; give both as the same kind`,
      'allowable',
      { value: allowable, expected: applied.kind },
    );
  checkMargin({ mode, applied, allowable, factor });
  return {
    mode,
    applied,
    allowable: allowable.kind === applied.kind ? allowable.to(applied.unit) : allowable, // side by side in one unit
    factor,
    marginOfSafety: marginOfSafety.si({ applied: applied.si, allowable: allowable.si, factor }),
    ...(temperature !== undefined && { temperature }),
    source,
    cautions,
  };
}

/**
 * The mode that fails first: the least margin, the first of equals.
 *
 * @throws MeopError `empty-list`
 * @example governing([margin({ mode: 'burst', applied: q('7 MPa'), allowable: q('21 MPa'), factor: 2, source: 'a test' })]).mode // => 'burst'
 */
export function governing<M extends Margin>(margins: readonly M[]): M {
  const [first, ...rest] = margins;
  if (first === undefined)
    throw new MeopError('empty-list', 'governing: no margins given; at least one is expected', 'margins', {
      value: margins,
    });
  return rest.reduce((least, next) => (next.marginOfSafety < least.marginOfSafety ? next : least), first);
}

/**
 * Margins as a printed table, least first, with the cautions below.
 *
 * @example marginTable([margin({ mode: 'burst', applied: q('7 MPa'), allowable: q('21 MPa'), factor: 2, source: 'a test' })]).split('\n').length // => 3
 */
export function marginTable(margins: readonly Margin[]): string {
  const rows = [...margins]
    .sort((a, b) => a.marginOfSafety - b.marginOfSafety)
    .map(({ mode, applied, allowable, factor, marginOfSafety: left, temperature }) => ({
      mode,
      applied,
      allowable,
      factor,
      margin: `${left < 0 ? '' : '+'}${left.toFixed(2)}`,
      ...(temperature !== undefined && { temperature }),
    }));
  const notes = [...new Set(margins.flatMap(({ cautions }) => cautions))];
  return [table(rows), ...notes.map((note) => `caution: ${note}`)].join('\n');
}

const family = ({ kind }: Quantity): string => (pressures.has(kind) ? 'pressure' : kind);
const pressures: ReadonlySet<string> = /* @__PURE__ */ new Set([
  'pressure',
  'gauge pressure',
  'absolute pressure',
  'pressure difference',
  'stress',
]);
