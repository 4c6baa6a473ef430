import { demoMotor, motorJsonSchema, motorProblems, parseMotor, strengthProblems } from '../motor';
import { documents } from './documents';
import { UsageError, type Verb } from './verb';
import { write } from './write-report';

/** The verbs about motor documents themselves. */
export const documentVerbs: readonly Verb[] = [
  {
    name: 'check',
    takes: '[MOTOR.json …]',
    does: 'every problem of motor documents, with its place and the way out',
    options: [],
    async run(files, { json }) {
      let code = 0;
      for await (const { source, text } of documents(files)) {
        const found = motorProblems(text);
        // A sound document may still lack a strength that its review asks for.
        const problems = found.length > 0 ? found : strengthProblems(parseMotor(text));
        if (problems.length > 0) code = 1;
        if (json) await write(`${JSON.stringify({ source, problems })}\n`);
        else if (problems.length === 0) await write(`${source}: sound\n`);
        for (const { path, message } of json ? [] : problems)
          await write(`${source}: ${path === '' ? 'document' : path}: ${message}\n`);
      }
      return code;
    },
  },
  printed('example', 'the document of the demo motor, to start from', demoMotor),
  printed('schema', 'the JSON Schema of motor documents, for an editor', motorJsonSchema),
];

function printed(name: string, does: string, make: () => unknown): Verb {
  return {
    name,
    takes: '',
    does,
    options: [],
    async run(files) {
      if (files.length > 0)
        throw new UsageError(`${name}: '${files[0]}' is not understood: it takes nothing`);
      await write(`${JSON.stringify(make(), undefined, 2)}\n`);
      return 0;
    },
  };
}
