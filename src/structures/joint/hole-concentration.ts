import { formula, length, ratio, stress } from '../../units';

const net = (x: number): number => 3 + x * (-3.13 + x * (3.66 - 1.53 * x));

const fits = ({
  holeDiameter,
  width,
}: {
  readonly holeDiameter: number;
  readonly width: number;
}): true | string => holeDiameter < width || 'the hole is wider than the strip';

/**
 * Stress concentration of a hole in a strip under tension, on the NET section; for a row of holes the strip is one
 * pitch wide. Use it for fatigue (reuse); ductile metals yield locally, so that static strength ignores it.
 *
 * @example holeStressConcentration({ holeDiameter: '2 mm', width: '10 mm' }) // => 2.50816
 */
export const holeStressConcentration = /* @__PURE__ */ formula({
  name: 'holeStressConcentration',
  title: 'Stress concentration of a hole in a strip, on the net section',
  equation: 'K_t = 3 − 3.13·d / w + 3.66·(d / w)² − 1.53·(d / w)³',
  source:
    "Roark's Formulas for Stress and Strain, table 17.1, central circular hole in a member in axial tension",
  inputs: {
    holeDiameter: length('d', 'diameter of the hole'),
    width: length('w', 'width of the strip; the pitch in a row of holes'),
  },
  output: ratio('K_t', 'peak over average stress of the net section'),
  example: { holeDiameter: '6.4 mm', width: '22 mm' },
  requires: [fits],
  si: ({ holeDiameter, width }) => net(holeDiameter / width),
});

/**
 * Stress concentration of a hole in a strip under tension, on the GROSS section: the net value over (1 − d/w).
 *
 * @example grossHoleStressConcentration({ holeDiameter: '2 mm', width: '10 mm' }) // => 3.1352
 */
export const grossHoleStressConcentration = /* @__PURE__ */ formula({
  name: 'grossHoleStressConcentration',
  title: 'Stress concentration of a hole in a strip, on the gross section',
  equation: 'K_tg = (3 − 3.13·d / w + 3.66·(d / w)² − 1.53·(d / w)³) / (1 − d / w)',
  source: "Roark's Formulas for Stress and Strain, table 17.1, referred to the gross section",
  inputs: {
    holeDiameter: length('d', 'diameter of the hole'),
    width: length('w', 'width of the strip; the pitch in a row of holes'),
  },
  output: ratio('K_tg', 'peak over average stress of the gross section'),
  example: { holeDiameter: '6.4 mm', width: '22 mm' },
  requires: [fits],
  si: ({ holeDiameter, width }) => net(holeDiameter / width) / (1 - holeDiameter / width),
});

/**
 * Peak stress at a small hole in a biaxially stressed wall: three times the greater stress less the lesser.
 * In a closed cylinder under pressure it is 2.5 times the hoop stress.
 *
 * @example holePeakStress({ greater: '100 MPa', lesser: '50 MPa' }).in('MPa') // => 250
 */
export const holePeakStress = /* @__PURE__ */ formula({
  name: 'holePeakStress',
  title: 'Peak stress at a small hole in a biaxially stressed wall',
  equation: 'σ_p = 3·σ_1 − σ_2',
  source:
    "Kirsch's solution; Pilkey, Peterson's Stress Concentration Factors, circular hole in biaxial stress",
  inputs: {
    greater: stress('σ_1', 'greater principal stress, for a cylinder the hoop stress'),
    lesser: stress('σ_2', 'lesser principal stress, for a closed cylinder the longitudinal stress'),
  },
  output: stress('σ_p', 'peak stress at the edge of the hole'),
  example: { greater: '100 MPa', lesser: '50 MPa' },
  requires: [({ greater, lesser }) => greater >= lesser || 'the greater stress is below the lesser one'],
  si: ({ greater, lesser }) => 3 * greater - lesser,
});
