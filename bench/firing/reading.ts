import { once } from 'node:events';
import { createReadStream, createWriteStream, mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Papa from 'papaparse';
import { readLog, reduceFiring } from '../../src/firing';

const rows = 1e6 * Number(process.argv[2] ?? 10);
const folder = mkdtempSync(join(tmpdir(), 'log-'));
const file = join(folder, 'log.csv');

// An invented firing of 4 s in the middle of the log, sampled at 10 kHz, with noise.
async function write(): Promise<void> {
  const out = createWriteStream(file);
  out.write('time_us,pressure (psig),thrust (N)\n');
  let state = 1;
  const noise = (): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32 - 0.5;
  };
  const ignition = rows / 2;
  let text = '';
  for (let i = 0; i < rows; i++) {
    const x = (i - ignition) / 40_000;
    const level =
      x > 0 && x < 1 ? Math.min(1, x / 0.02) * (1 - 0.4 * (2 * x - 1) ** 2) * Math.min(1, (1 - x) / 0.03) : 0;
    text += `${100 * i},${(700 * level + 2 * noise()).toFixed(2)},${(900 * level + 3 * noise()).toFixed(2)}\n`;
    if (text.length > 1 << 20) {
      if (!out.write(text)) await once(out, 'drain');
      text = '';
    }
  }
  out.end(text);
  await once(out, 'finish');
}

const megabytes = (bytes: number): string => `${Math.round(bytes / 1e6)} MB`;
let peakMemory = 0;
const watch = (): NodeJS.Timeout => {
  peakMemory = 0;
  return setInterval(() => {
    peakMemory = Math.max(peakMemory, process.memoryUsage.rss());
  }, 20);
};

async function timed<T>(
  name: string,
  work: () => Promise<T> | T,
): Promise<{ readonly seconds: number; readonly result: T }> {
  const timer = watch();
  const start = performance.now();
  const result = await work();
  const seconds = (performance.now() - start) / 1000;
  clearInterval(timer);
  peakMemory = Math.max(peakMemory, process.memoryUsage.rss());
  console.log(
    `${name}: ${seconds.toFixed(2)} s, ${(rows / seconds / 1e6).toFixed(2)} M rows/s, ${((2 * rows) / seconds / 1e6).toFixed(2)} M samples/s, peak memory ${megabytes(peakMemory)}`,
  );
  return { seconds, result };
}

await write();
console.log(
  `${rows / 1e6} million rows of a stamp and two channels, ${megabytes(statSync(file).size)} of text, read from a file as a stream`,
);

const text = await timed('the bytes, decoded and counted', async () => {
  const decoder = new TextDecoder();
  let length = 0;
  for await (const piece of createReadStream(file, { highWaterMark: 1 << 18 }))
    length += decoder.decode(piece, { stream: true }).length;
  return length;
});
const parser = await timed(
  'the parser alone (papaparse, fast mode, cells as text)',
  () =>
    new Promise<number>((resolve, reject) => {
      let count = 0;
      const stream = Papa.parse(Papa.NODE_STREAM_INPUT, { fastMode: true, header: false });
      stream.on('data', () => {
        count++;
      });
      stream.on('end', () => resolve(count));
      stream.on('error', reject);
      createReadStream(file, { highWaterMark: 1 << 18 }).pipe(stream);
    }),
);
const chunked = await timed('the parser alone on pieces, each cell made a number', async () => {
  const decoder = new TextDecoder();
  let rest = '';
  let sum = 0;
  for await (const piece of createReadStream(file, { highWaterMark: 1 << 20 })) {
    const whole = rest + decoder.decode(piece, { stream: true });
    const end = whole.lastIndexOf('\n') + 1;
    rest = whole.slice(end);
    const { data } = Papa.parse<string[]>(whole.slice(0, end), { fastMode: true, delimiter: ',' });
    for (const row of data) sum += Number(row[0]) + Number(row[1]) + Number(row[2]);
  }
  return sum;
});
const reading = await timed('readLog', () => readLog(createReadStream(file, { highWaterMark: 1 << 18 })));
console.log(`  ${reading.result.report.rows} rows kept; arrays ${megabytes(3 * 8 * rows)}`);
const reducing = await timed('reduceFiring', () =>
  reduceFiring(reading.result, {
    ambientPressure: '101 kPa',
    throatDiameter: '12 mm',
    propellantMass: '1.6 kg',
  }),
);
console.log(
  `  impulse ${reducing.result.totalImpulse?.value}, clipping found: ${reducing.result.clipping.pressure !== undefined}`,
);
console.log(
  `ratios of time: readLog / bytes ${(reading.seconds / text.seconds).toFixed(2)}, parser stream / readLog ${(parser.seconds / reading.seconds).toFixed(2)}, parser on pieces with numbers / readLog ${(chunked.seconds / reading.seconds).toFixed(2)}`,
);
rmSync(folder, { recursive: true });
