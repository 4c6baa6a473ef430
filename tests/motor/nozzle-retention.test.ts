import { describe, expect, test } from 'vitest';
import {
  demoMotor,
  type MotorDocument,
  motorProblems,
  parseMotor,
  report,
  review as wholeReview,
} from '../../src/motor';
import { hardwareReview } from '../../src/motor/review/hardware-review';
import { settingsOf } from '../../src/motor/settings';
import { allowable } from '../../src/structures';
import { quantity } from '../../src/units';

const pressure = quantity('gauge pressure', '5.1 MPa');

/** The hardware of a motor at a pressure: a review without its firings. */
function review(document: MotorDocument) {
  const motor = parseMotor(document);
  const { structure, problems } = hardwareReview(
    motor,
    pressure,
    quantity('force', '660 N'),
    settingsOf(motor),
  );
  expect(problems).toEqual([]);
  const said = [
    ...structure.cautions.map(({ text }) => text),
    ...structure.margins.flatMap((one) => one.cautions),
  ];
  return { ...structure, meop: { pressure }, said: said.join('\n') };
}

type Nozzle = MotorDocument['nozzle'];
type Insert = NonNullable<Nozzle['insert']>;
type Aft = NonNullable<NonNullable<MotorDocument['closures']>['aft']>;

/** The demo motor without the layout of its aft closure, which is a plate then. */
const sound = ((): MotorDocument => {
  const { closures, ...rest } = demoMotor();
  return { ...rest, closures: { ...closures, aft: { ...(closures?.aft as Aft), layout: undefined } } };
})();
const graphite = sound.nozzle.insert as Insert; // the demo motor has one
const lip = graphite.seat as NonNullable<Insert['seat']>;

interface Change {
  readonly nozzle?: Partial<Nozzle>;
  readonly insert?: Partial<Insert>;
  readonly seat?: Partial<NonNullable<Insert['seat']>>;
  readonly aft?: Partial<Aft>;
}

/** The demo motor with a changed nozzle; its aft closure is in the bore without a layout. */
function changed({ nozzle, insert, seat, aft }: Change, of: MotorDocument = sound): MotorDocument {
  const { closures, nozzle: before } = of;
  const given = before.insert as Insert;
  return {
    ...of,
    closures: { ...closures, aft: { ...(closures?.aft as Aft), ...aft } },
    nozzle: {
      ...before,
      insert: { ...given, seat: { ...given.seat, ...seat } as typeof lip, ...insert },
      ...nozzle,
    },
  };
}

/** The same insert put in from the outside, behind a plate on eight screws of M4 and sealed in its pocket. */
const plate: NonNullable<Nozzle['retainer']> = {
  material: '6061-T6 bar',
  thickness: '6 mm',
  outsideDiameter: '52 mm',
  opening: '20 mm',
  screws: {
    thread: 'M4',
    boltClass: '10.9',
    count: 8,
    boltCircle: '39 mm',
    engagement: '8 mm',
    depth: '10 mm',
    holeDiameter: '4.5 mm',
    headDiameter: '8 mm',
    preload: '2 kN',
  },
};
const outside = changed({
  nozzle: { retainer: plate },
  insert: { length: '14 mm' },
  seat: {
    insertedFrom: 'outside',
    pocketDepth: '15 mm',
    sealDiameter: '26.2 mm',
    thicknessAtOpening: '8 mm',
  },
});
const withPlate = (
  change: Partial<typeof plate>,
  screws: Partial<(typeof plate)['screws']> = {},
): MotorDocument => ({
  ...outside,
  nozzle: { ...outside.nozzle, retainer: { ...plate, ...change, screws: { ...plate.screws, ...screws } } },
});

