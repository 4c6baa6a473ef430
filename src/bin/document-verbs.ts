import process from 'node:process';
import {
  type DocumentProblem,
  demoMotor,
  drawMotor,
  motorJsonSchema,
  motorProblems,
  parseMotor,
  reviewProblems,
} from '../motor';
import { MeopError } from '../units';
import { documents, messageIn } from './documents';
import { UsageError, type Verb } from './verb';
import { write } from './write-report';

/** Verbs for motor documents. */
export const documentVerbs: readonly Verb[] = [
  {
    name: 'check',
    takes: '[MOTOR.json …]',
    does: 'Validate motor documents; list every error with its path and a fix',
    options: [],
    formats: ['text', 'json'],
    async run(files, { json: asLine, format }) {
      const json = asLine || format === 'json';
      let code = 0;
      for await (const { source, read } of documents(files)) {
        const problems = problemsOf(source, read);
        if (problems.length > 0) code = 1;
        if (json) await write(`${JSON.stringify({ source, problems })}\n`);
        else if (problems.length === 0) await write(`${source}: no errors\n`);
        for (const { message } of json ? [] : problems) await write(`${source}: ${message}\n`);
      }
      return code;
    },
  },
  {
    name: 'draw',
    takes: '[MOTOR.json]',
    does: 'Draw the section of a motor to scale as SVG, with its dimensions',
    options: [],
    formats: ['text'],
    async run(files) {
      const [file, ...more] = files;
      if (more.length > 0) throw new UsageError(`draw: takes one motor, got ${files.length}`);
      for await (const { source, read } of documents(file === undefined ? [] : [file]))
        try {
          await write(`${drawMotor(parseMotor(read()))}\n`);
        } catch (error) {
          if (!(error instanceof MeopError)) throw error;
          process.stderr.write(`${source}: ${messageIn(source, error)}\n`);
          return 1;
        }
      return 0;
    },
  },
  printed('example', 'Print the document of the demo motor, as a starting point', demoMotor),
  printed('schema', 'Print the JSON Schema of motor documents, for editors', motorJsonSchema),
];

function problemsOf(source: string, read: () => string): readonly DocumentProblem[] {
  try {
    const text = read();
    const found = motorProblems(text);
    // A valid document may still lack values that its review requires.
    return found.length > 0 ? found : reviewProblems(parseMotor(text));
  } catch (error) {
    if (!(error instanceof MeopError)) throw error;
    return [{ path: '', code: error.code, message: messageIn(source, error) }];
  }
}

function printed(name: string, does: string, make: () => unknown): Verb {
  return {
    name,
    takes: '',
    does,
    options: [],
    formats: ['text', 'json'], // both formats are JSON
    async run(files) {
      if (files.length > 0) throw new UsageError(`${name}: takes no arguments, got '${files[0]}'`);
      await write(`${JSON.stringify(make(), undefined, 2)}\n`);
      return 0;
    },
  };
}
