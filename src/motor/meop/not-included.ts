import type { Motor } from '../document';

/** What the calculation of MEOP found, as far as it limits what MEOP includes. */
export interface MeopBasis {
  readonly basis: 'worst case' | 'percentile' | 'nominal';
  /** Whether any input of the pressure has a tolerance. */
  readonly hasTolerances: boolean;
  /** Whether the burn law has an uncertainty. */
  readonly hasUncertainLaw: boolean;
  /** Whether erosive burning is modelled, or there is no port along which gas flows. */
  readonly hasErosion: boolean;
}

/**
 * What is missing for MEOP to be an upper bound of the pressure, each as a noun phrase with the reason.
 */
export function notIncluded(motor: Motor, found: MeopBasis): readonly string[] {
  const { grain, temperatureRange, propellant, ignition, nozzle } = motor;
  const isNominal = found.basis === 'nominal';
  const when = (missing: boolean, text: string): readonly string[] => (missing ? [text] : []);
  return [
    ...when(!found.hasErosion, 'erosive burning (propellant.erosiveBurning is none)'),
    ...(isNominal
      ? ['tolerances, temperature range and assumed flaw (meop.basis is nominal)']
      : [
          ...when(
            found.basis === 'percentile',
            'the worst case of all tolerances (meop.basis is percentile)',
          ),
          ...when(temperatureRange === undefined, 'grain temperatures above ambient (no temperatureRange)'),
          ...when(
            temperatureRange !== undefined && propellant.burnLaw.temperatureSensitivity === undefined,
            'temperature sensitivity of the burn rate (not specified)',
          ),
          ...when(
            grain.assumedFlaw === undefined,
            'undetected cracks, voids and debonds (no grain.assumedFlaw)',
          ),
          ...when(
            !found.hasTolerances,
            'tolerances (none specified; the worst case equals the nominal motor)',
          ),
          ...when(
            found.hasTolerances && !found.hasUncertainLaw,
            'uncertainty of the burn law (no tolerance specified)',
          ),
          ...when(
            propellant.burnLaw.covariance !== undefined,
            'scatter between batches of propellant (the covariance is that of the fit)',
          ),
        ]),
    ...when(
      nozzle.assumedBlockage === undefined,
      'throat blockage by a fragment (no nozzle.assumedBlockage)',
    ),
    ...when(
      nozzle.assumedBlockage !== undefined && found.basis !== 'worst case',
      'throat blockage by a fragment (nozzle.assumedBlockage is in the worst case only)',
    ),
    ...when(ignition === undefined, 'ignition transient (no ignition)'),
  ];
}
