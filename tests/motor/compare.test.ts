import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { detectClipping, readLog, reduceFiring } from '../../src/firing';
import {
  compare,
  demoMotor,
  type MotorDocument,
  parseMotor,
  patchMotor,
  predict,
  reductionInputs,
  report,
  review,
} from '../../src/motor';

const cracked = parseMotor(readFileSync('examples/motors/tern-54-cracked.json', 'utf8'));

describe('compare', () => {
  test('a firing that is the prediction asks for nothing and speaks against nothing but the missing temperature', () => {
    const found = compare(demoMotor(), { firing: predict(demoMotor()) });
    expect(found.patch).toEqual({});
    expect(found.patchReasons).toEqual([]);
    for (const { ratio, figure } of found.figures) expect(ratio, figure).toBeCloseTo(1, 6);
    const against = found.reuse.findings.filter(({ effect }) => effect === 'adverse');
    expect(against.map(({ finding }) => finding)).toEqual([
      'No temperature was recorded; the case temperature is not known.',
    ]);
  });

  test('brings the constants of a motor that burned otherwise into the document', () => {
    const truth = patchMotor(demoMotor(), {
      propellant: {
        characteristicVelocityEfficiency: { value: 0.92, plusMinus: 0.015 },
        burnLaw: { referenceRate: { value: '7.6 mm/s', plusMinus: '4 %' } },
      },
    });
    const fired = predict(truth);
    const { patch } = compare(demoMotor(), { firing: fired });
    const updated = patchMotor(demoMotor(), patch);
    // The constants that the firing was made with.
    const off = (found: number, made: number): number => Math.abs(found / made - 1);
    expect(off(updated.propellant.characteristicVelocityEfficiency.value.si, 0.92)).toBeLessThan(0.003);
    expect(off(updated.propellant.burnLaw.referenceRate?.value.si ?? 0, 7.6e-3)).toBeLessThan(0.005);
    expect(off(predict(updated).peakPressure.si, fired.peakPressure.si)).toBeLessThan(0.005);
    // What the patch does not name stays as it was.
    expect(updated.document.nozzle).toEqual(JSON.parse(JSON.stringify(demoMotor().nozzle)));
  });

  // Planted truths: the firing is the prediction of a motor that differs from the document in a known way.
  const planted = (patch: Parameters<typeof patchMotor>[1]) =>
    compare(demoMotor(), { firing: predict(patchMotor(demoMotor(), patch)) });

  test('another throat is told from another c*: the pressure differs and the impulse does not', () => {
    for (const factor of [0.97, 1.03]) {
      const found = planted({ nozzle: { throatDiameter: `${10.6 * factor} mm` } });
      const updated = patchMotor(demoMotor(), found.patch);
      const diameter = updated.nozzle.throatDiameter.value.in('mm');
      expect(Math.abs(diameter / (10.6 * factor) - 1)).toBeLessThan(0.002);
      expect(updated.propellant.characteristicVelocityEfficiency.value.si).toBe(0.95);
      expect(found.diagnosis).toEqual([]);
    }
  });

  test('a throat that wears is told from another c*, with what one size of it leaves unexplained', () => {
    const found = planted({ nozzle: { throatErosion: '0.15 mm/s' } });
    expect(Object.keys(found.patch)).toEqual(['nozzle']);
    expect(found.patchReasons.join()).toContain('may have eroded');
    expect(found.diagnosis.join()).toContain('This does not explain the whole firing');
  });

  test('another c* is patched, and nobody is told that no constant explains the firing', () => {
    const found = planted({ propellant: { characteristicVelocityEfficiency: 0.912 } });
    const updated = patchMotor(demoMotor(), found.patch);
    expect(updated.propellant.characteristicVelocityEfficiency.value.si).toBeCloseTo(0.912, 3);
    expect(found.diagnosis).toEqual([]);
    expect(report(found)).not.toContain('No single model constant');
  });

  test('a rate of 5 % more is patched alone', () => {
    const { patch } = planted({ propellant: { burnLaw: { referenceRate: '7.56 mm/s' } } });
    const updated = patchMotor(demoMotor(), patch);
    expect(Object.keys(patch)).toEqual(['propellant']);
    expect(updated.propellant.characteristicVelocityEfficiency.value.si).toBe(0.95);
    expect((updated.propellant.burnLaw.referenceRate?.value.in('mm/s') ?? 0) / 7.56).toBeCloseTo(1, 2);
  });

  test('a law of bands has every rate changed', () => {
    const band = { referenceRate: '7.2 mm/s', referencePressure: '4 MPaa', exponent: 0.32 };
    const bands = [
      { from: '0.1 MPaa', to: '2 MPaa', ...band },
      { from: '2 MPaa', to: '10 MPaa', ...band },
    ];
    const power = { referenceRate: null, referencePressure: null, exponent: null };
    const banded = patchMotor(demoMotor(), { propellant: { burnLaw: { ...power, bands } } });
    const quick = bands.map((one) => ({ ...one, referenceRate: '7.56 mm/s' }));
    const fired = predict(patchMotor(banded, { propellant: { burnLaw: { bands: quick } } }));
    const updated = patchMotor(banded, compare(banded, { firing: fired }).patch);
    for (const { referenceRate: rate } of updated.propellant.burnLaw.bands ?? [])
      expect(rate.value.in('mm/s') / 7.56).toBeCloseTo(1, 2);
  });

  const withCracks = (to: `${number} mm`, ...angles: readonly `${number} deg`[]) => {
    const [segment] = demoMotor().grain.segments;
    const flaws = angles.map((angle) => ({
      flaw: 'radial crack' as const,
      angle,
      innerRadius: '11 mm' as const,
      outerRadius: '24 mm' as const,
      from: '0 mm' as const,
      to,
    }));
    // Without erosive burning, so that the crack is the only difference of the area.
    const { propellant } = demoMotor();
    const plain: MotorDocument = {
      ...demoMotor(),
      propellant: { ...propellant, erosiveBurning: { law: 'none' } },
    };
    const flawed = patchMotor(plain, { grain: { segments: [{ ...segment, flaws }] } });
    return compare(plain, { firing: predict(flawed) });
  };

  test('cracks are told with their size, and no constant is changed for them', () => {
    const { patch, diagnosis, impliedArea } = withCracks('76 mm', '0 deg', '180 deg');
    expect(patch).toEqual({});
    expect(diagnosis.join(' ')).toContain('This is consistent with cracks');
    // Two cracks as drawn: 13 mm deep, 76 mm long. They shrink from the start, so that the trace shows less than that.
    const shown = (impliedArea?.flaw?.crackArea.in('cm^2') ?? 0) / (2 * 1.3 * 7.6);
    expect(shown).toBeGreaterThan(0.6);
    expect(shown).toBeLessThan(1.05);
  });

  test('a crack too small for a size is still told from a wrong constant', () => {
    const { patch, diagnosis } = withCracks('50 mm', '0 deg');
    expect(patch).toEqual({});
    expect(diagnosis.join(' ')).toContain('consistent with a small flaw');
  });

  test('what both ends say alike is one fact', () => {
    const findings = compare(demoMotor(), { firing: predict(cracked) }).reuse.findings.map(
      ({ finding }) => finding,
    );
    expect(
      findings.some((finding) => finding.startsWith('head and aft joint, bearing yield, case wall')),
    ).toBe(true);
    expect(findings.some((finding) => finding.startsWith('aft joint'))).toBe(false);
  });

  test('recovers what the hardware saw from the clipped log of the cracked motor, and says that it is over MEOP', async () => {
    const log = await readLog(readFileSync('examples/motors/tern-54-firing.csv', 'utf8'));
    const reduced = reduceFiring(log, reductionInputs(demoMotor()));
    const found = compare(demoMotor(), { firing: reduced });
    // The log was made from the prediction of the cracked motor (scripts/write-demo-log.ts), clipped at 1000 psi.
    const truth = predict(cracked).peakPressure.si - 101300;
    const seen = found.peakPressureUpperBound?.si ?? 0;
    expect(seen).toBeGreaterThan(0.98 * truth);
    expect(seen).toBeLessThan(1.03 * truth);
    expect(found.reuse.summary).toContain('against');
    const findings = found.reuse.findings.map(({ finding }) => finding).join('\n');
    expect(findings).toContain('2.01 × the design MEOP');
    expect(findings).toContain('saturated');
    expect(found.impliedArea?.flaw?.maxExcessFraction).toBeGreaterThan(0.3);
    // A flawed grain says little of its propellant: no constant is changed.
    expect(found.patch).toEqual({});
  });

  test('margins used are those of the review at the pressure seen', () => {
    const found = compare(demoMotor(), { firing: predict(demoMotor()) });
    const judged = review(demoMotor());
    const mode = 'yield at the bore, hoop stress';
    const at = (list: readonly { readonly mode: string; readonly applied: { readonly si: number } }[]) =>
      list.find((one) => one.mode === mode)?.applied.si ?? Number.NaN;
    // Lamé is linear in the pressure.
    expect(at(found.utilisations) / at(judged.margins)).toBeCloseTo(
      (found.peakPressureUpperBound?.si ?? 0) / judged.meop.pressure.si,
      9,
    );
    for (const { utilisation, applied, allowable } of found.utilisations)
      expect(utilisation).toBe(applied.si / allowable.si);
  });

  test('the verdict lists facts and never permits', () => {
    const text = String(compare(demoMotor(), { firing: predict(demoMotor()) }));
    expect(text).not.toMatch(/safe to|may be (?:used|flown)|approved|cleared/i);
  });
});

