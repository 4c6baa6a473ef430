import { MeopError } from '../../units';

/**
 * Standard uncertainty of a result from those of its independent parts (calibration, zero, integration, clock, …), all as
 * shares of the result or all in its unit: the root of the sum of their squares.
 *
 * Source: JCGM 100:2008 (GUM), clause 5.1.2, uncorrelated inputs (formula from memory).
 *
 * @throws MeopError `out-of-domain` for a part that is negative or not finite, and for none at all
 * @example combinedUncertainty([0.03, 0.04]) // => 0.05
 */
export function combinedUncertainty(parts: readonly number[]): number {
  if (parts.length === 0)
    throw new MeopError(
      'out-of-domain',
      'combinedUncertainty: parts: none given; one or more are expected',
      'parts',
    );
  const wrong = parts.findIndex((part) => !(part >= 0 && Number.isFinite(part)));
  if (wrong >= 0)
    throw new MeopError(
      'out-of-domain',
      `combinedUncertainty: parts[${wrong}]: ${parts[wrong]} given; 0 or more is expected`,
      `parts[${wrong}]`,
      { value: parts[wrong], expected: '0 or more' },
    );
  return Math.hypot(...parts);
}
