import process from 'node:process';

/** Reports the number of finished motors on standard error, only on a terminal. */
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
