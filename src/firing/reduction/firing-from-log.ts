import { fromSiArray, fromSiValue, MeopError, procedure, unitOf } from '../../units';
import { analysedTrace } from '../analysis/analysed-trace';
import { interpolated } from '../cleaning/resample';
import { lagBetween } from '../cleaning/trace-lag';
import { type Firing, firing } from '../firing';
import { type Log, type LogChannel, logInput } from '../log/log';
import { type LogFacts, logFacts } from './reduction-inputs';

/**
 * Makes a firing record of the channels of a log, at the times of the channel with the highest sample rate; the others
 * are interpolated linearly. Only the interval covered by all of them is kept.
 *
 * @example firingFromLog(readLog('ms,thrust (N)\n0,1\n1,2\n'), { ambientPressure: '1 atm' }).thrust.max().in('N') // => 2
 */
export const firingFromLog = /* @__PURE__ */ procedure({
  name: 'firingFromLog',
  title: 'Firing record of the channels of a log',
  source: 'linear interpolation',
  subject: logInput,
  inputs: logFacts,
  gives: 'the record, in absolute pressure',
  example: "firingFromLog(readLog('ms,thrust (N)\\n0,1\\n1,2\\n'), { ambientPressure: '1 atm' })",
  run: (log, options): Firing => recordOf(log, options, 'firingFromLog'),
});

/** {@link firingFromLog} on behalf of another calculation. */
export function recordOf(log: Log, options: LogFacts, caller: string): Firing {
  const ambient = options.ambientPressure.si;
  const pressures = named(log, 'pressure', options.pressure, caller);
  const [thrust, ...furtherThrusts] = named(log, 'thrust', options.thrust, caller);
  const temperatures = Object.values(log.channels).filter((channel) => channel.measures === 'temperature');
  if (pressures.length === 0 && thrust === undefined)
    throw new MeopError({
      code: 'missing-field',
      procedure: caller,
      path: 'pressure',
      problem: `there is no pressure and no thrust among the channels of the log (${Object.keys(log.channels).join(', ') || 'none'})`,
      remedy: 'Name them: { pressure, thrust }',
    });
  const cautions = [...log.cautions];
  const history = [...log.history];
  if (thrust && furtherThrusts.length > 0)
    cautions.push(
      `thrust: several channels found. ${thrust.name} is used; ${furtherThrusts.map(({ name }) => name).join(', ')} not. To select another, specify { thrust: '…' }.`,
    );
  const main = [...pressures, ...(thrust ? [thrust] : [])];
  const base = main.reduce((best, channel) => (rate(channel) > rate(best) ? channel : best));
  const from = Math.max(...main.map(({ time }) => time[0]));
  const to = Math.min(...main.map(({ time }) => time[time.length - 1]));
  const covered = base.time[0] >= from && base.time[base.time.length - 1] <= to;
  const time = covered ? base.time : base.time.filter((t) => t >= from && t <= to);
  if (time.length < 2)
    throw new MeopError({
      code: 'too-short',
      procedure: caller,
      path: 'time',
      problem: 'the channels must overlap in time',
      remedy: 'Check their clocks',
    });
  if (!covered) history.push(`cut to ${from.toFixed(4)} to ${to.toFixed(4)} s, which all channels cover`);
  const onto = (channel: LogChannel): Float64Array => {
    if (channel.time === time) return channel.values;
    if (channel.time !== base.time)
      history.push(`${channel.name} interpolated linearly to the times of ${base.name}`);
    return interpolated(channel.time, channel.values, time);
  };
  const absolute = pressures.map((channel) => {
    const values = onto(channel);
    return channel.measures === 'absolute pressure' ? values : values.map((value) => value + ambient);
  });
  const found = pressures.length > 1 ? compareTransducers(time, pressures, absolute, ambient) : undefined;
  // Channels requested by name are all used; of those found, a lagging one is omitted.
  const kept = absolute.filter((_, i) => options.pressure !== undefined || !found?.lagging.has(i));
  const names = pressures.filter((_, i) => kept.includes(absolute[i])).map(({ name }) => name);
  cautions.push(...(found?.cautions ?? []));
  const pressure =
    kept.length < 2 ? kept[0] : time.map((_, i) => kept.reduce((sum, p) => sum + p[i], 0) / kept.length);
  if (pressures.length > 1)
    history.push(
      kept.length > 1
        ? `pressure is the mean of ${names.join(' and ')}`
        : `pressure is ${names.join()} alone; the others lag behind it`,
    );
  const { title, propellantMass, throatDiameter } = options;
  return firing({
    origin: 'measured',
    time: fromSiArray('time', time, 's'),
    ...(pressure && { pressure: fromSiArray('absolute pressure', pressure, 'MPa') }),
    ...(thrust && { thrust: fromSiArray('force', onto(thrust), 'N') }),
    temperatures: Object.fromEntries(
      temperatures.map((channel) => [
        channel.name.replace(/^temperature[\s_-]*/i, '') || 'temperature',
        fromSiArray('temperature', onto(channel), 'degC'),
      ]),
    ),
    ambientPressure: fromSiValue<'absolute pressure'>(ambient, 'absolute pressure', unitOf('kPa')),
    ...(title !== undefined && { title }),
    ...(propellantMass && { loadedMass: propellantMass.to('kg') }),
    ...(throatDiameter && { initialThroatDiameter: throatDiameter.to('mm') }),
    cautions,
    history,
  });
}

