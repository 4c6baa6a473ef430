// Hand calculation of the margins of Plover-50 at 5 MPa and room temperature: its retaining ring at the head, its thread aft.
// Every number is worked here from the equation named beside it; nothing is taken from the library.
import { describe, expect, test } from 'vitest';
import { type FailureModeId, parseMotor, quantity, review } from '../../src/index';
import { structureMargins } from '../../src/motor/review/hardware-review';
import { settingsOf } from '../../src/motor/settings';
import { atWorstCaseTolerances } from '../../src/motor/worst-case-tolerances';
import { withChange } from './plover';

const motor = parseMotor(withChange('case.wallTemperature', undefined));
const { margins } = structureMargins(
  atWorstCaseTolerances(motor),
  quantity('gauge pressure', '5 MPag'),
  quantity('force', '100 N'),
  settingsOf(motor),
);
const { PI: π, sqrt, tan } = Math;

// 6061-T6 drawn tube, MIL-HDBK-5J table 3.6.2.0(c1), A basis: F_tu 42, F_ty 35, F_su 27 ksi. Aluminum Association: E 68.9 GPa, ν 0.33.
const ksi = 6.894757;
const [Ftu, Fty, Fsu] = [42 * ksi, 35 * ksi, 27 * ksi];
const Fsy = Fty / sqrt(3); // von Mises
const [E, ν] = [68900, 0.33];
// Factors of the set 'ground test': 1.5 on yield, 2 on ultimate (engineering practice, no published source).
const p = 5; // MPa, mm and N throughout

/** Expects applied stress [MPa] or load [N] and margin of a mode, within half a unit of the fourth digit. */
const agrees = (
  part: 'head-joint' | 'aft-joint',
  id: FailureModeId,
  applied: number,
  allowable: number,
  { unit = 'MPa', relTol = 5e-5 }: { readonly unit?: 'MPa' | 'N'; readonly relTol?: number } = {},
): void =>
  test(id, () => {
    const found = margins.find((one) => one.part === part && one.id === id);
    const factor = found?.limit === 'yield' ? 1.5 : 2;
    const scale = unit === 'MPa' ? 1e6 : 1;
    expect(Math.abs((found?.applied.si ?? 0) / scale / applied - 1)).toBeLessThan(relTol);
    const margin = allowable / (factor * applied) - 1;
    expect(Math.abs((found?.marginOfSafety ?? Number.NaN) - margin)).toBeLessThan(relTol * (1 + margin));
  });

