import { length, procedure, type Values } from '../../../units';
import { type BurningEnds, boreDiameter, outer, outerDiameter } from '../grain-inputs';
import { inMillimetres, lessThan, misfit } from '../misfit';
import { annulusOutline, ball, circleOutline, line, outline, revolve, wallOutline } from '../surface';
import { cylindricalGrain, type Grain, makeGrain } from './grain';
import { throughCore } from './prism-core';
import {
  freeRodClosedForm,
  offsetBoreClosedForm,
  rodAndTubeClosedForm,
  solidClosedForm,
  tubeClosedForm,
} from './round-closed-form';

const source = 'geometry';

/** Dimensions of a tube, and the ends that burn where none are specified. */
export const bored = (ends: BurningEnds) => ({ ...outer(ends), boreDiameter });

/** The bore of a tube is smaller than its outside. */
export const boreInside = lessThan('boreDiameter', 'outerDiameter', 'the outer diameter');

function tube(kind: string, values: Values<ReturnType<typeof bored>>, offset = 0): Grain {
  const radius = values.outerDiameter.si / 2;
  const bore = values.boreDiameter.si / 2;
  return cylindricalGrain(
    kind,
    values,
    [throughCore('bore', circleOutline(bore, offset), values.length.si, 0)],
    offset > 0 ? offsetBoreClosedForm(radius, bore, offset) : tubeClosedForm(radius, bore),
  );
}

/** Its outer surface is bonded to the case. */
export const tubularSegment = /* @__PURE__ */ procedure({
  name: 'tubularSegment',
  title: 'Tubular segment that burns on its bore and, by default, on both ends',
  source,
  inputs: bored('both'),
  checks: [boreInside],
  gives: 'the grain',
  example: { outerDiameter: '50 mm', boreDiameter: '16 mm', length: '85 mm' },
  run: (values) => tube('tubular segment', values),
});

