import type { Motor } from './document';
import { isFaceSeal } from './document/closure-inputs';

/** Values assumed for fields that the document does not specify and that affect the result, one line each. */
export function assumedDefaults(motor: Motor): readonly string[] {
  const { liner, nozzle, propellant, ignition, heatLoss, stand, closures, case: tube } = motor;
  const { members, restraint } = stand ?? {};
  const { burnLaw } = propellant;
  const taken = (given: unknown, name: string, what: string): readonly string[] =>
    given === undefined ? [`${name} not specified; ${what}.`] : [];
  const ends = (['head', 'aft'] as const).flatMap((end) => {
    const closure = closures?.[end];
    if (closure === undefined) return [];
    const at = `closures.${end}`;
    return [
      ...taken(closure.opening, `${at}.opening`, 'assumed a plate without a hole'),
      ...(closure.joint === undefined
        ? []
        : taken(closure.joint.gap, `${at}.joint.gap`, 'assumed zero (case and closure in contact)')),
      ...(closure.retainingRing === undefined
        ? []
        : taken(
            closure.retainingRing.grooveRootRadius,
            `${at}.retainingRing.grooveRootRadius`,
            'assumed 0.1 mm (the maximum that ring manufacturers allow in small bores)',
          )),
      ...(closure.thread === undefined
        ? []
        : [
            ...taken(
              closure.thread.reliefDiameter,
              `${at}.thread.reliefDiameter`,
              'assumed no groove deeper than the thread',
            ),
            `${at}.thread: pressure is assumed to act on the whole thread diameter, as past a leaking seal.`,
          ]),
      ...(closure.axialBolts === undefined
        ? []
        : taken(
            closure.axialBolts.headDiameter,
            `${at}.axialBolts.headDiameter`,
            'assumed 1.5 bolt diameters (washer face of a hexagon head)',
          )),
      ...(tube.wallTemperature === undefined
        ? []
        : taken(closure.temperature, `${at}.temperature`, `assumed case.wallTemperature`)),
      ...closure.seals.flatMap((seal, i) => [
        ...taken(seal.hardness, `${at}.seals[${i}].hardness`, 'assumed 70 Shore A'),
        ...taken(seal.compound, `${at}.seals[${i}].compound`, 'assumed FKM'),
        ...(isFaceSeal(seal)
          ? taken(
              seal.faceGap,
              `${at}.seals[${i}].faceGap`,
              closure.axialBolts === undefined
                ? 'assumed zero (closure tightened so that pressure does not open the faces)'
                : 'computed from the bolts (zero while the faces are clamped)',
            )
          : []),
      ]),
    ];
  });
  return [
    ...taken(liner, 'liner', 'assumed none (a liner would reduce the chamber volume)'),
    ...taken(nozzle.efficiency, 'nozzle.efficiency', 'assumed 1 (overestimates thrust)'),
    ...taken(nozzle.divergenceHalfAngle, 'nozzle.divergenceHalfAngle', 'assumed no divergence loss'),
    ...taken(nozzle.throatErosion, 'nozzle.throatErosion', 'assumed none'),
    ...(burnLaw.temperatureSensitivity === undefined
      ? []
      : taken(
          burnLaw.referenceTemperature,
          'propellant.burnLaw.referenceTemperature',
          'assumed 21 °C (where the rate is as given)',
        )),
    ...taken(
      heatLoss,
      'heatLoss',
      'assumed included in propellant.characteristicVelocityEfficiency, with an isothermal tail-off',
    ),
    ...(heatLoss === undefined
      ? []
      : ['propellant.characteristicVelocityEfficiency is assumed to exclude the loss of heatLoss.']),
    ...(ignition === undefined
      ? ['ignition not specified; assumed immediate ignition of the whole surface at ambient pressure.']
      : taken(
          ignition.flameSpreadTime ?? ignition.flameSpreadSpeed,
          'ignition.flameSpreadTime',
          'assumed immediate ignition of the whole surface',
        )),
    ...ends,
    ...(members === undefined
      ? []
      : [
          ...taken(members.angle, 'stand.members.angle', 'assumed zero (members parallel to the axis)'),
          ...taken(members.endFactor, 'stand.members.endFactor', 'assumed 1 (pinned at both ends)'),
        ]),
    ...(restraint === undefined
      ? []
      : [
          ...taken(restraint.legs, 'stand.restraint.legs', 'assumed one rope'),
          ...taken(
            restraint.legAngle,
            'stand.restraint.legAngle',
            'assumed zero (ropes parallel to the thrust)',
          ),
          ...taken(restraint.designFactor, 'stand.restraint.designFactor', 'assumed 5'),
        ]),
  ];
}

/** Items that are not evaluated because the document does not describe them. */
export function notEvaluated({ stand, instruments = [] }: Motor): readonly string[] {
  const missing = (given: unknown, name: string, what: string): readonly string[] =>
    given === undefined ? [`${name} not specified; ${what}.`] : [];
  return [
    ...(stand === undefined
      ? []
      : [
          ...missing(stand.members, 'stand.members', 'buckling of the stand is not evaluated'),
          ...(stand.axis === 'horizontal'
            ? missing(stand.anchors, 'stand.anchors', 'tipping of the stand is not evaluated')
            : []),
          ...(stand.restraint === undefined
            ? []
            : [
                ...missing(
                  stand.restraint.shackle,
                  'stand.restraint.shackle',
                  'the shackle is not evaluated',
                ),
                ...missing(
                  stand.restraint.anchor,
                  'stand.restraint.anchor',
                  'the rope anchor is not evaluated',
                ),
              ]),
        ]),
    ...instruments.flatMap((one) => {
      if (one.measures === 'temperature') return [];
      const [field, given] =
        one.measures === 'pressure'
          ? ['proofPressure', one.proofPressure]
          : ['safeOverload', one.safeOverload];
      return [
        ...missing(given, `${one.name}: ${field}`, 'overload capacity is not evaluated'),
        ...missing(one.riseTime, `${one.name}: riseTime`, 'sensor response time is not evaluated'),
      ];
    }),
  ];
}
