import {
  glandFill,
  glandSqueeze,
  oRingCompressionForce,
  oRingStretch,
  stretchedCrossSection,
} from './gland-formulas';
import { largeStretchThinning, stretchThinning } from './stretch-thinning';
import type { BandSi } from './tolerance';

/** The sizes of a ring and its gland over their tolerances, in SI. */
export interface GlandSizes {
  readonly insideDiameter: BandSi;
  readonly crossSection: BandSi;
  readonly bore: BandSi;
  readonly grooveDiameter: BandSi;
  readonly grooveWidth: BandSi;
  readonly closureDiameter: BandSi;
  /** Growth of the bore in diameter, added to it. */
  readonly growth: number;
}

/** Results over the tolerances, in SI. */
export interface GlandBands {
  readonly stretch: BandSi;
  /** Reduced by the stretch at constant volume. */
  readonly section: BandSi;
  /** Minimum, reduced as measured on rings, which is more: the worst case for sealing. */
  readonly sectionAtWorst: number;
  readonly depth: BandSi;
  readonly squeeze: BandSi;
  readonly fill: BandSi;
  /** Diametral. */
  readonly clearance: BandSi;
  /** Minimum squeeze where the closure is against the opposite side of the bore. */
  readonly squeezeOffCentre: number;
}

/** The extremes of each result over the tolerances: minimum squeeze is that of the thin ring in the deep gland. */
export function glandBands(sizes: GlandSizes): GlandBands {
  const { insideDiameter: id, crossSection: cs, grooveDiameter: groove, grooveWidth: width } = sizes;
  const bore = plus(sizes.bore, sizes.growth);
  const stretchOf = (insideDiameter: number, grooveDiameter: number): number =>
    oRingStretch.si({ insideDiameter, grooveDiameter });
  // A ring with clearance is not thickened by its groove.
  const thin = (crossSection: number, insideDiameter: number, grooveDiameter: number): number =>
    Math.min(crossSection, stretchedCrossSection.si({ crossSection, insideDiameter, grooveDiameter }));
  const section: BandSi = {
    min: thin(cs.min, id.min, groove.max),
    nominal: thin(cs.nominal, id.nominal, groove.nominal),
    max: thin(cs.max, id.max, groove.min),
  };
  const sectionAtWorst = Math.min(section.min, cs.min * (1 - measuredLoss(stretchOf(id.min, groove.max))));
  const depth: BandSi = {
    min: (bore.min - groove.max) / 2,
    nominal: (bore.nominal - groove.nominal) / 2,
    max: (bore.max - groove.min) / 2,
  };
  const clearance: BandSi = {
    min: bore.min - sizes.closureDiameter.max,
    nominal: bore.nominal - sizes.closureDiameter.nominal,
    max: bore.max - sizes.closureDiameter.min,
  };
  const squeeze = (crossSection: number, glandDepth: number): number =>
    glandSqueeze.si({ crossSection, glandDepth });
  const fill = (crossSection: number, glandDepth: number, grooveWidth: number): number =>
    glandFill.si({ crossSection, glandDepth, grooveWidth });
  return {
    stretch: {
      min: stretchOf(id.max, groove.min),
      nominal: stretchOf(id.nominal, groove.nominal),
      max: stretchOf(id.min, groove.max),
    },
    section,
    sectionAtWorst,
    depth,
    squeeze: {
      min: squeeze(section.min, depth.max),
      nominal: squeeze(section.nominal, depth.nominal),
      max: squeeze(section.max, depth.min),
    },
    fill: {
      min: fill(section.min, depth.max, width.max),
      nominal: fill(section.nominal, depth.nominal, width.nominal),
      max: fill(section.max, depth.min, width.min),
    },
    clearance,
    squeezeOffCentre: squeeze(sectionAtWorst, depth.max + Math.max(0, clearance.max) / 2),
  };
}

/** Measured loss of cross section of a stretched ring, as a fraction. */
export function measuredLoss(stretch: number): number {
  if (stretch <= 0 || stretch > 0.25) return 0; // outside the fits constant volume is used
  const loss = (stretch <= 0.03 ? stretchThinning : largeStretchThinning).si({ stretch });
  return Math.max(0, loss);
}

/** The force that squeezes the ring over the same band; zero where the ring is not squeezed. */
export function compressionBand(bands: GlandBands, boreRadius: number, modulus: number): BandSi {
  const force = (squeeze: number, crossSection: number, glandDepth: number): number =>
    squeeze <= 0
      ? 0
      : oRingCompressionForce.si({
          ringDiameter: 2 * boreRadius - glandDepth,
          crossSection,
          modulus,
          squeeze,
        });
  const { squeeze, section, depth } = bands;
  return {
    min: force(squeeze.min, section.min, depth.max),
    nominal: force(squeeze.nominal, section.nominal, depth.nominal),
    max: force(squeeze.max, section.max, depth.min),
  };
}

const plus = (band: BandSi, by: number): BandSi => ({
  min: band.min + by,
  nominal: band.nominal + by,
  max: band.max + by,
});
