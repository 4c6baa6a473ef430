import { describe, expect, test } from 'vitest';
import { demoMotor, flawEnvelope, meop, parseMotor } from '../../src/motor';

const envelope = flawEnvelope(demoMotor());

describe('flawEnvelope', () => {
  test('starts from the worst case without the assumed flaw', () => {
    const { assumedFlaw: _, ...grain } = demoMotor().grain;
    const { worstCase } = meop({ ...demoMotor(), grain });
    expect(envelope.flawFreePeakPressure.si).toBe(worstCase.pressure.si);
  });

  test('pressure rises with the flaw, and a mode of more pressure survives the greater flaw', () => {
    for (const { kind, points } of envelope.curves) {
      const peaks = points.map(({ peak }) => peak.si);
      expect(peaks, kind).toEqual([...peaks].sort((a, b) => a - b));
      expect(peaks[0]).toBeGreaterThanOrEqual(envelope.flawFreePeakPressure.si * 0.999);
    }
    const areas = envelope.rows.map(({ limits }) => limits[1].addedArea?.si ?? Number.MAX_VALUE);
    expect(areas).toEqual([...areas].sort((a, b) => a - b));
  });

  test('the debond at which the first mode gives way does bring the motor to that pressure', () => {
    const [first] = envelope.rows;
    const debond = first.limits.find(({ kind }) => kind === 'debond');
    // A debond all around burns on the wall: its length is the added area over the circumference of 48 mm.
    const total = (debond?.addedArea?.si ?? 0) / (Math.PI * 0.048);
    const base = demoMotor();
    const [segment] = base.grain.segments;
    const whole = Math.floor(total / 0.076);
    const rest = total - whole * 0.076;
    const loose = (length: number) => [
      { flaw: 'debond' as const, from: `${(0.076 - length) * 1000} mm` as const, to: '76 mm' as const },
    ];
    const motor = parseMotor({
      ...base,
      grain: {
        spacing: '2 mm',
        segments: [
          ...Array.from({ length: whole }, () => ({ ...segment, count: 1, flaws: loose(0.076) })),
          { ...segment, count: 1, flaws: loose(rest) },
          { ...segment, count: 4 - whole - 1 },
        ],
      },
    });
    const { worstCase } = meop(motor);
    // Straight lines between simulated sizes: the pressure stated is at most 1 % below a full simulation, and not far above.
    expect(worstCase.pressure.si / first.failurePressure.si).toBeGreaterThan(0.94);
    expect(worstCase.pressure.si / first.failurePressure.si).toBeLessThan(1.01);
  });

  test('says which flaw in words, or that the greatest is survived', () => {
    for (const { limits } of envelope.rows)
      for (const { addedArea, message } of limits)
        expect(addedArea === undefined).toBe(message.startsWith('does not fail with the largest flaw'));
    expect(String(envelope)).toContain('debonded around the circumference');
  });
});
