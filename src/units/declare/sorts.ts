// Which sort of input a declaration is, for what reads declarations: documents, their schemas and their walks.
import type { Choice, Named } from './choice';
import type { Group } from './group';
import type { Input, Inputs } from './input';
import type { List } from './list';
import type { Variants } from './variants';

/** Whether a declared input is a group of inputs. */
export const isGroup = (input: Input): input is Group => input.type === 'group';

/** Whether a declared input is a list. */
export const isList = (input: Input): input is List => input.type === 'list';

/** Whether a declared input is a choice between words. */
export const isChoice = (input: Input): input is Choice<string> => input.type === 'choice';

/** Whether a declared input is an entry of a table. */
export const isNamed = (input: Input): input is Named<unknown, string> => input.type === 'named';

/** Whether a declared input is one of several groups. */
export const isVariants = (
  input: Input,
): input is Variants<string, Readonly<Record<string, Inputs | Group>>> => input.type === 'variants';
