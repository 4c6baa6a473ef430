import { expect, test } from 'vitest';
import { reduceFiring } from '../../src/firing';
import { demoMotor, patchMotor, predict } from '../../src/motor';
import { erosionCalibration } from '../../src/motor/compare/erosion-calibration';
import { factsOf } from '../../src/motor/compare/reduction-inputs';

/** The demo motor with a narrow bore and ends that do not burn. */
const tight = patchMotor(demoMotor(), {
  grain: {
    segments: demoMotor().grain.segments.map(() => ({
      shape: 'tubular segment',
      count: 4,
      outerDiameter: '48 mm',
      boreDiameter: '14 mm',
      length: '76 mm',
      burningEnds: 'none',
    })),
  },
});

const calibrated = (factor: number) => {
  const truth = patchMotor(tight, {
    propellant: {
      erosiveBurning: { law: 'mukunda-paul', augmentationFactor: { value: factor, plusMinus: 0.2 } },
    },
  });
  const predicted = predict(tight);
  const measured = reduceFiring(predict(truth), factsOf(tight, predicted));
  return erosionCalibration(tight, predicted, measured, new Map());
};

// Planted: the firing is the prediction of a motor that erodes more than the law as published.
test('a firing that erodes more than assumed asks for another augmentation factor', () => {
  const found = calibrated(1.7);
  expect(found?.fit.augmentationFactor).toBeCloseTo(1.7, 1);
  expect(found?.reason).toMatch(/augmentationFactor: 1\.00 would become 1\.\d+ ± 0\.\d+/);
});

test('one that erodes as assumed asks for nothing', () => {
  const found = calibrated(1);
  expect(found?.fit.augmentationFactor).toBeCloseTo(1, 1);
  expect(found?.reason).toBeUndefined();
});
