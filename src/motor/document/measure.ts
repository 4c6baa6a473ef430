import * as z from 'zod/mini';
import {
  fromSiValue,
  isQuantity,
  MeopError,
  type NamedKind,
  type Quantity,
  type QuantityInput,
  readInput,
  unitFor,
} from '../../units';
import { explained } from './fields';
import { implausible } from './plausible';

/** A value of the document with its tolerance. */
export interface Measured<K extends NamedKind = NamedKind> {
  readonly value: Quantity<K>;
  /** Half of the tolerance range [SI]; zero where none is given. */
  readonly plusMinus: number;
}

/** Kind of a tolerance: that of a difference between two such values. */
type ToleranceKind<K extends NamedKind> = K extends 'temperature'
  ? 'temperature difference'
  : K extends 'gauge pressure' | 'absolute pressure'
    ? 'pressure difference'
    : K;
type Bare<K extends NamedKind> = QuantityInput<K> | (K extends 'dimensionless' ? number : never);

/** A value in the document: a string with its unit, or an object with value and tolerance, absolute or in %. */
export type MeasureInput<K extends NamedKind> =
  | Bare<K>
  | { readonly value: Bare<K>; readonly plusMinus: Bare<ToleranceKind<K>> | `${number} %` };

/** Domain of a value, in SI. */
export interface MeasureDomain {
  readonly above?: number;
  readonly below?: number;
  readonly min?: number;
  readonly max?: number;
  /** Description of the domain, such as `more than 1`. */
  readonly words?: string;
  /** True for an integer, such as a count. */
  readonly whole?: boolean;
}

type MeasureSchema<K extends NamedKind> = z.ZodMiniType<Measured<K>, MeasureInput<K>>;

// Kinds whose values may be zero or negative unless the field restricts them.
const free: ReadonlySet<string> = /* @__PURE__ */ new Set([
  'gauge pressure',
  'pressure difference',
  'temperature difference',
  'temperature sensitivity',
  'angle',
  'dimensionless',
]);

/** A field with a quantity, with or without a tolerance. `example` is shown in messages. */
export function measure<const K extends NamedKind>(
  kind: K,
  meaning: string,
  example: string,
  given: MeasureDomain = {},
): MeasureSchema<K> {
  const domain: MeasureDomain =
    Object.keys(given).length > 0 || free.has(kind) ? given : { above: 0, words: 'more than 0' };
  const read = z.pipe(
    z.unknown(),
    z.transform((value, context): Measured<K> => {
      const problems: MeasureProblem[] = [];
      const found = readMeasure(kind, value, domain, `${meaning}, for example ${example}`, problems);
      for (const { code, message, path, value: input } of problems)
        context.issues.push({ code: 'custom', message, input, path: [...path], params: { code } });
      return found ?? z.NEVER;
    }),
  );
  // Valid: every string or object of the input type is parsed; the type of the compiler is narrower.
  const typed = read as z.ZodMiniType<Measured<K>, MeasureInput<K>>;
  return explained(typed, {
    description: `${meaning} [${kind}]`,
    examples: [example],
    $ref: `#/$defs/${measureName(kind)}`,
  });
}

interface MeasureProblem {
  readonly code: string;
  readonly message: string;
  readonly path: readonly string[];
  readonly value: unknown;
}

function readMeasure<K extends NamedKind>(
  kind: K,
  given: unknown,
  domain: MeasureDomain,
  hint: string,
  problems: MeasureProblem[],
): Measured<K> | undefined {
  const problem = (code: string, message: string, value: unknown, ...path: string[]): undefined => {
    problems.push({ code, message, path, value });
  };
  if (given === undefined) return problem('missing-field', `missing required field (${hint})`, given);
  const toleranced = isToleranced(given);
  if (typeof given === 'object' && !isQuantity(given) && !toleranced)
    return problem(
      'wrong-kind',
      `must be a value with its unit or { "value": …, "plusMinus": … } (${hint}), got ${given === null ? 'null' : Array.isArray(given) ? 'a list' : 'an object without value and plusMinus'}`,
      given,
    );
  const [text, band] = toleranced ? [given.value, given.plusMinus] : [given, undefined];
  const valuePath = toleranced ? ['value'] : [];
  const value = tried(kind, text, hint, (code, message) => problem(code, message, text, ...valuePath));
  const other = toleranced ? Object.keys(given).filter((key) => key !== 'value' && key !== 'plusMinus') : [];
  for (const key of other)
    problem('unknown-field', `unknown field. Available: value, plusMinus.`, undefined, key);
  const plusMinus = toleranced
    ? readTolerance(kind, band, value, (code, message) => problem(code, message, band, 'plusMinus'))
    : 0;
  if (value === undefined) return undefined;
  const outside = outsideOf(domain, value.si) ?? whole(domain, value.si) ?? implausible(kind, value.si);
  if (outside) return problem('out-of-domain', `must be ${outside}, got ${shown(text)}`, text, ...valuePath);
  if (plusMinus === undefined) return undefined;
  if (outsideOf(domain, value.si - plusMinus) ?? outsideOf(domain, value.si + plusMinus))
    return problem(
      'out-of-domain',
      `must be smaller, got ${shown(band)}: the value with its tolerance must be ${domain.words ?? 'in its domain'}`,
      band,
      'plusMinus',
    );
  return { value, plusMinus };
}

