import { parseArgs } from 'node:util';
import { documentVerbs } from './document-verbs';
import { logVerbs } from './log-verbs';
import { motorVerbs } from './motor-verbs';
import { reportFormats, UsageError, type Verb, type VerbOptions } from './verb';

/** All verbs of the command, in the order of its help. */
export const verbs: readonly Verb[] = [...motorVerbs, ...logVerbs, ...documentVerbs];

/** A valid command line. */
export interface CommandLine {
  readonly verb: Verb;
  readonly files: readonly string[];
  readonly options: VerbOptions;
  readonly help: boolean;
}

const formatsText = 'text (default), markdown, html, csv or json';

/** Parses the arguments after `meop`. @throws UsageError */
export function readCommandLine([name = '', ...rest]: readonly string[]): CommandLine {
  const verb = verbs.find((one) => one.name === name);
  if (verb === undefined)
    throw new UsageError(`unknown command '${name}'. Commands: ${verbs.map((one) => one.name).join(', ')}.`);
  const { values, positionals } = parsed(verb, rest);
  const format = reportFormats.find((one) => one === (values.format ?? 'text'));
  if (format === undefined)
    throw new UsageError(
      `${name}: --format must be one of ${reportFormats.join(', ')}, got '${values.format}'`,
    );
  const foreign = (['motor', 'log', 'ambient'] as const).find(
    (option) => values[option] !== undefined && !verb.options.includes(option),
  );
  if (foreign !== undefined) throw new UsageError(`${name}: --${foreign} is not an option of this command`);
  if (!verb.formats.includes(format))
    throw new UsageError(`${name}: --format must be ${verb.formats.join(' or ')}, got '${format}'`);
  return {
    verb,
    files: positionals,
    help: values.help === true,
    options: {
      format,
      json: values.json === true,
      motor: values.motor,
      log: values.log,
      ambient: values.ambient,
    },
  };
}

function parsed({ name }: Verb, args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        format: { type: 'string' },
        json: { type: 'boolean' },
        motor: { type: 'string' },
        log: { type: 'string' },
        ambient: { type: 'string' },
        help: { type: 'boolean', short: 'h' },
      },
    });
  } catch (error) {
    throw new UsageError(`${name}: ${error instanceof Error ? error.message : String(error)}`);
  }
}

/** Help of the command. */
export function helpText(): string {
  const width = Math.max(...verbs.map(({ name }) => name.length));
  return `meop: engineering calculations with units, and reviews of small solid rocket motors

  meop                     open a JavaScript prompt with the library in scope
  echo "CODE" | meop       run JavaScript from standard input and print the last value
  meop VERB [FILE …]       run a command on files, or on standard input if none is named

${verbs.map(({ name, does }) => `  ${name.padEnd(width)}  ${does}`).join('\n')}

  --format FORMAT   ${formatsText}
  --json            write one line of JSON per motor
  --help, -h        print this help; after a verb, the help of that verb
  --version         print the version

A motor is a JSON document. A file or standard input contains one document, or one per line (NDJSON). A log is CSV or
similar text, read by its column headings.

Exit codes: 0 done; 1 a calculation failed or a document has errors (the other motors are done); 2 invalid command
line.

  meop example > motor.json && meop review motor.json
`;
}

const optionHelp: Readonly<Record<string, string>> = {
  motor: '  --motor MOTOR.json  document of the motor that was fired',
  log: '  --log LOG.csv       log of a firing, to include in the report',
  ambient: "  --ambient PRESSURE  ambient pressure, for example '101.3 kPa'",
};

/** Help of one verb. */
export function verbHelp({ name, takes, does, options, formats: writes }: Verb): string {
  const lines = [
    ...options.map((option) => optionHelp[option] ?? ''),
    ...(writes.includes('html') ? [`  --format FORMAT     ${formatsText}`] : []),
    ...(writes.includes('json') ? ['  --json              write one line of JSON per document'] : []),
  ];
  const from = takes === '' ? '' : '\n  Reads standard input if no file is named.\n';
  return `meop ${[name, takes].filter((part) => part !== '').join(' ')}\n\n  ${does}\n${from}${lines.length > 0 ? `\n${lines.join('\n')}\n` : ''}`;
}
