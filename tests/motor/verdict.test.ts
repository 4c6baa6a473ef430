import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoMotor, type MotorDocument, report, review } from '../../src/motor';
import { findingsOf, type Judged, mergedFindings } from '../../src/motor/review/finding';
import { verdictFrom, verdictSentence } from '../../src/motor/review/verdict';

const sound = review(demoMotor());
const margin =
  sound.margins.find(({ id, part }) => id === 'case-bearing-yield' && part === 'head-joint') ??
  sound.margins[0];

const withMargins = (values: readonly number[]): Judged['margins'] =>
  values.map((marginOfSafety) => ({ ...margin, marginOfSafety }));
const check = (passes: boolean) => ({
  part: 'throat-insert' as const,
  check: 'fits its pocket',
  value: 1,
  limit: 2,
  passes,
  message: 'diameter 60 mm (allowed ≤ 50 mm)',
  source: 'geometry',
});
const judged = (more: Partial<Judged>): Judged => ({
  margins: withMargins([0.5]),
  proofMargins: [],
  checks: [],
  seals: sound.seals,
  faceSeals: [],
  flow: sound.flow,
  instruments: sound.instruments,
  unjudged: [],
  ...more,
});
const sentence = (more: Partial<Judged>): string => verdictSentence(findingsOf(judged(more)), sound.motor);

describe('the verdict counts everything', () => {
  const failing = <C extends { readonly passes: boolean }>(ones: readonly C[]): readonly C[] =>
    ones.map((one) => ({ ...one, passes: false }));
  const open = {
    part: 'aft-closure',
    reason: 'closures.aft.layout not specified; ligaments are not evaluated.',
  } as const;

  test('with nothing against it, it holds', () => {
    expect(verdictFrom(findingsOf(judged({})))).toBe('holds');
    expect(sentence({})).toMatch(/^Holds at MEOP: minimum MS \+0\.50, head joint, /);
  });

  test.each([
    ['a negative margin', { margins: withMargins([0.5, -0.01]) }],
    ['a negative margin of the proof test', { proofMargins: withMargins([-0.01]) }],
    ['a check of a part', { checks: [check(true), check(false)] }],
    [
      'a seal',
      {
        seals: sound.seals.map((one) => ({
          ...one,
          gland: { ...one.gland, passes: false, checks: failing(one.gland.checks) },
        })),
      },
    ],
    ['the port flow', { flow: failing(sound.flow) }],
    [
      'an instrument',
      {
        instruments: sound.instruments.map((one) => ({ ...one, passes: false, checks: failing(one.checks) })),
      },
    ],
  ] satisfies readonly (readonly [string, Partial<Judged>])[])(
    '%s that fails: it does not hold, whatever is not judged',
    (_, more) => {
      expect(verdictFrom(findingsOf(judged(more)))).toBe('does not hold');
      expect(verdictFrom(findingsOf(judged({ ...more, unjudged: [open] })))).toBe('does not hold');
      expect(sentence({ ...more, unjudged: [open] })).toMatch(/^Does not hold: .*; 1 not judged\.$/);
    },
  );

  test('a part that is not judged, and nothing that fails: not judged, with the reason', () => {
    expect(verdictFrom(findingsOf(judged({ unjudged: [open] })))).toBe('not judged');
    expect(sentence({ unjudged: [open, { ...open, part: 'case' }] })).toBe(
      'Not judged: aft closure (closures.aft.layout not specified; ligaments are not evaluated) and 1 more.',
    );
  });

  test('without any finding, nothing is judged', () => expect(verdictFrom([])).toBe('not judged'));

  test('the sentence names the worst margin with its figure, and counts the others', () => {
    expect(sentence({ margins: withMargins([0.2, -0.03, -0.12, -0.05]), checks: [check(false)] })).toBe(
      `Does not hold: head joint, ${margin.mode}, MS −0.12; 3 more.`,
    );
    expect(sentence({ checks: [check(false)] })).toBe(
      'Does not hold: throat insert, fits its pocket: diameter 60 mm (allowed ≤ 50 mm).',
    );
  });

  test('the worst is first: failures from the lowest margin, what is not judged, the rest from the lowest margin', () => {
    const rank = { 'does not hold': 0, 'not judged': 1, holds: 2 };
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -1, max: 5, noNaN: true })),
        fc.array(fc.boolean()),
        fc.nat({ max: 3 }),
        (values, passes, count) => {
          const given = judged({
            margins: withMargins(values),
            checks: passes.map(check),
            unjudged: Array.from({ length: count }, () => open),
          });
          const found = findingsOf(given);
          const ranks = found.map(({ state }) => rank[state]);
          expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
          for (const state of ['does not hold', 'holds'] as const) {
            const own = found.flatMap((one) =>
              one.state === state && one.marginOfSafety !== undefined ? [one.marginOfSafety] : [],
            );
            expect(own).toEqual([...own].sort((a, b) => a - b));
          }
          const fails = values.some((value) => value < 0) || passes.includes(false);
          expect(verdictFrom(found)).toBe(fails ? 'does not hold' : count > 0 ? 'not judged' : 'holds');
        },
      ),
    );
  });

  test('equal findings of head and aft are counted once', () => {
    const both = sound.findings.filter(({ item }) => item === margin.mode);
    expect(both.map(({ about }) => about)).toEqual(['head joint', 'aft joint']);
    expect(mergedFindings(both).map(({ about }) => about)).toEqual(['head and aft joint']);
    const one = both.map((found, i) => ({ ...found, message: `${i}` }));
    expect(mergedFindings(one)).toEqual(one);
  });
});