export const internalTube = /* @__PURE__ */ procedure({
  name: 'internalTube',
  title: 'Tube that burns on its bore; ends inhibited by default',
  source,
  inputs: bored('none'),
  checks: [boreInside],
  gives: 'the grain',
  example: { outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm' },
  run: (values) => tube('internal-burning tube', values),
});

/** The bore is offset in the direction of angle 0: a moon burner, or a misaligned mandrel. */
export const offsetBore = /* @__PURE__ */ procedure({
  name: 'offsetBore',
  title: 'Tube with an offset bore; ends inhibited by default',
  source,
  inputs: {
    ...bored('none'),
    offset: length('e', 'distance of the bore from the axis', {
      min: 0,
      example: '5 mm',
      worse: 'neither',
      synonyms: ['moon burner', 'eccentric'],
    }),
  },
  checks: [
    boreInside,
    ({ outerDiameter: { si: outside }, boreDiameter: { si: bore }, offset }) =>
      misfit(
        offset.si + bore / 2 < outside / 2,
        'offset',
        offset,
        `less than ${inMillimetres((outside - bore) / 2)}, to keep the bore inside the grain`,
      ),
  ],
  gives: 'the grain',
  example: { outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm', offset: '7 mm' },
  run: ({ offset, ...values }) => tube('offset bore', values, offset.si),
});

export const endBurner = /* @__PURE__ */ procedure({
  name: 'endBurner',
  title: 'Solid grain that burns on its ends only, by default on the aft end',
  source,
  inputs: outer('aft'),
  checks: [
    ({ burningEnds }) =>
      misfit(burningEnds !== 'none', 'burningEnds', burningEnds, "'both', 'head' or 'aft'"),
  ],
  gives: 'the grain',
  example: { outerDiameter: '40 mm', length: '60 mm' },
  run: (values) => cylindricalGrain('end burner', values, [], solidClosedForm(values.outerDiameter.si / 2)),
});

/** The outer surface of the rod and the bore of the tube burn: neutral while both last. */
export const rodAndTube = /* @__PURE__ */ procedure({
  name: 'rodAndTube',
  title: 'Rod in a tube; ends inhibited by default',
  source,
  inputs: {
    ...outer('none'),
    tubeBoreDiameter: length('d_t', 'bore of the tube', { example: '32 mm', worse: 'neither' }),
    rodDiameter: length('d_r', 'diameter of the rod', { example: '14 mm', worse: 'neither' }),
  },
  checks: [
    lessThan('tubeBoreDiameter', 'outerDiameter', 'the outer diameter'),
    lessThan('rodDiameter', 'tubeBoreDiameter', 'the bore diameter of the tube'),
  ],
  gives: 'the grain',
  example: { outerDiameter: '60 mm', tubeBoreDiameter: '40 mm', rodDiameter: '20 mm', length: '100 mm' },
  run: (values) => {
    const bore = values.tubeBoreDiameter.si / 2;
    const rod = values.rodDiameter.si / 2;
    return cylindricalGrain(
      'rod and tube',
      values,
      [throughCore('gap', annulusOutline(rod, bore), values.length.si)],
      rodAndTubeClosedForm(values.outerDiameter.si / 2, bore, rod),
    );
  },
});

export const freeRod = /* @__PURE__ */ procedure({
  name: 'freeRod',
  title: 'Rod that burns on its outer surface and, by default, on both ends; regressive',
  source,
  inputs: outer('both'),
  gives: 'the grain',
  example: { outerDiameter: '30 mm', length: '80 mm' },
  run: (values) => {
    const radius = values.outerDiameter.si / 2;
    return cylindricalGrain(
      'free rod',
      values,
      [throughCore('outside', wallOutline(radius, 0, 2 * Math.PI), values.length.si)],
      freeRodClosedForm(radius),
    );
  },
});

const boreAt = (end: string, example: `${number} mm`) =>
  length('d', `bore at the ${end} end`, { min: 0, example, worse: 'neither' });

/** The bore widens or narrows linearly, as left by a mandrel with draft. */
export const taperedCore = /* @__PURE__ */ procedure({
  name: 'taperedCore',
  title: 'Tube with a tapered bore; ends inhibited by default',
  source,
  inputs: {
    ...outer('none'),
    headBoreDiameter: boreAt('head', '16 mm'),
    aftBoreDiameter: boreAt('aft', '20 mm'),
  },
  checks: [
    lessThan('headBoreDiameter', 'outerDiameter', 'the outer diameter'),
    lessThan('aftBoreDiameter', 'outerDiameter', 'the outer diameter'),
    ({ headBoreDiameter: head, aftBoreDiameter: aft }) =>
      misfit(head.si + aft.si > 0, 'aftBoreDiameter', aft, 'above zero where headBoreDiameter is zero'),
  ],
  gives: 'the grain',
  example: { outerDiameter: '50 mm', headBoreDiameter: '16 mm', aftBoreDiameter: '24 mm', length: '100 mm' },
  run: (values) => {
    const high = values.length.si;
    const profile = outline([line(values.headBoreDiameter.si / 2, 0, values.aftBoreDiameter.si / 2, high)]);
    return cylindricalGrain('tapered core', values, [
      revolve({ name: 'tapered bore', profile, low: 0, high }),
    ]);
  },
});

export const sphericalGrain = /* @__PURE__ */ procedure({
  name: 'sphericalGrain',
  title: 'Hollow sphere that burns on its inner surface',
  source,
  inputs: { outerDiameter, boreDiameter },
  checks: [boreInside],
  gives: 'the grain',
  example: { outerDiameter: '100 mm', boreDiameter: '30 mm' },
  run: (values) => {
    const radius = values.outerDiameter.si / 2;
    return makeGrain({
      kind: 'hollow sphere',
      shape: {
        envelope: { form: 'ball', radius, length: 2 * radius },
        ports: [ball({ name: 'hollow', x: 0, y: 0, z: radius, radius: values.boreDiameter.si / 2 })],
        inert: [],
      },
      burningEnds: 'none',
    });
  },
});
