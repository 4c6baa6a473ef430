import { table } from '../../units';
import type { ReducedFiring } from './reduced-firing';

/** A reduction as text. */
export function reducedText(reduced: Omit<ReducedFiring, 'toString'>): string {
  const { record, status, cautions } = reduced;
  const title = record.title ?? 'firing';
  const warned = cautions.map((caution) => `caution: ${caution}`);
  if (status === 'no result') return [`${title}: no result`, ...warned].join('\n');
  const rows: { number: string; value: string; '95 % interval': string }[] = [];
  const add = (number: string, value: unknown, low?: unknown, high?: unknown): void => {
    if (value !== undefined)
      rows.push({
        number,
        value: String(value),
        '95 % interval': low === undefined ? '' : `${String(low)} to ${String(high)}`,
      });
  };
  const { totalImpulse: impulse, peakThrust, peakPressure, pressureIntegral: integral } = reduced;
  add('total impulse', impulse?.value, impulse?.low, impulse?.high);
  add('class', reduced.motorClass?.letter);
  add('specific impulse', reduced.specificImpulse);
  add('average thrust (10 %)', reduced.averageThrust);
  add('peak thrust', peakThrust?.value, peakThrust?.low, peakThrust?.high);
  add('peak pressure, absolute', peakPressure?.value, peakPressure?.low, peakPressure?.high);
  add('burn time (10 %)', reduced.burnTime);
  add('pressure integral', integral?.value, integral?.low, integral?.high);
  add('characteristic velocity', reduced.characteristicVelocity);
  add('thrust coefficient', reduced.thrustCoefficient?.toPrecision(4));
  add('combustion efficiency', reduced.combustionEfficiency?.toPrecision(3));
  add('nozzle efficiency', reduced.nozzleEfficiency?.toPrecision(3));
  return [title, table(rows), ...warned, ...record.history.map((line) => `history: ${line}`)].join('\n');
}
