import {
  fromSiValue,
  MeopError,
  printable,
  procedure,
  type Quantity,
  table,
  unitFor,
  type Values,
} from '../../units';
import { type FailureModeId, modeName } from '../failure-mode';
import { requiredWarningRatio } from '../failure-mode/failure-order';
import { type ClearanceHole, holeOf } from '../holes/clearance-hole';
import type { ClearanceFit } from '../holes/clearance-table';
import { type ThreadGeometry, threadGeometry } from '../threads';
import { indexing } from './indexable-counts';
import { fewBolts, partsCautions } from './joint-cautions';
import { jointParts } from './joint-inputs';
import { rulesFor } from './joint-modes';
import { type JointOption, searchInputs } from './joint-search';
import type { JointSi } from './joint-si';
import type { JointStrengths, Strength } from './joint-strengths';
import { jointStressesSi } from './joint-stresses';
import {
  type BoltsSi,
  boltStrengthsOf,
  caseBearingOf,
  edgeRatios,
  jointSi,
  meetingDepth,
  type PartsSi,
  partStrengthsOf,
  partsOf,
} from './read-joint';
import { shearLoadAtYield, tightenedJoint } from './tightened-joint';

/** The bolts that a search found. */
export interface JointDesign {
  /** The patterns with the margin required: first the counts that are easy to divide, of each the lightest first. */
  readonly feasible: readonly JointOption[];
  /** The pattern of maximum margin, where none has the margin required. */
  readonly nearestInfeasible: JointOption | undefined;
  readonly evaluatedCount: number;
  readonly cautions: readonly string[];
  toString(): string;
}

const metricThreads = ['M3', 'M4', 'M5', 'M6', 'M8', 'M10'];
const inchThreads = ['#8-32', '#10-32', '1/4-20', '1/4-28', '5/16-18', '3/8-16'];
const steelDensity = 7850; // kg/m³, of bolts

/**
 * The threads, counts and edge distances of one row of radial bolts in clearance holes ({@link clearanceHole}) with the margin
 * required. Counts that are easy to divide on the case come before the others, the lighter before the heavier. The mass is that of
 * bolts (head as ISO 4762: 1.5 diameters wide and one high) and of the case beyond the holes. {@link reviewJoint} returns the same
 * margin for the `bolts` of an option.
 *
 * @example designJoint({ pressure: '5 MPa', tube: { outsideDiameter: '76 mm', wall: '3 mm', material: '6061-T6 drawn tube' }, closureMaterial: '6061-T6 bar', boltClass: '8.8' }).feasible.length > 0 // => true
 */
export const designJoint = /* @__PURE__ */ procedure({
  name: 'designJoint',
  title: 'Search for the radial bolts of a closure',
  source: 'the formulas of reviewJoint',
  inputs: searchInputs,
  checks: [
    ...jointParts.checks,
    ({ counts: [fewest, most] }) =>
      fewest <= most
        ? undefined
        : { path: 'counts', given: [fewest, most], expected: 'a minimum and a maximum in this order' },
  ],
  gives: 'the patterns with the margin required, those with a count that is easy to divide first',
  example: {
    pressure: '5 MPa',
    tube: { outsideDiameter: '76 mm', wall: '3 mm', material: '6061-T6 drawn tube' },
    closureMaterial: '6061-T6 bar',
    boltClass: '8.8',
  },
  run: (search): JointDesign => designOf(search),
});

