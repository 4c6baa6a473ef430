// Sound motors, each the demo motor or Plover-50 with one thing built otherwise: the review must not cry wolf.
import { describe, expect, test } from 'vitest';
import { type Changes, changed, judged, type MotorName } from './changed-motor';

type Row = readonly [what: string, motor: MotorName, changes: Changes];

const aft = 'closures.aft';
const head = 'closures.head';
const bothJoints = (changes: Changes): Changes =>
  Object.fromEntries(
    [head, aft].flatMap((end) => Object.entries(changes).map(([field, value]) => [`${end}.${field}`, value])),
  );

const sound: readonly Row[] = [
  ['as described', 'tern', {}],
  ['as described', 'plover', {}],
  ['sizes in inches', 'tern', { 'case.outsideDiameter': { value: '2.12598 in', plusMinus: '0.0008 in' } }],
  [
    'bore given instead of the wall',
    'tern',
    { 'case.wall': undefined, 'case.insideDiameter': { value: '51 mm', plusMinus: '0.02 mm' } },
  ],
  ['ten bolts', 'tern', bothJoints({ 'joint.count': 10 })],
  ['bolts of class 10.9', 'tern', bothJoints({ 'joint.boltClass': '10.9' })],
  ['bolts of class A2-80', 'tern', bothJoints({ 'joint.boltClass': 'A2-80' })],
  ['closures of 7075-T651 plate', 'tern', bothJoints({ material: '7075-T651 plate' })],
  ['thicker plate', 'tern', { [`${head}.thickness`]: '14 mm' }],
  ['smaller opening in the head', 'tern', { [`${head}.opening`]: '6 mm' }],
  ['no opening in the head', 'tern', { [`${head}.opening`]: undefined }],
  ['larger throat', 'tern', { 'nozzle.throatDiameter': { value: '11 mm', plusMinus: '0.05 mm' } }],
  ['no erosion of the throat', 'tern', { 'nozzle.throatErosion': '0 mm/s' }],
  ['shorter grain', 'tern', { 'grain.segments.0.count': 3 }],
  ['larger bore of the grain', 'tern', { 'grain.segments.0.boreDiameter': '24 mm' }],
  [
    'slower propellant',
    'tern',
    { 'propellant.burnLaw.referenceRate': { value: '6.8 mm/s', plusMinus: '4 %' } },
  ],
  ['lighter propellant', 'tern', { 'propellant.density': { value: '1700 kg/m^3', plusMinus: '1.5 %' } }],
  ['high ground', 'tern', { 'ambient.pressure': '80 kPaa' }],
  ['colder range', 'tern', { 'temperatureRange.hottest': '30 degC' }],
  ['cooler wall', 'tern', { 'case.wallTemperature': '60 degC' }],
  ['softer igniter', 'tern', { 'ignition.igniterMass': '0.4 g' }],
  ['stronger insert', 'tern', { 'nozzle.insert.tensileStrength': '35 MPa' }],
  ['longer case', 'tern', { 'case.length': '400 mm', 'case.chamberLength': '332 mm' }],
  [
    'transducer of 1500 psi',
    'tern',
    { 'instruments.0.range': '1500 psig', 'instruments.0.proofPressure': '3000 psig' },
  ],
  ['stronger shackle', 'tern', { 'stand.restraint.shackle': '20 kN' }],
  ['thicker O-ring cover: 75 Shore A', 'plover', { [`${aft}.seals.0.hardness`]: 75 }],
  ['longer thread', 'plover', { [`${aft}.thread.engagement`]: { value: '13 mm', plusMinus: '0.5 mm' } }],
  ['larger throat', 'plover', { 'nozzle.throatDiameter': { value: '7.4 mm', plusMinus: '0.05 mm' } }],
  ['stronger ring', 'plover', { [`${head}.retainingRing.shearStrength`]: '800 MPa' }],
  ['cooler wall', 'plover', { 'case.wallTemperature': '60 degC' }],
  ['smaller opening in the head', 'plover', { [`${head}.opening`]: '6 mm' }],
  [
    'slower propellant',
    'plover',
    { 'propellant.burnLaw.referenceRate': { value: '6.8 mm/s', plusMinus: '4 %' } },
  ],
  ['high ground', 'plover', { 'ambient.pressure': '80 kPaa' }],
];

describe('sound motors', () => {
  test('there are at least thirty', () => expect(sound.length).toBeGreaterThanOrEqual(30));

  test.each(sound)('%s (%s)', (_, motor, changes) => {
    const { outcome, against } = judged(changed(motor, changes));
    expect([outcome, ...against]).toEqual(['holds']);
  });
});
