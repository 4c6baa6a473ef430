import { absolutePressure, formula, length, optional, ratio } from '../units';

/**
 * Pressure at a field from the altimeter setting (QNH) that its aerodrome reports and the elevation of the field.
 * The test pressure of a motor is this one, not that at sea level: at 1500 m it is about 17 % lower.
 *
 * @example stationPressure({ altimeterSetting: '29.92 inHg', elevation: '5000 ft' }).in('inHg') // => 24.895
 */
export const stationPressure = /* @__PURE__ */ formula({
  name: 'stationPressure',
  title: 'Station pressure from altimeter setting',
  equation: 'p = p_0·((QNH / p_0)^n − h / L)^(1 / n)',
  source:
    'Definition of the altimeter setting by the lapse-rate layer of the standard atmosphere (ICAO Doc 7488; U.S. Standard Atmosphere 1976): L = T_0 / lapse rate, n = lapse rate times R / g',
  inputs: {
    altimeterSetting: absolutePressure('QNH', 'altimeter setting'),
    elevation: length('h', 'elevation of the field above mean sea level', { min: -5000 }),
    seaLevelPressure: optional(absolutePressure('p_0', 'standard pressure at sea level'), 101325),
    temperatureHeight: optional(
      length('L', 'height over which the lapse rate lowers the temperature to zero'),
      288.15 / 0.0065,
    ),
    exponent: optional(
      ratio('n', 'exponent of the lapse-rate layer', { above: 0 }),
      (0.0065 * 8314.32) / (28.9644 * 9.80665),
    ),
  },
  output: absolutePressure('p', 'station pressure'),
  example: { altimeterSetting: '1013.25 hPa', elevation: '1500 m' },
  requires: [
    ({ altimeterSetting, elevation, seaLevelPressure, temperatureHeight, exponent }) =>
      (altimeterSetting / seaLevelPressure) ** exponent > elevation / temperatureHeight ||
      'the elevation is above the lapse-rate layer in which an altimeter setting is defined',
  ],
  valid: [
    ({ elevation, temperatureHeight }) =>
      elevation / temperatureHeight < 0.2482 || 'above 11 km the altimeter setting has no meaning',
  ],
  si: ({
    altimeterSetting,
    elevation,
    seaLevelPressure = 101325,
    temperatureHeight = 288.15 / 0.0065,
    exponent = (0.0065 * 8314.32) / (28.9644 * 9.80665),
  }) =>
    seaLevelPressure *
    ((altimeterSetting / seaLevelPressure) ** exponent - elevation / temperatureHeight) ** (1 / exponent),
});
