/** A physical constant in SI, with the source of its value. */
export interface Constant {
  readonly symbol: string;
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly source: string;
}

/**
 * Constants that the formulas use, in SI.
 *
 * @example constants.standardGravity.value // => 9.80665
 */
export const constants = {
  standardGravity: {
    symbol: 'g0',
    name: 'standard acceleration of gravity',
    value: 9.80665,
    unit: 'm/s^2',
    source: '3rd CGPM (1901), exact',
  },
  molarGasConstant: {
    symbol: 'R',
    name: 'molar gas constant',
    value: 8.31446261815324,
    unit: 'J/(mol*K)',
    source: 'SI Brochure 9th ed. (2019): k·N_A, both exact',
  },
  standardAtmosphere: {
    symbol: 'atm',
    name: 'standard atmosphere',
    value: 101325,
    unit: 'Pa',
    source: '10th CGPM (1954), exact',
  },
  zeroCelsius: {
    symbol: 'T0',
    name: 'zero of the Celsius scale',
    value: 273.15,
    unit: 'K',
    source: 'SI Brochure 9th ed. (2019), exact',
  },
  stefanBoltzmann: {
    symbol: 'σ',
    name: 'Stefan-Boltzmann constant',
    value: 5.6703744191844294e-8, // 2π⁵k⁴/(15h³c²) to a double
    unit: 'W/(m^2*K^4)',
    source: 'SI Brochure 9th ed. (2019): 2π⁵k⁴/(15h³c²)',
  },
} as const satisfies Record<string, Constant>;
