// Closed forms of sections made of circles about the axis.
import type { SectionClosedForm } from './closed-form';

/** A bore of radius `bore` in a grain of radius `outer` [m]. */
export const tubeClosedForm = (outer: number, bore: number): SectionClosedForm => ({
  perimeter: (w) => 2 * Math.PI * (bore + w),
  section: (w) => Math.PI * (outer - bore - w) * (outer + bore + w),
  burnout: outer - bore,
});

/** A solid section that burns only at its ends. */
export const solidClosedForm = (outer: number): SectionClosedForm => ({
  perimeter: () => 0,
  section: () => Math.PI * outer * outer,
  burnout: Number.POSITIVE_INFINITY,
});

/** A rod of radius `rod` inside a tube of bore radius `bore`: while both burn, the perimeter stays constant. */
export const rodAndTubeClosedForm = (outer: number, bore: number, rod: number): SectionClosedForm => ({
  perimeter: (w) => 2 * Math.PI * ((w < outer - bore ? bore + w : 0) + (w < rod ? rod - w : 0)),
  section: (w) =>
    Math.PI *
    ((w < outer - bore ? (outer - bore - w) * (outer + bore + w) : 0) +
      (w < rod ? (rod - w) * (rod - w) : 0)),
  burnout: Math.max(outer - bore, rod),
});

/** A solid rod that burns on its outer surface. */
export const freeRodClosedForm = (outer: number): SectionClosedForm => ({
  perimeter: (w) => 2 * Math.PI * (outer - w),
  section: (w) => Math.PI * (outer - w) * (outer - w),
  burnout: outer,
});

/**
 * A bore of radius `bore` whose axis is `offset` from the grain's: a circle clipped by the wall.
 * The front's angle inside the wall is 2 (π - arccos((R² - e² - ρ²)/(2 e ρ))); the burned area is a lens of two circles.
 */
export function offsetBoreClosedForm(outer: number, bore: number, offset: number): SectionClosedForm {
  const clamp = (c: number): number => Math.max(-1, Math.min(1, c));
  return {
    perimeter: (w) => {
      const rho = bore + w;
      if (rho + offset <= outer) return 2 * Math.PI * rho;
      const c = (outer * outer - offset * offset - rho * rho) / (2 * offset * rho);
      return 2 * rho * (Math.PI - Math.acos(clamp(c)));
    },
    section: (w) => {
      const rho = bore + w;
      if (rho + offset <= outer) return Math.PI * (outer - rho) * (outer + rho);
      const a = Math.acos(clamp((offset * offset + rho * rho - outer * outer) / (2 * offset * rho)));
      const b = Math.acos(clamp((offset * offset + outer * outer - rho * rho) / (2 * offset * outer)));
      const lens = rho * rho * (a - Math.sin(2 * a) / 2) + outer * outer * (b - Math.sin(2 * b) / 2);
      return Math.PI * outer * outer - lens;
    },
    burnout: outer + offset - bore,
  };
}