function designOf(search: Values<typeof searchInputs>): JointDesign {
  const parts = partsOf(search);
  const {
    counts: [fewest, most],
    edgeRatios: ratios,
    engagementRatio,
    ligamentRatio,
    fit: holeFit,
    leastMargin,
  } = search;
  const usual = parts.lengthUnit.us ? inchThreads : metricThreads;
  const found: Found[] = [];
  const reported = new Set<string>();
  const ofParts = strengthsByEdge(parts);
  for (const thread of search.threads ?? usual.map(threadGeometry)) {
    const drilled = drilledHole(thread, holeFit);
    const [hole, bolt] = [drilled.diameter.si, thread.majorDiameter.si];
    for (const one of drilled.cautions) reported.add(one);
    // Holes and the ligaments between them fit around the bore.
    const fit = Math.floor((Math.PI * parts.bore) / (hole * (1 + ligamentRatio)));
    const engagement = Math.min(engagementRatio * bolt, parts.closureThickness);
    const ofBolts = boltStrengthsOf(parts, thread);
    for (const ratio of ratios) {
      const bolts = {
        thread,
        rows: 1,
        rowSpacing: 0,
        edgeDistance: ratio * hole,
        holeDiameter: hole,
        engagement,
        count: fewest,
      };
      const strengths = { ...ofBolts, ...ofParts(edgeRatios(parts, bolts)) };
      const base = jointSi(parts, bolts, strengths);
      for (const { cautions } of Object.values<Strength>(strengths))
        for (const one of cautions) reported.add(one);
      for (let count = fewest; count <= Math.min(most, fit); count++) {
        if (engagement > meetingDepth(parts, count, bolt)) break; // more holes would intersect in the closure
        found.push(evaluated(parts, { ...bolts, count }, { ...base, count }, strengths));
      }
    }
  }
  const rank = ({ bolts }: Found): number => (indexing(bolts.count) === undefined ? 1 : 0);
  const holding = found
    .filter(({ least }) => least >= leastMargin)
    .sort((a, b) => rank(a) - rank(b) || a.mass - b.mass);
  const [nearestInfeasible] = holding.length > 0 ? [] : [...found].sort((a, b) => b.least - a.least);
  const feasible = holding.map((one) => optionOf(one, parts));
  const design = {
    feasible,
    nearestInfeasible: nearestInfeasible === undefined ? undefined : optionOf(nearestInfeasible, parts),
    evaluatedCount: found.length,
    cautions: [
      ...reported,
      ...(search.factors?.cautions ?? []),
      ...partsCautions(parts, (si) => fromSiValue(si, 'length', parts.lengthUnit)),
      ...(fewest < 3 ? [fewBolts] : []),
      'The holes are at their nominal size and position. Review the selected bolts with the tolerances of the drawing.',
    ],
  };
  return printable(design, () => designText(design, leastMargin));
}

/** The strengths of case and closure by their edge ratios, each looked up once. */
function strengthsByEdge(parts: PartsSi) {
  const byClosure = new Map<number, ReturnType<typeof partStrengthsOf>>();
  const byCase = new Map<number, ReturnType<typeof caseBearingOf>>();
  return ([edgeRatio, closureRatio]: readonly [number, number]) => {
    const ratio = Math.min(edgeRatio, 2); // the strength does not increase above two diameters
    const ofCase = byCase.get(ratio) ?? caseBearingOf(parts, ratio);
    byCase.set(ratio, ofCase);
    const others = byClosure.get(closureRatio) ?? partStrengthsOf(parts, [ratio, closureRatio]);
    byClosure.set(closureRatio, others);
    return { ...others, ...ofCase };
  };
}

function drilledHole(thread: ThreadGeometry, fit: ClearanceFit): ClearanceHole {
  try {
    return holeOf(thread, fit);
  } catch (error) {
    throw error instanceof MeopError ? error.at('designJoint', 'threads') : error;
  }
}

interface Found {
  readonly bolts: BoltsSi;
  readonly least: number;
  readonly governing: FailureModeId;
  readonly warns: boolean;
  readonly mass: number;
}

