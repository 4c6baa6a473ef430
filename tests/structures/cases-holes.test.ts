import { clearanceHole, tapDrill } from '../../src/structures/holes';
import type { ClearanceFit } from '../../src/structures/holes/clearance-table';
import { caseTest } from './case-check';

// Cases of tests/cases/hardware.json; source and provenance stand there, beside the numbers.

const list = (value: unknown): readonly string[] => {
  if (!Array.isArray(value)) throw new Error('no list');
  return value.map(String);
};

caseTest('clearance-holes-iso-273', ({ inputs }) => {
  const of = (fit: ClearanceFit) =>
    list(inputs.threads).map(
      (thread, i) => [`${fit}_mm[${i}]`, clearanceHole({ thread, fit }).diameter.in('mm')] as const,
    );
  return Object.fromEntries([...of('close'), ...of('medium'), ...of('free')]);
});

caseTest('tap-drills', ({ inputs }) =>
  Object.fromEntries(
    list(inputs.threads).flatMap((thread, i) => {
      const { diameter, threadHeight } = tapDrill({ thread });
      return [[`drill[${i}]`, diameter.si] as const, [`threadPercent[${i}]`, 100 * threadHeight] as const];
    }),
  ),
);
