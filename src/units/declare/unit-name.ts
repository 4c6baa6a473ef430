import { MeopError } from '../errors';
import { accepts } from '../kind-rules';
import type { NamedKind } from '../kinds';
import { type Unit, unitFor } from '../unit';
import type { UnitOf } from '../unit-names';
import type { Input, InputFacts } from './input';
import { inputOf, notThat } from './plain-inputs';

/** Declares the name of a unit of a kind, which the editor completes; the calculation receives the unit. */
export const unitName = <const K extends NamedKind>(
  kind: K,
  meaning: string,
  facts: InputFacts<UnitOf<K>> = {},
): Input<UnitOf<K>, Unit, 'required'> =>
  inputOf({
    ...facts,
    type: 'unit',
    meaning,
    takes: () => `name of a unit of ${kind}`,
    read: (value, at) => {
      if (typeof value !== 'string') throw notThat(value, `the name of a unit of ${kind}`, at);
      try {
        const unit = unitFor(kind, value);
        if (accepts(kind, unit.kind)) return unit;
        throw notThat(value, `a unit of ${kind}`, at, 'wrong-unit');
      } catch (error) {
        throw error instanceof MeopError ? error.at(at.procedure, at.path) : error;
      }
    },
  });
