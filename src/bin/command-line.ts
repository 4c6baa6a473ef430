import { parseArgs } from 'node:util';
import { documentVerbs } from './document-verbs';
import { logVerbs } from './log-verbs';
import { motorVerbs } from './motor-verbs';
import { reportFormats, UsageError, type Verb, type VerbOptions } from './verb';

/** Everything the command does, in the order of its help. */
export const verbs: readonly Verb[] = [...motorVerbs, ...logVerbs, ...documentVerbs];

/** A command line that was understood. */
export interface CommandLine {
  readonly verb: Verb;
  readonly files: readonly string[];
  readonly options: VerbOptions;
  readonly help: boolean;
}

const formatsText = 'text (standard), markdown, html, csv or json';

/** Reads the words after `meop`. @throws UsageError */
export function readCommandLine([name = '', ...rest]: readonly string[]): CommandLine {
  const verb = verbs.find((one) => one.name === name);
  if (verb === undefined)
    throw new UsageError(
      `'${name}' is not understood; the verbs are ${verbs.map((one) => one.name).join(', ')}`,
    );
  const { values, positionals } = parsed(verb, rest);
  const format = reportFormats.find((one) => one === (values.format ?? 'text'));
  if (format === undefined)
    throw new UsageError(
      `${name}: --format ${values.format} is not understood; ${reportFormats.join(', ')} are`,
    );
  const foreign = (['motor', 'log', 'ambient'] as const).find(
    (option) => values[option] !== undefined && !verb.options.includes(option),
  );
  if (foreign !== undefined) throw new UsageError(`${name}: takes no --${foreign}`);
  if (!verb.formats.includes(format))
    throw new UsageError(`${name}: writes ${verb.formats.join(' or ')}, not ${format}`);
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

/** The help of the command as a whole. */
export function helpText(): string {
  const width = Math.max(...verbs.map(({ name }) => name.length));
  return `meop: hand calculations with units, and the review of small solid rocket motors

  meop                     opens a prompt with the library in scope; it is JavaScript
  echo "CODE" | meop       runs JavaScript from standard input and prints the last value
  meop VERB [FILE …]       does one of these with files, or with standard input where none is named

${verbs.map(({ name, does }) => `  ${name.padEnd(width)}  ${does}`).join('\n')}

  --format FORMAT   ${formatsText}
  --json            one line of JSON for each motor
  --help, -h        prints this; after a verb, what it takes
  --version         prints the version

A motor is a JSON document; a file or standard input may hold one, or one a line (NDJSON). A log is CSV or the like, read by
its headings.

Exit codes: 0 done, 1 a calculation failed or a document has problems (the other motors are done), 2 the command was not
understood.

  meop example > motor.json && meop review motor.json
`;
}

const optionHelp: Readonly<Record<string, string>> = {
  motor: '  --motor MOTOR.json  the document of the motor that was fired',
  log: '  --log LOG.csv       the log of its firing: the report holds that, too',
  ambient: "  --ambient PRESSURE  the pressure around the motor, such as '101.3 kPa'",
};

/** The help of one verb. */
export function verbHelp({ name, takes, does, options, formats: writes }: Verb): string {
  const lines = [
    ...options.map((option) => optionHelp[option] ?? ''),
    ...(writes.includes('html') ? [`  --format FORMAT     ${formatsText}`] : []),
    ...(writes.includes('json') ? ['  --json              one line of JSON for each document'] : []),
  ];
  const from = /JSON|CSV/.test(takes) ? '\n  Files that are not named come from standard input.\n' : '';
  return `meop ${[name, takes].filter((part) => part !== '').join(' ')}\n\n  ${does}\n${from}${lines.length > 0 ? `\n${lines.join('\n')}\n` : ''}`;
}
