import { describe, expect, test } from 'vitest';
import { crack, internalTube, regress, withFlaws } from '../../../../src/ballistics/grain';
import { codeOf } from '../../../error-code';

describe('a crack', () => {
  test('a free crack that sticks out of the wall where it would mislead is refused', () => {
    const tube = internalTube({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm' });
    const across = crack({
      plane: 'free',
      centre: ['20 mm', '0 mm', '50 mm'],
      normal: [1, 0, 0],
      size: '20 mm',
      width: '40 mm',
    });
    expect(codeOf(() => regress(withFlaws(tube, { flaws: [across] })))).toBe('grain-surface-outside');
  });
});
