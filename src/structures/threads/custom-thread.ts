import type { QuantityInput } from '../../units';
import { type FieldsOf, requireFields } from '../../units/known-fields';
import { readPositive, refusal } from '../../units/refusal';
import { geometryOf, type ThreadGeometry } from './thread-geometry';

const name = 'customThread';

/** A thread that is in no list: that of a threaded closure, most often. */
export interface CustomThread {
  readonly majorDiameter: QuantityInput<'length'>;
  /** Such as `'2 mm'`, or `'1/16 in'` for 16 threads per inch. */
  readonly pitch: QuantityInput<'length'>;
}

const customThreadFields: FieldsOf<CustomThread> = { majorDiameter: 'required', pitch: 'required' };

/**
 * A 60° thread of any diameter and pitch, with the profile and the limits of class 6g/6H, or 2A/2B where its diameter is
 * given in inches.
 *
 * @throws MeopError `out-of-domain` for a pitch that is not above zero, or above a quarter of the diameter
 * @example customThread({ majorDiameter: '70 mm', pitch: '2 mm' }).minorDiameter.in('mm') // => 67.83493649
 */
export function customThread(options: CustomThread): ThreadGeometry {
  requireFields(name, options, customThreadFields);
  const { si: diameter, unit } = readPositive('length', 'majorDiameter', options.majorDiameter, name);
  const pitch = readPositive('length', 'pitch', options.pitch, name).si;
  // Every standard thread is finer (M1.6: 0.22).
  if (pitch > 0.25 * diameter)
    throw refusal(name, 'pitch', options.pitch, 'at most a quarter of the diameter');
  const text = (value: number): string => String(Number(value.toPrecision(6)));
  return geometryOf({
    name: unit.us
      ? `${text(diameter / 0.0254)}-${text(0.0254 / pitch)} UNS`
      : `M${text(diameter * 1e3)}x${text(pitch * 1e3)}`,
    system: unit.us ? 'unified inch' : 'ISO metric',
    series: 'special',
    diameter,
    pitch,
  });
}
