import { type Motor, type MotorInput, motorOf, parseMotor } from '../document';
import type { MotorPatch } from './comparison';

/**
 * Returns the motor of a patched document. A patch is a JSON merge patch (RFC 7396): objects are merged, `null`
 * removes a field, and any other value replaces the previous one.
 *
 * @throws MeopError `motor-document` where the patched document has errors
 * @example patchMotor(demoMotor(), { name: 'Tern-54 B' }).name // => 'Tern-54 B'
 */
export function patchMotor(input: MotorInput, patch: MotorPatch): Motor {
  return parseMotor(merged(JSON.parse(JSON.stringify(motorOf(input).document)), patch));
}

function merged(target: unknown, patch: unknown): unknown {
  if (!isRecord(patch)) return patch;
  const result: Record<string, unknown> = isRecord(target) ? { ...target } : {};
  // A value with its tolerance is one value: a new one replaces both.
  if ('value' in patch && 'plusMinus' in patch) return patch;
  for (const [key, value] of Object.entries(patch)) {
    if (value === null) delete result[key];
    else result[key] = merged(result[key], value);
  }
  return result;
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
