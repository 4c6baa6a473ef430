/**
 * Declared inputs: every value that a calculation or a document accepts is declared once, by kind, and read,
 * checked, described and documented from its declaration. Imports only quantities and units of this module.
 */
export { byName } from './by-name';
export { type Choice, choice, type Named, type NamedTable, type NameOf, named, unknownName } from './choice';
export type { Domain } from './domain';
export { either } from './either';
export { type Check, type Conflict, type Group, type GroupFacts, inputs } from './group';
export type { Argument, Arguments, Input, InputFacts, Inputs, Need, Values, Worse } from './input';
export { type List, type ListFacts, list } from './list';
export { isParameter, optional } from './optional';
export type { FieldInput, Parameter, ParameterFacts, ParameterOf, Parameters, Result } from './parameter';
export { any, parameterOf } from './parameter';
export * from './parameters';
export type { Place } from './place';
export { callback, flag, instance, words } from './plain-inputs';
export { readInputs } from './read-inputs';
export { isChoice, isGroup, isList, isNamed, isVariants } from './sorts';
export * from './thermal-parameters';
export { type Trace, trace } from './trace';
export { unitName } from './unit-name';
export {
  caseFields,
  type FieldsOfCase,
  type VariantArgument,
  type Variants,
  type VariantValue,
  variants,
} from './variants';
