import { MeopError, type NamedKind, quantity } from '../../units';

/** The value at a path of a document of any form; undefined where there is none. */
export function rawAt(json: unknown, path: readonly (string | number)[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null
        ? Object.getOwnPropertyDescriptor(value, key)?.value
        : undefined,
    json,
  );
}

/** The list at a path; empty where there is none. */
export function rawList(json: unknown, path: readonly (string | number)[]): readonly unknown[] {
  const value = rawAt(json, path);
  return Array.isArray(value) ? value : [];
}

/**
 * The value at a path in SI, without its tolerance; undefined where it cannot be read, which is reported
 * separately.
 */
export function rawSi(
  json: unknown,
  path: readonly (string | number)[],
  kind: NamedKind,
): number | undefined {
  const found = rawAt(json, path);
  const value = typeof found === 'object' && found !== null && 'value' in found ? found.value : found;
  if (typeof value !== 'string' && typeof value !== 'number') return undefined;
  try {
    return quantity(kind, value).si;
  } catch (error) {
    if (error instanceof MeopError) return undefined;
    throw error;
  }
}