const marginOf = (motor: ReturnType<typeof review>, id: string): number => {
  const found = motor.margins.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no margin ${id}`);
  return found.marginOfSafety;
};

describe('margins of the retention against hand calculations', () => {
  test('an insert on the lip of the closure', () => {
    const found = review(sound);
    const p = found.meop.pressure.in('MPa');
    // Limits of the document, mm: pocket 26.15 + 0.05 by 12 + 0.1 deep, insert 26 − 0.05, opening 20 ± 0.05, throat 10.6 + 0.05.
    const [pocket, insert, wide, narrow] = [26.2, 25.95, 20.05, 19.95];
    // Statics: F = p·π/4·D².
    const force = (p * Math.PI * pocket ** 2) / 4;
    expect(found.retention?.blocked.in('N')).toBeCloseTo(force, 1);
    // A third of the ring between insert and opening bears; 90 MPa of the certificate, ultimate factor 2.
    const bearing = force / ((Math.PI / 4) * (insert ** 2 - wide ** 2)) / (1 / 3);
    expect(marginOf(found, 'seat-bearing')).toBeCloseTo(90 / (2 * bearing) - 1, 8);
    // Pure shear on 14 mm at the narrowest opening; 28 MPa of the certificate.
    const plug = force / (Math.PI * narrow * 14);
    expect(marginOf(found, 'insert-plug-shear')).toBeCloseTo(28 / (2 * plug) - 1, 8);
    // A plate supported at the wall of the pocket, its throat plugged (Timoshenko, circular plates with a hole); ν 0.2.
    const [a, b] = [pocket / 2, 10.65 / 2];
    const bending = (3 * p * (3.2 * a ** 2 + 0.8 * b ** 2)) / (4 * 20 ** 2);
    expect(marginOf(found, 'insert-bending')).toBeCloseTo(28 / (2 * bending) - 1, 8);
    // The lip, 17.9 − 12.1 = 5.8 mm thick, shears at the insert; strengths of the bar at the temperature of the case.
    const at = { material: '6061-T6 bar', temperature: '90 degC' } as const;
    const strength = (property: 'shear ultimate' | 'yield'): number =>
      allowable({ ...at, property }).value.in('MPa');
    const shear = force / (Math.PI * insert * 5.8);
    expect(marginOf(found, 'lip-shear')).toBeCloseTo(strength('shear ultimate') / (2 * shear) - 1, 8);
    expect(marginOf(found, 'lip-shear-yield')).toBeCloseTo(
      strength('yield') / Math.sqrt(3) / (1.5 * shear) - 1,
      8,
    );
    expect(marginOf(found, 'lip-bearing-yield')).toBeCloseTo(strength('yield') / (1.5 * bearing) - 1, 8);
    // 3.1 mm wide and 5.8 mm thick: no bending.
    expect(found.margins.some(({ id }) => id === 'lip-bending')).toBe(false);
  });

  test('a thin lip bends', () => {
    const found = review(changed({ seat: { pocketDepth: '15.5 mm' } }));
    const p = found.meop.pressure.in('MPa');
    const force = (p * Math.PI * 26.2 ** 2) / 4;
    // Cantilever of (26.2 − 19.95)/2 = 3.125 mm, 17.9 − 15.5 = 2.4 mm thick, per mm of the circumference of the pocket.
    const stress = ((force / (Math.PI * 26.2)) * 3.125 * 6) / 2.4 ** 2;
    const strength = allowable({
      material: '6061-T6 bar',
      property: 'ultimate',
      temperature: '90 degC',
    }).value.in('MPa');
    expect(marginOf(found, 'lip-bending')).toBeCloseTo(strength / (2 * stress) - 1, 8);
  });

  test('an insert behind a screwed plate', () => {
    expect(motorProblems(outside)).toEqual([]);
    const found = review(outside);
    expect(found.unjudged).toEqual(review(sound).unjudged);
    const p = found.meop.pressure.in('MPa');
    const force = (p * Math.PI * 26.2 ** 2) / 4;
    // Equal shares of 8 screws and 30 % for prying (quoted from memory); the preload of 2 kN may be 25 % less with a torque
    // wrench (Machinery's Handbook) and loses 5 % by embedding. Heat changes the preload,
    // so that only the order of the separating load is compared here.
    const share = (1.3 * force) / 8;
    const separation = found.margins.find(({ id }) => id === 'joint-separation');
    expect(separation?.part).toBe('nozzle-retainer');
    expect(separation?.applied.in('N')).toBeCloseTo(share, 6);
    const least = 2000 * 0.75 * 0.95;
    expect(separation?.allowable.in('N')).toBeGreaterThan(0.5 * least);
    expect(separation?.allowable.in('N')).toBeLessThan(2 * least);
    // Breaking: no more than the stress area of M4, 8.78 mm², at 1040 MPa (ISO 898-1).
    const breaking = found.margins.find(({ id }) => id === 'tension-bolt-break');
    expect(breaking?.applied.in('N')).toBeCloseTo(share, 6);
    expect(breaking?.allowable.in('N')).toBeLessThanOrEqual(8.78 * 1040);
    // Exact moment of an annular plate, M = F/(4·π)·(2·(1 + ν)·a²/(a² − b²)·ln(a/b) + 1 − ν), ν 0.33, on 19.5 and 10 mm.
    const bent = ((2.66 * 19.5 ** 2) / (19.5 ** 2 - 10 ** 2)) * Math.log(1.95) + 0.67;
    const bending = found.margins.find(({ id }) => id === 'retainer-bending');
    expect(bending?.applied.in('MPa')).toBeCloseTo((6 * (force / (4 * Math.PI)) * bent) / 6 ** 2, 6);
    const shear = found.margins.find(({ id }) => id === 'retainer-shear');
    expect(shear?.applied.in('MPa')).toBeCloseTo(force / (Math.PI * 25.95 * 6), 6);
  });
});

describe('what bears on the retention', () => {
  test('the review reports the force, its bounds and what limits them', () => {
    const found = wholeReview(sound);
    const { blocked, annulus, flowing } = found.retention ?? {};
    expect(blocked?.si).toBeCloseTo((found.meop.pressure.si * Math.PI * 0.0262 ** 2) / 4, 6);
    expect(annulus?.si).toBeLessThan(blocked?.si ?? 0);
    expect(flowing?.si).toBeLessThan(annulus?.si ?? 0);
    expect(String(found)).toContain('nozzle retention: ');
    expect(report(found)).toContain('force with the throat blocked');
  });
  test('without a described seat the nozzle is not evaluated', () => {
    const { seat: _, ...bare } = graphite;
    const found = review({ ...sound, nozzle: { ...sound.nozzle, insert: bare } });
    expect(found.retention).toBeUndefined();
    expect(found.unjudged.map(({ reason }) => reason).join()).toContain('nozzle.insert.seat not specified');
  });
  test('a typical strength has a factor of 4, one of a certificate that of the motor', () => {
    const { compressiveStrength: _, tensileStrength: __, ...typical } = graphite;
    const found = review({ ...sound, nozzle: { ...sound.nozzle, insert: typical } });
    const factors = found.margins.filter(({ part }) => part === 'throat-insert').map(({ factor }) => factor);
    expect(new Set(factors)).toEqual(new Set([4]));
    expect(found.said).toContain('Specify nozzle.insert.compressiveStrength');
  });
  test('a bond is not relied on, and pressure reaches the screws of a plate without a seal', () => {
    const bonded = review(changed({ seat: { bond: 'epoxy' } }));
    expect(bonded.said).toContain('The bond (epoxy) is not relied on');
    expect(bonded.margins.map(({ marginOfSafety }) => marginOfSafety)).toEqual(
      review(sound).margins.map(({ marginOfSafety }) => marginOfSafety),
    );
    const { sealDiameter: _, ...open } = outside.nozzle.insert?.seat ?? lip;
    const leaking = review(changed({ insert: { seat: open } }, outside));
    // 39 mm and 26.2 mm: the force goes with the square.
    const ratio = (leaking.retention?.blocked.si ?? 0) / (review(outside).retention?.blocked.si ?? 1);
    expect(ratio).toBeCloseTo((39 / 26.2) ** 2, 6);
  });
  test('a plate of a material without a shear strength is not evaluated, and said so', () => {
    const strength = (value: `${number} MPa`) => ({ value, basis: 'S', source: 'invented' }) as const;
    const material = {
      name: 'bronze of a scrap',
      form: 'bar',
      class: 'metal',
      yieldStrength: strength('200 MPa'),
      ultimateStrength: strength('300 MPa'),
    } as const;
    const found = review(withPlate({ material }));
    const said = found.unjudged.filter(({ part }) => part === 'nozzle-retainer').map(({ reason }) => reason);
    expect(said.join()).toContain('bronze of a scrap');
    expect(found.margins.some(({ id }) => id === 'retainer-bending')).toBe(false);
    expect(found.margins.some(({ id }) => id === 'seat-bearing')).toBe(true);
  });
  test('the pocket is the hole of the plate', () => {
    const stress = (motor: MotorDocument): number =>
      review(motor).margins.find(({ id, part }) => id === 'plate-bending' && part === 'aft-closure')?.applied
        .si ?? 0;
    expect(stress(sound)).toBeGreaterThan(stress(changed({ insert: { seat: undefined } })));
  });
});

/** Impossible nozzles, each made from a sound motor by one change, and the field that is named. */
const refused: readonly (readonly [what: string, motor: MotorDocument, field: string])[] = [
  [
    'an insert wider than the bore',
    changed({ insert: { outsideDiameter: '60 mm' } }),
    'nozzle.insert.outsideDiameter',
  ],
  [
    'an insert wider than its pocket',
    changed({ insert: { outsideDiameter: '27 mm' } }),
    'nozzle.insert.seat.pocketDiameter',
  ],
  [
    'a pocket narrower than the insert',
    changed({ seat: { pocketDiameter: '25 mm' } }),
    'nozzle.insert.seat.pocketDiameter',
  ],
  [
    'a pocket wider than the closure',
    changed({ seat: { pocketDiameter: '52 mm' } }),
    'nozzle.insert.seat.pocketDiameter',
  ],
  [
    'a pocket through the bottom of the seal groove',
    changed({ seat: { pocketDiameter: '47 mm' } }),
    'nozzle.insert.seat.pocketDiameter',
  ],
  ['an insert that falls through', changed({ aft: { opening: '26.5 mm' } }), 'closures.aft.opening'],
  ['a closed opening', changed({ aft: { opening: '9 mm' } }), 'closures.aft.opening'],
  ['no opening', changed({ aft: { opening: undefined } }), 'closures.aft.opening'],
  [
    'a pocket through the closure',
    changed({ seat: { pocketDepth: '100 mm' } }),
    'nozzle.insert.seat.pocketDepth',
  ],
  ['an insert that reaches the grain', changed({ insert: { length: '40 mm' } }), 'nozzle.insert.length'],
  [
    'a seal inside the opening',
    changed({ seat: { sealDiameter: '15 mm' } }),
    'nozzle.insert.seat.sealDiameter',
  ],
  ['a plate in front of a lip', changed({ nozzle: { retainer: plate } }), 'nozzle.retainer'],
  [
    'put in from the outside with nothing behind',
    changed({ seat: { insertedFrom: 'outside' } }),
    'nozzle.retainer',
  ],
  [
    'a plate without a seat',
    changed({ nozzle: { retainer: plate }, insert: { seat: undefined } }),
    'nozzle.insert.seat',
  ],
  ['a plate that the insert goes through', withPlate({ opening: '26 mm' }), 'nozzle.retainer.opening'],
  ['a plate that closes the throat', withPlate({ opening: '9 mm' }), 'nozzle.retainer.opening'],
  ['a plate wider than the case', withPlate({ outsideDiameter: '70 mm' }), 'nozzle.retainer.outsideDiameter'],
  ['screws in the pocket', withPlate({}, { boltCircle: '29 mm' }), 'nozzle.retainer.screws.boltCircle'],
  ['screws outside the plate', withPlate({}, { boltCircle: '50 mm' }), 'nozzle.retainer.screws.boltCircle'],
  ['screws that overlap', withPlate({}, { count: 40 }), 'nozzle.retainer.screws.count'],
  ['screws through the closure', withPlate({}, { depth: '60 mm' }), 'nozzle.retainer.screws.depth'],
  [
    'an insert longer than its pocket, behind a plate',
    changed({ insert: { length: '16 mm' } }, outside),
    'nozzle.insert.length',
  ],
];
/** Unsafe nozzles, which are described well but do not hold, and what is named. */
const unsafe: readonly (readonly [what: string, motor: MotorDocument, named: string])[] = [
  [
    'an insert that may fall through when off centre',
    changed({ aft: { opening: '24.2 mm' } }),
    'overlap of insert and seat',
  ],
  ['an edge that erodes away', changed({ seat: { erosion: '2 mm' } }), 'overlap of insert and seat'],
  [
    'an insert that stands out of its pocket',
    changed({ seat: { pocketDepth: '8.5 mm' } }),
    'length of the insert in its pocket',
  ],
  ['a seat in the jet', changed({ aft: { opening: '14 mm' } }), 'opening behind the exit cone of the insert'],
  [
    'a pocket close to the tapped holes',
    changed({ insert: { outsideDiameter: '29 mm' }, seat: { pocketDiameter: '29.2 mm' } }),
    'tapped holes of the radial bolts',
  ],
  ['a narrow seat', changed({ aft: { opening: '22.4 mm' } }), 'bearing of the insert on its seat'],
  [
    'weak graphite',
    changed({ insert: { compressiveStrength: '40 MPa' } }),
    'bearing of the insert on its seat',
  ],
  ['a lip like foil', changed({ seat: { pocketDepth: '17.5 mm' } }), 'lip of the seat'],
  ['an insert like a washer', changed({ seat: { thicknessAtOpening: '2 mm' } }), 'shear of the insert'],
  ['a thin plate', withPlate({ thickness: '2 mm' }), 'retainer plate'],
  ['screws too short', withPlate({}, { engagement: '0.3 mm' }), 'shear of the tapped threads'],
  ['two screws', withPlate({}, { count: 2, thread: 'M3' }), 'separation of the clamped parts'],
  [
    'screws on the edge of the pocket',
    withPlate({}, { boltCircle: '32 mm' }),
    'pocket of the insert and the tapped holes of the screws',
  ],
  ['screws too close', withPlate({}, { count: 14 }), 'distance between the centres'],
  ['screws on the edge of the plate', withPlate({ outsideDiameter: '48 mm' }), 'edge of the plate'],
];

describe('an impossible nozzle is refused', () => {
  test.each(refused)('%s', (_, motor, field) => {
    const problems = motorProblems(motor);
    expect(problems.map(({ path }) => path)).toContain(field);
  });
});

describe('an unsafe nozzle does not hold', () => {
  test.each(unsafe)('%s', (_, motor, named) => {
    const found = review(motor);
    const failing = [
      ...found.margins.filter(({ marginOfSafety }) => marginOfSafety < 0).map(({ mode }) => mode),
      ...found.checks.filter(({ passes }) => !passes).map(({ check }) => check),
    ];
    expect(failing.join('; ')).toContain(named);
  });
  test('and both sound ones do', () => {
    for (const motor of [sound, outside]) {
      const { margins, checks } = review(motor);
      expect(margins.filter(({ marginOfSafety }) => marginOfSafety < 0)).toEqual([]);
      expect(checks.filter(({ passes }) => !passes)).toEqual([]);
    }
  });
});

test('one screw too few does not hold, where the number is just enough', () => {
  const margin = (count: number): number =>
    marginOf(review(withPlate({}, { count, preload: '2 kN' })), 'joint-separation');
  const least = [2, 3, 4, 5, 6, 7, 8].find((count) => margin(count) >= 0);
  expect(least).toBeGreaterThan(2);
  expect(margin(Number(least) - 1)).toBeLessThan(0);
});
