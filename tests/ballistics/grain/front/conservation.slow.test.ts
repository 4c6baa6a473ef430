import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  chippedEdge,
  crack,
  debond,
  type Flaw,
  finocyl,
  type Grain,
  offsetBore,
  regress,
  slottedTube,
  star,
  taperedCore,
  tubularSegment,
  voidBubble,
  wagonWheel,
  withFlaws,
} from '../../../../src/ballistics/grain';
import { depthField } from '../../../../src/ballistics/grain/front/field';
import { litSources } from '../../../../src/ballistics/grain/front/regress-shape';

const mm = (v: number): `${number} mm` => `${v} mm`;
const deg = (v: number): `${number} deg` => `${v} deg`;
const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/**
 * Propellant volume at a burned depth without the rays: on spokes through the grain, the stretches that the front has not reached
 * and that no surface holds inside. Surfaces that have not lit yet count as cavities too.
 */
function sampledVolume(grain: Grain, burned: number): number {
  const { radius, length } = grain.shape.envelope;
  const lit = litSources(grain.shape);
  const front = depthField(lit);
  const solid = depthField(lit.map(({ source }) => ({ source, litAt: 0 })));
  const left = (x: number, y: number, z: number): number =>
    Math.min(front.depth(x, y, z) - burned, solid.depth(x, y, z));
  const [spokes, rings, slices] = [120, 90, 54];
  let sum = 0;
  for (let i = 0; i < spokes; i++)
    for (let j = 0; j < slices; j++) {
      const a = (2 * Math.PI * (i + ((j * 0.7548777) % 1))) / spokes;
      // Shifted from spoke to spoke and slice to slice, so that no flat front falls between the samples.
      const z = (length * (j + ((i * 0.618034) % 1))) / slices;
      let last = left(0, 0, z);
      for (let k = 1; k <= rings; k++) {
        const [r0, r1] = [(radius * (k - 1)) / rings, (radius * k) / rings];
        const d = left(r1 * Math.cos(a), r1 * Math.sin(a), z);
        const cut = r0 + ((r1 - r0) * last) / (last - d);
        if (last > 0 && d > 0) sum += r1 * r1 - r0 * r0;
        else if (last > 0 && last > d) sum += cut * cut - r0 * r0;
        else if (d > 0 && last < d) sum += r1 * r1 - cut * cut;
        last = d;
      }
    }
  return (sum * Math.PI * length) / (spokes * slices);
}

const flaw: fc.Arbitrary<Flaw> = fc.oneof(
  fc
    .record({
      angle: size(0, 360),
      inner: size(2, 12),
      depth: size(2, 15),
      from: size(5, 40),
      length: size(5, 30),
    })
    .map((c) =>
      crack({
        plane: 'radial',
        angle: deg(c.angle),
        innerRadius: mm(c.inner),
        outerRadius: mm(c.inner + c.depth),
        from: mm(c.from),
        to: mm(c.from + c.length),
      }),
    ),
  fc
    .record({ position: size(10, 50), outer: size(10, 24) })
    .map((c) => crack({ plane: 'transverse', position: mm(c.position), outerRadius: mm(c.outer) })),
  fc
    .record({ d: size(2, 6), r: size(12, 20), angle: size(0, 360), z: size(8, 50) })
    .map((c) =>
      voidBubble({ diameter: mm(c.d), distanceFromAxis: mm(c.r), angle: deg(c.angle), position: mm(c.z) }),
    ),
  fc
    .record({ from: size(0, 20), length: size(10, 40), angle: size(0, 360), width: size(20, 300) })
    .map((c) =>
      debond({ from: mm(c.from), to: mm(c.from + c.length), angle: deg(c.angle), width: deg(c.width) }),
    ),
  fc
    .record({ angle: size(0, 360), depth: size(1, 5) })
    .map((c) => chippedEdge({ end: 'aft', edgeRadius: mm(8), angle: deg(c.angle), depth: mm(c.depth) })),
);

