import { MeopError, unitFor } from '../../units';
import { closureForce } from '../closure-force';
import { given, type Step, step } from '../failure-mode/calculation';
import type { PressureDrivenMode } from '../failure-mode/failure-mode';
import { materialMode, type StressedPart } from '../material-mode';
import { radialDisplacement } from '../shell/growth';
import { lameHoopStress, lameRadialStress } from '../shell/lame';
import { cutWallModes } from './cut-wall-modes';
import { landBendingStress } from './edge-margin';
import { grooveEngagement } from './groove-engagement';
import { grooveBearingStress, grooveLandShearStress, ringShearStress } from './retaining-ring';
import { dishingStep, type RingDishing } from './ring-dishing-capacity';

/** A retaining ring in its groove, read and in SI. */
export interface RetainingRingSi {
  readonly boreDiameter: number;
  readonly sealDiameter: number;
  readonly grooveDepth: number;
  readonly edgeMargin: number;
  readonly wall: number;
  readonly ringThickness: number;
  readonly ringStrength: number;
  /** Part of the circumference on which ring and groove bear on each other. */
  readonly contactFactor: number;
  /** Rise of the case above room temperature [K]. */
  readonly caseRise: number;
  /** Undefined where its capacity or the edge of the closure is not known. */
  readonly dishing: RingDishing | undefined;
}

/** The modes of a ring and its groove, with what they come from. */
export interface RetainingRingModes {
  readonly modes: readonly PressureDrivenMode[];
  readonly load: Step;
  readonly engagement: Step;
}

export function retainingRingModes(ring: RetainingRingSi, tube: StressedPart): RetainingRingModes {
  const { boreDiameter, grooveDepth, edgeMargin, wall, ringThickness, contactFactor } = ring;
  const { part, pressure, factors, unit } = tube;
  const load = step(closureForce, { pressure, sealDiameter: ring.sealDiameter });
  const grooveDiameter = boreDiameter + 2 * grooveDepth;
  const [insideRadius, outsideRadius] = [grooveDiameter / 2, boreDiameter / 2 + wall];
  const engagement = engagementOf(ring, tube);
  const landShear = step(grooveLandShearStress, { load, grooveDiameter, edgeMargin });
  const rated = { part, pressure, sources: [] };
  return {
    load,
    engagement,
    modes: [
      {
        ...rated,
        id: 'ring-shear',
        limit: 'ultimate',
        calculation: step(ringShearStress, { load, boreDiameter, ringThickness, contactFactor }),
        allowable: given('stress', ring.ringStrength),
        factor: factors.ultimate,
        unit,
        cautions: ['The shear strength of the ring is the value stated by its manufacturer.'],
      },
      ...(ring.dishing === undefined
        ? []
        : [
            {
              ...rated,
              id: 'ring-dishing' as const,
              limit: 'ultimate' as const, // a ring that tilts leaves its groove
              calculation: load,
              allowable: dishingStep(ring.dishing, boreDiameter),
              factor: factors.ultimate,
              unit: unitFor('force', unit.us ? 'lbf' : 'N'),
              cautions: [
                'The capacity of the ring against dishing is the value stated by its manufacturer, reduced for chamfer and play by a rule quoted from memory, not verified.',
              ],
            },
          ]),
      materialMode(tube, {
        id: 'groove-bearing-yield',
        calculation: step(grooveBearingStress, {
          load,
          boreDiameter,
          grooveDepth: engagement,
          contactFactor,
        }),
        property: 'yield', // of a wall that may tip, not the bearing strength of a bolt hole
        failurePressure: bearingFailurePressure(ring, load, engagement, pressure),
      }),
      materialMode(tube, { id: 'land-shear-yield', calculation: landShear, property: 'shear yield' }),
      materialMode(tube, { id: 'land-shear', calculation: landShear, property: 'shear ultimate' }),
      materialMode(tube, {
        id: 'land-bending-yield',
        calculation: step(landBendingStress, { load, grooveDiameter, grooveDepth, edgeMargin }),
        property: 'yield',
      }),
      ...cutWallModes(tube, {
        cut: 'groove',
        load,
        hoop: step(lameHoopStress, { pressure, insideRadius, outsideRadius, radius: insideRadius }),
        insideRadius,
        outsideRadius,
        arm: wall / 2, // the ring bears on the middle of the groove's depth
      }),
    ],
  };
}

/** The depth of the groove that is engaged once pressure and heat have opened the bore. */
function engagementOf(ring: RetainingRingSi, { material, pressure }: StressedPart): Step {
  const { boreDiameter, wall, caseRise } = ring;
  const { elasticModulus, poissonRatio, thermalExpansion } = material;
  const radius = boreDiameter / 2;
  const bore = { pressure, insideRadius: radius, outsideRadius: radius + wall, radius };
  const engagement = step(grooveEngagement, {
    grooveDepth: ring.grooveDepth,
    boreDiameter,
    growth:
      elasticModulus && poissonRatio
        ? step(radialDisplacement, {
            radius,
            elasticModulus: elasticModulus.value.si,
            poissonRatio: poissonRatio.value,
            hoop: step(lameHoopStress, bore),
            radial: step(lameRadialStress, bore),
            longitudinal: 0, // tension along the tube would draw it in again
          })
        : 0,
    ...(thermalExpansion && caseRise > 0 && { expansion: thermalExpansion.value.si, rise: caseRise }),
  });
  if (engagement.value > 0) return engagement;
  throw new MeopError({
    code: 'out-of-domain',
    procedure: 'reviewRetainingRing',
    path: 'ring.grooveDepth',
    given: `${Number((ring.grooveDepth * 1000).toPrecision(4))} mm`,
    problem: 'the case grows by more than the depth of the groove and the ring disengages',
    remedy: 'Use a deeper groove or a thicker wall',
  });
}

/** The more the bore opens the less of the groove is engaged: sooner than in proportion. */
function bearingFailurePressure(
  { boreDiameter, contactFactor }: RetainingRingSi,
  load: Step,
  engagement: Step,
  pressure: number,
): (strength: number) => number {
  const { growth } = engagement.given;
  const opened = typeof growth === 'object' ? growth.value : (growth ?? 0);
  const cold = engagement.value + opened; // depth without pressure
  const [area, opening] = [load.value / pressure, opened / pressure];
  return (strength) => {
    const perDepth = contactFactor * Math.PI * boreDiameter * strength;
    return (perDepth * cold) / (area + perDepth * opening);
  };
}
