import { fromSiValue, type Quantity, table, unitFor } from '../../units';
import { requireFields } from '../../units/known-fields';
import { readPositive, refusal } from '../../units/refusal';
import { type FailureModeId, modeName } from '../failure-mode';
import { type ThreadGeometry, threadGeometry } from '../threads';
import { fewBolts, partsCautions } from './joint-cautions';
import { searchFields } from './joint-fields';
import { rulesFor } from './joint-modes';
import type { JointOption, JointSearch } from './joint-search';
import type { JointSi } from './joint-si';
import type { JointStrengths, Strength } from './joint-strengths';
import { jointStressesSi } from './joint-stresses';
import {
  type BoltsSi,
  boltStrengthsOf,
  edgeRatios,
  jointSi,
  meetingDepth,
  type PartsSi,
  partStrengthsOf,
  readParts,
} from './read-joint';

/** What a search found. */
export interface JointDesign {
  /** Those that hold, lightest first. */
  readonly feasible: readonly JointOption[];
  /** The one of greatest margin among those that do not hold, where nothing does. */
  readonly nearestInfeasible: JointOption | undefined;
  readonly evaluatedCount: number;
  readonly cautions: readonly string[];
  toString(): string;
}

const name = 'designJoint';
const metricThreads = ['M3', 'M4', 'M5', 'M6', 'M8', 'M10'];
const inchThreads = ['#8-32', '#10-32', '1/4-20', '1/4-28', '5/16-18', '3/8-16'];
const steelDensity = 7850; // kg/m³, of bolts

/**
 * The threads, counts and edge distances of one row of radial bolts that hold a closure with every factor, lightest
 * first. The mass is that of bolts (head as ISO 4762: 1.5 diameters wide and one high) and of the case beyond the
 * holes; pass one on to {@link reviewJoint} for all its modes.
 *
 * @throws MeopError as {@link reviewJoint}; `out-of-domain` for a search that is empty
 * @example designJoint({ pressure: '5 MPa', caseOutsideDiameter: '76 mm', caseWall: '3 mm', caseMaterial: '6061-T6 drawn tube', closureMaterial: '6061-T6 bar', boltClass: '8.8' }).feasible.length > 0 // => true
 */
export function designJoint(search: JointSearch): JointDesign {
  requireFields(name, search, searchFields);
  const parts = readParts(search);
  const [fewest, most] = search.counts ?? [4, 24];
  if (!(Number.isInteger(fewest) && Number.isInteger(most) && fewest >= 1 && most >= fewest))
    throw refusal(name, 'counts', search.counts, 'a rising pair of whole numbers from 1');
  const ratios = search.edgeRatios ?? [1.5, 2, 2.5];
  for (const ratio of ratios)
    if (!(ratio > 0.5 && Number.isFinite(ratio)))
      throw refusal(name, 'edgeRatios', ratio, 'more than half a hole diameter');
  const engagementRatio = readPositive(
    'dimensionless',
    'engagementRatio',
    search.engagementRatio ?? 1.5,
    name,
  ).si;
  const ligamentRatio = readPositive('dimensionless', 'ligamentRatio', search.ligamentRatio ?? 1, name).si;
  const threads = search.threads ?? (parts.lengthUnit.us ? inchThreads : metricThreads);
  if (threads.length === 0 || ratios.length === 0)
    throw refusal(name, threads.length === 0 ? 'threads' : 'edgeRatios', [], 'at least one');

  const found: Found[] = [];
  const said = new Set<string>();
  const known = new Map<string, ReturnType<typeof partStrengthsOf>>(); // by edge ratios
  for (const designation of threads) {
    const thread = threadGeometry(designation);
    const hole = thread.majorDiameter.si;
    // Holes and the ligaments between them go round the bore.
    const fit = Math.floor((Math.PI * parts.bore) / (hole * (1 + ligamentRatio)));
    const engagement = Math.min(engagementRatio * hole, parts.closureThickness);
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
      const ratiosHere = edgeRatios(parts, bolts);
      const key = ratiosHere.join();
      const ofParts = known.get(key) ?? partStrengthsOf(parts, ratiosHere);
      known.set(key, ofParts);
      const strengths = { ...ofBolts, ...ofParts };
      const base = jointSi(parts, bolts, strengths);
      for (const { cautions } of Object.values<Strength>(strengths))
        for (const one of cautions) said.add(one);
      for (let count = fewest; count <= Math.min(most, fit); count++) {
        if (engagement > meetingDepth(parts, count, hole)) break; // more would run into each other in the closure
        found.push(judge(parts, { ...bolts, count }, { ...base, count }, strengths));
      }
    }
  }
  const holding = found.filter(({ least }) => least >= 0).sort((a, b) => a.mass - b.mass);
  const [nearestInfeasible] = holding.length > 0 ? [] : [...found].sort((a, b) => b.least - a.least);
  const feasible = holding.map((one) => optionOf(one, parts));
  const design = {
    feasible,
    nearestInfeasible: nearestInfeasible === undefined ? undefined : optionOf(nearestInfeasible, parts),
    evaluatedCount: found.length,
    cautions: [
      ...said,
      ...(search.factors?.cautions ?? []),
      ...partsCautions(search, parts, (si) => fromSiValue(si, 'length', parts.lengthUnit)),
      ...(fewest < 3 ? [fewBolts] : []),
      'the list compares bolts only: review the one that is chosen, with its holes, gaps and temperatures',
    ],
  };
  const text = (): string => designText(design);
  return { ...design, toString: text, ...{ [Symbol.for('nodejs.util.inspect.custom')]: text } };
}

