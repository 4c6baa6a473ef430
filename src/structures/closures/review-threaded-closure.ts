import {
  fromSiValue,
  type NamedKind,
  type Quantity,
  type QuantityInput,
  readInput,
  unitFor,
} from '../../units';
import { requireFields } from '../../units/known-fields';
import { readPositive, refusal } from '../../units/refusal';
import { closureForce } from '../closure-force';
import { readFactors } from '../joint/joint-factors';
import { governing, type Margin, marginTable } from '../margin';
import type { Material } from '../materials';
import { materialOf } from '../materials/library';
import { radialDisplacement } from '../shell/growth';
import { lameHoopStress } from '../shell/lame';
import { threadGeometry } from '../threads';
import { externalThreadShearArea, internalThreadShearArea } from '../threads/shear-area';
import { cutWallMargins } from './cut-wall-margins';
import { partMargin } from './part-margin';
import { threadRadialPressure } from './thread-radial-pressure';
import { type ThreadedClosure, threadedClosureFields } from './threaded-closure';

/** A threaded closure, judged. */
export interface ThreadedClosureReview {
  readonly endForce: Quantity<'force'>;
  /** How much the case opens in diameter against the closure, by pressure, flanks and heat; it takes thread away. */
  readonly growth: Quantity<'length'>;
  readonly margins: readonly Margin[];
  readonly governing: Margin;
  readonly passes: boolean;
  readonly cautions: readonly string[];
  toString(): string;
}

const name = 'reviewThreadedClosure';
const room = 293.15;

/**
 * Whether the threads of a closure that screws into the case hold, and the wall that they leave: shear of both threads at
 * the worst limits and with the case opened by pressure, flanks and heat; tension, folding and hoop of the wall.
 *
 * @throws MeopError `out-of-domain`, `unknown-name`, `no-allowable`
 * @example reviewThreadedClosure({ pressure: '5 MPa', thread: customThread({ majorDiameter: '70 mm', pitch: '2 mm' }), engagement: '12 mm', caseOutsideDiameter: '76 mm', caseMaterial: '6061-T6 drawn tube', closureMaterial: '6061-T6 bar' }).endForce.in('kN') // => 19.24225501
 */
export function reviewThreadedClosure(joint: ThreadedClosure): ThreadedClosureReview {
  requireFields(name, joint, threadedClosureFields);
  const read = (kind: NamedKind, field: keyof ThreadedClosure): number =>
    readPositive(kind, field, joint[field], name).si;
  const thread = typeof joint.thread === 'string' ? threadGeometry(joint.thread) : joint.thread;
  const pressure = read('gauge pressure', 'pressure');
  const engagement = read('length', 'engagement');
  const outside = read('length', 'caseOutsideDiameter');
  const major = thread.majorDiameter.si;
  const pitch = thread.pitch.si;
  const seal = joint.sealDiameter === undefined ? major : read('length', 'sealDiameter');
  // The roots of an internal thread may be as deep as a sharp V: an eighth of the triangle's height H beyond the profile.
  const roots = major + (pitch * Math.sqrt(3)) / 8;
  const relief =
    joint.reliefDiameter === undefined ? roots : Math.max(roots, read('length', 'reliefDiameter'));
  if (outside <= relief)
    throw refusal(
      name,
      'caseOutsideDiameter',
      joint.caseOutsideDiameter,
      `more than the roots of the thread (${mm(relief)})`,
    );
  const factors = readFactors(name, joint.factors);
  const tube = materialOf(joint.caseMaterial);
  const closure = materialOf(joint.closureMaterial);

  const load = closureForce.si({ pressure, sealDiameter: seal });
  const wedge = threadRadialPressure.si({ load, pitchDiameter: thread.pitchDiameter.si, engagement });
  const [insideRadius, outsideRadius] = [relief / 2, outside / 2];
  const inside = pressure + wedge;
  const hoop = lameHoopStress.si({ pressure: inside, insideRadius, outsideRadius, radius: insideRadius });
  const opened = growthOf({ tube, closure, joint, hoop, inside, radius: insideRadius });

  const { limits } = thread;
  const sizes = { engagement, pitch };
  const areas = {
    case: internalThreadShearArea.si({
      ...sizes,
      externalMajorMin: limits.externalMajorMin.si,
      internalPitchMax: limits.internalPitchMax.si + opened.si,
    }),
    closure: externalThreadShearArea.si({
      ...sizes,
      internalMinorMax: limits.internalMinorMax.si + opened.si,
      externalPitchMin: limits.externalPitchMin.si,
    }),
  };
  if (
    !(
      Math.min(areas.case, areas.closure) > 0 &&
      limits.internalMinorMax.si + opened.si < limits.externalMajorMin.si
    )
  )
    throw refusal(
      name,
      'thread',
      thread.name,
      'a coarser thread or a thicker wall',
      `the case opens by ${mm(opened.si)} and the threads no longer meet`,
    );

  const displayUnit = readInput('gauge pressure', 'pressure', joint.pressure, name).unit;
  const unit = unitFor('stress', displayUnit.us ? 'psi' : 'MPa');
  const { caseTemperature, closureTemperature, exposure } = joint;
  const ofCase = { material: tube, temperature: caseTemperature, exposure, factors, unit };
  const ofClosure = { material: closure, temperature: closureTemperature, exposure, factors, unit };
  const shear = {
    case: { applied: load / areas.case, source: internalThreadShearArea.source },
    closure: { applied: load / areas.closure, source: externalThreadShearArea.source },
  };
  // The flanks bear at the pitch diameter.
  const arm = (outsideRadius + insideRadius - thread.pitchDiameter.si) / 2;
  const margins: readonly Margin[] = [
    partMargin(ofCase, { mode: "shear of the case's thread, yield", property: 'shear yield', ...shear.case }),
    partMargin(ofCase, { mode: "shear of the case's thread", property: 'shear ultimate', ...shear.case }),
    partMargin(ofClosure, {
      mode: "shear of the closure's thread, yield",
      property: 'shear yield',
      ...shear.closure,
    }),
    partMargin(ofClosure, {
      mode: "shear of the closure's thread",
      property: 'shear ultimate',
      ...shear.closure,
    }),
    ...cutWallMargins(ofCase, { cut: 'thread', load, hoop, insideRadius, outsideRadius, arm }),
  ];
  const cautions = [
    ...(joint.factors?.cautions ?? []),
    ...opened.cautions,
    ...(thread.source.includes('from memory') ? ['thread limits by tolerance formulas from memory'] : []),
    ...(seal < thread.minorDiameter.si
      ? [
          'the pressure is taken to act on less than the bore of the thread: a leak past the seal pushes on all of it',
        ]
      : []),
    ...(engagement > 10 * pitch
      ? [
          'turns are taken to share alike: beyond about ten, further turns carry little (engineering practice, no published source)',
        ]
      : []),
    'full pressure and the push of the flanks are taken inside the thread: true beside the seal, cautious further away',
    'threads of one soft metal on another gall: lubricate them, and lock the closure against turning',
  ];
  const worst = governing(margins);
  const lengthUnit = readInput('length', 'caseOutsideDiameter', joint.caseOutsideDiameter, name).unit;
  const force = fromSiValue<'force'>(load, 'force', unitFor('force', displayUnit.us ? 'lbf' : 'N'));
  const growth = fromSiValue<'length'>(opened.si, 'length', lengthUnit);
  const text = (): string =>
    [
      `end force ${force}; the case opens by ${growth} against the closure; governed by ${worst.mode}`,
      marginTable(margins),
      ...cautions.map((caution) => `caution: ${caution}`),
    ].join('\n');
  return {
    endForce: force,
    growth,
    margins,
    governing: worst,
    passes: worst.marginOfSafety >= 0,
    cautions,
    toString: text,
    ...{ [Symbol.for('nodejs.util.inspect.custom')]: text },
  };
}