type Report = (code: string, message: string) => undefined;

function tried<K extends NamedKind>(
  kind: K,
  text: unknown,
  hint: string,
  report: Report,
): Quantity<K> | undefined {
  try {
    const { si, unit } = readInput(kind, '', text, 'motor');
    return fromSiValue<K>(si, kind, isQuantity(text) ? unitFor(kind, text.unit) : unit);
  } catch (error) {
    if (!(error instanceof MeopError)) throw error;
    // The example of the field is more helpful than the units of any value of the kind.
    if (error.code === 'bare-number')
      return report(error.code, `must have a unit, got ${String(text)} (${hint})`);
    const message = error.statement;
    const hasFix = /must be|write|use|did you mean/i.test(message);
    return report(error.code, hasFix ? message : `${message} It must be the ${hint}.`);
  }
}

const tolerance = "half of the tolerance range, for example '0.05 mm' or '2 %'";

const toleranceKind = (kind: NamedKind): NamedKind =>
  kind === 'temperature'
    ? 'temperature difference'
    : kind === 'gauge pressure' || kind === 'absolute pressure'
      ? 'pressure difference'
      : kind;

function readTolerance(
  kind: NamedKind,
  given: unknown,
  value: Quantity | undefined,
  report: Report,
): number | undefined {
  // A fraction of the value, for kinds with a true zero; per cent of a plain number would be ambiguous.
  if (typeof given === 'string' && /%\s*$/.test(given) && kind !== 'dimensionless') {
    if (kind === 'temperature' || kind === 'gauge pressure')
      return report('wrong-kind', `must be given in a unit, got ${shown(given)}: a ${kind} has no true zero`);
    const share = tried('dimensionless', given, tolerance, report);
    if (share === undefined || value === undefined) return undefined;
    if (share.si >= 0 && share.si < 1) return Math.abs(share.si * value.si);
    return report('out-of-domain', `must be 0 % to less than 100 %, got ${shown(given)}`);
  }
  if (given === undefined) return report('missing-field', `missing required field (${tolerance})`);
  const half = tried(toleranceKind(kind), given, tolerance, report);
  if (half === undefined || half.si >= 0) return half?.si;
  return report('out-of-domain', `must be 0 or more, got ${shown(given)}`);
}

function isToleranced(given: unknown): given is { readonly value: unknown; readonly plusMinus?: unknown } {
  return typeof given === 'object' && given !== null && 'value' in given && !isQuantity(given);
}

function outsideOf(domain: MeasureDomain, si: number): string | undefined {
  const { above, below, min, max, words } = domain;
  const inside =
    !(above !== undefined && !(si > above)) &&
    !(below !== undefined && !(si < below)) &&
    !(min !== undefined && !(si >= min)) &&
    !(max !== undefined && !(si <= max));
  return inside ? undefined : (words ?? 'in its domain');
}

const whole = (domain: MeasureDomain, si: number): string | undefined =>
  domain.whole && !Number.isInteger(si) ? 'an integer' : undefined;

const shown = (value: unknown): string =>
  typeof value === 'string'
    ? `'${value.slice(0, 60)}'`
    : isQuantity(value)
      ? `'${value.toJSON()}'`
      : String(value);

/** The JSON Schema of a kind of value, which the schema of the document contains once. */
export function measureJson(kind: NamedKind): Record<string, unknown> {
  const text = { type: 'string', pattern: '^\\s*[-+]?[0-9.]' };
  const bare = kind === 'dimensionless' ? [{ type: 'number' }, text] : [text];
  const plusMinus = {
    description: 'half of the tolerance range, absolute or in % of the value',
    anyOf: bare,
  };
  return {
    anyOf: [
      ...bare,
      {
        type: 'object',
        properties: { value: { anyOf: bare }, plusMinus },
        required: ['value', 'plusMinus'],
        additionalProperties: false,
      },
    ],
  };
}

/** Name of the definition of a kind. */
export const measureName = (kind: NamedKind): string => kind.replaceAll(' ', '-');
