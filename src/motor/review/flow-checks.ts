import { fromSiValue, type Quantity, unitOf } from '../../units';
import type { Motor } from '../document';
import type { MeopCase } from '../meop/meop-result';
import type { RegressionCache } from '../regression-cache';
import type { MotorSettings } from '../settings';
import { leastPort } from './least-port';
import type { ReviewCheck } from './review-check';

/**
 * Checks the flow through port and nozzle in the worst case. The worst-case throat is at its minimum and the bore
 * may be at its maximum, so ratio and flux are converted to the maximum throat and the minimum port.
 */
export function flowChecks(
  motor: Motor,
  { firing, values }: MeopCase,
  { limits }: MotorSettings,
  cache: RegressionCache,
): readonly ReviewCheck[] {
  const { portFlow } = firing;
  const source = (own: boolean): string =>
    own ? 'the document' : 'engineering practice, no published source';
  if (portFlow === undefined) return [];
  // At ignition, when the port is smallest: the first sample with flow through the throat.
  const first = firing.massFlow.si.findIndex((flow) => flow > 0);
  const { value: throat, plusMinus } = motor.nozzle.throatDiameter;
  const fired = values.find(({ input }) => input === 'nozzle.throatDiameter')?.value ?? throat;
  const asFired = portFlow.portToThroat[Math.max(0, first)];
  const port = asFired * fired.si ** 2;
  const least = (leastPort(motor, cache) ?? Number.POSITIVE_INFINITY) / (Math.PI / 4);
  const narrowest = Math.min(port, least);
  const ratio = narrowest / (throat.si + plusMinus) ** 2;
  const flux = (Math.max(...portFlow.massFlux.map((station) => station.max().si)) * port) / narrowest;
  // While the chamber fills and empties, the ratio says little: the pressures themselves are low.
  const high = 0.5 * firing.peakPressure.si;
  const head = portFlow.headPressureRatio.reduce(
    (most, value, i) => (firing.pressure.si[i] >= high ? Math.max(most, value) : most),
    1,
  );
  const show = (si: number): Quantity => fromSiValue(si, 'mass flux', unitOf('kg/(m^2*s)'));
  return [
    {
      check: 'port-to-throat area ratio',
      value: ratio,
      limit: limits.portToThroat,
      passes: ratio >= limits.portToThroat,
      message: `${ratio.toPrecision(3)} at ignition (required ≥ ${limits.portToThroat})`,
      source: source(motor.limits?.portToThroat !== undefined),
    },
    {
      check: 'mass flux in the port',
      value: show(flux),
      limit: show(limits.massFlux),
      passes: flux <= limits.massFlux,
      message: `maximum ${show(flux)} (limit ${limits.massFlux}); above the limit, erosive burning is likely`,
      source: source(motor.limits?.massFlux !== undefined),
    },
    {
      check: 'head-end/chamber pressure ratio',
      value: head,
      limit: 1.05,
      passes: head <= 1.05,
      message: `maximum ${head.toPrecision(4)} (limit 1.05); a head-end transducer reads high by this ratio`,
      source: 'momentum balance of the port; 5 %: engineering practice, no published source',
    },
  ];
}
