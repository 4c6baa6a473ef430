import {
  force,
  formula,
  gaugePressure,
  instance,
  isQuantity,
  list,
  MeopError,
  optional,
  procedure,
  type Quantity,
  ratio,
  stress,
  table,
  temperature,
  words,
} from '../units';
import { checkMargin } from './margin-check';

/** A failure mode with its applied value, its allowable and its margin of safety. */
export interface Margin {
  /** What would fail, such as `tear-out of the case end`. */
  readonly mode: string;
  /** The stress, load or pressure applied at the limit condition, without factor. */
  readonly applied: Quantity;
  /** The allowable, of the same kind. */
  readonly allowable: Quantity;
  /** The required factor of safety. */
  readonly factor: number;
  /** allowable / (factor × applied) − 1; negative where the mode fails. */
  readonly marginOfSafety: number;
  /** The temperature of the failing part, where it was considered. */
  readonly temperature?: Quantity<'temperature'>;
  /** Where the equation of the mode is published. */
  readonly source: string;
  /** Cautions for this margin. */
  readonly cautions: readonly string[];
}

interface Compared {
  readonly applied: number;
  readonly allowable: number;
  readonly factor: number;
}
const equation = 'MS = F / (FS·f) − 1';
const definition =
  'Definition as in MIL-HDBK-5, NASA-STD-5001 and Bruhn, Analysis and Design of Flight Vehicle Structures (from memory)';
const factor = /* @__PURE__ */ ratio('FS', 'factor of safety', { above: 0 });
const output = /* @__PURE__ */ ratio('MS', 'margin of safety');
const marginSi = ({ applied, allowable, factor: fs }: Compared): number => allowable / (fs * applied) - 1;
/**
 * Margin of safety of a stress; required ≥ 0. {@link margin} takes quantities of any one kind.
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
});

/** @example loadMarginOfSafety({ applied: '10 kN', allowable: '30 kN', factor: 2 }) // => 0.5 */
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
});

/** @example pressureMarginOfSafety({ applied: '7 MPa', allowable: '21 MPa', factor: 2 }) // => 0.5 */
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
});

const isMargin = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && 'marginOfSafety' in value && 'applied' in value;

const anyQuantity = (meaning: string) => instance(meaning, 'a quantity', isQuantity);

/**
 * A margin from quantities of one kind: stresses, loads or pressures.
 *
 * @throws MeopError `wrong-kind` where their kinds differ
 * @example margin({ mode: 'burst', applied: q('7 MPa'), allowable: q('21 MPa'), factor: 2, source: 'a test' }).marginOfSafety // => 0.5
 */
export const margin = /* @__PURE__ */ procedure({
  name: 'margin',
  title: 'Margin of safety of quantities of any one kind',
  source: definition,
  inputs: {
    mode: words('what would fail', { example: 'burst' }),
    applied: anyQuantity('applied stress, load or pressure'),
    allowable: anyQuantity('allowable of the same kind; zero where the handbook states no credit'),
    factor,
    temperature: optional(temperature('T', 'temperature of the part', { example: '80 degC' })),
    source: words('source of the calculation', { example: 'a test' }),
    cautions: optional(list('cautions of the values', words('caution'), { min: 0 }), []),
  },
  checks: [
    ({ applied, allowable }) =>
      family(applied) === family(allowable)
        ? undefined
        : {
            code: 'wrong-kind',
            path: 'allowable',
            given: allowable,
            expected: `of the kind of the applied value (${applied.kind})`,
          },
  ],
  gives: 'the margin with its values and source',
  example:
    "margin({ mode: 'burst', applied: q('7 MPa'), allowable: q('21 MPa'), factor: 2, source: 'a test' })",
  run: ({ mode, applied, allowable, factor, temperature, source, cautions }): Margin => {
    checkMargin({ mode, applied, allowable, factor });
    return {
      mode,
      applied,
      allowable: allowable.kind === applied.kind ? allowable.to(applied.unit) : allowable, // both in one unit
      factor,
      marginOfSafety: marginOfSafety.si({ applied: applied.si, allowable: allowable.si, factor }),
      ...(temperature !== undefined && { temperature }),
      source,
      cautions,
    };
  },
});

/** The margins of a list; an error for anything else. */
function marginsOf<M extends Margin>(procedure: string, margins: readonly M[]): readonly M[] {
  if (Array.isArray(margins) && margins.every(isMargin)) return margins;
  throw new MeopError({
    code: 'wrong-kind',
    procedure,
    path: 'margins',
    given: margins,
    expected: 'a list of margins',
  });
}

/**
 * The mode of minimum margin, the first of equals.
 *
 * @throws MeopError `empty-list`
 * @example governing([margin({ mode: 'burst', applied: q('7 MPa'), allowable: q('21 MPa'), factor: 2, source: 'a test' })]).mode // => 'burst'
 */
export function governing<M extends Margin>(margins: readonly M[]): M {
  const [first, ...rest] = marginsOf('governing', margins);
  if (first === undefined)
    throw new MeopError({
      code: 'empty-list',
      procedure: 'governing',
      path: 'margins',
      given: margins,
      expected: 'a list of at least one margin',
    });
  return rest.reduce((least, next) => (next.marginOfSafety < least.marginOfSafety ? next : least), first);
}

/**
 * Margins as a printed table, minimum first, with the cautions below.
 *
 * @example marginTable([margin({ mode: 'burst', applied: q('7 MPa'), allowable: q('21 MPa'), factor: 2, source: 'a test' })]).split('\n').length // => 3
 */
export function marginTable(margins: readonly Margin[]): string {
  const rows = [...marginsOf('marginTable', margins)]
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
