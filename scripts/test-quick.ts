// Runs the tests that name what has changed against main, or in the files given: npm run test:quick [-- FILES]
import { execFileSync, spawnSync } from 'node:child_process';
import process from 'node:process';
import { testsNaming } from './quick/tests-naming';

const git = (...args: readonly string[]): readonly string[] => {
  const out = execFileSync('git', args, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });
  return out.split('\n').filter((line) => line !== '');
};

/** Where this branch left main; without a main, the last commit. */
function base(): string {
  try {
    return git('merge-base', 'HEAD', 'main')[0] ?? 'HEAD';
  } catch {
    return 'HEAD';
  }
}

const given = process.argv.slice(2);
const changed =
  given.length > 0
    ? given
    : [...git('diff', '--name-only', base()), ...git('ls-files', '--others', '--exclude-standard')];
const tests = testsNaming(changed);
const say = (text: string): boolean => process.stderr.write(`${text}\n`);
if (tests.length === 0) {
  say(
    changed.length === 0
      ? 'Nothing has changed.'
      : 'No quick test covers what has changed: npm test runs all.',
  );
} else {
  const { status } = spawnSync(process.execPath, ['node_modules/vitest/vitest.mjs', 'run', ...tests], {
    stdio: 'inherit',
  });
  say(`${tests.length} test files that concern ${changed.length} changed files; npm test runs all.`);
  process.exitCode = status ?? 1;
}
