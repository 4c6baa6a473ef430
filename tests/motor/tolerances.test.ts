// A tolerance may never leave more than no tolerance: whatever it is given to, the worse end is what is judged.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { demoMotor, type Motor, parseMotor, review } from '../../src/motor';
import { structureMargins } from '../../src/motor/review/hardware-review';
import { settingsOf } from '../../src/motor/settings';
import { placedValues } from '../../src/motor/varied-motor';
import { atWorstCaseTolerances } from '../../src/motor/worst-case-tolerances';
import { partName } from '../../src/structures';
import { q } from '../../src/units';

type Json = { [key: string]: Json } & { value?: unknown };

const whole = (): Json => {
  const document = JSON.parse(JSON.stringify(demoMotor()));
  document.closures.head.temperature = '80 degC';
  // Given at the head, where nothing else says it; at the aft end it follows from the layout.
  delete document.closures.head.layout;
  delete document.closures.head.seals[0].position;
  document.closures.head.joint.sealToHoles = '10 mm';
  document.closures.head.joint.positionTolerance = '0.1 mm';
  Object.assign(document.stand.members, { angle: '10 deg', endFactor: 1.1 });
  Object.assign(document.stand.restraint, { legAngle: '20 deg', designFactor: 5 });
  document.meop = { samples: 100, seed: 1 };
  return document;
};
const bare = (node: Json): Json =>
  Array.isArray(node)
    ? (node.map((one: Json) => bare(one)) as unknown as Json)
    : typeof node === 'object' && node !== null
      ? 'plusMinus' in node
        ? (node.value as Json)
        : (Object.fromEntries(Object.entries<Json>(node).map(([key, value]) => [key, bare(value)])) as Json)
      : node;

const document = bare(whole());
const sound = parseMotor(document);
/** With a retaining ring, a thread and a seal in a face. */
const ringed = bare(JSON.parse(readFileSync('examples/motors/plover-50.json', 'utf8')));
const parts = ['case', 'closures', 'nozzle', 'stand', 'instruments', 'temperatureRange'] as const;

/** The document with a tolerance of a fiftieth at a place. */
function withTolerance(path: readonly (string | number)[], of = document): Motor | undefined {
  const copy = structuredClone(of);
  const owner = path.slice(0, -1).reduce<Json>((node, key) => node[key], copy);
  const key = path[path.length - 1];
  const value: unknown = owner[key];
  const half = (text: string): string => {
    const [number, unit = ''] = text.split(' ');
    const [above = '1', below = '1'] = number.split('/');
    const difference = unit === 'degC' ? 'delta_degC' : unit.replace('psig', 'psi');
    return `${(0.02 * Number(above)) / Number(below)} ${difference}`;
  };
  owner[key] = {
    value,
    plusMinus: typeof value === 'number' ? 0.02 * value : half(String(value)),
  } as unknown as Json;
  try {
    return parseMotor(copy);
  } catch {
    return undefined; // out of the field's own domain
  }
}

const [pressure, thrust] = [q('5 MPag'), q('650 N')];
const margins = (motor: Motor) =>
  new Map(
    structureMargins(
      atWorstCaseTolerances(motor),
      pressure.as('gauge pressure'),
      thrust.as('force'),
      settingsOf(motor),
    ).margins.map((one) => [`${partName(one.part)}: ${one.mode}`, one.marginOfSafety]),
  );

describe('tolerances of the hardware', () => {
  const before = margins(sound);
  const places = placedValues(sound, parts);

  test('the places are those of the document', () => {
    expect(places.length).toBeGreaterThan(50);
  });

  test.each(places.map(({ name, path }) => [name, path] as const))('%s: no margin rises', (_, path) => {
    const toleranced = withTolerance(path);
    if (toleranced === undefined) return;
    for (const [mode, after] of margins(toleranced)) {
      const without = before.get(mode) ?? Number.NaN;
      expect(after, mode).toBeLessThanOrEqual(without + 1e-12 * Math.abs(without));
    }
  });

  test.each([
    ['closures.head.joint.gap', 'head joint: combined bolt bending and shear'],
    ['closures.head.opening', 'head closure: bending of the plate'],
    ['closures.head.temperature', 'head closure: bending of the plate'],
    ['case.wallTemperature', 'case: yield at the bore, hoop stress'],
    [
      'nozzle.throatDiameter',
      'throat insert: hoop tension, unsupported, full chamber pressure at the throat',
    ],
    [
      'nozzle.insert.tensileStrength',
      'throat insert: hoop tension, unsupported, full chamber pressure at the throat',
    ],
    ['stand.members.length', 'stand: buckling of a member'],
    ['stand.members.secondMoment', 'stand: buckling of a member'],
    ['stand.anchors.weight', 'stand: anchor uplift'],
    ['stand.restraint.slack', 'restraint: wire rope with terminations'],
    ['stand.restraint.ropeLength', 'restraint: wire rope with terminations'],
    ['stand.restraint.shackle', 'restraint: shackle'],
  ])('%s counts against %s', (name, mode) => {
    const path = places.find((one) => one.name === name)?.path ?? [];
    const toleranced = withTolerance(path);
    expect(toleranced).toBeDefined();
    if (toleranced !== undefined)
      expect(margins(toleranced).get(mode)).toBeLessThan(before.get(mode) ?? Number.NaN);
  });
});

