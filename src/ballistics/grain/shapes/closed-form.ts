// The closed form of a section, and of a grain of this section with burning ends.

/** Perimeter and propellant area of a section against depth burned, in SI numbers. */
export interface SectionClosedForm {
  /** Burning perimeter [m]. */
  readonly perimeter: (depth: number) => number;
  /** Propellant remaining in the section [m²]. */
  readonly section: (depth: number) => number;
  /** Depth at which the section is burned through [m]; infinite when only the ends burn. */
  readonly burnout: number;
}

/** Area and volume of a grain of this section with `faces` burning ends: A = P (L - k w) + k S, V = S (L - k w). */
export function grainClosedForm(
  form: SectionClosedForm,
  length: number,
  faces: 0 | 1 | 2,
): { readonly area: (depth: number) => number; readonly volume: (depth: number) => number } {
  const left = (w: number): number => Math.max(0, length - faces * w);
  const alive = (w: number): boolean => w < form.burnout && left(w) > 0;
  return {
    area: (w) => (alive(w) ? form.perimeter(w) * left(w) + faces * form.section(w) : 0),
    volume: (w) => (alive(w) ? form.section(w) * left(w) : 0),
  };
}
