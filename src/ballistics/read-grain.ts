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

/** Something that happens at a burned depth, on which a run lands. */
export interface Landing {
  readonly name: string;
  /** [m] */
  readonly depth: number;
}

/** The regression of what a simulation was given. */
export function burnedGrain(grain: Grain | GrainColumn | Burned): Burned {
  if ('burningArea' in grain) return grain;
  return isColumn(grain) ? regressColumn(grain) : regress(grain);
}

const isColumn = (grain: Grain | GrainColumn): grain is GrainColumn => 'segments' in grain;

/** Depths at which something happens that the regression knows of, burnout of the whole apart. */
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
  // A flaw's front may reach the wall at any time: only sound grains have a web in the trade's sense.
  const sound = segments.every(({ flawLighting }) => flawLighting.length === 0);
  const web = Math.max(...segments.map((segment) => Math.min(segment.web.si, segment.burnout.si)));
  const all = sound ? [...found, { name: 'web burnout', depth: web }] : found;
  return all.filter(({ depth }) => inside(depth));
}
