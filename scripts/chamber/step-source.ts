// The text of src/ballistics/simulation/chamber-step.ts: the step of the stiff integrator, from its tableau, written out for
// the three unknowns of the chamber.
import { execFileSync } from 'node:child_process';
import process from 'node:process';
import { RODAS5P_TABLEAU } from '../../src/numerics/rodas5p';

export const stepFile = 'src/ballistics/simulation/chamber-step.ts';

const { gamma, a, c, times, timeWeights, dense } = RODAS5P_TABLEAU;
const stageCount = times.length;

/** The source as the formatter leaves it. */
export const chamberStepSource = (): string =>
  execFileSync(
    process.execPath,
    ['node_modules/@biomejs/biome/bin/biome', 'format', `--stdin-file-path=${stepFile}`],
    { input: unformatted(), encoding: 'utf8' },
  );

// The unknowns in the order of the arrays: their letter in the names, their value and their slope at the start of the step.
const unknowns = [
  { letter: 'p', start: 'p' },
  { letter: 'y', start: 'y' },
  { letter: 'r', start: 'throat' },
] as const;

type Row = readonly number[];

const rows = (letter: string, table: readonly Row[]): string[] =>
  table.flatMap((row, i) => row.map((value, j) => constant(`${letter}${i + 1}${j + 1}`, value)));
const constant = (name: string, value: number): string => `const ${name} = ${value};`;

/** Times 0 and 1 and weights of 0 are not named: `t`, `t + h` and nothing are written in their place. */
const constants = [
  constant('GAMMA', gamma),
  ...rows('A', a),
  ...rows('C', c),
  ...times.flatMap((value, i) => (value === 0 || value === 1 ? [] : [constant(`T${i + 1}`, value)])),
  ...timeWeights.flatMap((value, i) => (value === 0 ? [] : [constant(`D${i + 1}`, value)])),
  ...rows('H', dense),
];

/** A row of the tableau times the stages of one unknown: `A31 * k1p + A32 * k2p`. */
const rowSum = (letter: string, row: number, length: number, unknown: string): string =>
  Array.from({ length }, (_, j) => `${letter}${row}${j + 1} * k${j + 1}${unknown}`).join(' + ');

/** The state at which the slopes of a stage are taken. The rows of the last stages are the row before with a one added. */
const stateOf = (stage: number): string[] =>
  unknowns.map(({ letter, start }) => {
    const row = a[stage - 1];
    if (row === undefined) return `u${letter} += k${stage - 1}${letter};`;
    return `${stage === 2 ? 'let ' : ''}u${letter} = ${start} + ${rowSum('A', stage, row.length, letter)};`;
  });

const slopesOf = (stage: number): string[] => [
  ...stateOf(stage),
  `point[0] = ${times[stage - 1] === 1 ? 't + h' : `t + T${stage} * h`};`,
  ...unknowns.map(({ letter }, i) => `point[${i + 1}] = u${letter};`),
  'chamberSlopes(m, w);',
];

/** The right-hand side of a stage. The slope of the throat is the same at all times: it has no time derivative. */
const rightHandSide = (stage: number): string[] =>
  unknowns.map(({ letter }, i) => {
    const slope = stage === 1 ? `s${letter === 'r' ? 't' : letter}` : `f[${i}]`;
    const byTime = letter === 'r' || timeWeights[stage - 1] === 0 ? '' : ` + h * D${stage} * t${letter}`;
    const stages = stage === 1 ? '' : ` + q * (${rowSum('C', stage, c[stage - 1]?.length ?? 0, letter)})`;
    const sum = `${slope}${byTime}${stages}`;
    return `const b${stage}${letter} = ${letter === 'r' ? `eroding ? ${sum} : 0` : sum};`;
  });

const solution = (stage: number): string[] => {
  const [b, z, k] = [`b${stage}`, `z${stage}`, `k${stage}`];
  return [
    `const ${z} = (${b}y + j12 * ${b}r * dt) * dy;`,
    `const ${k}p = (${b}p + j01 * ${z} + j02 * ${b}r * dt) * pivot;`,
    `const ${k}y = ${z} + depthByP * ${k}p;`,
    `const ${k}r = eroding ? (${b}r + j20 * ${k}p) * dt : 0;`,
  ];
};

const stages = Array.from({ length: stageCount }, (_, i) => i + 1).flatMap((stage) => [
  ...(stage === 1 ? [] : slopesOf(stage)),
  ...rightHandSide(stage),
  ...solution(stage),
]);

// The last stage is the error estimate.
const results = unknowns.flatMap(({ letter }, i) => [
  `next[${i}] = u${letter} + k${stageCount}${letter};`,
  `error[${i}] = k${stageCount}${letter};`,
]);

const denseRows = dense.flatMap((row, r) =>
  unknowns.map(({ letter }, i) => {
    const sum = rowSum('H', r + 1, row.length, letter);
    return `dense[${unknowns.length * r + i}] = ${letter === 'r' ? `eroding ? ${sum} : 0` : sum};`;
  }),
);

const unformatted =
  (): string => `// Generated from the tableau of src/numerics/rodas5p.ts: change scripts/chamber/step-source.ts, not this file, and run
// node scripts/run-ts.mjs scripts/write-chamber-step.ts
// One step of the stiff integrator (Rodas5P), written out for the three unknowns of the chamber.
import { chamberSlopes } from './chamber-slopes';
import type { ChamberWorkspace } from './chamber-workspace';
import type { MotorModel } from './motor-model';

// Unrolled because the matrix has a known shape: only the pressure couples to everything, so no elimination is needed. The
// coefficients stand inside the function: bundlers turn constants of a module into variables, which the engine must look
// up at each use, a sixth of the time of a run.

/**
 * Attempts the step in \`start\`, at whose beginning \`jacobian\` holds. Writes the new state, its error estimate and the
 * dense rows. False where something is not finite.
 */
export function attemptStep(m: MotorModel, w: ChamberWorkspace): boolean {
  ${constants.join('\n')}
  const { start, point } = w;
  const t = start[0];
  const h = start[1];
  const p = start[2];
  const y = start[3];
  const throat = start[4];
  const sp = start[5];
  const sy = start[6];
  const st = start[7];
  // Without it the radius stands still: a third of the arithmetic is left out.
  const { slope: f, next, error, dense, eroding } = w;
  const j = w.jacobian;
  const j01 = j[1];
  const j02 = j[2];
  const j12 = j[5];
  const j20 = j[6];
  const tp = j[7];
  const ty = j[8];
  const q = 1 / h;
  const d = q / GAMMA;
  // (d − J)·k = b, solved for the radius and the depth in terms of the pressure first.
  const dy = 1 / (d - j[4]);
  const dt = 1 / d;
  const depthByP = (j[3] + j12 * j20 * dt) * dy;
  const pivot = 1 / (d - j[0] - j01 * depthByP - j02 * j20 * dt);

  ${[...stages, ...results, ...denseRows].join('\n')}
  return next[0] > 0 && next[0] < Infinity && next[1] < Infinity && next[2] > 0;
}
`;
