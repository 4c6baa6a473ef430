import process from 'node:process';

/** Tells how many motors are done, on standard error and only where someone is watching it. */
export function progress(): { step(): void; end(): void } {
  if (!process.stderr.isTTY || process.stdout.isTTY) return { step: () => undefined, end: () => undefined };
  let count = 0;
  let told = 0;
  return {
    step() {
      count++;
      const now = performance.now();
      if (now - told < 200) return;
      told = now;
      process.stderr.write(`\r${count} done`);
    },
    end() {
      if (told > 0) process.stderr.write(`\r${count} done\n`);
    },
  };
}
