import { describe, expect, test } from 'vitest';
import {
  crack,
  debond,
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
  const said = (flaw: Parameters<typeof withFlaws>[1]): string =>
    regress(withFlaws(tube, flaw), { accuracy: 1e-2 }).cautions.join('; ');
  test('is said to change nothing; one that only begins in the port is not', () => {
    const inPort = { diameter: '4 mm', distanceFromAxis: '3 mm', position: '30 mm' } as const;
    expect(said(voidBubble(inPort))).toContain('changes nothing');
    expect(said(crack({ ...radial, innerRadius: '0 mm', outerRadius: '9 mm' }))).toContain('changes nothing');
    expect(said(voidBubble({ ...inPort, distanceFromAxis: '11 mm' }))).not.toContain('changes nothing');
    expect(said(crack({ ...radial, innerRadius: '0 mm' }))).not.toContain('changes nothing');
    expect(said(debond({ from: '60 mm', to: '90 mm' }))).not.toContain('changes nothing');
  });
});
