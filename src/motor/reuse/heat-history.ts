import { type Material, strengthRetention } from '../../structures';
import { fromSiValue, MeopError, type Quantity, unitFor, unitOf } from '../../units';
import type { Motor } from '../document';
import { type Pressurisation, seen, timesOf } from './cycles-seen';
import type { HeatHistory } from './reuse-result';

/** Half an hour, the shortest exposure of the published curves. */
const usualTime = 1800;

const stress = (si: number, like: Quantity<'stress'>): Quantity<'stress'> =>
  fromSiValue<'stress'>(si, 'stress', unitFor('stress', like.unit));
const kelvin = (si: number) => fromSiValue<'temperature'>(si, 'temperature', unitOf('degC'));
const seconds = (si: number) => fromSiValue<'time'>(si, 'time', unitOf(si < 3600 ? 'min' : 'h'));

/** Typical yield strength at room temperature after a time at a temperature, with its source; undefined where it is not known. */
export function yieldAfter(
  material: Material,
  temperature: number,
  time: number,
): { readonly value: Quantity<'stress'>; readonly source: string } | undefined {
  const typical = material.typical?.yieldStrength;
  if (typical === undefined || material.afterExposure === undefined) return undefined;
  try {
    const { fraction, source } = strengthRetention({
      material,
      property: 'yield',
      temperature: kelvin(temperature),
      exposure: seconds(time),
      state: 'after exposure',
    });
    return { value: stress(typical.value.si * fraction, typical.value), source };
  } catch (error) {
    // Beyond the curves nothing is left that could be relied on.
    if (error instanceof MeopError && error.code === 'out-of-domain')
      return { value: stress(0, typical.value), source: material.afterExposure.origin.source };
    throw error;
  }
}

/** The temperature up to which a metal keeps its minimum yield strength after half an hour; undefined where it is not known. */
export function temperLimit(material: Material): Quantity<'temperature'> | undefined {
  const minimum = material.yieldStrength?.value.si;
  if (minimum === undefined) return undefined;
  let limit: number | undefined;
  for (let celsius = 50; celsius <= 350; celsius += 5) {
    const after = yieldAfter(material, celsius + 273.15, usualTime);
    if (after === undefined || after.value.si < minimum) break;
    limit = celsius + 273.15;
  }
  return limit === undefined ? undefined : kelvin(limit);
}

/** The heat that the case has seen against the temper of its metal; undefined where the ledger has no firing of the case. */
export function heatHistory(
  { case: { material, wallTemperature: design } }: Motor,
  ledger: readonly Pressurisation[],
): HeatHistory | undefined {
  const hot = seen('case', ledger).flatMap((entry) => {
    const temperature = entry.wallTemperature ?? (entry.kind === 'firing' ? design : undefined);
    return temperature === undefined
      ? []
      : [{ si: temperature.value.si, time: timesOf(entry) * (entry.timeHot?.value.si ?? usualTime) }];
  });
  if (hot.length === 0) return undefined;
  const hottest = kelvin(Math.max(...hot.map(({ si }) => si)));
  const time = seconds(hot.reduce((total, one) => total + one.time, 0));
  const after = yieldAfter(material, hottest.si, time.si);
  const minimum = material.yieldStrength?.value;
  const facts = { hottest, time, yieldAfter: after?.value, minimumYield: minimum };
  if (after === undefined || minimum === undefined)
    return {
      ...facts,
      statement: `The case reached ${hottest} for ${time} in total. No data on ${material.name} after heating exist here: check its hardness.`,
      source: 'none',
    };
  const isKept = after.value.si >= minimum.si;
  return {
    ...facts,
    statement: `The case reached ${hottest} for ${time} in total, all taken at that temperature. The typical yield strength after it is ${after.value}, ${isKept ? 'not less than' : 'below'} the minimum of ${minimum}.${isKept ? '' : ' The temper is lost: replace the case.'}`,
    source: after.source,
  };
}
