import { expect, test } from 'vitest';
import {
  explainDifference,
  fitBurnLaw,
  impliedBurningArea,
  impliedThroat,
  saintRobert,
  tubularSegment,
} from '../../../src/ballistics';
import { firing } from '../../../src/firing';
import { fromSiArray, q } from '../../../src/units';
import { codeAndPathOf } from '../../error-code';

// What is expected is the rule itself: ambient pressure is given, never assumed.
const time = Float64Array.from({ length: 600 }, (_, i) => i / 100);
const record = firing({
  origin: 'measured',
  time: fromSiArray('time', time, 's'),
  pressure: fromSiArray(
    'absolute pressure',
    time.map((t) => (t > 1 && t < 5 ? 2e6 + 5e5 * Math.sin((Math.PI * (t - 1)) / 4) : 9e4)),
    'MPa',
  ),
});
const said = firing({ ...record, ambientPressure: q('90 kPa').as('absolute pressure') });
const grain = tubularSegment({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '85 mm' });
const motor = {
  law: saintRobert({ referenceRate: '4.3 mm/s', referencePressure: '2 MPa', exponent: 0.3 }),
  density: '1780 kg/m^3',
  characteristicVelocity: '900 m/s',
} as const;
const around = { ambientPressure: '90 kPa' } as const;
const steeper = firing({
  ...said,
  pressure: fromSiArray(
    'absolute pressure',
    time.map((t) => (t > 1 && t < 5 ? 2e6 + 7e5 * Math.sin((Math.PI * (t - 1)) / 4) : 9e4)),
    'MPa',
  ),
});

test.each<[string, string, (r: typeof record, given: { ambientPressure?: '90 kPa' }) => unknown]>([
  [
    'the burn law along a trace',
    'trace.ambientPressure',
    (r, given) => fitBurnLaw({ trace: { record: r, grain, ...given } }).exponent,
  ],
  [
    'the burn law from firings',
    'firings.0.ambientPressure',
    (r, given) =>
      fitBurnLaw({
        firings: [
          { record: r, web: '17 mm', ...given },
          { record: steeper, web: '17.5 mm' },
        ],
      }).exponent,
  ],
  [
    'the implied burning area',
    'ambientPressure',
    (r, given) =>
      impliedBurningArea({ record: r, ...motor, throatDiameter: '10 mm', ...given }).areaRatio.si[100],
  ],
  [
    'the implied throat',
    'ambientPressure',
    (r, given) => impliedThroat({ record: r, ...motor, grain, ...given }).growth,
  ],
  [
    'the explanation of a difference',
    'ambientPressure',
    (r, given) => explainDifference({ predicted: steeper, measured: r, exponent: 0.3, ...given }).residual,
  ],
])('%s needs the ambient pressure: of the record, or given', (_, path, of) => {
  expect(codeAndPathOf(() => of(record, {}))).toBe(`missing-field ${path}`);
  const given = of(record, around);
  expect(given).toBe(of(said, {}));
  expect(Number.isFinite(given)).toBe(true);
});

test('thrust alone stands at zero before ignition: nothing of the air is asked', () => {
  const { time: at } = record;
  const thrust = firing({
    origin: 'measured',
    time: at,
    thrust: fromSiArray(
      'force',
      time.map((t) => (t > 1 && t < 5 ? 100 : 0)),
      'N',
    ),
  });
  expect(explainDifference({ predicted: thrust, measured: thrust }).residual).toBe(0);
});
