// Cores of constant section, as burning surfaces.
import { type Outline, prism, type Source } from '../surface';

/** A core of this outline through the whole grain. */
export const throughCore = (name: string, o: Outline, length: number, mirror?: number): Source =>
  prism({
    name,
    outline: o,
    from: 0,
    to: length,
    faces: { side: [0, length], start: 'through', end: 'through' },
    mirror,
  });

/** A core of this outline between two stations; a station at an end of the grain has no flat end. */
export function partialCore(
  name: string,
  o: Outline,
  from: number,
  to: number,
  length: number,
  mirror?: number,
): Source {
  const slack = 1e-9 * length;
  const [low, high] = [Math.max(0, from), Math.min(length, to)];
  return prism({
    name,
    outline: o,
    from: low,
    to: high,
    faces: {
      side: [low, high],
      start: low <= slack ? 'through' : 'burning',
      end: high >= length - slack ? 'through' : 'burning',
    },
    mirror,
  });
}
