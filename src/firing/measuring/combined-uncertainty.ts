import { MeopError } from '../../units';

/**
 * Returns the standard uncertainty of a result from those of its independent components (calibration, zero,
 * integration, clock, …), all relative to the result or all in its unit: the root of the sum of their squares.
 *
 * Source: JCGM 100:2008 (GUM), clause 5.1.2, uncorrelated inputs (formula quoted from memory, not verified).
 *
 * @throws MeopError `out-of-domain` for a component that is negative or not finite, and for none at all
 * @example combinedUncertainty([0.03, 0.04]) // => 0.05
 */
export function combinedUncertainty(parts: readonly number[]): number {
  if (parts.length === 0)
    throw new MeopError(
      'out-of-domain',
      'combinedUncertainty: parts must contain at least one component, got none',
      'parts',
    );
  const wrong = parts.findIndex((part) => !(part >= 0 && Number.isFinite(part)));
  if (wrong >= 0)
    throw new MeopError(
      'out-of-domain',
      `combinedUncertainty: parts[${wrong}] must be 0 or more, got ${parts[wrong]}`,
      `parts[${wrong}]`,
      { value: parts[wrong], expected: '0 or more' },
    );
  return Math.hypot(...parts);
}
