import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';

/** Every link within a folder of HTML pages whose file, or whose place in the file, is not there. */
export function brokenLinks(folder: string): readonly string[] {
  const pages = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.html'),
  );
  const ids = new Map<string, ReadonlySet<string>>();
  const idsOf = (file: string): ReadonlySet<string> => {
    const known = ids.get(file);
    if (known !== undefined) return known;
    const found = new Set(
      [...readFileSync(file, 'utf8').matchAll(/\s(?:id|name)="([^"]+)"/g)].map(([, id]) => id),
    );
    ids.set(file, found);
    return found;
  };
  return pages.flatMap((page) => {
    const file = join(folder, page);
    const targets = new Set(
      [...readFileSync(file, 'utf8').matchAll(/\s(?:href|src)="([^"]*)"/g)].map(([, target]) =>
        target.replaceAll('&amp;', '&'),
      ),
    );
    return [...targets].flatMap((target) => {
      if (/^(?:[a-z][a-z+.-]*:|\/\/)/i.test(target)) return [];
      const [path, fragment] = target.split('#');
      const to = path === '' ? file : normalize(join(dirname(file), decodeURIComponent(path.split('?')[0])));
      if (!to.startsWith(normalize(folder)) || !existsSync(to)) return [`${page}: ${target}`];
      const place = statSync(to).isDirectory() ? join(to, 'index.html') : to;
      if (!existsSync(place)) return [`${page}: ${target} has no index`];
      if (fragment && place.endsWith('.html') && !idsOf(place).has(decodeURIComponent(fragment)))
        return [`${page}: ${target} has no such place`];
      return [];
    });
  });
}
