import { MeopError } from '../../units';
import { interpolated } from '../cleaning/resample';
import { calibratedChannel } from '../log/build-log';
import { type Log, type LogChannel, makeLog } from '../log/log';
import type { Calibration } from './calibration';

/**
 * Turns the readings of a log's channels into quantities. The log given is left as it is.
 *
 * @throws MeopError `missing-field` for a channel that is not there, `already-calibrated`, `wrong-unit` where the channel's
 * readings are in another unit than the calibration's
 * @example calibrate(readLog('ms,thrust (V)\n0,1\n1,2\n'), { thrust: fitCalibration({ measures: 'force', points: [{ reading: 0, load: '0 N' }, { reading: 1, load: '50 N' }] }) }).channels.thrust.values[1] // => 100
 */
export function calibrate(log: Log, calibrations: Readonly<Record<string, Calibration>>): Log {
  const channels: Record<string, LogChannel> = { ...log.channels };
  const cautions = [...log.cautions];
  const history = [...log.history];
  for (const [name, calibration] of inOrder(calibrations)) {
    const channel = log.channels[name];
    if (channel === undefined)
      throw new MeopError(
        'missing-field',
        `calibrate: no channel '${name}'; the log has ${Object.keys(log.channels).join(', ')}`,
        name,
      );
    if (channel.measures !== undefined)
      throw new MeopError('already-calibrated', `calibrate: ${name} is ${channel.measures} already`, name);
    const { readingUnit } = channel;
    if (readingUnit !== 'readings' && readingUnit !== calibration.readingUnit)
      throw new MeopError(
        'wrong-unit',
        `calibrate: ${name}: the log has ${readingUnit} and the calibration takes ${calibration.readingUnit}: make it for ${readingUnit}, or read the channel as { unit: '${calibration.readingUnit}' } if that is what the numbers are`,
        name,
        { value: readingUnit, expected: calibration.readingUnit },
      );
    channels[name] = calibratedChannel(
      channel,
      calibration,
      cautions,
      coldJunctions(name, channel, calibration, channels),
    );
    history.push(`${name} calibrated: ${calibration.basis}`);
  }
  return makeLog({ ...log, channels, cautions, history });
}

/** Those that need another channel come last, so that it is calibrated by then. */
const inOrder = (calibrations: Readonly<Record<string, Calibration>>): readonly [string, Calibration][] =>
  Object.entries(calibrations).sort(([, a], [, b]) => Number(needsAnother(a)) - Number(needsAnother(b)));

const needsAnother = (calibration: Calibration): boolean =>
  calibration.form === 'thermocouple' && typeof calibration.coldJunction !== 'number';

/** Temperatures of the cold junction at the times of a thermocouple, by straight lines between the logged ones. */
function coldJunctions(
  name: string,
  { time }: LogChannel,
  calibration: Calibration,
  channels: Readonly<Record<string, LogChannel>>,
): Float64Array | undefined {
  if (calibration.form !== 'thermocouple' || typeof calibration.coldJunction === 'number') return undefined;
  const { channel } = calibration.coldJunction;
  const cold = channels[channel];
  if (cold?.measures === 'temperature' && channel !== name) return interpolated(cold.time, cold.values, time);
  throw new MeopError(
    cold === undefined ? 'missing-field' : 'wrong-kind',
    `calibrate: ${name}: coldJunction: channel '${channel}' ${cold === undefined ? `is not there; the log has ${Object.keys(channels).join(', ')}` : 'holds no temperature of another junction; calibrate it too, or name the right one'}`,
    name,
    { value: channel, expected: 'a channel of temperature' },
  );
}
