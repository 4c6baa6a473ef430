// Every text of a document becomes a quantity once: when the document is read. The review works on the model.
import { beforeEach, expect, test, vi } from 'vitest';

// Loaded anew, since other tests share the modules of the library.
const read = vi.fn<(text: string) => void>();
vi.resetModules();
vi.doMock(import('../../src/units/parse'), async (original) => {
  const actual = await original();
  return {
    ...actual,
    parse: (text, kind) => {
      read(text);
      return actual.parse(text, kind);
    },
  };
});
const { demoMotor, parseMotor, review, reviewProblems } = await import('../../src/motor');
vi.doUnmock('../../src/units/parse');
vi.resetModules();

/** Every text of a document that has a unit, each as often as it is there. */
function textsOf(node: unknown): readonly string[] {
  if (typeof node === 'string') return /^-?\d[\d./e-]* [\w%]/.test(node) ? [node] : [];
  return typeof node === 'object' && node !== null ? Object.values(node).flatMap(textsOf) : [];
}
const texts = textsOf(demoMotor());
const isOfDocument = (text: string): boolean => texts.includes(text);

beforeEach(() => read.mockClear());

test('parseMotor reads each text of the demo motor once', () => {
  parseMotor(demoMotor());
  expect(texts.length).toBeGreaterThan(90);
  // What else is read are the tables of the materials.
  const ofDocument = read.mock.calls.map(([text]) => text).filter(isOfDocument);
  expect(ofDocument.sort()).toEqual([...texts].sort());
});

test('a review of a motor reads none of them again', () => {
  const motor = parseMotor(demoMotor());
  read.mockClear();
  review(motor);
  expect(reviewProblems(motor)).toEqual([]);
  expect(read.mock.calls.map(([text]) => text).filter(isOfDocument)).toEqual([]);
});