describe('the verdict of a motor', () => {
  const changed = (change: Partial<MotorDocument>) => review({ ...demoMotor(), ...change });

  test('an instrument that saturates, and nothing else: it does not hold', () => {
    const instruments = (demoMotor().instruments ?? []).map((one) =>
      one.measures === 'pressure' ? { ...one, range: '4 MPag' as const } : one,
    );
    const short = changed({ instruments });
    expect(short.margins.every(({ marginOfSafety }) => marginOfSafety >= 0)).toBe(true);
    expect(short.verdictSentence).toMatch(
      new RegExp(`^Does not hold: ${instruments[0].name}, range: saturates`),
    );
  });

  test('a stand that is not described is named, and does not prevent that the motor holds', () => {
    const { stand: _, ...rest } = demoMotor();
    const without = review(rest);
    expect(without.verdict).toBe('holds');
    expect(without.verdictSentence).toMatch(/; not described: stand, restraint\.$/);
  });
});

describe('strength at the temperature of the firing', () => {
  test('that is not described is not judged', () => {
    const { wallTemperature: _, ...tube } = demoMotor().case;
    expect(review({ ...demoMotor(), case: tube }).verdictSentence).toBe(
      'Not judged: case (case.wallTemperature not specified; the strength at the temperature of the firing is not evaluated).',
    );
  });
});

describe('what MEOP does not include', () => {
  const { temperatureRange: _, ignition: __, grain, ...rest } = demoMotor();
  const { assumedFlaw: ___, ...flawless } = grain;
  const bare = review({ ...rest, grain: flawless });

  test('is what the document leaves out', () => {
    expect(sound.meop.notIncluded).toEqual(['throat blockage by a fragment (no nozzle.assumedBlockage)']);
    const missing = bare.meop.notIncluded.join('\n');
    for (const part of ['grain temperatures', 'undetected cracks', 'ignition transient'])
      expect(missing).toContain(part);
    expect(missing).not.toContain('tolerances');
    const nominal = review({ ...demoMotor(), meop: { basis: 'nominal' } }).meop.notIncluded.join();
    expect(nominal).toContain('tolerances, temperature range and assumed flaw');
  });

  test('a burn law without tolerance is named where other values have one', () => {
    const { propellant } = demoMotor();
    const exact = {
      ...propellant,
      burnLaw: { ...propellant.burnLaw, referenceRate: '7.2 mm/s' as const, exponent: 0.32 },
    };
    const changed: MotorDocument = { ...demoMotor(), propellant: exact };
    const { meop } = review(changed);
    expect(meop.notIncluded.join()).toContain('uncertainty of the burn law');
  });

  test('is next to MEOP in every output', () => {
    const list = bare.meop.notIncluded.join(', ');
    for (const subject of [bare, bare.meop])
      for (const format of ['text', 'markdown', 'html', 'json', 'csv'] as const) {
        const text = report(subject, { format }).replace(/\s+/g, ' ').replaceAll('\\', '');
        const [, after = ''] = text.split(`${bare.meop.pressure}`);
        expect(after.slice(0, 150 + list.length), format).toContain(list);
      }
    for (const text of [String(bare), String(bare.meop)])
      expect(text).toMatch(new RegExp(`MEOP ${bare.meop.pressure}[^\n]*not included: `));
  });
});
