import type { Motor } from './document';
import { isFaceSeal } from './document/seal-schema';

/** What is taken for fields that the document leaves out and that bear on the result: a line each. */
export function assumedDefaults(motor: Motor): readonly string[] {
  const { liner, nozzle, propellant, ignition, stand, closures, case: tube } = motor;
  const { members, restraint } = stand ?? {};
  const { burnLaw } = propellant;
  const taken = (given: unknown, name: string, what: string): readonly string[] =>
    given === undefined ? [`${name} is not given: ${what}`] : [];
  const ends = (['head', 'aft'] as const).flatMap((end) => {
    const closure = closures?.[end];
    if (closure === undefined) return [];
    const at = `closures.${end}`;
    return [
      ...taken(closure.opening, `${at}.opening`, 'a plate without a hole is taken'),
      ...(closure.joint === undefined
        ? []
        : taken(closure.joint.gap, `${at}.joint.gap`, 'case and closure are taken to touch')),
      ...(closure.thread === undefined
        ? []
        : [
            ...taken(
              closure.thread.reliefDiameter,
              `${at}.thread.reliefDiameter`,
              'no groove is taken to be deeper than the thread',
            ),
            `${at}.thread: the pressure is taken to act on its whole diameter, as it does past a seal that leaks`,
          ]),
      ...(tube.wallTemperature === undefined
        ? []
        : taken(closure.temperature, `${at}.temperature`, `case.wallTemperature is taken`)),
      ...closure.seals.flatMap((seal, i) => [
        ...taken(seal.hardness, `${at}.seals[${i}].hardness`, '70 Shore A is taken'),
        ...taken(seal.compound, `${at}.seals[${i}].compound`, 'FKM is taken'),
        ...(isFaceSeal(seal)
          ? taken(
              seal.faceGap,
              `${at}.seals[${i}].faceGap`,
              'the closure is taken to be screwed down so hard that pressure does not open the faces',
            )
          : []),
      ]),
    ];
  });
  return [
    ...taken(liner, 'liner', 'none is taken; it takes room in the chamber'),
    ...taken(nozzle.efficiency, 'nozzle.efficiency', '1 is taken: more thrust than a nozzle gives'),
    ...taken(nozzle.divergenceHalfAngle, 'nozzle.divergenceHalfAngle', 'no loss by divergence is taken'),
    ...taken(nozzle.throatErosion, 'nozzle.throatErosion', 'none is taken'),
    ...(burnLaw.temperatureSensitivity === undefined
      ? []
      : taken(
          burnLaw.referenceTemperature,
          'propellant.burnLaw.referenceTemperature',
          '21 °C is taken, where the rate is as given',
        )),
    ...(ignition === undefined
      ? ['ignition is not given: the whole surface is taken to light at once, at ambient pressure']
      : taken(
          ignition.flameSpreadTime,
          'ignition.flameSpreadTime',
          'the whole surface is taken to light at once',
        )),
    ...ends,
    ...(members === undefined
      ? []
      : [
          ...taken(members.angle, 'stand.members.angle', 'members along the axis are taken'),
          ...taken(members.endFactor, 'stand.members.endFactor', '1 is taken: pinned at both ends'),
        ]),
    ...(restraint === undefined
      ? []
      : [
          ...taken(restraint.legs, 'stand.restraint.legs', 'one rope is taken'),
          ...taken(restraint.legAngle, 'stand.restraint.legAngle', 'ropes along the thrust are taken'),
          ...taken(restraint.designFactor, 'stand.restraint.designFactor', '5 is taken'),
        ]),
  ];
}

/** What is not judged since the document does not say enough of it. */
export function notEvaluated({ stand, instruments = [] }: Motor): readonly string[] {
  const missing = (given: unknown, name: string, what: string): readonly string[] =>
    given === undefined ? [`${name} is not given: ${what} is not judged`] : [];
  return [
    ...(stand === undefined
      ? []
      : [
          ...missing(stand.members, 'stand.members', 'buckling of the stand'),
          ...(stand.axis === 'horizontal'
            ? missing(stand.anchors, 'stand.anchors', 'tipping of the stand')
            : []),
          ...(stand.restraint === undefined
            ? []
            : [
                ...missing(stand.restraint.shackle, 'stand.restraint.shackle', 'the shackle'),
                ...missing(stand.restraint.anchor, 'stand.restraint.anchor', 'what holds the ropes'),
              ]),
        ]),
    ...instruments.flatMap((one) => {
      if (one.measures === 'temperature') return [];
      const [field, given] =
        one.measures === 'pressure'
          ? ['proofPressure', one.proofPressure]
          : ['safeOverload', one.safeOverload];
      return [
        ...missing(given, `${one.name}: ${field}`, 'whether it survives an overload'),
        ...missing(one.riseTime, `${one.name}: riseTime`, 'whether the sensor is fast enough'),
      ];
    }),
  ];
}
