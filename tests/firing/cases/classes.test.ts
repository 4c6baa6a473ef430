import { expect, test } from 'vitest';
import { isModelRocketMotor, launchDistance, motorClass } from '../../../src/firing';
import { MeopError, q } from '../../../src/units';
import { checkValue } from '../../cases/check-value';
import { caseById } from '../../cases/every-case';
import { siList } from '../../cases/read-case';

// Every expected value: tests/cases/firing.json, with its source and provenance there.
const impulse = (si: number) => q(si, 'N*s').as('impulse');
const list = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

test.each(['impulse-class-below-a', 'impulse-class-picks'])('%s', (id) => {
  const { inputs, expected } = caseById(id);
  expect(siList(inputs.impulse).map((si) => motorClass(impulse(si)).letter)).toEqual(expected.letter);
});

test('what is still a model rocket motor', () => {
  const { inputs, expected } = caseById('model-motor-limit');
  const found = list(inputs.motors).map((motor) => {
    const { impulse: total, average } = Object(motor);
    return isModelRocketMotor({
      totalImpulse: impulse(Number(total)),
      averageThrust: q(Number(average), 'N').as('force'),
    });
  });
  expect(found).toEqual(expected.model);
});

test('launch distances for certified motors, by the top of each class', () => {
  const one = caseById('launch-distance-certified');
  for (const [i] of list(one.inputs.letters).entries()) {
    const totalImpulse = impulse(320 * 2 ** i);
    expect(motorClass(totalImpulse).letter).toBe(list(one.inputs.letters)[i]);
    const feet = (complex: boolean): number =>
      launchDistance({ totalImpulse, motors: 'certified', complex }).distance.in('ft');
    checkValue(one, `single[${i}]`, feet(false));
    checkValue(one, `complex[${i}]`, feet(true));
  }
});

test('launch distances for research motors', () => {
  const one = caseById('launch-distance-research');
  for (const [i, si] of siList(one.inputs.impulseNs).entries()) {
    const feet = (complex: boolean): number =>
      launchDistance({ totalImpulse: impulse(si), motors: 'research', complex }).distance.in('ft');
    checkValue(one, `nonComplex[${i}]`, feet(false));
    checkValue(one, `complex[${i}]`, feet(true));
  }
});

test('a distance says that it is for launches, and beyond the tables there is none', () => {
  const found = launchDistance({ totalImpulse: '900 N*s', motors: 'research' });
  expect(found.caution).toMatch(/launches, not to static firings/);
  for (const totalImpulse of ['50000 N*s', '0 N*s'] as const)
    expect(() => launchDistance({ totalImpulse, motors: 'research' })).toThrow(MeopError);
  expect(() => launchDistance({ totalImpulse: '100 N*s', motors: 'certified' })).toThrow(MeopError);
});
