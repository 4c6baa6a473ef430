import { describe, expect, test } from 'vitest';
import {
  crack,
  debond,
  type Flaw,
  internalTube,
  regress,
  voidBubble,
  withFlaws,
} from '../../../../src/ballistics/grain';

const outer = { outerDiameter: '76 mm', length: '180 mm' } as const;

const bore = { ...outer, boreDiameter: '20 mm' } as const;
const radial = {
  plane: 'radial',
  angle: '0 deg',
  innerRadius: '8 mm',
  outerRadius: '18 mm',
  from: '1 mm',
  to: '9 mm',
} as const;

describe('a flaw that misses the propellant', () => {
  const tube = internalTube(bore);
  const cautionsOf = (flaw: Flaw): string =>
    regress(withFlaws(tube, { flaws: [flaw] }), { accuracy: 1e-2 }).cautions.join('; ');
  test('has a caution that it has no effect; one that only begins in the port has none', () => {
    const inPort = { diameter: '4 mm', distanceFromAxis: '3 mm', position: '30 mm' } as const;
    expect(cautionsOf(voidBubble(inPort))).toContain('has no effect');
    expect(cautionsOf(crack({ ...radial, innerRadius: '0 mm', outerRadius: '9 mm' }))).toContain(
      'has no effect',
    );
    expect(cautionsOf(voidBubble({ ...inPort, distanceFromAxis: '11 mm' }))).not.toContain('has no effect');
    expect(cautionsOf(crack({ ...radial, innerRadius: '0 mm' }))).not.toContain('has no effect');
    expect(cautionsOf(debond({ from: '60 mm', to: '90 mm' }))).not.toContain('has no effect');
  });
});
