import {
  density,
  fromSiValue,
  instance,
  length,
  MeopError,
  optional,
  procedure,
  type Quantity,
  unitOf,
} from '../units';
import { isNozzleContour } from './nozzle-contour';

/** Surface, volume and mass of an insert or a whole nozzle body. */
export interface InsertSolid {
  /** Inner surface exposed to the gas. */
  readonly wettedArea: Quantity<'area'>;
  /** Volume of the body: outer cylinder minus the bore. */
  readonly volume: Quantity<'volume'>;
  /** Volume of the bore. */
  readonly boreVolume: Quantity<'volume'>;
  readonly mass: Quantity<'mass'>;
  /** Minimum wall thickness of the body. */
  readonly minWall: Quantity<'length'>;
}

/** A position along the profile, which may be upstream of the throat. */
const position = (symbol: string, meaning: string) => optional(length(symbol, meaning, { whole: false }));

/**
 * Wetted surface, volume and mass of a body turned with a nozzle profile inside and a cylinder outside; exact for the polygon of
 * the profile's points, which is within its tolerance of the curve.
 *
 * @example insertSolid({ contour: nozzleContour({ throatDiameter: '12 mm', exitDiameter: '12 mm', inletDiameter: '12 mm', throatLength: '20 mm', divergent: { shape: 'cone', halfAngle: '12 deg' } }), outerDiameter: '40 mm', density: '1800 kg/m^3' }).mass.in('g') // => 41.168
 */
export const insertSolid = /* @__PURE__ */ procedure({
  name: 'insertSolid',
  title: 'Surface, volume and mass of a nozzle body',
  source: 'Frustum geometry',
  inputs: {
    contour: instance('inner profile', 'a NozzleContour, from nozzleContour', isNozzleContour),
    outerDiameter: length('D_o', 'outer diameter of the turned body'),
    density: density('ρ', 'density of the body'),
    from: position('x_1', "start of the body along the profile's x; the inlet if omitted"),
    to: position('x_2', "end of the body along the profile's x; the exit if omitted"),
  },
  gives: 'wetted area, volume of body and bore, mass, and minimum wall thickness',
  example:
    "insertSolid({ contour: nozzleContour({ throatDiameter: '12 mm', exitDiameter: '32 mm', inletDiameter: '40 mm', divergent: { shape: 'cone', halfAngle: '12 deg' } }), outerDiameter: '50 mm', density: '1800 kg/m^3' })",
  run: ({ contour, outerDiameter, density, ...range }): InsertSolid => {
    const outer = outerDiameter.si / 2;
    const x = contour.x.si;
    const r = contour.radius.si;
    const last = x.length - 1;
    const from = range.from?.si ?? x[0];
    const to = range.to?.si ?? x[last];
    if (!(from >= x[0] && to <= x[last] && from < to))
      throw new MeopError({
        code: 'out-of-domain',
        procedure: 'insertSolid',
        path: 'from',
        given: `${range.from ?? contour.x.at(0)} to ${range.to ?? contour.x.at(-1)}`,
        expected: `a range within ${contour.x.at(0)} to ${contour.x.at(-1)}`,
      });
    let wetted = 0;
    let bore = 0;
    let widest = 0;
    for (let i = 0; i < last; i++) {
      const a = Math.max(x[i], from);
      const b = Math.min(x[i + 1], to);
      if (!(b > a)) continue;
      const slope = (r[i + 1] - r[i]) / (x[i + 1] - x[i]);
      const ra = r[i] + slope * (a - x[i]);
      const rb = r[i] + slope * (b - x[i]);
      wetted += Math.PI * (ra + rb) * Math.hypot(b - a, rb - ra);
      bore += (Math.PI / 3) * (b - a) * (ra * ra + ra * rb + rb * rb);
      widest = Math.max(widest, ra, rb);
    }
    if (!(outer > widest))
      throw new MeopError({
        code: 'out-of-domain',
        procedure: 'insertSolid',
        path: 'outerDiameter',
        given: outerDiameter,
        expected: `above the maximum bore, ${(2000 * widest).toPrecision(5)} mm`,
      });
    const volume = Math.PI * outer * outer * (to - from) - bore;
    return {
      wettedArea: fromSiValue(wetted, 'area', unitOf('cm^2')),
      volume: fromSiValue(volume, 'volume', unitOf('cm^3')),
      boreVolume: fromSiValue(bore, 'volume', unitOf('cm^3')),
      mass: fromSiValue(volume * density.si, 'mass', unitOf('g')),
      minWall: fromSiValue(outer - widest, 'length', unitOf('mm')),
    };
  },
});
