import { fromSiValue, optional, procedure, unitOf } from '../../units';
import { analysedRecord } from '../analysis/analysed-record';
import { exampleFiring, type Firing, firingInput } from '../firing';
import { channel as channelInput } from '../motor-inputs';
import { baselineValue, step, traceOf } from './step';

/**
 * Finds ignition, the 10 % points and the end of action on pressure, or on thrust where there is no pressure, and adds
 * them to the events of the record. The search goes outward from the peak, because the baselines may contain spikes.
 *
 * @example detectBurn(firing({ origin: 'measured', time: series([0, 1, 2, 3, 4, 5, 6], 's'), thrust: series([0, 0, 10, 10, 0, 0, 0], 'N') })).events.length // => 3
 */
export const detectBurn = /* @__PURE__ */ procedure({
  name: 'detectBurn',
  title: 'Ignition, 10 % points and end of action of a firing',
  source: 'definition of the action time; ignition threshold by engineering practice, no published source',
  subject: firingInput,
  inputs: { channel: optional(channelInput) },
  gives: 'the record with the events added',
  example: `detectBurn(${exampleFiring}, { channel: 'thrust' })`,
  run: (given, options): Firing => {
    const record = analysedRecord(given);
    const channel = options.channel ?? (record.pressure ? 'pressure' : 'thrust');
    const rest = baselineValue(record, channel, 'detectBurn');
    const trace = traceOf(record, channel, 'detectBurn');
    const { start, end, peak } = trace.edges(0.1, rest);
    // Ignition: the channel exceeds five standard deviations of its noise, and at least 2 % of the peak.
    const threshold = Math.min(0.1, Math.max(0.02, (5 * trace.baseline().beforeDeviation) / peak));
    const ignition = trace.edges(threshold, rest).start;
    const event = (name: string, si: number) => ({
      name,
      time: fromSiValue<'time'>(si, 'time', unitOf('s')),
    });
    const events = [
      event('ignition', ignition),
      event('10 % of peak, rising', start),
      event('10 % of peak, falling', end),
    ];
    return step(
      record,
      { events },
      `burn by ${channel}: ignition ${ignition.toFixed(4)} s, 10 % points ${start.toFixed(4)} and ${end.toFixed(4)} s`,
    );
  },
});
