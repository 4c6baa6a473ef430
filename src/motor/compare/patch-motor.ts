import { type Motor, type MotorInput, motorOf, parseMotor } from '../document';
import type { MotorPatch } from './comparison';

/**
 * The motor of a patched document. A patch is a JSON merge patch (RFC 7396): objects are merged, `null` takes a field away,
 * everything else replaces what was there.
 *
 * @throws MeopError `motor-document` where the patched document has problems
 * @example patchMotor(demoMotor(), { name: 'Tern-54 B' }).name // => 'Tern-54 B'
 */
export function patchMotor(input: MotorInput, patch: MotorPatch): Motor {
  return parseMotor(merged(JSON.parse(JSON.stringify(motorOf(input).document)), patch));
}

function merged(target: unknown, patch: unknown): unknown {
  if (!isRecord(patch)) return patch;
  const result: Record<string, unknown> = isRecord(target) ? { ...target } : {};
  // A measure is one value: a new one takes the place of the old with its tolerance.
  if ('value' in patch && 'plusMinus' in patch) return patch;
  for (const [key, value] of Object.entries(patch)) {
    if (value === null) delete result[key];
    else result[key] = merged(result[key], value);
  }
  return result;
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