describe('retaining ring DIN 472 38 in a bore of 55.02 − 2 · 8.48 = 38.06 mm', () => {
  const [D, Do, t] = [38.06, 55.02, 8.48];
  const F = (p * π * D ** 2) / 4; // end force on the bore: 5688.5 N
  // The groove of 1 ± 0.05 mm: shallow for bearing and land shear, deep for the rest. Ring 1.44 mm, land 6.1 mm at their minimum.
  const [shallow, deep, s, z] = [0.95, 1.05, 1.44, 6.1];

  // Machinery's Handbook, 31st ed., retaining rings: P_r = π D t S_s times the part of the groove in contact, 0.9 for a ring with lugs
  // and gap (engineering practice, no published source): S_s = F/(0.9 π D t) = 36.71 MPa; 700 MPa by its manufacturer.
  const contact = 0.9;
  agrees('head-joint', 'ring-shear', F / (contact * π * D * s), 700);

  // Dishing: lever arm of a sharp edge 0.3 + 0.002 D (ring manufacturers, from memory), plus chamfer 0.2 and radial play
  // (38.06 − 37.88)/2 = 0.09 mm; the capacity of 25 kN falls in proportion to 14 116 N.
  const lever = 0.3 + 0.002 * D;
  agrees('head-joint', 'ring-dishing', F, (25000 * lever) / (lever + 0.2 + (D - 37.88) / 2), { unit: 'N' });

  // The bore opens by u = r/E (σ_h + ν p) with σ_h by Lamé (Roark, thick-walled cylinders).
  const [a, b] = [D / 2, Do / 2];
  const σh = (p * (b ** 2 + a ** 2)) / (b ** 2 - a ** 2);
  const u = (a / E) * (σh + ν * p);
  // Machinery's Handbook: P_g = π D d S_y, on the depth that is left.
  agrees('head-joint', 'groove-bearing-yield', F / (contact * π * D * (shallow - u)), Fty);
  test('the pressure at which the groove yields: the bore opens on the way there', () => {
    // p A = 0.9 π D (d − u p/5) S_y with A = F/5.
    const perDepth = contact * π * D * Fty;
    const failure = (perDepth * shallow) / (F / p + (perDepth * u) / p);
    const found = margins.find(({ id }) => id === 'groove-bearing-yield')?.failurePressure?.in('MPa');
    expect(found).toBeCloseTo(failure, 2);
    expect(failure).toBeLessThan((p * perDepth * (shallow - u)) / F);
  });

  // Land: shear F/(π D_g z), with D_g 39.96 mm of the shallow groove; bending √(6 n d P/(π D_g S_y)) as a stress (manufacturer's
  // page that cites Machinery's Handbook), with 40.16 mm of the deep one.
  const land = F / (π * (D + 2 * shallow) * z);
  agrees('head-joint', 'land-shear-yield', land, Fsy);
  agrees('head-joint', 'land-shear', land, Fsu);
  const Dg = D + 2 * deep;
  agrees('head-joint', 'land-bending-yield', (6 * F * deep) / (π * Dg * z ** 2), Fty);

  // Wall under the groove: F over the ring of metal; Lamé at its bottom.
  const tension = F / ((π / 4) * (Do ** 2 - Dg ** 2));
  agrees('head-joint', 'groove-wall-tension-yield', tension, Fty);
  agrees('head-joint', 'groove-wall-tension', tension, Ftu);
  const hoop = (p * (Do ** 2 + Dg ** 2)) / (Do ** 2 - Dg ** 2);
  agrees('head-joint', 'groove-hoop-yield', hoop, Fty);
  agrees('head-joint', 'groove-hoop', hoop, Ftu);
  // Plastic hinge M/M_p + (N/N_p)² = 1 with the thrust t/2 off the middle (Hodge, from memory).
  const w = (Do - Dg) / 2;
  const collapse = π * ((Do + Dg) / 2) * w * Fty * (sqrt(1 + (t / w) ** 2) - t / w);
  agrees('head-joint', 'groove-wall-folding-yield', tension, (tension * collapse) / F);

  test('the checks of the ring tables: three depths of land, 60 % of the wall', () => {
    const { checks } = structureMargins(
      atWorstCaseTolerances(motor),
      quantity('gauge pressure', '5 MPag'),
      quantity('force', '100 N'),
      settingsOf(motor),
    );
    const of = (name: string) => checks.find(({ check, part }) => part === 'head-joint' && check === name);
    // Machinery's Handbook, page 1916: 3 · 1.05 = 3.15 mm, more than shear 3 n P/(S_y D_g π) = 0.84 and bending 1.33 mm.
    expect(of('edge margin of the groove')?.message).toContain('6.1 mm (required ≥ 3.15 mm');
    // 1 − 1.05/8.48 = 0.8762.
    expect(of('wall under the groove')?.value).toBeCloseTo(0.8762, 4);
  });
});

