import { MeopError } from '../../units';
import type { ORing } from './o-ring';

// Rings are sold to be stretched by some per cent; the elongation at break of seal rubbers begins at about 100 %, and a ring
// that is more than some per cent too long for its circle buckles (engineering practice, no published source).
const stretchLimits = { min: -0.05, max: 1 };
const pressLimits = { min: -0.25, max: 0.1 };

const mm = (si: number): string => `${Number((si * 1000).toPrecision(4))} mm`;
const refused = (ring: ORing, procedure: string, expected: string): MeopError =>
  new MeopError({
    code: 'out-of-domain',
    procedure,
    path: 'ring',
    given: ring.size,
    note: `inside diameter ${mm(ring.insideDiameter.si)}, cross section ${mm(ring.crossSection.si)}`,
    expected,
    remedy: 'Select a ring of the size of the groove',
  });

/** Refuses a ring that is of another size than the bottom of its groove: nothing computed with it has a meaning. */
export function refuseStretch(ring: ORing, grooveDiameter: number, procedure: string): void {
  const stretch = grooveDiameter / ring.insideDiameter.si - 1;
  if (stretch >= stretchLimits.min && stretch <= stretchLimits.max) return;
  const [low, high] = [grooveDiameter / (1 + stretchLimits.max), grooveDiameter / (1 + stretchLimits.min)];
  throw refused(
    ring,
    procedure,
    `of inside diameter ${mm(low)} to ${mm(high)} for a groove of ${mm(grooveDiameter)} (its stretch there is ${(stretch * 100).toFixed(0)} %)`,
  );
}

/** Refuses a ring that does not enter the outer wall of its groove, or is nowhere near it. */
export function refuseSeat(ring: ORing, grooveDiameter: number, procedure: string): void {
  const outside = ring.insideDiameter.si + 2 * ring.crossSection.si;
  const press = 1 - grooveDiameter / outside;
  if (press >= pressLimits.min && press <= pressLimits.max) return;
  const [low, high] = [grooveDiameter / (1 - pressLimits.min), grooveDiameter / (1 - pressLimits.max)];
  throw refused(
    ring,
    procedure,
    `of outside diameter ${mm(low)} to ${mm(high)} for a groove of outside diameter ${mm(grooveDiameter)}`,
  );
}
