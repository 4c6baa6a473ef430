// Writes what is made from the sources: the JSON Schema of motor documents and the demo motor as documents.
// Run with: node scripts/run-ts.mjs scripts/write-motor-files.ts
import { mkdirSync, writeFileSync } from 'node:fs';
import { demoMotor, type MotorDocument, motorJsonSchema, parseMotor } from '../src/motor';

const write = (file: string, value: unknown): void =>
  writeFileSync(file, `${JSON.stringify(value, undefined, 2)}\n`);

mkdirSync('schema', { recursive: true });
write('schema/motor.schema.json', motorJsonSchema());

const schema = '../../schema/motor.schema.json';
const sound = demoMotor();
write('examples/motors/tern-54.json', { $schema: schema, ...sound });

// The same motor after a fall: three segments cracked along their whole length, at four places around the bore each.
const [segment] = sound.grain.segments;
const crack = (angle: `${number} deg`) =>
  ({
    flaw: 'radial crack',
    angle,
    innerRadius: '11 mm',
    outerRadius: '24 mm',
    from: '0 mm',
    to: '76 mm',
  }) as const;
const flaws = [crack('0 deg'), crack('90 deg'), crack('180 deg'), crack('270 deg')];
const cracked: MotorDocument = {
  ...sound,
  name: 'Tern-54, cracked grain',
  notes: [
    ...(sound.notes ?? []),
    'Three segments are cracked along their whole length, four ways around the bore, as after a fall in the cold.',
  ],
  grain: {
    ...sound.grain,
    segments: [
      { ...segment, count: 1 },
      { ...segment, count: 1, flaws },
      { ...segment, count: 1, flaws },
      { ...segment, count: 1, flaws },
    ],
  },
};
parseMotor(cracked);
write('examples/motors/tern-54-cracked.json', { $schema: schema, ...cracked });
