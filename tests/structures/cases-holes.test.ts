import { wallTension } from '../../src/structures/closures';
import { clearanceHole, tapDrill } from '../../src/structures/holes';
import type { ClearanceFit } from '../../src/structures/holes/clearance-table';
import {
  countersinkDepth,
  countersunkBearingThickness,
  edgeDistanceRatio,
  landThickness,
  offsetWallStress,
  tearOutStress,
  worstEdgeDistance,
} from '../../src/structures/joint';
import { edgeLength } from '../../src/structures/shell';
import { threadGeometry } from '../../src/structures/threads';
import { si } from '../cases/read-case';
import { caseTest } from './case-check';

// Cases of tests/cases/hardware.json; source and provenance stand there, beside the numbers.

const list = (value: unknown): readonly string[] => {
  if (!Array.isArray(value)) throw new Error('no list');
  return value.map(String);
};

caseTest('clearance-holes-iso-273', ({ inputs }) => {
  const of = (fit: ClearanceFit) =>
    list(inputs.threads).map(
      (thread, i) => [`${fit}_mm[${i}]`, clearanceHole({ thread, fit }).diameter.in('mm')] as const,
    );
  return Object.fromEntries([...of('close'), ...of('medium'), ...of('free')]);
});

caseTest('tap-drills', ({ inputs }) =>
  Object.fromEntries(
    list(inputs.threads).flatMap((thread, i) => {
      const { diameter, threadHeight } = tapDrill({ thread });
      return [[`drill[${i}]`, diameter.si] as const, [`threadPercent[${i}]`, 100 * threadHeight] as const];
    }),
  ),
);

caseTest('edge-distance-with-tolerance', ({ inputs }, input) => {
  const text = (name: string): string => String(inputs[name]);
  const edge = worstEdgeDistance.si({
    edgeDistance: input('edgeDistance'),
    // The case states the tolerance as '0.2 mm (diameter)': that of the zone.
    positionTolerance: si(text('holePositionTolerance').replace(' (diameter)', '')),
    endFaceTolerance: input('endFaceTolerance'),
  });
  const { diameter, clearance } = clearanceHole({ thread: text('thread') });
  // F over 2·t·τ is the length of one shear plane, whatever the load.
  const stress = tearOutStress.si({ load: 1, edgeDistance: edge, holeDiameter: diameter.si, thickness: 1 });
  return {
    worstEdge_mm: edge * 1000,
    worstEdgeOverD: edgeDistanceRatio.si({
      edgeDistance: edge,
      diameter: threadGeometry(text('thread')).majorDiameter.si,
    }),
    shearLengthHoleEdge_mm: (1 / (2 * stress)) * 1000,
    slackDiametral_mm: clearance.in('mm'),
  };
});

caseTest('single-shear-offset', (_, input) => {
  const [wall, radius, offset] = [input('wall'), input('meanRadius'), input('offset')];
  const tension = wallTension.si({
    load: input('axialForce'),
    outsideDiameter: 2 * radius + wall,
    insideDiameter: 2 * radius - wall,
  });
  const bending = (momentShare: number): number =>
    offsetWallStress.si({ tension, offset, wall, momentShare }) - tension;
  return {
    loadPerLength_N_per_mm: (tension * wall) / 1000,
    membrane_MPa: tension / 1e6,
    bendingFarFromEdge_MPa: bending(0.5) / 1e6,
    bendingAtFreeEdge_MPa: bending(1) / 1e6,
    flatStripRatio: offsetWallStress.si({ tension: 1, offset, wall, momentShare: 1 }),
    decayLength_mm: edgeLength.si({ radius, wall, poissonRatio: input('nu') }) * 1000,
  };
});

caseTest('countersink-depth', (_, input) => {
  const wall = input('wall');
  const depth = countersinkDepth.si({
    headDiameter: input('headDiameter'),
    holeDiameter: input('holeDiameter'),
    headAngle: input('includedAngle'),
  });
  return {
    coneDepth_mm: depth * 1000,
    land_mm: landThickness.si({ wall, depth }) * 1000,
    depthOverWall: depth / wall,
    bearingThickness_mm: countersunkBearingThickness.si({ wall, depth }) * 1000,
  };
});
