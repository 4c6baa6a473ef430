import { angle, choice, length, optional } from '../../units';

/** Diameter of the cast propellant. */
export const outerDiameter = length('D', 'diameter of the cast propellant', {
  example: '44 mm',
  worse: 'neither',
  synonyms: ['grain diameter'],
});

/** Diameter of the bore. */
export const boreDiameter = length('d', 'diameter of the bore', {
  example: '16 mm',
  worse: 'neither',
  synonyms: ['core', 'port'],
});

const burningEnds = choice('flat ends that burn; the others are inhibited', ['both', 'head', 'aft', 'none']);

/** Flat ends of a grain that burn. */
export type BurningEnds = (typeof burningEnds.options)[number];

/** Outer dimensions of a cylindrical grain, and the ends that burn where none are specified. */
export const outer = (ends: BurningEnds) => ({
  outerDiameter,
  length: length('L', 'length of the cast propellant', { example: '70 mm', worse: 'neither' }),
  burningEnds: optional(burningEnds, ends),
});

/** Axial position, from the head end; zero or more. `omitted` says what applies where it is left out. */
export const startPosition = (meaning: string, omitted = '') =>
  length('z_1', `${meaning}, from the head end${omitted}`, { min: 0, example: '30 mm', worse: 'neither' });

/** Axial position, from the head end; above zero. */
export const endPosition = (meaning: string, omitted = '') =>
  length('z_2', `${meaning}, from the head end${omitted}`, { example: '60 mm', worse: 'neither' });

/** Angle about the axis of the grain, from the x axis. */
export const direction = (meaning: string) =>
  optional(angle('θ', meaning, { example: '0 deg', worse: 'neither' }), 0);

/** Bottom of a slot or tip of a fin. */
export const tipShape = (meaning: string) => optional(choice(meaning, ['square', 'round']), 'square');

/** Gap between adjacent segments of a column. */
export const segmentGap = length('s', 'gap between adjacent segments', {
  min: 0,
  example: '1 mm',
  worse: 'neither',
});