describe('thread M50x1.5 with 11.5 mm engaged in the narrowest case of 54.98 mm', () => {
  const [d, P, L] = [50, 1.5, 11.5];
  const F = (p * π * d ** 2) / 4; // pressure on the whole thread, as past a leaking seal
  const d2 = d - 0.649519 * P; // ISO 724
  // Flanks push outward: F tan 30°/(π d_2 L) (statics).
  const q = p + (F * tan(π / 6)) / (π * d2 * L);
  // The wall outside the relief of 50.5 mm, by Lamé under both.
  const [a, b] = [50.5 / 2, 54.98 / 2];
  const hoop = (q * (b ** 2 + a ** 2)) / (b ** 2 - a ** 2);
  agrees('aft-joint', 'thread-hoop-yield', hoop, Fty);
  agrees('aft-joint', 'thread-hoop', hoop, Ftu);
  // It opens by 2 r/E (σ_h + ν q).
  const opening = ((2 * a) / E) * (hoop + ν * q);

  // ISO 965-1 tables (from memory), P 1.5 mm, 45 to 90 mm: deviation g −32 µm; tolerance of the major diameter 236, of the pitch
  // diameter 160 outside and 212 inside, of the internal minor diameter 300 µm.
  const [dMin, d2Min] = [d - 0.032 - 0.236, d2 - 0.032 - 0.16];
  const [D2Max, D1Max] = [d2 + 0.212 + opening, d - 1.082532 * P + 0.3 + opening];
  // FED-STD-H28/2: A = π L d/P (P/2 + Δ/√3).
  const ofCase = ((π * L) / P) * dMin * (P / 2 + (dMin - D2Max) / sqrt(3));
  agrees('aft-joint', 'case-thread-shear-yield', F / ofCase, Fsy, { relTol: 1e-3 });
  agrees('aft-joint', 'case-thread-shear', F / ofCase, Fsu, { relTol: 1e-3 });
  // The library rounds the tolerances of the closure's flanks up to 170 and 315 µm, on the safe side: 1.8 % of the area.
  const ofClosure = ((π * L) / P) * D1Max * (P / 2 + (d2Min - D1Max) / sqrt(3));
  agrees('aft-joint', 'closure-thread-shear-yield', F / ofClosure, Fsy, { relTol: 0.018 });
  agrees('aft-joint', 'closure-thread-shear', F / ofClosure, Fsu, { relTol: 0.018 });

  // Tension over the wall outside the relief, and its plastic hinge: the flanks bear at d_2.
  const tension = F / (π * (b ** 2 - a ** 2));
  agrees('aft-joint', 'thread-wall-tension-yield', tension, Fty);
  agrees('aft-joint', 'thread-wall-tension', tension, Ftu);
  const [w, arm] = [b - a, (a + b) / 2 - d2 / 2];
  const collapse = π * (a + b) * w * Fty * (sqrt(1 + ((2 * arm) / w) ** 2) - (2 * arm) / w);
  agrees('aft-joint', 'thread-wall-folding-yield', tension, (tension * collapse) / F);
});

test('the governing modes of both ends and their margins', () => {
  const least = (part: string): string => {
    const [first] = margins
      .filter((one) => one.part === part)
      .sort((x, y) => x.marginOfSafety - y.marginOfSafety);
    return `${first.id} ${first.marginOfSafety.toFixed(2)}`;
  };
  // 14 116/(2 · 5688.5) − 1 = 0.24, of the ring by its dishing.
  expect(least('head-joint')).toBe('ring-dishing 0.24');
  expect(least('aft-joint')).toMatch(/^thread-/);
});

describe('the notches of both in fatigue, as factors on the tension of the wall', () => {
  const factorOf = (name: string): number =>
    review(motor)
      .reuse.parts.flatMap(({ features }) => features)
      .find(({ feature }) => feature === name)?.notchFactor ?? Number.NaN;

  test('groove: Roark, table 17.1, with the wall for the radius; thrust half a wall off the middle of what is left', () => {
    // Depth 1.05 mm, root 0.1 mm (assumed), wall 8.48 mm: h/r 10.5 and h/t 0.12382.
    const [ratio, x] = [10.5, 1.05 / 8.48];
    const root = sqrt(ratio);
    const [c1, c2, c3, c4] = [
      0.935 + 1.922 * root + 0.004 * ratio,
      0.537 - 3.708 * root + 0.04 * ratio,
      -2.538 + 3.438 * root - 0.012 * ratio,
      2.066 - 1.652 * root - 0.031 * ratio,
    ];
    // Bending/tension: 6 · 4.24/7.43 = 3.424.
    const factor = (c1 + x * (c2 + x * (c3 + x * c4))) * (1 + (6 * (8.48 / 2)) / 7.43);
    expect(factorOf('root of the ring groove') / factor).toBeCloseTo(1, 4);
  });
  test('thread: 3.8 cut (Shigley, table 8-16, from memory); flanks off the middle of 2.24 mm of wall', () => {
    const arm = (54.98 + 50.5) / 4 - (50 - 0.649519 * 1.5) / 2;
    expect(factorOf('thread run-out of the case') / (3.8 * (1 + (6 * arm) / 2.24))).toBeCloseTo(1, 4);
  });
});
