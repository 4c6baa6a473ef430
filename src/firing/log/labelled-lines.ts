/** Converts the lines of a log other than plain rows into rows, and returns their headings. */
export interface LineReading {
  /** Headings, where the lines contain them. */
  readonly headings: readonly string[] | undefined;
  /** One line as a row; other lines are returned unchanged. */
  row(line: string): string;
}

/**
 * Finds how to read lines with more than numbers: `{"t":12,"thrust":3.4}`, `t=12 F=3.4`, `12 ms, 3.4 N`, `[12, 3.4]`,
 * and `12:00:00.123 -> 12,3.4` with a stamp of the terminal. Undefined for plain rows, as in most logs.
 */
export function lineReading(lines: readonly string[]): LineReading | undefined {
  const body = lines.filter((line) => line.trim() !== '').slice(0, maxSampled);
  const most = mostOf(body);
  return most((line) => arrow.test(line)) ? stamped(body) : unstamped(body, most);
}

function unstamped(
  body: readonly string[],
  most: (test: (line: string) => boolean) => boolean,
): LineReading | undefined {
  if (most((line) => itemsOf(line).length >= 2)) return labelled(body);
  if (most((line) => inBrackets.test(line)))
    return { headings: undefined, row: (line) => line.replace(inBrackets, '$1') };
  if (most((line) => allWithUnits(line))) return withUnits(body);
  return undefined;
}

const mostOf =
  (body: readonly string[]) =>
  (test: (line: string) => boolean): boolean =>
    body.filter(test).length > 0.5 * body.length;

const maxSampled = 2000; // lines
const arrow = /^\s*(\d\d?:\d\d:\d\d(?:[.,:]\d+)?)\s*->\s*/;
const inBrackets = /^\s*\[([^[\]{}]*)\],?\s*$/;

/** Stamps of a terminal before an arrow become a first column; a clock of the device itself has priority over it. */
function stamped(body: readonly string[]): LineReading {
  const rests = body.filter((line) => arrow.test(line)).map((line) => line.replace(arrow, ''));
  const inner = unstamped(rests, mostOf(rests));
  const rows = inner ? rests.map((line) => inner.row(line)) : rests;
  const delimiter = ['\t', ';', ',', '|'].find(
    (mark) => rows.filter((r) => r.includes(mark)).length > 0.5 * rows.length,
  );
  const join = delimiter ?? ' ';
  const row = (line: string): string => {
    const stamp = arrow.exec(line)?.[1];
    if (stamp === undefined) return line;
    const rest = line.replace(arrow, '');
    const read = inner?.row(rest) ?? rest;
    return `${/^\s*["']?[a-z_]/i.test(read) ? 'received' : stamp}${join}${read}`;
  };
  return { headings: inner?.headings && ['received', ...inner.headings], row };
}

const item =
  /(["']?)([a-zµ°][\wµ°% ./()[\]-]{0,40}?)\1\s*[:=]\s*(?:"([^"]*)"|([+-]?(?:\d[\d.:]*|\.\d+)(?:e[+-]?\d+)?|nan|null)\s?([a-zµ°%][a-zµ°%/]*)?(?=[\s,;|}\]]|$))/gi;

interface Item {
  readonly name: string;
  readonly value: string;
  readonly unit: string | undefined;
}

/** The labelled values of a line; none where the line contains anything else. */
function itemsOf(line: string): readonly Item[] {
  if (!/[:=]/.test(line) || line.length > longestLabelled) return [];
  let length = 0;
  const items = Array.from(line.matchAll(item), ([whole, , name, quoted, bare, unit]) => {
    length += whole.length;
    return { name: name.trim(), value: quoted ?? bare, unit };
  });
  const marks = line.match(/[\s{}[\],;|]/g)?.length ?? 0;
  return length + marks >= 0.8 * line.length ? items : [];
}
const longestLabelled = 4000; // characters

const maxLabels = 256;

function labelled(body: readonly string[]): LineReading | undefined {
  const units = new Map<string, string | undefined>();
  for (const line of body)
    for (const { name, unit } of itemsOf(line)) units.set(name, units.get(name) ?? unit);
  const names = [...units.keys()];
  // Labels that keep changing do not denote columns.
  if (names.length > maxLabels) return undefined;
  const row = (line: string): string => {
    const items = itemsOf(line);
    if (items.length === 0) return line;
    const cells: string[] = names.map(() => '');
    for (const { name, value } of items) {
      const k = names.indexOf(name);
      if (k >= 0) cells[k] = value;
      else cells.push(value);
    }
    // A closing brace shows that the last number is complete.
    return `${cells.join('\t')}${/\}\s*$/.test(line) ? '\t' : ''}`;
  };
  return {
    headings: names.map((name) => heading(name, units.get(name))),
    row,
  };
}

const heading = (name: string, unit: string | undefined): string =>
  unit === undefined ? name : `${name} (${unit})`;

const valueWithUnit = /([+-]?(?:\d[\d.]*|\.\d+)(?:e[+-]?\d+)?)\s?([a-zµ°%][a-zµ°%/]*)(?=\s*(?:[,;|\t]|$))/gi;

/** Whether each cell is a number, and at least one is followed by a unit. */
function allWithUnits(line: string): boolean {
  if (line.length > longestLabelled) return false;
  const found = line.match(valueWithUnit);
  return found !== null && /^[\s\d.,;|+-]*$/.test(line.replace(valueWithUnit, '$1'));
}

function withUnits(body: readonly string[]): LineReading {
  const row = (line: string): string => (allWithUnits(line) ? line.replace(valueWithUnit, '$1') : line);
  const example = body.find(allWithUnits) ?? '';
  const delimiter = /[;|\t]/.exec(example)?.[0] ?? ',';
  const units = example.split(delimiter).map((cell) => new RegExp(valueWithUnit).exec(cell)?.[2]);
  const first = body[0].split(delimiter).map((cell) => cell.trim());
  const named =
    !allWithUnits(body[0]) && first.length === units.length && !first.some((cell) => /[[(]/.test(cell));
  return { headings: named ? first.map((name, i) => heading(name, units[i])) : undefined, row };
}
