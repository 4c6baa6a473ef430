import { fromSiValue, table, unitOf } from '../../../units';
import type { Regression } from './regression';

const shares = [0, 0.2, 0.4, 0.6, 0.8, 1];
const justBefore = 1 - 1e-6; // outside the narrow stretch that represents a jump

/** Text of a regression: a table of the burn in five steps, and its characteristic values. */
export function regressionText(found: Omit<Regression, 'toString'>): string {
  const { si, burnout, web, accuracy } = found;
  const rows = shares.map((share) => {
    // The last row gives the area of the last front, just before burnout, not zero.
    const depth = Math.min(share, justBefore) * burnout.si;
    return {
      depth: fromSiValue(share * burnout.si, 'length', unitOf('mm')),
      'burning area': fromSiValue(si.areaAt(depth), 'area', unitOf('mm^2')),
      'propellant volume': fromSiValue(share === 1 ? 0 : si.volumeAt(depth), 'volume', unitOf('cm^3')),
    };
  });
  return [
    found.grain,
    table(rows),
    `web ${web}, sliver fraction ${percent(found.sliverFraction)}, volumetric loading ${percent(found.volumetricLoading)}, maximum/mean burning area ${found.neutrality.toPrecision(4)}`,
    accuracy.achieved === 0
      ? 'method: closed form'
      : `estimated relative error of the burning area ${accuracy.achieved.toExponential(1)}, ${accuracy.cells} cells`,
    ...found.breaks.map(
      ({ depth, change }) => `at a depth of ${depth} the burning area changes by ${change}`,
    ),
    ...found.flawLighting.map(({ label, depth }) => `${label} burns from a depth of ${depth}`),
    ...found.cautions.map((caution) => `caution: ${caution}`),
  ].join('\n');
}

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;