describe('patchMotor', () => {
  test('merges objects, replaces values with their tolerances, and takes away what is null', () => {
    const motor = patchMotor(demoMotor(), {
      nozzle: { throatDiameter: '10.8 mm', throatErosion: null },
      liner: { thickness: '1.1 mm' },
    });
    expect(motor.nozzle.throatDiameter).toMatchObject({ plusMinus: 0 });
    expect(motor.nozzle.throatErosion).toBeUndefined();
    expect(motor.liner?.material.name).toBe('paper tube');
    expect(() => patchMotor(demoMotor(), { nozzle: { throatDiameter: '-1 mm' } })).toThrow(/throatDiameter/);
  });
});

test('no limit of a channel is seen in what a nozzle does before it flows full', () => {
  // Below some 2 MPa the stream of this nozzle leaves its wall, and thrust keeps to another line with pressure.
  for (const throat of ['9 mm', '10.6 mm', '12 mm', '14 mm'] as const)
    for (const rate of ['6 mm/s', '7.2 mm/s'] as const) {
      const record = predict(
        patchMotor(demoMotor(), {
          nozzle: { throatDiameter: throat },
          propellant: { burnLaw: { referenceRate: rate } },
        }),
      );
      expect(detectClipping(record), `${throat}, ${rate}`).not.toHaveProperty('pressure');
      expect(detectClipping(record), `${throat}, ${rate}`).not.toHaveProperty('thrust');
    }
});