describe('tolerances of a retaining ring, a thread and a seal in a face', () => {
  const motor = parseMotor(ringed);
  const before = margins(motor);
  const places = placedValues(motor, ['case', 'closures']);

  test.each(places.map(({ name, path }) => [name, path] as const))('%s: no margin rises', (_, path) => {
    const toleranced = withTolerance(path, ringed);
    if (toleranced === undefined) return;
    for (const [mode, after] of margins(toleranced)) {
      const without = before.get(mode) ?? Number.NaN;
      expect(after, mode).toBeLessThanOrEqual(without + 1e-12 * Math.abs(without));
    }
  });

  test.each([
    ['closures.head.retainingRing.grooveDepth', 'head joint: bearing of the groove, yield'],
    ['closures.head.retainingRing.grooveDepth', 'head joint: hoop at the groove'],
    ['closures.head.retainingRing.edgeMargin', 'head joint: shear of the land'],
    ['closures.head.retainingRing.thickness', 'head joint: shear of the ring'],
    ['closures.head.retainingRing.shearStrength', 'head joint: shear of the ring'],
    ['closures.aft.thread.engagement', "aft joint: shear of the case's thread"],
    ['closures.aft.thread.reliefDiameter', 'aft joint: hoop at the thread'],
  ])('%s counts against %s', (name, mode) => {
    const path = places.find((one) => one.name === name)?.path ?? [];
    const toleranced = withTolerance(path, ringed);
    expect(toleranced).toBeDefined();
    if (toleranced !== undefined)
      expect(margins(toleranced).get(mode)).toBeLessThan(before.get(mode) ?? Number.NaN);
  });
});

describe('a review with a tolerance on every value', () => {
  test('counts each or says that it does not, and no sensor gains', () => {
    const all = placedValues(parseMotor(document), [
      ...parts,
      'liner',
      'propellant',
      'grain',
      'ignition',
      'ambient',
    ]);
    const copy = structuredClone(document);
    for (const { path } of all) {
      const one = withTolerance(path);
      if (one === undefined) continue;
      const ownerIn = (of: Json): Json => path.slice(0, -1).reduce<Json>((node, key) => node[key], of);
      const key = path[path.length - 1];
      ownerIn(copy)[key] = ownerIn(one.document as unknown as Json)[key];
    }
    const [toleranced, without] = [review(parseMotor(copy)), review(sound)];
    toleranced.instruments.forEach((one, i) => {
      expect(one.headroom).toBeLessThan(without.instruments[i].headroom ?? 0);
    });
    const ratio = (of: typeof toleranced) => Number(of.flow[0].value);
    expect(ratio(toleranced)).toBeLessThan(ratio(without));
    const said = toleranced.assumptions.join('\n');
    for (const name of ['case.chamberLength', 'liner.thickness', 'nozzle.exitDiameter', 'grain.spacing'])
      expect(said).toContain(`The tolerance of ${name} is neglected`);
    for (const name of ['case.wall', 'closures.head.joint.gap', 'propellant.density'])
      expect(said).not.toContain(`The tolerance of ${name} `);
  });
});

describe("a material of one's own", () => {
  test('is judged at the lower end of its strength', () => {
    const own = (yieldStrength: unknown) => {
      const copy = structuredClone(document);
      copy.case.material = {
        name: 'own',
        form: 'tube',
        class: 'metal',
        yieldStrength: { value: yieldStrength, basis: 'S', source: 'certificate' },
        ultimateStrength: { value: '300 MPa', basis: 'S', source: 'certificate' },
        shearUltimate: { value: '190 MPa', basis: 'S', source: 'certificate' },
      } as unknown as Json;
      delete copy.case.wallTemperature;
      delete copy.closures;
      return margins(parseMotor(copy)).get('case: yield at the bore, hoop stress');
    };
    expect(own({ value: '250 MPa', plusMinus: '20 MPa' })).toBe(own('230 MPa'));
  });
});
