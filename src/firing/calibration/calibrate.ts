import { byName, MeopError } from '../../units';
import { interpolated } from '../cleaning/resample';
import { calibratedChannel } from '../log/build-log';
import { type Log, type LogChannel, logInput, makeLog } from '../log/log';
import { type Calibration, calibrationInput } from './calibration';

const procedure = 'calibrate';
const byChannel = byName('calibrations by the name of their channel', calibrationInput);

/**
 * Converts the readings of the channels of a log into quantities. The given log is not changed.
 *
 * @example calibrate(readLog('ms,thrust (V)\n0,1\n1,2\n'), { thrust: fitCalibration({ measures: 'force', points: [{ reading: 0, load: '0 N' }, { reading: 1, load: '50 N' }] }) }).channels.thrust.values[1] // => 100
 */
export function calibrate(log: Log, calibrations: Readonly<Record<string, Calibration>>): Log {
  logInput.read(log, { procedure, path: 'log' });
  const channels: Record<string, LogChannel> = { ...log.channels };
  const cautions = [...log.cautions];
  const history = [...log.history];
  for (const [name, calibration] of inOrder(byChannel.read(calibrations, { procedure, path: '' }))) {
    const channel = log.channels[name];
    if (channel === undefined)
      throw new MeopError({
        code: 'missing-field',
        procedure,
        path: name,
        given: name,
        problem: `the log has no such channel. Available: ${Object.keys(log.channels).join(', ')}`,
      });
    if (channel.measures !== undefined)
      throw new MeopError({
        code: 'already-calibrated',
        procedure,
        path: name,
        given: channel.measures,
        expected: 'a channel of readings',
        remedy: 'It is already calibrated',
      });
    const { readingUnit } = channel;
    const wanted = calibration.readingUnit;
    if (readingUnit !== 'readings' && readingUnit !== wanted)
      throw new MeopError({
        code: 'wrong-unit',
        procedure,
        path: name,
        given: readingUnit,
        expected: `in ${wanted}, the unit of the calibration`,
        remedy: `Make the calibration for ${readingUnit}, or, if the numbers are in ${wanted}, read the channel as { unit: '${wanted}' }`,
      });
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
  throw new MeopError({
    code: cold === undefined ? 'missing-field' : 'wrong-kind',
    procedure,
    path: `${name}.coldJunction`,
    given: channel,
    expected: 'another channel of temperature',
    remedy:
      cold === undefined
        ? `The log does not contain it. Available: ${Object.keys(channels).join(', ')}`
        : 'Calibrate it too, or name another channel',
  });
}
