import {
  formula,
  gaugePressure,
  length,
  optional,
  stress,
  temperatureDifference,
  thermalExpansion,
} from '../../units';

/**
 * Pressure that opens a tapped case at its thread: that of the chamber and that of the flanks.
 *
 * @example pressureInThread({ pressure: '5 MPa', flankPressure: '4 MPa' }).in('MPa') // => 9
 */
export const pressureInThread = /* @__PURE__ */ formula({
  name: 'pressureInThread',
  title: 'Pressure on the wall at a thread',
  equation: 'p_t = p + p_w',
  source: 'Statics: chamber pressure and flank pressure act on the same wall',
  inputs: {
    pressure: gaugePressure('p', 'chamber pressure above ambient'),
    flankPressure: stress('p_w', 'radial pressure of the flanks'),
  },
  output: gaugePressure('p_t', 'pressure on the wall'),
  example: { pressure: '5 MPa', flankPressure: '4.5 MPa' },
  si: ({ pressure, flankPressure }) => pressure + flankPressure,
});

/**
 * How far a case opens in diameter against the closure that screws into it, by pressure and by heat. A closure hotter than
 * its case is not credited.
 *
 * @example threadOpening({ growth: '20 µm', diameter: '70 mm', caseExpansion: '23.6e-6 1/K', caseRise: '100 delta_K' }).in('mm') // => 0.2052
 */
export const threadOpening = /* @__PURE__ */ formula({
  name: 'threadOpening',
  title: 'Opening of a case at its thread',
  equation: 'δ = 2·u + max(0, D·(α_c·ΔT_c − α_p·ΔT_p))',
  source: 'Growth of both diameters: elastic growth of the case, linear expansion of case and closure',
  inputs: {
    growth: length('u', 'growth of the radius of the case under pressure', { min: 0 }),
    diameter: length('D', 'diameter at the thread'),
    caseExpansion: optional(thermalExpansion('α_c', 'coefficient of linear expansion of the case'), 0),
    caseRise: optional(temperatureDifference('ΔT_c', 'rise of temperature of the case'), 0),
    closureExpansion: optional(thermalExpansion('α_p', 'coefficient of linear expansion of the closure'), 0),
    closureRise: optional(temperatureDifference('ΔT_p', 'rise of temperature of the closure'), 0),
  },
  output: length('δ', 'opening in diameter', { min: 0 }),
  example: {
    growth: '30 µm',
    diameter: '70 mm',
    caseExpansion: '23.6e-6 1/K',
    caseRise: '60 delta_K',
    closureExpansion: '23.6e-6 1/K',
    closureRise: '20 delta_K',
  },
  si: ({ growth, diameter, caseExpansion = 0, caseRise = 0, closureExpansion = 0, closureRise = 0 }) =>
    2 * growth + Math.max(0, diameter * (caseExpansion * caseRise - closureExpansion * closureRise)),
});

/** @example openedDiameter({ diameter: '68.7 mm', opening: '0.1 mm' }).in('mm') // => 68.8 */
export const openedDiameter = /* @__PURE__ */ formula({
  name: 'openedDiameter',
  title: 'Diameter of an internal thread as its case opens',
  equation: 'D_δ = D + δ',
  source: 'Geometry',
  inputs: {
    diameter: length('D', 'diameter without load'),
    opening: length('δ', 'opening in diameter', { min: 0 }),
  },
  output: length('D_δ', 'diameter under load'),
  example: { diameter: '68.7 mm', opening: '0.1 mm' },
  si: ({ diameter, opening }) => diameter + opening,
});

/**
 * Stress at a pressure, in proportion to that at another: what is left to say of a thread beyond the pressure at which it
 * disengages.
 *
 * @example proportionalStress({ stress: '90 MPa', pressure: '10 MPa', at: '9 MPa' }).in('MPa') // => 100
 */
export const proportionalStress = /* @__PURE__ */ formula({
  name: 'proportionalStress',
  title: 'Stress in proportion to pressure',
  equation: 'σ = σ_1·p / p_1',
  source: 'Proportion',
  inputs: {
    stress: stress('σ_1', 'stress at the pressure p_1'),
    pressure: gaugePressure('p', 'pressure'),
    at: gaugePressure('p_1', 'pressure at which the stress is known', { above: 0 }),
  },
  output: stress('σ', 'stress at the pressure p'),
  example: { stress: '90 MPa', pressure: '10 MPa', at: '9 MPa' },
  si: ({ stress: known, pressure, at }) => known * (pressure / at),
});
