// Random grains of every shape with random flaws of every kind, the same for the same seed.
import {
  chippedEdge,
  composedGrain,
  coneCore,
  crack,
  cylinderCore,
  debond,
  endBurner,
  type Flaw,
  finCore,
  finocyl,
  type Grain,
  offsetBore,
  rodAndTube,
  slottedTube,
  sphereCore,
  star,
  taperedCore,
  tubularSegment,
  voidBubble,
  wagonWheel,
  withFlaws,
} from '../../../src/ballistics/grain';

export type Draw = () => number;

/** Numbers from 0 to 1: a multiplicative congruential generator with the multiplier 48271 (Park & Miller 1988, from memory). */
export function drawFrom(seed: number): Draw {
  let state = (seed * 7919 + 1) % 2147483647;
  const draw = (): number => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
  for (let k = 0; k < 5; k++) draw();
  return draw;
}

const mm = (v: number): `${number} mm` => `${Number(v.toFixed(4))} mm`;
const deg = (v: number): `${number} deg` => `${Number(v.toFixed(4))} deg`;

export const outer = { outerDiameter: '50 mm', length: '60 mm' } as const;

const soundShapes: readonly ((
  size: (min: number, max: number) => number,
  count: (min: number, max: number) => number,
) => Grain)[] = [
  (size, count) =>
    tubularSegment({
      ...outer,
      boreDiameter: mm(size(8, 30)),
      burningEnds: (['both', 'head', 'aft', 'none'] as const)[count(0, 3)],
    }),
  (size, count) =>
    offsetBore({
      ...outer,
      boreDiameter: mm(size(10, 20)),
      offset: mm(size(0.5, 10)),
      burningEnds: count(0, 1) === 0 ? 'both' : 'none',
    }),
  (size, count) =>
    finocyl({
      ...outer,
      boreDiameter: '16 mm',
      fins: count(2, 6),
      finThickness: mm(size(1, 4)),
      finTipDiameter: mm(size(24, 44)),
      finFrom: mm(size(0, 40)),
      finEnd: count(0, 1) === 0 ? 'square' : 'round',
      burningEnds: count(0, 1) === 0 ? 'both' : 'none',
    }),
  (size, count) =>
    slottedTube({
      ...outer,
      boreDiameter: '16 mm',
      slots: count(2, 5),
      slotWidth: mm(size(1, 4)),
      slotTo: mm(size(10, 60)),
    }),
  (size, count) =>
    taperedCore({
      ...outer,
      headBoreDiameter: mm(size(8, 30)),
      aftBoreDiameter: mm(size(8, 30)),
      burningEnds: count(0, 1) === 0 ? 'both' : 'none',
    }),
  (size, count) =>
    star({
      ...outer,
      points: count(4, 7),
      webThickness: mm(size(7, 10)),
      filletRadius: '1 mm',
      angularFraction: 0.8,
      openingAngle: '70 deg',
      burningEnds: count(0, 1) === 0 ? 'both' : 'none',
    }),
  (size, count) =>
    wagonWheel({
      ...outer,
      spokes: count(3, 6),
      ringInnerDiameter: '38 mm',
      spokeThickness: mm(size(2, 5)),
      spokeTipDiameter: '14 mm',
    }),
  (size) => rodAndTube({ ...outer, tubeBoreDiameter: mm(size(24, 38)), rodDiameter: mm(size(8, 20)) }),
  (_, count) => endBurner({ ...outer, burningEnds: count(0, 1) === 0 ? 'aft' : 'both' }),
  (size, count) =>
    composedGrain({
      ...outer,
      cores: [
        cylinderCore({ diameter: mm(size(10, 18)) }),
        ...(count(0, 1) === 0
          ? [sphereCore({ diameter: mm(size(20, 34)), position: mm(size(10, 50)) })]
          : []),
        ...(count(0, 1) === 0
          ? [
              coneCore({
                headDiameter: mm(size(10, 20)),
                aftDiameter: mm(size(20, 34)),
                from: '35 mm',
                dome: 'head',
              }),
            ]
          : [
              finCore({
                count: count(2, 5),
                thickness: '3 mm',
                tipDiameter: mm(size(24, 36)),
                from: '30 mm',
              }),
            ]),
      ],
    }),
];

export const soundKinds = soundShapes.length;

const flawKinds: readonly ((size: (min: number, max: number) => number) => Flaw)[] = [
  (size) => {
    const [inner, from] = [size(2, 12), size(5, 40)];
    return crack({
      plane: 'radial',
      angle: deg(size(0, 360)),
      innerRadius: mm(inner),
      outerRadius: mm(inner + size(2, 15)),
      from: mm(from),
      to: mm(from + size(5, 30)),
    });
  },
  (size) => crack({ plane: 'transverse', position: mm(size(10, 50)), outerRadius: mm(size(10, 24)) }),
  (size) =>
    voidBubble({
      diameter: mm(size(2, 6)),
      distanceFromAxis: mm(size(12, 20)),
      angle: deg(size(0, 360)),
      position: mm(size(8, 50)),
    }),
  (size) => {
    const from = size(0, 20);
    return debond({
      from: mm(from),
      to: mm(from + size(10, 40)),
      angle: deg(size(0, 360)),
      width: deg(size(20, 300)),
    });
  },
  (size) =>
    chippedEdge({ end: 'aft', edgeRadius: mm(size(8, 25)), angle: deg(size(0, 360)), depth: mm(size(1, 5)) }),
  (size) =>
    crack({
      plane: 'free',
      centre: [mm(size(8, 16)), mm(size(-4, 4)), mm(size(15, 45))],
      normal: [size(-1, 1), size(-1, 1), size(0.2, 1)],
      size: mm(size(4, 12)),
    }),
];

/** A grain of the kind, without flaws. */
export function soundGrain(draw: Draw, kind: number): Grain {
  const size = (min: number, max: number): number => min + draw() * (max - min);
  const count = (min: number, max: number): number => min + Math.floor(draw() * (max - min + 1));
  const shape = soundShapes[kind % soundShapes.length];
  if (shape === undefined) throw new RangeError('no such kind');
  return shape(size, count);
}

/** A random flaw of the kind, or of any. */
export function randomFlaw(draw: Draw, kind = Math.floor(draw() * flawKinds.length)): Flaw {
  const make = flawKinds[kind % flawKinds.length];
  if (make === undefined) throw new RangeError('no such kind');
  return make((min, max) => min + draw() * (max - min));
}

/** The grain of a seed: a shape with one to three flaws; the seeds run through all pairs of shape and first flaw. */
export function flawedGrain(seed: number): Grain {
  const draw = drawFrom(seed);
  const sound = soundGrain(draw, seed);
  const flaws = Array.from({ length: 1 + Math.floor(draw() * 3) }, (_, i) =>
    randomFlaw(draw, i === 0 ? Math.floor(seed / soundShapes.length) : undefined),
  );
  return withFlaws(sound, { flaws });
}

/** A tube with this number of small voids at random positions. */
export function tubeWithVoids(voids: number, diameter: number, seed = 1): Grain {
  const draw = drawFrom(seed);
  return withFlaws(
    tubularSegment({ outerDiameter: '76 mm', boreDiameter: '20 mm', length: '180 mm', burningEnds: 'none' }),
    {
      flaws: Array.from({ length: voids }, () =>
        voidBubble({
          diameter: mm(diameter * (0.7 + 0.6 * draw())),
          distanceFromAxis: mm(13 + 21 * draw()),
          angle: deg(360 * draw()),
          position: mm(5 + 170 * draw()),
        }),
      ),
    },
  );
}
