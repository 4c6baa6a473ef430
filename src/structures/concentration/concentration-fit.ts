/** A row of a fit: constant, factor of the root of depth/radius, factor of depth/radius. */
type FitRow = readonly [constant: number, ofRoot: number, ofRatio: number];

/** The four rows of a fit, by increasing power of the depth fraction. */
export type ConcentrationFit = readonly [FitRow, FitRow, FitRow, FitRow];

/** The value of a fit of Roark's table 17.1 at depth/radius and depth/half the thickness. */
export function fittedConcentration(
  fit: ConcentrationFit,
  depthRatio: number,
  depthFraction: number,
): number {
  const root = Math.sqrt(depthRatio);
  const at = ([constant, ofRoot, ofRatio]: FitRow): number => constant + ofRoot * root + ofRatio * depthRatio;
  const [first, second, third, fourth] = fit;
  return at(first) + depthFraction * (at(second) + depthFraction * (at(third) + depthFraction * at(fourth)));
}
