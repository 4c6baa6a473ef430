import { length, procedure, unitFor } from '../../units';
import { geometryOf, type ThreadGeometry } from './thread-geometry';

/**
 * A 60° thread of any diameter and pitch, with the profile and the limits of class 6g/6H, or of 2A/2B where its diameter is
 * given in inches.
 *
 * @example customThread({ majorDiameter: '70 mm', pitch: '2 mm' }).minorDiameter.in('mm') // => 67.83493649
 */
export const customThread = /* @__PURE__ */ procedure({
  name: 'customThread',
  title: 'Geometry of a thread of any diameter and pitch',
  source: 'ISO 68-1 and ASME B1.1 profiles; limits by the formulas of ISO 965-1 and ASME B1.1 (from memory)',
  inputs: {
    majorDiameter: length('d', 'nominal diameter of the thread', { example: '70 mm' }),
    pitch: length('P', 'pitch; 1/16 in for 16 threads per inch', { example: '2 mm' }),
  },
  gives: 'the dimensions, areas and limits of the thread',
  example: { majorDiameter: '70 mm', pitch: '2 mm' },
  checks: [
    // Every standard thread is finer (M1.6: 0.22).
    ({ majorDiameter, pitch }) =>
      pitch.si <= 0.25 * majorDiameter.si
        ? undefined
        : {
            path: 'pitch',
            given: pitch,
            expected: `at most a quarter of the diameter (${majorDiameter.times(0.25)})`,
          },
  ],
  run: ({ majorDiameter: { si: diameter, unit }, pitch: { si: pitch } }): ThreadGeometry => {
    const { us } = unitFor('length', unit);
    const text = (value: number): string => String(Number(value.toPrecision(6)));
    return geometryOf({
      name: us
        ? `${text(diameter / 0.0254)}-${text(0.0254 / pitch)} UNS`
        : `M${text(diameter * 1e3)}x${text(pitch * 1e3)}`,
      system: us ? 'unified inch' : 'ISO metric',
      series: 'special',
      diameter,
      pitch,
    });
  },
});
