import { length, optional, procedure } from '../../units';
import { type Step, step } from '../failure-mode/calculation';
import { sharpGrooveConcentration, wideGrooveConcentration } from './bar-groove';
import { sharpShoulderConcentration, wideShoulderConcentration } from './bar-shoulder';
import { internalGrooveConcentration } from './internal-groove';
import type { StressConcentration } from './stress-concentration';

interface GrooveSi {
  readonly diameter: number;
  readonly depth: number;
  readonly rootRadius: number;
}

/** The stress concentration of a groove around a bar, by the fit that is valid for its depth/radius ratio. */
export const barGrooveStep = (sizes: GrooveSi): Step =>
  step(sizes.depth > 2 * sizes.rootRadius ? sharpGrooveConcentration : wideGrooveConcentration, sizes);

/** The stress concentration of a groove in the bore of a tube. */
export const internalGrooveStep = (groove: {
  readonly wall: number;
  readonly grooveDepth: number;
  readonly rootRadius: number;
}): Step =>
  step(internalGrooveConcentration, {
    barConcentration: barGrooveStep({
      diameter: 2 * groove.wall,
      depth: groove.grooveDepth,
      rootRadius: groove.rootRadius,
    }),
  });

const { diameter, depth, rootRadius } = sharpGrooveConcentration.inputs;

/** The root radius assumed where none is specified [m]. */
export const sharpestRoot = 1e-4;

const found = (
  one: Step,
  facts: Pick<StressConcentration, 'nominal' | 'provenance'>,
  more: readonly string[] = [],
): StressConcentration => ({
  factor: one.value,
  type: 'theoretical',
  source: one.formula.source,
  ...facts,
  cautions: more,
});
const published = { nominal: 'average stress of the net section', provenance: 'published' } as const;
const outside = (ratioOf: number, min: number, max: number): readonly string[] =>
  ratioOf >= min && ratioOf <= max
    ? []
    : [
        `The depth is ${Number(ratioOf.toPrecision(3))} root radii. The fit is valid from ${min} to ${max}; the factor is extrapolated.`,
      ];

/**
 * Stress concentration of a groove around a bar in tension, on the net section.
 *
 * @example barGrooveConcentration({ diameter: '30 mm', depth: '2 mm', rootRadius: '0.2 mm' }).factor // => 5.752205358
 */
export const barGrooveConcentration = /* @__PURE__ */ procedure({
  name: 'barGrooveConcentration',
  title: 'Stress concentration of a groove around a bar in tension',
  source: sharpGrooveConcentration.source,
  inputs: { diameter, depth, rootRadius },
  gives: 'the factor on the average stress of the net section',
  example: { diameter: '30 mm', depth: '2 mm', rootRadius: '0.2 mm' },
  checks: [
    (given) =>
      given.depth.si < given.diameter.si / 2
        ? undefined
        : {
            path: 'depth',
            given: given.depth,
            expected: `less than the radius of the bar (${given.diameter.times(0.5)})`,
          },
  ],
  run: (given): StressConcentration =>
    found(
      barGrooveStep({ diameter: given.diameter.si, depth: given.depth.si, rootRadius: given.rootRadius.si }),
      published,
      outside(given.depth.si / given.rootRadius.si, 0.25, 50),
    ),
});

/**
 * Stress concentration of a shoulder in a bar in tension, on the smaller diameter.
 *
 * @example shoulderConcentration({ largeDiameter: '30 mm', smallDiameter: '24 mm', filletRadius: '0.5 mm' }).factor // => 2.667977722
 */
export const shoulderConcentration = /* @__PURE__ */ procedure({
  name: 'shoulderConcentration',
  title: 'Stress concentration of a shoulder in a bar in tension',
  source: sharpShoulderConcentration.source,
  inputs: sharpShoulderConcentration.inputs,
  gives: 'the factor on the average stress of the smaller diameter',
  example: { largeDiameter: '30 mm', smallDiameter: '24 mm', filletRadius: '0.5 mm' },
  checks: [
    ({ largeDiameter, smallDiameter }) =>
      smallDiameter.si < largeDiameter.si
        ? undefined
        : {
            path: 'smallDiameter',
            given: smallDiameter,
            expected: `less than the larger diameter (${largeDiameter})`,
          },
  ],
  run: (given): StressConcentration => {
    const sizes = {
      largeDiameter: given.largeDiameter.si,
      smallDiameter: given.smallDiameter.si,
      filletRadius: given.filletRadius.si,
    };
    const steps = (sizes.largeDiameter - sizes.smallDiameter) / 2 / sizes.filletRadius;
    return found(
      step(steps > 2 ? sharpShoulderConcentration : wideShoulderConcentration, sizes),
      published,
      outside(steps, 0.1, 20),
    );
  },
});

/**
 * Stress concentration at the root of a groove in the bore of a tube, on the sum of tension and bending of the wall under it.
 * An estimate from the groove around a bar, with the wall in place of the radius and at least 2.5.
 *
 * @example grooveConcentration({ grooveDepth: '1.25 mm', rootRadius: '0.1 mm', wall: '6 mm' }).factor // => 5.638403524
 */
export const grooveConcentration = /* @__PURE__ */ procedure({
  name: 'grooveConcentration',
  title: 'Stress concentration of a groove in the bore of a tube (estimate)',
  source: `${internalGrooveConcentration.source}; ${sharpGrooveConcentration.source}`,
  inputs: {
    grooveDepth: length('d', 'radial depth of the groove in the bore', { example: '1.25 mm' }),
    rootRadius: optional(
      length('r', 'radius at the root of the groove; the 0.1 mm where omitted', {
        example: '0.1 mm',
      }),
    ),
    wall: length('t', 'wall of the tube next to the groove', { example: '6 mm' }),
  },
  gives: 'the factor on the sum of tension and bending of the wall under the groove',
  example: { grooveDepth: '1.25 mm', rootRadius: '0.1 mm', wall: '6 mm' },
  checks: [
    (given) =>
      given.grooveDepth.si < given.wall.si
        ? undefined
        : { path: 'grooveDepth', given: given.grooveDepth, expected: `less than the wall (${given.wall})` },
  ],
  run: (given): StressConcentration => {
    const root = given.rootRadius?.si ?? sharpestRoot;
    return found(
      internalGrooveStep({ wall: given.wall.si, grooveDepth: given.grooveDepth.si, rootRadius: root }),
      {
        nominal: 'sum of tension and bending of the wall under the groove',
        provenance: 'engineering practice, no published source',
      },
      [
        'The factor is an estimate: the fit is for a groove around a bar, not for one in the bore of a tube.',
        ...(given.rootRadius === undefined
          ? [
              'rootRadius not specified; assumed 0.1 mm (the maximum that ring manufacturers allow in small bores).',
            ]
          : []),
        ...outside(given.grooveDepth.si / root, 0.25, 50),
      ],
    );
  },
});
