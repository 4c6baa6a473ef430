import { describe, expect, test } from 'vitest';
import { chamberTimeConstant } from '../../../src/ballistics';
import { firing, motorClass, summarize } from '../../../src/firing';
import { deliveredCharacteristicVelocity } from '../../../src/thermo';
import { q, series } from '../../../src/units';
import { segmentMotor } from '../../ballistics/reference-motors';
import { checkValue } from '../../cases/check-value';
import { caseById } from '../../cases/every-case';
import { si, siList } from '../../cases/read-case';

// Every expected value: tests/cases, with its source and provenance there.
const diameterArea = (diameter: number): number => (Math.PI / 4) * diameter ** 2;

describe('numbers of a motor from a firing', () => {
  test('delivered specific impulse, c* and thrust coefficient are those of the definitions', () => {
    const isp = caseById('isp-delivered');
    // A rectangle of 2 s with the impulse of the case.
    const thrust = series([0, si(isp.inputs.totalImpulse) / 2, si(isp.inputs.totalImpulse) / 2, 0], 'N');
    const time = series([0, 1e-9, 2, 2 + 1e-9], 's');
    const sum = summarize(firing({ origin: 'measured', time, thrust }), {
      propellantMass: q(si(isp.inputs.propellantMass), 'kg'),
    });
    checkValue(isp, 'specificImpulseS', sum.specificImpulse?.in('s') ?? Number.NaN);

    const cStar = caseById('cstar-from-pressure-integral');
    const throatArea = diameterArea(si(cStar.inputs.throatDiameter));
    checkValue(
      cStar,
      'cStar',
      deliveredCharacteristicVelocity.si({
        throatArea,
        pressureIntegral: si(cStar.inputs.pressureIntegral),
        propellantMass: si(cStar.inputs.propellantMass),
      }),
    );

    const coefficient = caseById('cf-from-averages');
    const p = si(coefficient.inputs.pressureIntegral) / 2;
    const f = si(coefficient.inputs.totalImpulse) / 2;
    const both = summarize(
      firing({
        origin: 'measured',
        time,
        thrust: series([0, f, f, 0], 'N'),
        pressure: series([0, p, p, 0], 'Pa'),
      }),
      { throatDiameter: q(si(coefficient.inputs.throatDiameter), 'm') },
    );
    checkValue(coefficient, 'thrustCoefficient', both.thrustCoefficient ?? Number.NaN);
  });

  test('a sharp knee is the web burnout', () => {
    const one = caseById('aft-tangent-sharp-knee');
    const sum = summarize(
      firing({
        origin: 'measured',
        time: series([0, 0.1, si(one.inputs.kneeS), si(one.inputs.tailEndS)], 's'),
        thrust: series([0, 500, 500, 0], 'N'),
      }),
    );
    checkValue(one, 'webTimeS', (sum.burnTime?.si ?? Number.NaN) + sum.tenPercent.start.si);
  });

  test('each class ends at the impulse printed, and begins a hundredth above the one before', () => {
    const one = caseById('impulse-class-table');
    const letters = one.inputs.classes;
    if (!Array.isArray(letters)) throw new Error('no classes');
    siList(one.expected.high).forEach((high, i) => {
      const found = motorClass(q(high, 'N*s'));
      expect(found.letter).toBe(letters[i]);
      checkValue(one, `high[${i}]`, found.upperBound);
      const least = Math.round((found.lowerBound + 0.01) * 100) / 100;
      checkValue(one, `low[${i}]`, least);
      expect(motorClass(q(least, 'N*s')).letter).toBe(letters[i]);
      expect(motorClass(q(found.lowerBound, 'N*s')).letter).not.toBe(letters[i]);
    });
  });

  test('the reference motor: c* and the time constant of its tail-off', () => {
    const one = caseById('motor-segment');
    const { propellant } = segmentMotor();
    checkValue(one, 'idealCharacteristicVelocity', propellant.idealCharacteristicVelocity.si);
    checkValue(
      one,
      'tailOffTimeConstant',
      chamberTimeConstant.si({
        freeVolume: diameterArea(0.05) * 0.11,
        characteristicVelocity: propellant.characteristicVelocity.si,
        gasConstant: propellant.gasConstant.si,
        temperature: propellant.effectiveTemperature.si,
        throatArea: diameterArea(0.007),
      }),
    );
  });
});
