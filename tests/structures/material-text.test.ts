import { inspect } from 'node:util';
import { describe, expect, test } from 'vitest';
import { material, materialNames } from '../../src/structures';

describe('a material at the prompt', () => {
  test('prints every value with its basis, and each source once', () => {
    const text = inspect(material('6061-T6 drawn tube'));
    expect(text).toMatch(/^6061-T6 drawn tube: drawn tube, wall 0\.025 to 0\.500 in\n/);
    expect(text).toMatch(/\nultimate strength +42 ksi +S +\[1\]\n/);
    expect(text).toMatch(/\nultimate strength +310 MPa +typical +\[3\]\n/);
    expect(text).toContain('strength at temperature: known to 350 °C, held for 0.5 h, 10 h');
    expect(
      text.match(/MIL-HDBK-5J \(2003\) table 3\.6\.2\.0\(c1\), read in a transcription\n/g),
    ).toHaveLength(1);
  });

  test.each(materialNames())('%s prints its sources, its notes and nothing unreadable', (name) => {
    const record = material(name);
    const text = String(record);
    expect(text).not.toMatch(/undefined|NaN|\[object/);
    const cited = [...text.matchAll(/ {2}\[(\d+)\]$/gm)].map(([, n]) => Number(n));
    expect(cited.length).toBeGreaterThan(0);
    for (const n of cited) expect(text).toContain(`\n[${n}] `);
    for (const said of [...(record.notes ?? []), ...(record.cautions ?? [])]) expect(text).toContain(said);
  });

  test('a copy is a plain record of its fields', () => {
    const own = { ...material('FKM'), name: 'own compound' };
    expect(String(own)).toBe('[object Object]');
    expect(Object.keys(own)).toEqual(Object.keys(material('FKM')));
  });
});
