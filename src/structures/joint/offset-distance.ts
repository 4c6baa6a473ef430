import { offsetMomentShare } from './offset-bending';

/**
 * The distance, at or beyond a given one [m], at which the wall takes most of the moment. The share falls away from the end and
 * ripples about one half: without this a bolt a little farther from the end could have a slightly lower margin.
 */
export function worstOffsetDistance(distance: number, edgeLength: number): number {
  const crest = Math.PI * edgeLength * Math.ceil(distance / (Math.PI * edgeLength));
  const share = (at: number): number => offsetMomentShare.si({ distance: at, edgeLength });
  return share(crest) > share(distance) ? crest : distance;
}
