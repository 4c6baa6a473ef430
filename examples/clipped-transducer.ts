// A 60 bar transmitter on a motor that went higher: the log shows a flat top. The pressure is recovered through the
// line between thrust and pressure, with a band, and drawn before and after. Motor, stand and numbers are invented.
import { mkdirSync, writeFileSync } from 'node:fs';
import { calibrate, currentLoopCalibration, fitCalibration, readLog, reduceFiring } from '../src/index';

// The log as the stand wrote it: a 12-bit converter at 500 Hz, a flaw lighting at 0.9 s, thrust over an amplifier.
const throatArea = (Math.PI / 4) * 0.0135 ** 2;
const gauge = (t: number): number => {
  const x = (t - 1) / 2.4;
  if (x <= 0) return 0;
  const rise = 1 - Math.exp(-x / 0.015);
  const flaw = 3.4e6 / (1 + Math.exp(-(t - 1.9) / 0.05));
  const body = 7.6e6 - 2.5e6 * (2 * Math.min(x, 1) - 1) ** 2 + flaw;
  return rise * body * (x < 1 ? 1 : Math.exp(-(x - 1) / 0.035));
};
let state = 20;
const noise = (): number => {
  state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
  return state / 2 ** 32 - 0.5;
};
const lines = ['time_ms,transmitter (counts),load cell (counts)'];
const truth: [number, number][] = [];
for (let i = 0; i < 3500; i++) {
  const t = i / 500;
  const p = gauge(t);
  const force = p > 0 ? Math.max(0, throatArea * (1.48 * (p + 101_325) - 6 * 101_325)) : 0;
  const milliamps = Math.min(20.5, 4 + (16 * p) / 6e6 + 0.2 * noise());
  const counts = Math.min(4095, Math.round(((milliamps * 0.22) / 5) * 4096));
  lines.push(`${2 * i},${counts},${Math.round(210 + force * 1.1 + 70 * noise())}`);
  truth.push([t, p / 1e6]);
}

const log = readLog(lines.join('\n'), {
  channels: {
    pressure: { column: 'transmitter', unit: 'counts' },
    thrust: { column: 'load cell', unit: 'counts' },
  },
});
const pressure = currentLoopCalibration({
  span: { measures: 'gauge pressure', high: '60 bar' },
  resistance: 220,
  converter: { bits: 12, fullScale: 5 },
});
const thrust = fitCalibration({
  measures: 'force',
  readingUnit: 'counts',
  points: [
    { reading: 210, load: '0 kg' },
    { reading: 749, load: '50 kg' },
    { reading: 1289, load: '100 kg' },
    { reading: 2368, load: '200 kg' },
  ],
});
const reduced = reduceFiring(calibrate(log, { pressure, thrust }), {
  title: 'clipped transmitter',
  ambientPressure: '101325 Pa',
  throatDiameter: '13.5 mm',
  expansionRatio: 6,
});
console.log(String(reduced));
console.log(String(reduced.recovery));

const { recovery } = reduced;
if (recovery?.channel !== 'pressure') throw new Error('nothing was recovered');
const clipped = calibrate(log, { pressure }).channels.pressure;
const band = {
  time: recovery.band.time.si,
  value: recovery.band.value.in('MPa').map((p) => p - 0.101325),
  low: recovery.band.low.in('MPa').map((p) => p - 0.101325),
  high: recovery.band.high.in('MPa').map((p) => p - 0.101325),
};

const width = 860;
const height = 360;
const left = 60;
const right = 20;
const x = (t: number): number => left + ((t - 0.6) / 3.6) * (width - left - right);
const y = (p: number): number => height - 45 - (p / 13) * (height - 95);
const path = (points: readonly (readonly [number, number])[]): string =>
  points
    .filter(([t]) => t >= 0.6 && t <= 4.2)
    .map(([t, p], i) => `${i === 0 ? 'M' : 'L'}${x(t).toFixed(1)} ${y(p).toFixed(1)}`)
    .join('');
const logged = Array.from(clipped.time, (t, i) => [t, clipped.values[i] / 1e6] as const);
const points = (values: Float64Array): (readonly [number, number])[] =>
  Array.from(band.time, (t, i) => [t, values[i]] as const);
const axes = `${[0, 2, 4, 6, 8, 10, 12].map((p) => `<path d="M${left} ${y(p)}H${width - right}" stroke="#dddddd"/><text x="${left - 8}" y="${y(p) + 4}" text-anchor="end">${p}</text>`).join('')}
${[1, 1.5, 2, 2.5, 3, 3.5, 4].map((t) => `<text x="${x(t)}" y="${height - 25}" text-anchor="middle">${t}</text>`).join('')}
<text x="${(left + width - right) / 2}" y="${height - 6}" text-anchor="middle">time, s</text>
<text transform="translate(16 ${height / 2}) rotate(-90)" text-anchor="middle">chamber pressure above ambient, MPa</text>`;
const panel = (title: string, body: string, top: number): string =>
  `<g transform="translate(0 ${top})"><text x="${left}" y="22" font-size="15" font-weight="bold">${title}</text>${axes}${body}</g>`;
const limit = `<path d="M${left} ${y(6)}H${width - right}" stroke="#b4441c" stroke-dasharray="6 3"/><text x="${width - right}" y="${y(6) - 6}" text-anchor="end" fill="#b4441c">end of the transmitter's range</text>`;
const { value, low, high } = recovery.peak;
const above = (p: typeof value): string => (p.in('MPa') - 0.101325).toFixed(2);
const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${2 * height + 10}" font-family="sans-serif" font-size="12">
<rect width="100%" height="100%" fill="white"/>
${panel('As logged', `${limit}<path d="${path(logged)}" fill="none" stroke="#1f4e79" stroke-width="1.5"/>`, 0)}
${panel(
  `Recovered from thrust: peak ${above(value)} MPa, 95 % between ${above(low)} and ${above(high)} MPa`,
  `${limit}<path d="${path([...points(band.low), ...points(band.high).reverse()])}Z" fill="#1f4e79" fill-opacity="0.25"/>
<path d="${path(logged)}" fill="none" stroke="#1f4e79" stroke-width="1.5"/>
<path d="${path(points(band.value))}" fill="none" stroke="#0b7a4b" stroke-width="2"/>
<path d="${path(truth)}" fill="none" stroke="#111111" stroke-dasharray="2 4"/>
<text x="${x(3.1)}" y="${y(12)}" fill="#0b7a4b">recovered, with its 95 % band</text>
<text x="${x(3.1)}" y="${y(11.2)}" fill="#111111">dotted: what it truly was</text>`,
  height + 10,
)}
</svg>`;
mkdirSync('examples/out', { recursive: true });
writeFileSync('examples/out/clipped-transducer.svg', svg);
