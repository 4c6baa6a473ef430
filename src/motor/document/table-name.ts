import * as z from 'zod/mini';
import { MeopError } from '../../units';
import { explained } from './fields';

/** A string that names an entry of a table of the library: a thread, a bolt class, an O-ring. */
export function tableName(
  meaning: string,
  example: string,
  find: (name: string) => unknown,
  examples: readonly string[] = [example],
): z.ZodMiniType<string, string> {
  const schema = z.pipe(
    z.unknown(),
    z.transform((value, context): string => {
      const problem = (code: string, message: string): string => {
        context.issues.push({ code: 'custom', message, input: value, params: { code } });
        return z.NEVER;
      };
      if (value === undefined)
        return problem('missing-field', `missing required field (${meaning}), for example '${example}'`);
      if (typeof value !== 'string')
        return problem(
          'wrong-kind',
          `must be a string such as '${example}' (${meaning}), got ${String(value)}`,
        );
      try {
        find(value);
        return value;
      } catch (error) {
        if (!(error instanceof MeopError)) throw error;
        return problem(error.code, error.message.replace(/^\w+: (?:\w+: )?/, ''));
      }
    }),
  );
  // Valid: the string is returned unchanged.
  const typed = schema as z.ZodMiniType<string, string>;
  return explained(typed, { description: meaning, type: 'string', examples });
}
