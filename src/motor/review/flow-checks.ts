import type { SimulatedFiring } from '../../ballistics';
import { fromSiValue, type Quantity, unitOf } from '../../units';
import type { Motor } from '../document';
import type { MotorSettings } from '../settings';
import type { ReviewCheck } from './review-result';

/** What the flow through port and nozzle asks for, at the worst case. */
export function flowChecks(
  motor: Motor,
  firing: SimulatedFiring,
  { limits }: MotorSettings,
): readonly ReviewCheck[] {
  const { portFlow } = firing;
  const source = (own: boolean): string => (own ? 'the document' : 'common practice, no source');
  if (portFlow === undefined) return [];
  // At ignition, when the port is narrowest: the first sample at which gas flows through the throat.
  const first = firing.massFlow.si.findIndex((flow) => flow > 0);
  const ratio = portFlow.portToThroat[Math.max(0, first)];
  const flux = Math.max(...portFlow.massFlux.map((station) => station.max().si));
  const head = Math.max(...portFlow.headPressureRatio);
  const show = (si: number): Quantity => fromSiValue(si, 'mass flux', unitOf('kg/(m^2*s)'));
  return [
    {
      check: 'port-to-throat area ratio',
      value: ratio,
      limit: limits.portToThroat,
      holds: ratio >= limits.portToThroat,
      says: `${ratio.toPrecision(3)} at ignition, at least ${limits.portToThroat} wanted`,
      source: source(motor.limits?.portToThroat !== undefined),
    },
    {
      check: 'mass flux in the port',
      value: show(flux),
      limit: show(limits.massFlux),
      holds: flux <= limits.massFlux,
      says: `${show(flux)} at most, up to ${show(limits.massFlux)} wanted: above it erosive burning is to be expected`,
      source: source(motor.limits?.massFlux !== undefined),
    },
    {
      check: 'head-end pressure over chamber pressure',
      value: head,
      limit: 1.05,
      holds: head <= 1.05,
      says: `${head.toPrecision(4)} at most: what a gauge at the head end reads too much, up to 1.05 wanted`,
      source: 'momentum balance of the port; 5 % is common practice, no source',
    },
  ];
}
