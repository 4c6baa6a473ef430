import { describe, expect, expectTypeOf, it } from 'vitest';
import {
  calculations,
  gaugePressure,
  instance,
  length,
  optional,
  procedure,
  type Quantity,
  stress,
} from '../../src/units';
import { hoopStress } from './sample-formulas';

// What is expected here is the rule of procedures itself; the stress is p·r/t of round numbers.

const inputs = {
  pressure: gaugePressure('p', 'pressure', { min: 0 }),
  radius: length('r', 'radius', { synonyms: ['caliber'] }),
  wall: optional(length('t', 'wall'), 0.002),
};
const reviewTube = procedure({
  name: 'reviewTube',
  title: 'Review of a tube',
  source: 'made for this test',
  inputs,
  gives: 'the stress of the tube',
  example: { pressure: '10 MPa', radius: '20 mm' },
  checks: [
    ({ radius, wall }) =>
      wall.si < radius.si ? undefined : { path: 'wall', given: wall, expected: 'less than the radius' },
  ],
  si: (pressure: number) => pressure * 10,
  working: (values) => [hoopStress.explain(values)],
  run: (values) => ({ stress: hoopStress(values), cautions: ['only a test'] }),
});

const isMotor = (value: unknown): value is { readonly diameter: number } => Object(value).diameter > 0;
const weigh = procedure({
  name: 'weigh',
  title: 'Weight of a motor',
  source: 'made for this test',
  subject: instance('the motor', 'a motor', isMotor),
  inputs: { factor: optional(stress('k', 'a factor'), 2) },
  gives: 'a weight',
  example: 'weigh({ diameter: 3 })',
  run: (motor, { factor }) => motor.diameter * factor.si,
});

describe('a procedure', () => {
  it('is called with quantities, and gives what it runs', () => {
    const result = reviewTube({ pressure: '10 MPa', radius: '20 mm' });
    expect(result.stress.in('MPa')).toBe(100);
    expectTypeOf(result.stress).toEqualTypeOf<Quantity<'stress'>>();
    expect(reviewTube.si(1)).toBe(10);
    expectTypeOf(reviewTube.si).toBeFunction();
    // @ts-expect-error the radius is missing
    expect(() => reviewTube({ pressure: '10 MPa' })).toThrow('missing required field radius');
  });
  it('gives a promise that rejects with the errors of its inputs, where it is asynchronous', async () => {
    const later = procedure({
      name: 'later',
      title: 'A length, later',
      source: 'made for this test',
      inputs: { size: length('x', 'a length') },
      gives: 'a promise of the length',
      example: { size: '1 mm' },
      asynchronous: true,
      run: ({ size }) => Promise.resolve(size.si),
    });
    expect(await later({ size: '2 mm' })).toBe(0.002);
    await expect(later({ size: '0 mm' })).rejects.toThrow('size must be above 0 mm');
  });
  it('holds its values against each other', () =>
    expect(() => reviewTube({ pressure: '1 MPa', radius: '1 mm', wall: '1/16 in' })).toThrow(
      'reviewTube: wall must be less than the radius, got 0.0625 in.',
    ));
  it('has a card', () =>
    expect(String(reviewTube)).toBe(
      [
        'reviewTube: Review of a tube',
        '  pressure  p  gauge pressure (MPa), at least 0 MPa  pressure',
        '  radius    r  length (mm), above 0 mm               radius',
        '  wall      t  length (mm), above 0 mm               wall; assumed 2 mm where left out',
        '  gives the stress of the tube',
        '  source: made for this test',
        "  reviewTube({ pressure: '10 MPa', radius: '20 mm' })",
      ].join('\n'),
    ));
  it('is found by its words and by the synonyms of its inputs', () => {
    expect(calculations('review of a tube').map(({ id }) => id)).toContain('reviewTube');
    expect(calculations('caliber').map(({ id }) => id)).toContain('reviewTube');
    expect(String(calculations('no such thing'))).toBe("no calculation contains 'no such thing'");
  });
  it('writes itself out, with its steps', () => {
    const text = String(reviewTube.explain({ pressure: '10 MPa', radius: '20 mm', wall: '1/8 in' }));
    for (const part of ['t  = 1/8 in', '= 0.003175 m', 'σ = p·r / t', 'caution: only a test', 'source: made'])
      expect(text).toContain(part);
    expect(reviewTube.explain({ pressure: '10 MPa', radius: '20 mm' }).toHtml()).toMatch(
      /^<figure>.*<\/figure>$/su,
    );
  });
});

describe('a procedure of a subject', () => {
  it('takes it first, and options that may be left out behind it', () => {
    expect(weigh({ diameter: 3 })).toBe(6);
    expect(weigh({ diameter: 3 }, { factor: '5 Pa' })).toBe(15);
    expect(weigh.explain({ diameter: 3 }).result).toBe('6');
  });
  it('names what its subject must be', () => {
    // @ts-expect-error nothing is not a motor
    expect(() => weigh()).toThrow('weigh: motor must be a motor, got nothing.');
  });
});
