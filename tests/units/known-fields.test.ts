import { describe, expect, it } from 'vitest';
import { type FieldsOf, requireFields } from '../../src/units/known-fields';

interface Tube {
  readonly wall: string;
  readonly temperature?: string;
}
const tube: FieldsOf<Tube> = { wall: 'required', temperature: 'optional' };
const given = (options: object): Tube => JSON.parse(JSON.stringify(options));

describe('requireFields', () => {
  it('takes what is complete, with and without what may be left out', () => {
    expect(() => requireFields('f', given({ wall: '2 mm' }), tube)).not.toThrow();
    expect(() => requireFields('f', given({ wall: '2 mm', temperature: '20 degC' }), tube)).not.toThrow();
    const emptied: { readonly wall: string; readonly temperature?: string | undefined } = {
      wall: '2 mm',
      temperature: undefined,
    };
    expect(() => requireFields('f', emptied, { wall: 'required', temperature: 'optional' })).not.toThrow();
  });

  it.each([
    [
      { wall: '2 mm', temprature: '90 degC' },
      "f: unknown field 'temprature'; did you mean 'temperature'? Fields: wall, temperature.",
    ],
    [{ temperature: '90 degC' }, 'f: missing required field wall.'],
    [{ wall: '2 mm', constructor: 1 }, "f: unknown field 'constructor'. Fields: wall, temperature."],
    [['2 mm'], 'f: must be an object { wall, temperature }, got ["2 mm"].'],
  ])('refuses %j', (options, message) => {
    expect(() => requireFields('f', given(options), tube)).toThrow(message);
  });

  it('wants its list complete and true', () => {
    // @ts-expect-error temperature is not listed
    const short: FieldsOf<Tube> = { wall: 'required' };
    // @ts-expect-error the wall may not be left out
    const lax: FieldsOf<Tube> = { wall: 'optional', temperature: 'optional' };
    // @ts-expect-error there is no such field
    const long: FieldsOf<Tube> = { wall: 'required', temperature: 'optional', radius: 'optional' };
    const either: FieldsOf<
      { readonly diameter: string } | { readonly radius: string; readonly wall?: string }
    > = {
      diameter: 'optional',
      radius: 'optional',
      wall: 'optional',
    };
    expect([short, lax, long, either].length).toBe(4);
  });
});
