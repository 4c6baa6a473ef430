import { force, formula, length, stiffness, temperatureDifference, thermalExpansion } from '../../units';

/**
 * Change of preload as bolt and clamped parts expand differently; each has its own temperature, since a bolt lags behind a
 * flange that heats within seconds.
 *
 * @example thermalPreloadChange({ boltStiffness: '120 kN/mm', memberStiffness: '400 kN/mm', grip: '20 mm', memberExpansion: '23.6e-6 1/K', memberRise: '80 delta_K', boltExpansion: '12.3e-6 1/K', boltRise: '80 delta_K' }).in('N').toFixed(2) // => '1668.92'
 */
export const thermalPreloadChange = /* @__PURE__ */ formula({
  name: 'thermalPreloadChange',
  title: 'Change of preload by heat',
  equation: 'ΔF = k_b·k_m / (k_b + k_m)·l·(α_m·ΔT_m − α_b·ΔT_b)',
  source: 'Two springs in series with free thermal expansion',
  inputs: {
    boltStiffness: stiffness('k_b', 'stiffness of the bolt', { above: 0 }),
    memberStiffness: stiffness('k_m', 'stiffness of the clamped parts', { above: 0 }),
    grip: length('l', 'effective grip'),
    memberExpansion: thermalExpansion('α_m', 'coefficient of linear expansion of the clamped parts'),
    memberRise: temperatureDifference('ΔT_m', 'rise of temperature of the clamped parts since tightening'),
    boltExpansion: thermalExpansion('α_b', 'coefficient of linear expansion of the bolt'),
    boltRise: temperatureDifference('ΔT_b', 'rise of temperature of the bolt since tightening'),
  },
  output: force('ΔF', 'change of preload; negative where preload is lost'),
  example: {
    boltStiffness: '120 kN/mm',
    memberStiffness: '400 kN/mm',
    grip: '20 mm',
    memberExpansion: '23.6e-6 1/K',
    memberRise: '80 delta_K',
    boltExpansion: '12.3e-6 1/K',
    boltRise: '60 delta_K',
  },
  si: ({
    boltStiffness: kb,
    memberStiffness: km,
    grip,
    memberExpansion,
    memberRise,
    boltExpansion,
    boltRise,
  }) => ((kb * km) / (kb + km)) * grip * (memberExpansion * memberRise - boltExpansion * boltRise),
});
