import { MeopError } from '../errors';
import { readInput } from '../input';
import { accepts } from '../kind-rules';
import { quoted } from '../quantity-error';
import { shownIn } from '../shown-unit';
import type { Unit } from '../unit';
import type { Given, Givens, SiValues } from './declaration';
import { inDomain, outOfDomain } from './domain';

/** The arguments of a call: each in SI, and the unit the result is to be shown in. */
export interface ReadArguments<I extends Givens> {
  readonly si: SiValues<I>;
  readonly shown: Unit;
}

type Fields = readonly (readonly [string, Given])[];

/** How a formula reads its arguments; `skipped` is a field that is being solved for. */
export function argumentReader<I extends Givens>(
  name: string,
  inputs: I,
): (values: object, output: Given, skipped?: string) => ReadArguments<I> {
  const fields: Fields = Object.entries(inputs);

  return (values, output, skipped) => {
    if (typeof values !== 'object' || values === null)
      throw new MeopError(
        'missing-field',
        `${name}: ${quoted(values)} given; ${shape(fields)} is expected`,
        undefined,
        { value: values },
      );
    const given: Readonly<Record<string, unknown>> = { ...values };
    const si: Record<string, number> = {};
    let used = 0;
    let first: Unit | undefined;
    let own: Unit | undefined;
    for (let i = 0; i < fields.length; i++) {
      const [field, facts] = fields[i];
      const value = given[field];
      if (field === skipped) {
        si[field] = Number.NaN;
        continue;
      }
      if (value === undefined) {
        if (field in given) used++;
        if (facts.standard === undefined) throw missing(name, field, facts, fields, given);
        si[field] = facts.standard;
        continue;
      }
      used++;
      const read = readInput(facts.kind, field, value, name);
      if (!inDomain(read.si, facts.domain)) throw outOfDomain(name, field, facts, value, read);
      si[field] = read.si;
      if (read.unit.dimension.key !== 0) first ??= read.unit;
      if (own === undefined && accepts(output.kind, read.unit.kind)) own = read.unit;
    }
    for (const field in given)
      if (used-- <= 0 || !Object.hasOwn(inputs, field)) throw unknown(name, field, fields);
    return {
      si: si as SiValues<I>, // true: the loop has set every field of the declaration
      shown: own ?? shownIn(output.kind, first?.us ?? false),
    };
  };
}

function shape(fields: Fields): string {
  return `{ ${fields.map(([field, { standard }]) => (standard === undefined ? field : `${field}?`)).join(', ')} }`;
}

function missing(
  name: string,
  field: string,
  facts: Given,
  fields: Fields,
  given: Readonly<Record<string, unknown>>,
): MeopError {
  const known = new Set(fields.map(([known]) => known));
  const misspelt = Object.keys(given).find((key) => !known.has(key));
  const said = misspelt === undefined ? '' : ` ('${misspelt}' is not one of its fields)`;
  return new MeopError(
    'missing-field',
    `${name}: ${field} (${facts.meaning}) is missing${said}; ${shape(fields)} is expected`,
    field,
    { expected: facts.kind },
  );
}

function unknown(name: string, field: string, fields: Fields): MeopError {
  return new MeopError(
    'unknown-field',
    `${name}: there is no field '${field}'; ${shape(fields)} is expected`,
    field,
    {
      expected: shape(fields),
    },
  );
}