function evaluated(parts: PartsSi, bolts: BoltsSi, joint: JointSi, strengths: JointStrengths): Found {
  const stresses = jointStressesSi(joint);
  let least = Number.POSITIVE_INFINITY;
  let governing: FailureModeId = 'bolt-shear';
  // The failure order of reviewJoint, on numbers.
  let warning = Number.POSITIVE_INFINITY;
  let separation = Number.POSITIVE_INFINITY;
  for (const rule of rulesFor(stresses)) {
    const reserve = strengths[rule.strength].si / stresses[rule.stress];
    const left = reserve / parts.factors[rule.limit] - 1;
    if (left < least) [least, governing] = [left, rule.id];
    if (rule.order === 'warning') warning = Math.min(warning, reserve);
    else if (rule.order === 'separation') separation = Math.min(separation, reserve);
  }
  const bolt = tightenedJoint(parts.given, bolts.thread);
  if (bolt !== undefined) {
    const reserve = shearLoadAtYield(bolt, joint, bolts.thread, strengths).value / stresses.boltLoad;
    const left = reserve / parts.factors.yield - 1;
    if (left < least) [least, governing] = [left, 'bolt-combined-yield'];
    // Its set is too small to be a warning.
  }
  return {
    bolts,
    least,
    governing,
    warns: separation / warning >= requiredWarningRatio,
    mass: massOf(parts, bolts),
  };
}

function massOf(parts: PartsSi, { thread, count, edgeDistance, engagement }: BoltsSi): number {
  const diameter: ThreadGeometry['majorDiameter'] = thread.majorDiameter;
  const d = diameter.si;
  const bolt =
    (Math.PI / 4) * d * d * (parts.given.tube.wall.si + engagement) + (Math.PI / 4) * (1.5 * d) ** 2 * d;
  const { outsideDiameter, wall, material } = parts.given.tube;
  const ring = Math.PI * wall.si * (outsideDiameter.si - wall.si) * edgeDistance;
  return count * bolt * steelDensity + ring * (material.density?.value.si ?? 2700);
}

function optionOf({ bolts, least, governing, warns, mass }: Found, parts: PartsSi): JointOption {
  const unit = bolts.thread.system === 'ISO metric' ? 'mm' : 'in';
  const length = (si: number): Quantity<'length'> => fromSiValue(si, 'length', unitFor('length', unit));
  return {
    bolts: {
      thread: bolts.thread.name,
      count: bolts.count,
      edgeDistance: length(bolts.edgeDistance),
      holeDiameter: length(bolts.holeDiameter),
      engagement: length(bolts.engagement),
    },
    mass: fromSiValue(mass, 'mass', unitFor('mass', parts.lengthUnit.us ? 'oz' : 'g')),
    marginOfSafety: least,
    indexing: indexing(bolts.count),
    governing,
    warns,
  };
}

function designText(
  { feasible, nearestInfeasible, evaluatedCount, cautions }: Omit<JointDesign, 'toString'>,
  leastMargin: number,
): string {
  const row = ({ bolts, mass, marginOfSafety: left, indexing: easy, governing, warns }: JointOption) => ({
    thread: bolts.thread,
    count: bolts.count,
    hole: bolts.holeDiameter,
    'edge distance': bolts.edgeDistance,
    engagement: bolts.engagement,
    mass,
    margin: `${left < 0 ? '−' : '+'}${Math.abs(left).toFixed(2)}`,
    governing: modeName(governing),
    warns: warns ? 'yes' : 'no',
    'easy to divide': easy === undefined ? 'no' : 'yes',
  });
  const shown = feasible.slice(0, 15);
  return [
    `${feasible.length} of ${evaluatedCount} combinations have ${leastMargin > 0 ? `a margin of at least ${leastMargin}` : 'no negative margin'}${feasible.length > shown.length ? `; the first ${shown.length}` : ''}`,
    ...(shown.length > 0 ? [table(shown.map(row))] : []),
    ...(nearestInfeasible === undefined
      ? []
      : [
          `Every combination has a ${leastMargin > 0 ? `margin below ${leastMargin}` : 'negative margin'}; maximum margin:`,
          table([row(nearestInfeasible)]),
        ]),
    ...cautions.map((caution) => `caution: ${caution}`),
  ].join('\n');
}
