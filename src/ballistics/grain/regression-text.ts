import { fromSiValue, table, unitOf } from '../../units';
import type { Regression } from './regression';

const shares = [0, 0.2, 0.4, 0.6, 0.8, 1];
const justBefore = 1 - 1e-6; // outside the narrow stretch that stands for a jump

/** A regression as people read it: the burn in five stretches, and what marks it. */
export function regressionText(found: Omit<Regression, 'toString'>): string {
  const { si, burnout, web, accuracy } = found;
  const rows = shares.map((share) => {
    // The last row stands just before the end: the area there is that of the last front, not nothing.
    const depth = Math.min(share, justBefore) * burnout.si;
    return {
      depth: fromSiValue(share * burnout.si, 'length', unitOf('mm')),
      'burning area': fromSiValue(si.areaAt(depth), 'area', unitOf('mm^2')),
      'propellant left': fromSiValue(share === 1 ? 0 : si.volumeAt(depth), 'volume', unitOf('cm^3')),
    };
  });
  return [
    found.grain,
    table(rows),
    `web ${web}, sliver ${percent(found.sliverFraction)}, loading ${percent(found.volumetricLoading)}, greatest over mean area ${found.neutrality.toPrecision(4)}`,
    accuracy.achieved === 0
      ? 'by closed form'
      : `area within ${accuracy.achieved.toExponential(1)} (estimated), ${accuracy.cells} cells`,
    ...found.breaks.map(({ depth, change }) => `at ${depth} the area changes by ${change}`),
    ...found.flawLighting.map(({ label, depth }) => `${label} burns from a depth of ${depth}`),
    ...found.cautions.map((caution) => `caution: ${caution}`),
  ].join('\n');
}

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;
