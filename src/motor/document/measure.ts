import * as z from 'zod/mini';
import {
  fromSiValue,
  isQuantity,
  MeopError,
  type NamedKind,
  type Parameter,
  type Quantity,
  readInput,
  type Unit,
  unitFor,
} from '../../units';
import { inDomain, outOfDomain } from '../../units/declare/domain';
import type { Measured } from './document-types';
import { described, refuse } from './parts';
import { implausible } from './plausible';

/** The schema of a declared quantity, with or without a tolerance. */
export function measure(parameter: Parameter) {
  const { kind, meaning, example } = parameter;
  const read = z.pipe(
    z.unknown(),
    z.transform((value, context): Measured | undefined =>
      readMeasure(parameter, value, (error, ...path) => refuse(context, error, value, path)),
    ),
  );
  return described(read, {
    description: `${meaning} [${kind}]`,
    ...(example !== undefined && { examples: [String(example)] }),
    $ref: `#/$defs/${measureName(kind)}`,
  });
}

type Report = (error: MeopError, ...path: readonly string[]) => void;

function readMeasure(parameter: Parameter, given: unknown, report: Report): Measured | undefined {
  const { kind, meaning, example } = parameter;
  if (given === undefined) {
    report(new MeopError({ code: 'missing-field', expected: `${meaning}, for example ${String(example)}` }));
    return undefined;
  }
  const toleranced = isToleranced(given);
  if (typeof given === 'object' && !isQuantity(given) && !toleranced) {
    const expected = `a value with its unit, such as ${String(example)}, or { "value": …, "plusMinus": … }`;
    report(new MeopError({ code: 'wrong-kind', given, expected }));
    return undefined;
  }
  const [text, band] = toleranced ? [given.value, given.plusMinus] : [given, undefined];
  const path = toleranced ? ['value'] : [];
  const value = attempt(() => readValue(parameter, text), report, ...path);
  for (const key of toleranced ? Object.keys(given) : [])
    if (key !== 'value' && key !== 'plusMinus')
      report(new MeopError({ code: 'unknown-field', given: key, expected: 'value, plusMinus' }), key);
  const plusMinus = toleranced ? attempt(() => readTolerance(kind, band, value), report, 'plusMinus') : 0;
  if (value === undefined) return undefined;
  const wrong = unlikely(parameter, value, text);
  if (wrong !== undefined) {
    report(wrong, ...path);
    return undefined;
  }
  if (plusMinus === undefined) return undefined;
  const domain = { ...parameter.domain, whole: false };
  const outside = [value.si - plusMinus, value.si + plusMinus].find((si) => !inDomain(si, domain));
  if (outside === undefined) return { value, plusMinus };
  const { expected } = outOfDomain(kind, domain, band, unitToShow(parameter), nowhere);
  report(
    new MeopError({
      code: 'out-of-domain',
      given: band,
      expected: `smaller: the value with its tolerance must be ${expected}`,
    }),
    'plusMinus',
  );
  return undefined;
}

const nowhere = { procedure: '', path: '' };

function attempt<V>(read: () => V, report: Report, ...path: readonly string[]): V | undefined {
  try {
    return read();
  } catch (error) {
    if (!(error instanceof MeopError)) throw error;
    report(error, ...path);
    return undefined;
  }
}

function readValue({ kind, meaning, example }: Parameter, text: unknown): Quantity<NamedKind> {
  try {
    const { si, unit } = readInput(kind, '', text, '');
    return fromSiValue<NamedKind>(si, kind, isQuantity(text) ? unitFor(kind, text.unit) : unit);
  } catch (error) {
    // The example of the field is more helpful than the units of any value of the kind.
    if (!(error instanceof MeopError) || error.code !== 'bare-number') throw error;
    const expected = `a value with its unit, for example ${String(example)} (${meaning})`;
    throw new MeopError({ code: 'bare-number', given: text, expected });
  }
}

/** The error for a value outside its domain or implausible for a small motor. */
function unlikely(parameter: Parameter, { si }: Quantity, text: unknown): MeopError | undefined {
  const { kind, domain } = parameter;
  const { above, min = above, below, max = below } = domain;
  const remedy =
    min !== undefined && max !== undefined && kind !== 'dimensionless' ? 'Check the unit' : undefined;
  if (!inDomain(si, domain)) {
    const { expected } = outOfDomain(kind, domain, text, unitToShow(parameter), nowhere);
    return new MeopError({ code: 'out-of-domain', given: text, expected, remedy });
  }
  const most = implausible(kind, si);
  if (most === undefined) return undefined;
  return new MeopError({
    code: 'out-of-domain',
    given: text,
    expected: most,
    remedy: 'Check the unit',
  });
}

/** The usual unit of a field: that of its example. */
const unitToShow = ({ kind, example }: Parameter): Unit => readInput(kind, '', example, '').unit;

const tolerance = "half of the tolerance range, for example '0.05 mm' or '2 %'";

const toleranceKind = (kind: NamedKind): NamedKind =>
  kind === 'temperature'
    ? 'temperature difference'
    : kind === 'gauge pressure' || kind === 'absolute pressure'
      ? 'pressure difference'
      : kind;

function readTolerance(kind: NamedKind, given: unknown, value: Quantity | undefined): number | undefined {
  const refused = (code: string, expected: string): MeopError => new MeopError({ code, given, expected });
  // A fraction of the value, for kinds with a true zero; per cent of a plain number would be ambiguous.
  if (typeof given === 'string' && /%\s*$/.test(given) && kind !== 'dimensionless') {
    if (kind === 'temperature' || kind === 'gauge pressure')
      throw refused('wrong-kind', `given in its unit, since a ${kind} has no true zero`);
    const { si } = readInput('dimensionless', '', given, '');
    if (si >= 0 && si < 1) return value && Math.abs(si * value.si);
    throw refused('out-of-domain', 'at least 0 % and below 100 %');
  }
  if (given === undefined) throw new MeopError({ code: 'missing-field', expected: tolerance });
  const { si } = readInput(toleranceKind(kind), '', given, '');
  if (si >= 0) return si;
  throw refused('out-of-domain', 'at least 0: it is half of the tolerance range');
}

interface Given {
  readonly value: unknown;
  readonly plusMinus?: unknown;
}
const isToleranced = (given: unknown): given is Given =>
  typeof given === 'object' && given !== null && 'value' in given && !isQuantity(given);

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
