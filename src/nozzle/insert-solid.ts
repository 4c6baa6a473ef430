import { fromSiValue, type Quantity, type QuantityInput, readInput, unitOf } from '../units';
import { type FieldsOf, requireFields } from '../units/known-fields';
import { readPositive, refusal } from '../units/refusal';
import type { NozzleContour } from './nozzle-contour';

const procedure = 'insertSolid';

/** Options of {@link insertSolid}. */
export interface InsertSolidOptions {
  /** Inner profile, from {@link nozzleContour}. */
  readonly contour: NozzleContour;
  /** Outer diameter of the turned body. */
  readonly outerDiameter: QuantityInput<'length'>;
  readonly density: QuantityInput<'density'>;
  /** Ends of the body along x of the profile; default the whole profile. */
  readonly from?: QuantityInput<'length'>;
  readonly to?: QuantityInput<'length'>;
}

/** Surface, volume and mass of an insert or a whole nozzle body. */
export interface InsertSolid {
  /** Inner surface exposed to gas. */
  readonly wettedArea: Quantity<'area'>;
  /** Volume of the body: outer cylinder minus the bore. */
  readonly volume: Quantity<'volume'>;
  /** Volume of the bore. */
  readonly boreVolume: Quantity<'volume'>;
  readonly mass: Quantity<'mass'>;
  /** Minimum wall thickness of the body. */
  readonly leastWall: Quantity<'length'>;
}

const insertSolidFields: FieldsOf<InsertSolidOptions> = {
  contour: 'required',
  outerDiameter: 'required',
  density: 'required',
  from: 'optional',
  to: 'optional',
};

/**
 * Wetted surface, volume and mass of a body with a nozzle profile inside and a cylinder outside; exact for the
 * polygon of the profile points, which is within its tolerance of the curve.
 *
 * Source: frustum geometry.
 *
 * @throws MeopError `out-of-domain` for an outer diameter not larger than the bore, a density not above 0, or ends
 * outside the profile
 * @example insertSolid({ contour: nozzleContour({ throatDiameter: '12 mm', exitDiameter: '12 mm', inletDiameter: '12 mm', throatLength: '20 mm', divergent: { shape: 'cone', halfAngle: '12 deg' } }), outerDiameter: '40 mm', density: '1800 kg/m^3' }).mass.in('g') // => 41.168
 */
export function insertSolid(options: InsertSolidOptions): InsertSolid {
  requireFields(procedure, options, insertSolidFields);
  const { contour } = options;
  const outer = readInput('length', 'outerDiameter', options.outerDiameter, procedure).si / 2;
  const density = readPositive('density', 'density', options.density, procedure).si;
  const x = contour.x.si;
  const r = contour.radius.si;
  const last = x.length - 1;
  const from = options.from === undefined ? x[0] : readInput('length', 'from', options.from, procedure).si;
  const to = options.to === undefined ? x[last] : readInput('length', 'to', options.to, procedure).si;
  if (!(from >= x[0] && to <= x[last] && from < to))
    throw refusal(
      procedure,
      'from',
      `${String(options.from)} to ${String(options.to)}`,
      `a stretch within ${contour.x.at(0)} to ${contour.x.at(-1)}`,
    );
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
    throw refusal(
      procedure,
      'outerDiameter',
      options.outerDiameter,
      `above ${(2000 * widest).toPrecision(5)} mm, the widest bore,`,
    );
  const volume = Math.PI * outer * outer * (to - from) - bore;
  return {
    wettedArea: fromSiValue(wetted, 'area', unitOf('cm^2')),
    volume: fromSiValue(volume, 'volume', unitOf('cm^3')),
    boreVolume: fromSiValue(bore, 'volume', unitOf('cm^3')),
    mass: fromSiValue(volume * density, 'mass', unitOf('g')),
    leastWall: fromSiValue(outer - widest, 'length', unitOf('mm')),
  };
}