interface Opening {
  readonly tube: Material;
  readonly closure: Material;
  readonly joint: ThreadedClosure;
  readonly hoop: number;
  readonly inside: number;
  readonly radius: number;
}

/** Growth in diameter of the case over that of the closure; a closure hotter than its case is not credited. */
function growthOf({ tube, closure, joint, hoop, inside, radius }: Opening): {
  readonly si: number;
  readonly cautions: readonly string[];
} {
  const { elasticModulus, poissonRatio } = tube;
  const elastic =
    elasticModulus && poissonRatio
      ? 2 *
        radialDisplacement.si({
          radius,
          elasticModulus: elasticModulus.value.si,
          poissonRatio: poissonRatio.value,
          hoop,
          radial: -inside,
          longitudinal: 0, // tension along the tube would draw it in again
        })
      : undefined;
  const above = (field: 'caseTemperature' | 'closureTemperature'): number => {
    const given: QuantityInput<'temperature'> | undefined = joint[field];
    return given === undefined ? 0 : readInput('temperature', field, given, name).si - room;
  };
  const [hot, cold] = [above('caseTemperature'), above('closureTemperature')];
  const heated = hot !== 0 || cold !== 0;
  const known = tube.thermalExpansion !== undefined && closure.thermalExpansion !== undefined;
  const thermal =
    2 *
    radius *
    ((tube.thermalExpansion?.value.si ?? 0) * hot - (closure.thermalExpansion?.value.si ?? 0) * cold);
  return {
    si: (elastic ?? 0) + (heated && known ? Math.max(0, thermal) : 0),
    cautions: [
      ...(elastic === undefined
        ? [
            `${tube.name} has no elasticModulus and poissonRatio: the growth of the case under pressure is left out`,
          ]
        : []),
      ...(heated && !known
        ? ['the thermalExpansion of case or closure is not known: growth by heat is left out']
        : []),
      ...(joint.caseTemperature !== undefined && joint.closureTemperature === undefined && hot > 20
        ? [
            'the closure is taken at room temperature beside a hot case: give closureTemperature where it is hot',
          ]
        : []),
    ],
  };
}

const mm = (si: number): string => `${Number((si * 1000).toPrecision(4))} mm`;
