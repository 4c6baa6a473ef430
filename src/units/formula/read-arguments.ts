import { MeopError } from '../errors';
import { readInput } from '../input';
import { accepts } from '../kind-rules';
import { quoted } from '../quantity-error';
import { shownIn } from '../shown-unit';
import type { Unit } from '../unit';
import type { FormulaParameter, Givens, SiValues } from './declaration';
import { inDomain, outOfDomain } from './domain';

/** The arguments of a call: each in SI, and the unit the result is to be shown in. */
export interface ReadArguments<I extends Givens> {
  readonly si: SiValues<I>;
  readonly shown: Unit;
}

/** How a formula reads its arguments; `skipped` is a field that is being solved for. */
export function argumentReader<I extends Givens>(
  name: string,
  inputs: I,
): (values: object, output: FormulaParameter, skipped?: string) => ReadArguments<I> {
  const fields: readonly (readonly [string, FormulaParameter])[] = Object.entries(inputs);

  const refusal = (code: string, what: string, skipped?: string, path?: string): MeopError => {
    const names = fields.map(([field, { standard }]) => (standard === undefined ? field : `${field}?`));
    const expected = `{ ${names.filter((field) => field !== skipped).join(', ')} }`;
    return new MeopError(code, `${name}: ${what}; ${expected} is expected`, path, { expected });
  };
  const missing = (field: string, meaning: string, given: object, skipped?: string): MeopError => {
    const misspelt = Object.keys(given).find((key) => !Object.hasOwn(inputs, key));
    const said = misspelt === undefined ? '' : ` ('${misspelt}' is not one of its fields)`;
    return refusal('missing-field', `${field} (${meaning}) is missing${said}`, skipped, field);
  };

  return (values, output, skipped) => {
    if (typeof values !== 'object' || values === null)
      throw refusal('missing-field', `${quoted(values)} given`, skipped);
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
        if (facts.standard === undefined) throw missing(field, facts.meaning, given, skipped);
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
      if (used-- <= 0 || !Object.hasOwn(inputs, field))
        throw refusal('unknown-field', `there is no field '${field}'`, skipped, field);
    return {
      si: si as SiValues<I>, // true: the loop has set every field of the declaration
      shown: own ?? shownIn(output.kind, first?.us ?? false),
    };
  };
}
