import { describe, expect, test } from 'vitest';
import {
  type Core,
  chippedEdge,
  composedGrain,
  coneCore,
  crack,
  cylinderCore,
  debond,
  drawGrain,
  endBurner,
  extrudedCore,
  finCore,
  finocyl,
  freeRod,
  grainColumn,
  internalTube,
  offsetBore,
  regress,
  regressColumn,
  rodAndTube,
  slottedTube,
  sphereCore,
  sphericalGrain,
  star,
  taperedCore,
  tubularSegment,
  voidBubble,
  wagonWheel,
  withFlaws,
} from '../../../src/ballistics/grain';
import { errorOf } from '../../error-code';

// A misspelt option must not pass for one left out: the grain would be another one.

const outer = { outerDiameter: '76 mm', length: '180 mm' } as const;
const bore = { ...outer, boreDiameter: '20 mm' } as const;
const fins = { ...bore, fins: 6, finThickness: '4 mm', finTipDiameter: '44 mm' } as const;
const slots = { ...bore, slots: 4, slotWidth: '3 mm' } as const;
const spokes = { ringInnerDiameter: '60 mm', spokeThickness: '6 mm', spokeTipDiameter: '20 mm' } as const;
const arms = { webThickness: '10 mm', filletRadius: '1.5 mm', openingAngle: '62 deg' } as const;
const radial = {
  plane: 'radial',
  innerRadius: '8 mm',
  angle: '0 deg',
  outerRadius: '18 mm',
  from: '1 mm',
  to: '9 mm',
} as const;
const free = { plane: 'free', centre: ['15 mm', '0 mm', '40 mm'], normal: [0, 0, 1], size: '8 mm' } as const;

type Options = { readonly [field: string]: unknown };
const makers: readonly (readonly [string, (options: never) => unknown, Options])[] = [
  ['tubularSegment', tubularSegment, bore],
  ['internalTube', internalTube, bore],
  ['offsetBore', offsetBore, { ...bore, offset: '3 mm' }],
  ['endBurner', endBurner, outer],
  ['rodAndTube', rodAndTube, { ...outer, tubeBoreDiameter: '40 mm', rodDiameter: '20 mm' }],
  ['freeRod', freeRod, outer],
  ['taperedCore', taperedCore, { ...outer, headBoreDiameter: '16 mm', aftBoreDiameter: '24 mm' }],
  ['sphericalGrain', sphericalGrain, { outerDiameter: '100 mm', boreDiameter: '30 mm' }],
  ['star', star, { ...outer, ...arms, points: 5, angularFraction: 0.75 }],
  ['wagonWheel', wagonWheel, { ...outer, ...spokes, spokes: 6 }],
  ['slottedTube', slottedTube, slots],
  ['finocyl', finocyl, fins],
  ['extrudedCore', extrudedCore, { ...outer, outline: 'M 8 0 A 8 8 0 0 1 -8 0 A 8 8 0 0 1 8 0 Z' }],
  ['composedGrain', composedGrain, { ...outer, cores: [cylinderCore({ diameter: '16 mm' })] }],
  ['cylinderCore', cylinderCore, { diameter: '16 mm' }],
  ['coneCore', coneCore, { headDiameter: '12 mm', aftDiameter: '20 mm' }],
  ['finCore', finCore, { count: 6, thickness: '4 mm', tipDiameter: '44 mm' }],
  ['sphereCore', sphereCore, { diameter: '30 mm', position: '20 mm' }],
  ['crack (radial)', crack, radial],
  ['crack (transverse)', crack, { plane: 'transverse', position: '50 mm', outerRadius: '20 mm' }],
  ['crack (free)', crack, free],
  ['voidBubble', voidBubble, { diameter: '4 mm', distanceFromAxis: '15 mm', position: '30 mm' }],
  ['debond', debond, { from: '0 mm', to: '30 mm' }],
  ['chippedEdge', chippedEdge, { end: 'aft', edgeRadius: '10 mm', depth: '3 mm' }],
  ['grainColumn', grainColumn, { segments: [internalTube(bore)] }],
  ['regress', (options) => regress(internalTube(bore), options), {}],
  ['drawGrain', (options) => drawGrain(internalTube(bore), options), {}],
];

describe('a field that is not known, or missing, is named', () => {
  test.each(makers)('%s', (name, make, options) => {
    expect(errorOf(() => make(options as never))).toBeUndefined();
    const strange = errorOf(() => make({ ...options, wdith: '2 mm' } as never));
    expect(strange).toMatchObject({ code: 'unknown-field', path: 'wdith' });
    expect(String(strange)).toContain(`${name.replace(/ .*/, '')}: unknown field 'wdith'`);
    const [first] = Object.keys(options).filter((field) => field !== 'plane');
    if (first === undefined) return;
    const { [first]: _, ...rest } = options;
    expect(errorOf(() => make(rest as never))).toMatchObject({ code: 'missing-field', path: first });
  });
});

describe('a word that is none of those known, or a thing of the wrong kind, is refused', () => {
  const refused: readonly (readonly [string, string, () => unknown])[] = [
    ['unknown-name', 'burningEnds', () => tubularSegment({ ...bore, burningEnds: 'aft end' as never })],
    ['unknown-name', 'finEnd', () => finocyl({ ...fins, finEnd: 'pointed' as never })],
    ['unknown-name', 'slotEnd', () => slottedTube({ ...slots, slotEnd: 'sqaure' as never })],
    ['unknown-name', 'plane', () => crack({ ...radial, plane: 'axial' as never })],
    ['unknown-name', 'end', () => chippedEdge({ end: 'front' as never, edgeRadius: '10 mm', depth: '3 mm' })],
    ['unknown-name', 'inhibited.0', () => cylinderCore({ diameter: '16 mm', inhibited: ['bore' as never] })],
    [
      'unknown-name',
      'dome',
      () => coneCore({ headDiameter: '12 mm', aftDiameter: '20 mm', dome: 'both' as never }),
    ],
    [
      'unknown-name',
      'tip',
      () => finCore({ count: 6, thickness: '4 mm', tipDiameter: '44 mm', tip: 'flat' as never }),
    ],
    [
      'wrong-kind',
      'cores.0',
      () => composedGrain({ ...outer, cores: [internalTube(bore) as unknown as Core] }),
    ],
    ['wrong-kind', 'flaws.0', () => withFlaws(internalTube(bore), { flaws: [radial as never] })],
    ['wrong-kind', 'segments.0', () => grainColumn({ segments: [outer as never] })],
    ['wrong-kind', 'grain', () => regress(grainColumn({ segments: [internalTube(bore)] }) as never)],
    ['wrong-kind', 'column', () => regressColumn(internalTube(bore) as never)],
    // One that passed for the end of the slots, and one that changed nothing.
    ['grain-measure', 'slotFrom', () => slottedTube({ ...slots, slotFrom: '200 mm' })],
    [
      'grain-measure',
      'centre',
      () =>
        withFlaws(internalTube(bore), { flaws: [crack({ ...free, centre: ['90 mm', '0 mm', '40 mm'] })] }),
    ],
    // These two gave a frame of NaN.
    ['grain-measure', 'along', () => crack({ ...free, width: '3 mm', along: [0, 0, 2] })],
    ['not-finite', 'normal.1', () => crack({ ...free, normal: [0, Number.NaN, 1] })],
  ];
  test.each(refused)('%s: %s', (code, path, act) => {
    expect(errorOf(act)).toMatchObject({ code, path });
  });
});
