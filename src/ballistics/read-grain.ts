import {
  type ColumnRegression,
  type Grain,
  type GrainColumn,
  type Regression,
  regress,
  regressColumn,
} from './grain';

/** A regression of one grain or of a column. */
export type Burned = Regression | ColumnRegression;

/** An event at a burned depth, which is an end of a step of the simulation. */
export interface Landing {
  readonly name: string;
  /** [m] */
  readonly depth: number;
}

/** Whether a value is a grain, a column of grains or a regression of either. */
export const isBurnable = (value: unknown): value is Grain | GrainColumn | Burned =>
  typeof value === 'object' &&
  value !== null &&
  ['shape', 'segments', 'burningArea'].some((part) => part in value);

/** The regression of what a simulation was given. */
export function burnedGrain(grain: Grain | GrainColumn | Burned): Burned {
  if ('burningArea' in grain) return grain;
  return isColumn(grain) ? regressColumn(grain) : regress(grain);
}

const isColumn = (grain: Grain | GrainColumn): grain is GrainColumn => 'segments' in grain;

/** Events of a regression by depth, except burnout of the whole. */
export function landingsOf(regression: Burned): readonly Landing[] {
  const whole = regression.burnout.si;
  const inside = (depth: number): boolean => depth > 0 && depth < whole * (1 - 1e-6);
  const segments = 'segments' in regression ? regression.segments : [regression];
  const of = (i: number): string => (segments.length > 1 ? ` (segment ${i + 1})` : '');
  const found = segments.flatMap(({ web, burnout, flawLighting }, i) => [
    ...(web.si < burnout.si ? [{ name: `front reaches the wall${of(i)}`, depth: web.si }] : []),
    ...(segments.length > 1 ? [{ name: `segment ${i + 1} is burned out`, depth: burnout.si }] : []),
    ...flawLighting.map(({ label, depth }) => ({ name: `front reaches ${label}${of(i)}`, depth: depth.si })),
  ]);
  // The front of a flaw may reach the wall at any time: only a flaw-free grain has a web.
  const flawFree = segments.every(({ flawLighting }) => flawLighting.length === 0);
  const web = Math.max(...segments.map((segment) => Math.min(segment.web.si, segment.burnout.si)));
  const all = flawFree ? [...found, { name: 'web burnout', depth: web }] : found;
  return all.filter(({ depth }) => inside(depth));
}
