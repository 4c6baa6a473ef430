import { inDomain, outOfDomain } from '../declare/domain';
import { missingField, notAnObject, unknownField } from '../declare/field-errors';
import type { Parameter, Parameters } from '../declare/parameter';
import { readInput } from '../input';
import { accepts } from '../kind-rules';
import { shownIn } from '../shown-unit';
import type { Unit } from '../unit';
import type { SiValues } from './declaration';

/** The arguments of a call: each in SI, and the unit of the result. */
export interface ReadArguments<I extends Parameters> {
  readonly si: SiValues<I>;
  readonly shown: Unit;
}

/**
 * Reads the arguments of a formula without making a quantity for each; `skipped` is a field that is being solved
 * for.
 */
export function argumentReader<I extends Parameters>(
  procedure: string,
  inputs: I,
): (values: unknown, output: Parameter, skipped?: string) => ReadArguments<I> {
  const fields: readonly (readonly [string, Parameter])[] = Object.entries(inputs);
  const names = Object.keys(inputs);
  const top = { procedure, path: '' };

  const checkNames = (given: object, skipped?: string): void => {
    const known = names.filter((name) => name !== skipped);
    for (const field in given) if (!known.includes(field)) throw unknownField(field, known, top);
  };

  return (values, output, skipped) => {
    if (typeof values !== 'object' || values === null || Array.isArray(values))
      throw notAnObject(values, names, top);
    const given: Readonly<Record<string, unknown>> = { ...values };
    const si: Record<string, number> = {};
    let used = 0;
    let first: Unit | undefined;
    let own: Unit | undefined;
    for (let i = 0; i < fields.length; i++) {
      const [field, { kind, domain, standard, meaning }] = fields[i];
      const value = given[field];
      if (field === skipped) {
        si[field] = Number.NaN;
        continue;
      }
      if (value === undefined) {
        if (field in given) used++;
        if (standard === undefined) {
          checkNames(given, skipped);
          throw missingField(field, meaning, top);
        }
        si[field] = standard;
        continue;
      }
      used++;
      const read = readInput(kind, field, value, procedure);
      if (!inDomain(read.si, domain))
        throw outOfDomain(kind, domain, value, read.unit, { procedure, path: field });
      si[field] = read.si;
      if (read.unit.dimension.key !== 0) first ??= read.unit;
      if (own === undefined && accepts(output.kind, read.unit.kind)) own = read.unit;
    }
    for (const _ in given) used--;
    if (used < 0) checkNames(given, skipped);
    return {
      si: si as SiValues<I>, // true: the loop has set every field of the declaration
      shown: own ?? shownIn(output.kind, first?.us ?? false),
    };
  };
}