const rate = ({ time }: LogChannel): number =>
  (time.length - 1) / Math.max(1e-12, time[time.length - 1] - time[0]);

function named(
  log: Log,
  role: 'pressure' | 'thrust',
  asked: string | readonly string[] | undefined,
  caller: string,
): readonly LogChannel[] {
  const names =
    asked === undefined
      ? Object.keys(log.channels).filter((name) => name.toLowerCase().startsWith(role))
      : typeof asked === 'string'
        ? [asked]
        : asked;
  return names.map((name) => {
    const channel = log.channels[name];
    if (channel === undefined)
      throw new MeopError({
        code: 'missing-field',
        procedure: caller,
        path: role,
        given: name,
        problem: `the log has no channel '${name}'. Available: ${Object.keys(log.channels).join(', ')}`,
      });
    const fits = role === 'thrust' ? channel.measures === 'force' : channel.measures?.endsWith('pressure');
    if (channel.measures === undefined)
      throw new MeopError({
        code: 'not-calibrated',
        procedure: caller,
        path: name,
        given: `readings in ${channel.readingUnit}`,
        expected: 'calibrated',
        remedy: `Use calibrate(log, { '${name}': … }) first`,
      });
    if (!fits)
      throw new MeopError({
        code: 'wrong-kind',
        procedure: caller,
        path: name,
        given: channel.measures,
        expected: `a channel of ${role}`,
      });
    return channel;
  });
}

interface TransducerComparison {
  readonly cautions: readonly string[];
  /** Channels that lag behind the first to rise, counted from 0. */
  readonly lagging: ReadonlySet<number>;
}

/** Compares transducers on one chamber: a blocked port lags, a wrong calibration differs. */
function compareTransducers(
  time: Float64Array,
  channels: readonly LogChannel[],
  values: readonly Float64Array[],
  ambient: number,
): TransducerComparison {
  const cautions: string[] = [];
  // Lag of each behind the first channel.
  const late = [0];
  const [first, ...others] = values.map((each) => ({ trace: analysedTrace(time, each), rest: ambient }));
  others.forEach((other, k) => {
    const names = `${channels[0].name} and ${channels[k + 1].name}`;
    late.push(0);
    try {
      const lag = lagBetween(first, other);
      const ratio = (other.trace.highest() - ambient) / (first.trace.highest() - ambient);
      if (Math.abs(ratio - 1) > 0.04)
        cautions.push(
          `${names}: the peaks differ by ${(100 * Math.abs(ratio - 1)).toFixed(1)} %. Their mean is only as accurate as the worse of them. Check the calibrations.`,
        );
      const worst = [lag.startLag, lag.endLag].reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a));
      if (Math.abs(worst) <= maxTransducerLag) return;
      late[k + 1] = worst;
      cautions.push(
        `${channels[k + 1].name}: it ${worst > 0 ? 'lags' : 'leads'} ${channels[0].name} by ${Math.abs(worst).toFixed(2)} s at an edge. Check for a blocked port.`,
      );
    } catch (error) {
      if (!(error instanceof MeopError)) throw error;
      cautions.push(`${names}: one of them shows no firing. Check it.`);
    }
  });
  const earliest = Math.min(...late);
  const lagging = new Set(late.flatMap((lag, i) => (lag > earliest + maxTransducerLag ? [i] : [])));
  return { cautions, lagging };
}

const maxTransducerLag = 0.05; // s
