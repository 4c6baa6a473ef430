import { describe, expect, test } from 'vitest';
import { avoidedWords, exceptions, notYetRewritten } from './english-words';
import { type PublicText, pageTexts, printedTexts, schemaTexts, sourceTexts } from './public-texts';

const avoided = new RegExp(avoidedWords.map((entry) => `\\b(?:${entry})(?!\\w)`).join('|'), 'gi');
const onOneLine = (text: string): string => text.replace(/\s+/g, ' ');

/** The avoided words in a text, each with its surroundings. */
function hits({ place, at, text }: PublicText): readonly { place: string; hit: string }[] {
  const line = exceptions.reduce((rest, { text: allowed }) => rest.replaceAll(allowed, '§'), onOneLine(text));
  return [...line.matchAll(avoided)].map(({ 0: words, index }) => ({
    place,
    hit: `${at}: '${words}' in: ${line.slice(Math.max(0, index - 60), index + words.length + 60)}`,
  }));
}

describe('plain English', () => {
  test('an avoided word is found, a good one is not', () => {
    const found = (text: string): number => hits({ place: 'here', at: 'here', text }).length;
    expect(found('the greatest of them gives\nway')).toBe(2);
    expect(found('a least-squares fit, at least')).toBe(0);
  });

  test('no public text contains an avoided word', async () => {
    const texts = [...sourceTexts(), ...pageTexts(), ...schemaTexts(), ...(await printedTexts())];
    expect(texts.length).toBeGreaterThan(5000);
    const found = texts.flatMap(hits);
    const wrong = [...new Set(found.map(({ place }) => place))].flatMap((place) => {
      const here = found.filter((one) => one.place === place).map(({ hit }) => hit);
      const allowed = notYetRewritten[place] ?? 0;
      return here.length > allowed ? [`${place}: ${here.length} hits, ${allowed} allowed`, ...here] : [];
    });
    expect(wrong).toEqual([]);
  }, 120_000);

  test('every exception occurs, is needed and has its reason', () => {
    const all = [...sourceTexts(), ...pageTexts(), ...schemaTexts()].map(({ text }) => onOneLine(text));
    for (const { text, reason } of exceptions) {
      expect(reason.length, text).toBeGreaterThan(10);
      expect(text.match(avoided), `${text}: contains an avoided word`).not.toBeNull();
      expect(
        all.some((one) => one.includes(text)),
        `${text}: occurs`,
      ).toBe(true);
    }
  });
});
