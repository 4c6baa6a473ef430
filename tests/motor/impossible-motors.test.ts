// Motors that nobody could build, or that would let go: each is a sound motor with one thing changed, and each is refused, or
// does not hold, with the change named. The sizes are invented; what is wrong with each is geometry or arithmetic.
import { describe, expect, test } from 'vitest';
import { type Changes, changed, judged, type MotorName } from './changed-motor';

type Row = readonly [what: string, motor: MotorName, changes: Changes, named: RegExp];

const insert = 'nozzle.insert';
const aft = 'closures.aft';
const head = 'closures.head';

const impossible: readonly Row[] = [
  // Nozzle and insert.
  ['insert wider than the bore', 'tern', { [`${insert}.outsideDiameter`]: '52 mm' }, /insert/],
  ['insert wider than its pocket', 'tern', { [`${insert}.outsideDiameter`]: '30.4 mm' }, /insert|pocket/],
  [
    'insert that falls through the opening',
    'tern',
    { [`${insert}.outsideDiameter`]: '19.5 mm' },
    /insert|opening/,
  ],
  [
    'insert on a lip of 0.3 mm',
    'tern',
    { [`${insert}.outsideDiameter`]: '20.6 mm', [`${insert}.seat.pocketDiameter`]: '20.7 mm' },
    /insert|seat|lip|overlap/i,
  ],
  ['pocket deeper than the closure', 'tern', { [`${insert}.seat.pocketDepth`]: '45 mm' }, /pocket/],
  [
    'pocket that leaves a lip of 1 mm',
    'tern',
    { [`${insert}.seat.pocketDepth`]: '39 mm' },
    /lip|pocket|nozzle-retention/,
  ],
  ['pocket wider than the closure', 'tern', { [`${insert}.seat.pocketDiameter`]: '51.5 mm' }, /pocket/],
  [
    'pocket that breaks into the O-ring groove',
    'tern',
    { [`${insert}.seat.pocketDiameter`]: '46.9 mm' },
    /pocket|groove|insert/,
  ],
  [
    'insert put in from outside with nothing behind it',
    'tern',
    { [`${insert}.seat.insertedFrom`]: 'outside' },
    /retainer|insert/,
  ],
  [
    'throat wider than the insert',
    'tern',
    { 'nozzle.throatDiameter': '31 mm', 'nozzle.exitDiameter': '40 mm' },
    /throat|insert/,
  ],
  ['throat wider than the exit', 'tern', { 'nozzle.throatDiameter': '27 mm' }, /exitDiameter/],
  ['opening narrower than the exit cone', 'tern', { [`${aft}.opening`]: '17 mm' }, /exit|opening/i],
  ['insert of a block of 4 MPa', 'tern', { [`${insert}.tensileStrength`]: '4 MPa' }, /insert/],
  // Layout.
  ['closure wider than the bore', 'tern', { [`${aft}.layout.diameter`]: '51.2 mm' }, /diameter/],
  ['opening wider than the bore', 'tern', { [`${aft}.opening`]: '52 mm' }, /opening/],
  ['opening wider than the closure', 'tern', { [`${head}.opening`]: '50.95 mm' }, /opening/],
  ['O-ring groove under the bolts', 'tern', { [`${aft}.seals.0.position`]: '11 mm' }, /position|groove|seal/],
  ['O-ring outside the bolts', 'tern', { [`${aft}.seals.0.position`]: '3 mm' }, /position|seal/],
  ['O-ring groove beyond the closure', 'tern', { [`${head}.seals.0.position`]: '26 mm' }, /position|groove/],
  [
    'O-ring groove above a cavity, 0.05 mm of metal between',
    'tern',
    { [`${head}.layout.cavity.diameter`]: '46.7 mm' },
    /cavity|groove/,
  ],
  [
    'bolts into a cavity',
    'tern',
    { [`${head}.layout.cavity.depth`]: '20 mm', [`${head}.layout.cavity.diameter`]: '40 mm' },
    /cavity|engagement/,
  ],
  ['bolts beyond the closure', 'tern', { [`${head}.joint.edgeDistance`]: '30 mm' }, /edgeDistance/],
  ['holes in the edge of the case', 'tern', { [`${head}.joint.edgeDistance`]: '2 mm' }, /edgeDistance/],
  [
    'holes one diameter from the end of the case',
    'tern',
    { [`${head}.joint.edgeDistance`]: '5.3 mm' },
    /tear-out|edge|hole/i,
  ],
  ['holes that cut the case in two', 'tern', { [`${head}.joint.count`]: 40 }, /count|net-section/],
  ['plate thicker than the closure', 'tern', { [`${head}.thickness`]: '30 mm' }, /thickness/],
  ['closure shorter than what it carries', 'tern', { [`${aft}.layout.length`]: '24 mm' }, /aft|length/],
  [
    'chamber longer than the case leaves',
    'tern',
    { 'case.chamberLength': '340 mm' },
    /chamberLength|innerFace/,
  ],
  [
    'shoulder no wider than the bore',
    'tern',
    { [`${aft}.layout.shoulder`]: { diameter: '50.5 mm', thickness: '2 mm' } },
    /shoulder/,
  ],
  ['grain wider than the liner', 'tern', { 'grain.segments.0.outerDiameter': '50 mm' }, /outerDiameter/],
  ['grain longer than the chamber', 'tern', { 'grain.segments.0.count': 5 }, /segments/],
  [
    'bore larger than the tube',
    'tern',
    { 'case.wall': undefined, 'case.insideDiameter': '54.2 mm' },
    /insideDiameter/,
  ],
  // Bolts.
  ['two bolts', 'tern', { [`${aft}.joint.count`]: 2 }, /bolt-|bearing|aft-joint/],
  ['holes smaller than the bolts', 'tern', { [`${aft}.joint.holeDiameter`]: '4.8 mm' }, /holeDiameter/],
  [
    'one and a half turns of thread',
    'tern',
    { [`${aft}.joint.engagement`]: '1.2 mm' },
    /closure-bearing|thread|engagement/,
  ],
  ['thread longer than the metal', 'tern', { [`${aft}.joint.engagement`]: '14 mm' }, /engagement/],
  [
    'M3 bolts',
    'tern',
    { [`${aft}.joint.thread`]: 'M3', [`${aft}.joint.holeDiameter`]: '3.2 mm' },
    /aft-joint/,
  ],
  // Strength.
  [
    'wall of 0.4 mm',
    'tern',
    { 'case.wall': '0.4 mm', [`${head}.layout.diameter`]: '53.1 mm', [`${aft}.layout.diameter`]: '53.1 mm' },
    /case|burst|hoop/,
  ],
  ['case at 300 °C', 'tern', { 'case.wallTemperature': '300 degC' }, /case|300/],
  ['case at −300 °C', 'tern', { 'case.wallTemperature': '-300 degC' }, /wallTemperature/],
  ['head closure of 2 mm', 'tern', { [`${head}.thickness`]: '2 mm' }, /head-closure/],
  ['case of polycarbonate-like plastic', 'tern', { 'case.material': 'paper tube' }, /material|paper/],
  [
    'proof at three times MEOP',
    'tern',
    { factors: { set: 'ground test', proofFactor: 3, source: 'this test' } },
    /proof/,
  ],
  // Seals.
  ['no O-ring', 'tern', { [`${aft}.seals`]: [] }, /seals/],
  ['O-ring of a 6 mm hole', 'tern', { [`${aft}.seals.0.ring`]: '010' }, /seal|ring|stretch/],
  ['O-ring of a 125 mm bore', 'tern', { [`${aft}.seals.0.ring`]: '160' }, /seal|ring|stretch/],
  ['groove without squeeze', 'tern', { [`${aft}.seals.0.grooveDiameter`]: '45.2 mm' }, /seal|squeeze/],
  [
    'groove that crushes the O-ring',
    'tern',
    { [`${aft}.seals.0.grooveDiameter`]: '49 mm' },
    /seal|squeeze|groove/,
  ],
  [
    'groove narrower than the O-ring',
    'tern',
    { [`${aft}.seals.0.grooveWidth`]: '2.2 mm' },
    /seal|fill|groove/,
  ],
  [
    'closure with 0.8 mm clearance at the O-ring',
    'tern',
    { [`${aft}.seals.0.closureDiameter`]: '50.2 mm', [`${aft}.layout.diameter`]: '50.2 mm' },
    /seal|gap|diameter/,
  ],
  // Flow, instruments, stand.
  [
    'port narrower than the throat',
    'tern',
    { 'grain.segments.0.boreDiameter': '10.5 mm', 'grain.assumedFlaw': undefined },
    /flow|port/,
  ],
  ['transducer of 500 psi', 'tern', { 'instruments.0.range': '500 psig' }, /chamber/],
  ['shackle of 300 N', 'tern', { 'stand.restraint.shackle': '300 N' }, /shackle/],
  ['anchors of 50 N', 'tern', { 'stand.anchors.allowable': '50 N', 'stand.anchors.weight': '1 N' }, /stand/],
  ['members of wire', 'tern', { 'stand.members.secondMoment': '0.5 mm^4' }, /member-buckling/],
  // Retaining ring and thread.
  [
    'ring groove deeper than the wall',
    'plover',
    { [`${head}.retainingRing.grooveDepth`]: '9 mm' },
    /grooveDepth/,
  ],
  [
    'ring groove at the very end',
    'plover',
    { [`${head}.retainingRing.edgeMargin`]: '0.4 mm' },
    /edge|land|head-joint/,
  ],
  ['ring of soft wire', 'plover', { [`${head}.retainingRing.shearStrength`]: '8 MPa' }, /ring-shear/],
  [
    'groove a tenth of a millimetre deep',
    'plover',
    { [`${head}.retainingRing.grooveDepth`]: '0.1 mm' },
    /groove|ring/,
  ],
  [
    'closure that reaches past its ring',
    'plover',
    { [`${head}.layout.length`]: '20 mm' },
    /ring|length|outer/i,
  ],
  ['thread wider than the case', 'plover', { [`${aft}.thread.majorDiameter`]: '55.5 mm' }, /majorDiameter/],
  ['thread inside the bore', 'plover', { [`${aft}.thread.majorDiameter`]: '37 mm' }, /majorDiameter/],
  ['half a turn of thread', 'plover', { [`${aft}.thread.engagement`]: '0.8 mm' }, /thread|engagement/],
  [
    '0.05 mm of metal around the thread',
    'plover',
    { [`${aft}.layout.recess`]: { diameter: '47.9 mm', depth: '20 mm' } },
    /recess|thread/,
  ],
  [
    'case turned down to the thread',
    'plover',
    { 'case.outsideDiameter': '51 mm', 'case.wall': '6.5 mm' },
    /thread|case|wall/,
  ],
  [
    'runout groove through the case',
    'plover',
    { [`${aft}.thread.reliefDiameter`]: '55.2 mm' },
    /reliefDiameter/,
  ],
  [
    'thread that ends outside the case',
    'plover',
    { [`${aft}.layout.threadStart`]: '30 mm' },
    /threadStart|thread/,
  ],
  [
    'face groove wider than the case',
    'plover',
    { [`${aft}.seals.0.grooveOutsideDiameter`]: '56 mm' },
    /groove/,
  ],
];

describe('impossible and unsafe motors', () => {
  test('there are at least sixty, none twice', () => {
    expect(new Set(impossible.map(([what]) => what)).size).toBeGreaterThanOrEqual(60);
  });

  test.each(impossible)('%s', (_, motor, changes, named) => {
    const { outcome, against } = judged(changed(motor, changes));
    expect(['refused', 'does not hold'], against.join('\n')).toContain(outcome);
    expect(against.join('\n')).toMatch(named);
  });
});
