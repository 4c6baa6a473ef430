/** The values that the validation report prints as ours, by `id name`. */
export function readValidation(page: string): ReadonlyMap<string, string> {
  const printed = new Map<string, string>();
  let id = '';
  let columns: readonly string[] = [];
  for (const line of page.split('\n')) {
    const heading = /^#### (.+)$/.exec(line);
    if (heading) id = heading[1];
    if (!line.startsWith('| ')) columns = [];
    else if (columns.length === 0) columns = cells(line);
    else if (!line.startsWith('| -')) {
      const row = cells(line);
      if (columns[0] === 'Value') printed.set(`${id} ${row[0]}`, row[2]);
      // One row per case: each cell holds the stated value, then ours.
      else
        for (const [i, name] of columns.entries())
          if (row[i].includes(' → ')) printed.set(`${row[0]} ${name}`, row[i].split(' → ')[1]);
    }
  }
  return printed;
}

const cells = (line: string): readonly string[] =>
  line
    .slice(1, -1)
    .split('|')
    .map((cell) => cell.trim());
