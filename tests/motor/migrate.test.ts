// Documents as version 1 of the form wrote them: read, brought to today's form, and reviewed to the same result.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  migrateMotorDocument,
  motorDocumentVersion,
  motorProblems,
  parseMotor,
  review,
} from '../../src/motor';

const read = (file: string): unknown => JSON.parse(readFileSync(file, 'utf8'));

describe.each(['tern-54', 'plover-50'])('%s as version 1 wrote it', (name) => {
  const old = read(`tests/motor/version-1/${name}.json`);
  const today = read(`tests/motor/version-2/${name}.json`);

  test('is the document of version 2 once migrated, in the same order of fields', () => {
    expect(old).toHaveProperty('version', 1);
    expect(JSON.stringify(migrateMotorDocument(old))).toBe(JSON.stringify(today));
    expect(motorProblems(old)).toEqual([]);
    expect(parseMotor(old).document.version).toBe(motorDocumentVersion);
  });

  test('has the same review', () => {
    expect(String(review(parseMotor(old)))).toBe(String(review(parseMotor(today))));
  });
});

describe('renamed fields', () => {
  test('bands of a burn law and the nozzle closure', () => {
    const bands = [{ from: '1 MPaa', rate: '5 mm/s', atPressure: '1 MPaa' }];
    expect(
      migrateMotorDocument({
        version: 1,
        propellant: { burnLaw: { bands } },
        ignition: { closureBurstPressure: '1 MPag' },
        instruments: [{ proof: '1 MPag' }, { overload: '2 kN' }, 3],
        stand: { anchors: { spread: '1 m' } },
      }),
    ).toEqual({
      version: 2,
      propellant: {
        burnLaw: { bands: [{ from: '1 MPaa', referenceRate: '5 mm/s', referencePressure: '1 MPaa' }] },
      },
      ignition: { nozzleClosureBurstPressure: '1 MPag' },
      instruments: [{ proofPressure: '1 MPag' }, { safeOverload: '2 kN' }, 3],
      stand: { anchors: { anchorSpacing: '1 m' } },
    });
  });

  test('a part with the old and the new name keeps both, for the schema to refuse', () => {
    const both = { closures: { head: { held: 'clamped', edgeSupport: 'clamped' } } };
    expect(migrateMotorDocument({ version: 1, ...both })).toEqual({ version: 2, ...both });
  });

  test('what is not a part stays as it is', () => {
    const odd = { closures: null, propellant: 'KNSB', instruments: {}, stand: [1] };
    expect(migrateMotorDocument({ version: 1, ...odd })).toEqual({ version: 2, ...odd });
  });
});
