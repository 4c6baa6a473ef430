import process from 'node:process';
import { inspect } from 'node:util';
import { MeopError, table } from '../units';

/**
 * Formats a value for the prompt: results of the library as aligned names and values, everything else as Node.js
 * does.
 */
export function shown(value: unknown): string {
  if (typeof value === 'string') return value;
  if (value instanceof MeopError) return `${value.code}: ${value.message}`; // the stack is of no use at the prompt
  if (typeof value === 'object' && value !== null && hasOwnText(value)) return String(value);
  if (isRecord(value)) return recordLines(value, 0).join('\n');
  if (isTable(value)) return tableLines(value).join('\n');
  return inspect(value, { colors: process.stdout.isTTY, depth: 4 });
}

type Fields = Readonly<Record<string, unknown>>;

// An object created by the script has a prototype of another realm, and is shown as JavaScript.
const isRecord = (value: unknown): value is Fields =>
  typeof value === 'object' &&
  value !== null &&
  Object.getPrototypeOf(value) === Object.prototype &&
  !printsItself(value);

const printsItself = (value: object): boolean => inspects(value) || '$schema' in value; // data for another program

const inspects = (value: object): boolean => Symbol.for('nodejs.util.inspect.custom') in value;

const hasOwnText = (value: object): boolean => Object.hasOwn(value, 'toString') && !inspects(value);

const isTable = (value: unknown): value is readonly Fields[] =>
  Array.isArray(value) && value.length > 0 && value.every((row) => isRecord(row) && isFlat(row));

const isFlat = (row: Fields): boolean =>
  Object.values(row).every((cell) => !isRecord(cell) && (!Array.isArray(cell) || cell.every(isScalar)));

const isScalar = (value: unknown): boolean => typeof value !== 'object' || value === null;

const widest = 50; // maximum width of a cell; longer text is printed below its table

function tableLines(rows: readonly Fields[]): string[] {
  const cells = rows.map(cellsOf);
  const columns = [...new Set(cells.flatMap((row) => Object.keys(row)))];
  const long = columns.filter((name) => cells.some((row) => (row[name]?.length ?? 0) > widest));
  const empty = columns.filter((name) => cells.every((row) => row[name] === 'none'));
  const kept = columns.filter((name) => !long.includes(name) && !empty.includes(name));
  const below = long.flatMap((name) => {
    const same = cells.every((row) => row[name] === cells[0][name]);
    return same
      ? [`${name}: ${cells[0][name]}`]
      : cells.flatMap((row) => (row[name] === 'none' ? [] : [`${name}, ${row[columns[0]]}: ${row[name]}`]));
  });
  const narrow = cells.map((row) => Object.fromEntries(kept.map((name) => [name, row[name] ?? ''])));
  return [...table(narrow).split('\n'), ...below];
}

const deepest = 3;

function recordLines(record: Fields, depth: number): string[] {
  const fields = Object.entries(record).filter(
    ([, value]) => value !== undefined && typeof value !== 'function',
  );
  const width = Math.max(0, ...fields.map(([name]) => name.length));
  return fields.flatMap(([name, value]) => {
    const lines = valueLines(value, depth);
    // One line is printed next to its name, several below it.
    return lines.length === 1 && !isRecord(value) && !isTable(value)
      ? [`${name.padEnd(width)}  ${lines[0]}`]
      : [name, ...lines.map((line) => `  ${line}`)];
  });
}

function valueLines(value: unknown, depth: number): string[] {
  if (isRecord(value)) return depth < deepest ? recordLines(value, depth + 1) : ['…'];
  if (isTable(value)) return tableLines(value);
  if (Array.isArray(value))
    return value.length === 0 ? ['none'] : value.flatMap((item) => valueLines(item, depth + 1));
  return plain(value).split('\n');
}

const cellsOf = (row: Fields): Record<string, string> =>
  Object.fromEntries(
    Object.entries(row).flatMap(([name, value]) =>
      value === undefined || typeof value === 'function' ? [] : [[name, cellOf(value)]],
    ),
  );

const cellOf = (value: unknown): string =>
  Array.isArray(value) ? (value.length === 0 ? 'none' : value.map(plain).join('; ')) : plain(value);

// Ten figures are printed; `.field` gives all digits.
const plain = (value: unknown): string =>
  typeof value === 'number'
    ? String(Number(value.toPrecision(10)))
    : typeof value === 'object' && value !== null
      ? inspect(value, { maxArrayLength: 4, depth: 1 })
      : String(value);
