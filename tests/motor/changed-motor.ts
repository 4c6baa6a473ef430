// A sound motor with single values of its document replaced.
import { readFileSync } from 'node:fs';
import { demoMotor, motorProblems, parseMotor, review } from '../../src/motor';

/** Values by path, `closures.aft.seals.0.ring`; undefined leaves one out. */
export type Changes = Readonly<Record<string, unknown>>;

export const motors = {
  tern: (): unknown => JSON.parse(JSON.stringify(demoMotor())),
  plover: (): unknown => JSON.parse(readFileSync('examples/motors/plover-50.json', 'utf8')),
} as const;
export type MotorName = keyof typeof motors;

/** A document of its own, with the changes; few samples, since only the worst case is judged. */
export function changed(motor: MotorName, changes: Changes): unknown {
  const document = motors[motor]();
  for (const [path, value] of Object.entries({ meop: { samples: 100, seed: 1 }, ...changes }))
    put(document, path.split('.'), value);
  return document;
}

function put(node: unknown, [key, ...rest]: readonly string[], value: unknown): void {
  if (typeof node !== 'object' || node === null || key === undefined) throw new Error('no such place');
  if (rest.length === 0) {
    if (value === undefined) Reflect.deleteProperty(node, key);
    else Reflect.set(node, key, value);
    return;
  }
  if (Reflect.get(node, key) === undefined) Reflect.set(node, key, {});
  put(Reflect.get(node, key), rest, value);
}

/** What becomes of a motor: refused, or its verdict, with everything that speaks against it. */
export interface Judged {
  readonly outcome: 'refused' | 'holds' | 'does not hold' | 'not judged';
  readonly against: readonly string[];
}

export function judged(document: unknown): Judged {
  const refusals = motorProblems(document);
  if (refusals.length > 0) return { outcome: 'refused', against: refusals.map((one) => JSON.stringify(one)) };
  try {
    const found = review(parseMotor(document));
    const checks = [
      ...found.checks.map(({ part, check, passes, message }) => ({
        what: `${part} ${check}`,
        passes,
        message,
      })),
      ...found.flow.map(({ check, passes, message }) => ({ what: `flow ${check}`, passes, message })),
      ...found.seals.flatMap(({ closure, gland }) =>
        gland.checks.map(({ check, passes, message }) => ({
          what: `${closure} seal ${check}`,
          passes,
          message,
        })),
      ),
      ...found.faceSeals.flatMap(({ closure, face }) =>
        face.checks.map(({ check, passes, message }) => ({
          what: `${closure} seal ${check}`,
          passes,
          message,
        })),
      ),
      ...found.instruments.flatMap(({ name, checks: own }) =>
        own.map(({ check, passes, message }) => ({ what: `${name} ${check}`, passes, message })),
      ),
    ];
    return {
      outcome: found.verdict,
      against: [
        ...found.margins
          .filter(({ marginOfSafety }) => marginOfSafety < 0)
          .map(({ part, id, marginOfSafety }) => `${part} ${id} ${marginOfSafety.toFixed(2)}`),
        ...found.proof.margins
          .filter(({ marginOfSafety }) => marginOfSafety < 0)
          .map(({ part, id, marginOfSafety }) => `proof ${part} ${id} ${marginOfSafety.toFixed(2)}`),
        ...checks.filter(({ passes }) => !passes).map(({ what, message }) => `${what}: ${message}`),
        ...found.unjudged.map(({ part, reason }) => `not judged ${part}: ${reason}`),
      ],
    };
  } catch (error) {
    return { outcome: 'refused', against: [String(error)] };
  }
}