interface Found {
  readonly bolts: BoltsSi;
  readonly least: number;
  readonly governing: FailureModeId;
  readonly bearingFirst: boolean;
  readonly mass: number;
}

function judge(parts: PartsSi, bolts: BoltsSi, joint: JointSi, strengths: JointStrengths): Found {
  const stresses = jointStressesSi(joint);
  let least = Number.POSITIVE_INFINITY;
  let governing: FailureModeId = 'bolt-shear';
  let gradualReserve = Number.POSITIVE_INFINITY;
  let suddenReserve = Number.POSITIVE_INFINITY;
  for (const rule of rulesFor(stresses)) {
    const reserve = strengths[rule.strength].si / stresses[rule.stress];
    const left = reserve / parts.factors[rule.limit] - 1;
    if (left < least) [least, governing] = [left, rule.id];
    if (rule.fails === 'gradually') gradualReserve = Math.min(gradualReserve, reserve);
    else if (rule.fails === 'suddenly') suddenReserve = Math.min(suddenReserve, reserve);
  }
  return {
    bolts,
    least,
    governing,
    bearingFirst: gradualReserve < suddenReserve,
    mass: massOf(parts, bolts),
  };
}

function massOf(parts: PartsSi, { thread, count, edgeDistance, engagement }: BoltsSi): number {
  const diameter: ThreadGeometry['majorDiameter'] = thread.majorDiameter;
  const d = diameter.si;
  const bolt = (Math.PI / 4) * d * d * (parts.wall + engagement) + (Math.PI / 4) * (1.5 * d) ** 2 * d;
  const ring = Math.PI * parts.wall * (parts.outsideDiameter - parts.wall) * edgeDistance;
  return count * bolt * steelDensity + ring * (parts.tube.density?.value.si ?? 2700);
}

function optionOf({ bolts, least, governing, bearingFirst, mass }: Found, parts: PartsSi): JointOption {
  const unit = bolts.thread.system === 'ISO metric' ? 'mm' : 'in';
  const length = (si: number): Quantity<'length'> => fromSiValue(si, 'length', unitFor('length', unit));
  return {
    thread: bolts.thread.name,
    count: bolts.count,
    edgeDistance: length(bolts.edgeDistance),
    engagement: length(bolts.engagement),
    mass: fromSiValue(mass, 'mass', unitFor('mass', parts.lengthUnit.us ? 'oz' : 'g')),
    marginOfSafety: least,
    governing,
    bearingFirst,
  };
}

function designText({
  feasible,
  nearestInfeasible,
  evaluatedCount,
  cautions,
}: Omit<JointDesign, 'toString'>): string {
  const row = ({
    thread,
    count,
    edgeDistance,
    engagement,
    mass,
    marginOfSafety: left,
    ...rest
  }: JointOption) => ({
    thread,
    count,
    'edge distance': edgeDistance,
    engagement,
    mass,
    margin: `${left < 0 ? '−' : '+'}${Math.abs(left).toFixed(2)}`,
    governing: modeName(rest.governing),
    'bearing first': rest.bearingFirst ? 'yes' : 'no',
  });
  const shown = feasible.slice(0, 15);
  return [
    `${feasible.length} of ${evaluatedCount} combinations hold${feasible.length > shown.length ? `; the ${shown.length} lightest` : ''}`,
    ...(shown.length > 0 ? [table(shown.map(row))] : []),
    ...(nearestInfeasible === undefined ? [] : ['none holds; the closest:', table([row(nearestInfeasible)])]),
    ...cautions.map((caution) => `caution: ${caution}`),
  ].join('\n');
}
