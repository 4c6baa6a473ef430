import { count, formula, length } from '../../units';

const boltCircle = length('D_c', 'diameter of the bolt circle');
const holeDiameter = length('d', 'diameter of the holes; the major diameter where they are tapped');
const source = 'Geometry';

/** @example ligamentToBore({ boltCircle: '52 mm', holeDiameter: '4.2 mm', bore: '40 mm' }).in('mm') // => 3.9 */
export const ligamentToBore = /* @__PURE__ */ formula({
  name: 'ligamentToBore',
  title: 'Ligament between the bore and holes along the axis',
  equation: 'a_i = (D_c − d − D_b) / 2',
  source,
  inputs: { boltCircle, holeDiameter, bore: length('D_b', 'diameter of the bore') },
  output: length('a_i', 'metal between bore and hole'),
  example: { boltCircle: '52 mm', holeDiameter: '4.2 mm', bore: '40 mm' },
  si: ({ boltCircle: c, holeDiameter: d, bore }) => (c - d - bore) / 2,
});

/** @example ligamentToOutside({ boltCircle: '52 mm', holeDiameter: '4.2 mm', outsideDiameter: '62 mm' }).in('mm') // => 2.9 */
export const ligamentToOutside = /* @__PURE__ */ formula({
  name: 'ligamentToOutside',
  title: 'Ligament between holes along the axis and the outside',
  equation: 'a_o = (D_o − D_c − d) / 2',
  source,
  inputs: { boltCircle, holeDiameter, outsideDiameter: length('D_o', 'outside diameter') },
  output: length('a_o', 'metal between hole and outside'),
  example: { boltCircle: '52 mm', holeDiameter: '4.2 mm', outsideDiameter: '62 mm' },
  si: ({ boltCircle: c, holeDiameter: d, outsideDiameter }) => (outsideDiameter - c - d) / 2,
});

/** @example ligamentBetweenHoles({ boltCircle: '52 mm', holeDiameter: '4.2 mm', count: 8 }).in('mm').toFixed(4) // => '15.6995' */
export const ligamentBetweenHoles = /* @__PURE__ */ formula({
  name: 'ligamentBetweenHoles',
  title: 'Ligament between neighbouring holes on a bolt circle',
  equation: 'a_h = D_c·sin(π / n) − d',
  source: 'Geometry: the chord between the centres',
  inputs: { boltCircle, holeDiameter, count: count('n', 'holes on the circle', { min: 2, whole: true }) },
  output: length('a_h', 'metal between two holes'),
  example: { boltCircle: '52 mm', holeDiameter: '4.2 mm', count: 8 },
  si: ({ boltCircle: c, holeDiameter: d, count: n }) => c * Math.sin(Math.PI / n) - d,
});
