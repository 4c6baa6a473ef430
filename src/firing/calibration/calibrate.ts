import { MeopError } from '../../units';
import { interpolated } from '../cleaning/resample';
import { calibratedChannel } from '../log/build-log';
import { type Log, type LogChannel, makeLog } from '../log/log';
import type { Calibration } from './calibration';

/**
 * Converts the readings of the channels of a log into quantities. The given log is not changed.
 *
 * @throws MeopError `missing-field` for a missing channel, `already-calibrated`, `wrong-unit` where the readings are in
 * another unit than that of the calibration
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
        `calibrate: unknown channel '${name}'. Available: ${Object.keys(log.channels).join(', ')}.`,
        name,
      );
    if (channel.measures !== undefined)
      throw new MeopError(
        'already-calibrated',
        `calibrate: ${name} must contain readings, got ${channel.measures}. It is already calibrated.`,
        name,
      );
    const { readingUnit } = channel;
    if (readingUnit !== 'readings' && readingUnit !== calibration.readingUnit)
      throw new MeopError(
        'wrong-unit',
        `calibrate: ${name} must be in ${calibration.readingUnit} (unit of the calibration), got ${readingUnit}. Make the calibration for ${readingUnit}, or, if the numbers are in ${calibration.readingUnit}, read the channel as { unit: '${calibration.readingUnit}' }.`,
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

/** Channels that need another channel come last, so that it is calibrated before them. */
const inOrder = (calibrations: Readonly<Record<string, Calibration>>): readonly [string, Calibration][] =>
  Object.entries(calibrations).sort(([, a], [, b]) => Number(needsAnother(a)) - Number(needsAnother(b)));

const needsAnother = (calibration: Calibration): boolean =>
  calibration.form === 'thermocouple' && typeof calibration.coldJunction !== 'number';

/** Temperatures of the cold junction at the times of a thermocouple, interpolated linearly between the logged ones. */
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
    `calibrate: ${name}: coldJunction must be another channel of temperature, got '${channel}', which ${cold === undefined ? `is not in the log. Available: ${Object.keys(channels).join(', ')}.` : 'is not one. Calibrate it too, or name another channel.'}`,
    name,
    { value: channel, expected: 'a channel of temperature' },
  );
}