const outer = { outerDiameter: '50 mm', length: '60 mm' } as const;
const ends = fc.constantFrom('both', 'head', 'aft', 'none' as const);
const shape: fc.Arbitrary<Grain> = fc.oneof(
  fc
    .record({ bore: size(8, 30), burningEnds: ends })
    .map((s) => tubularSegment({ ...outer, boreDiameter: mm(s.bore), burningEnds: s.burningEnds })),
  fc
    .record({ bore: size(10, 20), offset: size(0.5, 10), burningEnds: ends })
    .map((s) =>
      offsetBore({ ...outer, boreDiameter: mm(s.bore), offset: mm(s.offset), burningEnds: s.burningEnds }),
    ),
  fc
    .record({
      n: fc.integer({ min: 2, max: 6 }),
      t: size(1, 4),
      tip: size(24, 44),
      from: size(0, 40),
      burningEnds: ends,
    })
    .map((s) =>
      finocyl({
        ...outer,
        boreDiameter: mm(16),
        fins: s.n,
        finThickness: mm(s.t),
        finTipDiameter: mm(s.tip),
        finFrom: mm(s.from),
        finEnd: s.n % 2 === 0 ? 'square' : 'round',
        burningEnds: s.burningEnds,
      }),
    ),
  fc
    .record({ n: fc.integer({ min: 2, max: 5 }), t: size(1, 4), to: size(10, 60) })
    .map((s) =>
      slottedTube({ ...outer, boreDiameter: mm(16), slots: s.n, slotWidth: mm(s.t), slotTo: mm(s.to) }),
    ),
  fc.record({ head: size(8, 30), aft: size(8, 30), burningEnds: ends }).map((s) =>
    taperedCore({
      ...outer,
      headBoreDiameter: mm(s.head),
      aftBoreDiameter: mm(s.aft),
      burningEnds: s.burningEnds,
    }),
  ),
  fc.record({ n: fc.integer({ min: 4, max: 7 }), web: size(7, 10), burningEnds: ends }).map((s) =>
    star({
      ...outer,
      points: s.n,
      webThickness: mm(s.web),
      filletRadius: mm(1),
      angularFraction: 0.8,
      openingAngle: deg(70),
      burningEnds: s.burningEnds,
    }),
  ),
  fc.record({ n: fc.integer({ min: 3, max: 6 }), t: size(2, 5) }).map((s) =>
    wagonWheel({
      ...outer,
      spokes: s.n,
      ringInnerDiameter: mm(38),
      spokeThickness: mm(s.t),
      spokeTipDiameter: mm(14),
    }),
  ),
);

describe('what burns is what was cast', () => {
  test('random unions of shapes and flaws: the burned volume is the cast volume, and the area is its derivative', () => {
    fc.assert(
      fc.property(shape, fc.array(flaw, { maxLength: 3 }), (sound, flaws) => {
        const grain = flaws.length > 0 ? withFlaws(sound, { flaws: flaws }) : sound;
        const { si, accuracy } = regress(grain, { accuracy: 3e-3, stations: 1, steps: 200 });
        // Volume from the rays against volume from the distance alone, at first and on the way. The check is good to about 2e-3.
        for (const w of [0, 0.25 * si.burnout, 0.6 * si.burnout])
          expect(Math.abs(si.volumeAt(w) - sampledVolume(grain, w)), `${w}`).toBeLessThan(
            (3e-3 + accuracy.achieved) * si.volume[0],
          );
        let burned = 0;
        for (let k = 1; k < si.depth.length; k++) {
          burned += ((si.area[k] + si.area[k - 1]) / 2) * (si.depth[k] - si.depth[k - 1]);
          expect(si.volume[k]).toBeLessThanOrEqual(si.volume[k - 1] * (1 + 1e-9));
          expect(si.area[k]).toBeGreaterThanOrEqual(0);
        }
        // The trapezoids' own error on curved stretches is 1e-4 and less with 200 depths.
        expect(Math.abs(burned / si.volume[0] - 1)).toBeLessThan(1e-3);
      }),
      { numRuns: 12, seed: 20 },
    );
  });
});
