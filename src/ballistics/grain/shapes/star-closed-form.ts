// Closed form of the star, by the standard parameters: web w, fillet f, l = R - w - f, angular fraction ε, opening angle θ.
import { gaussLegendre, integratePanels } from '../../../numerics';
import type { SectionClosedForm } from './closed-form';

export interface StarMeasures {
  readonly points: number;
  readonly outerRadius: number;
  readonly web: number;
  readonly fillet: number;
  readonly angularFraction: number;
  /** Full opening angle of a point [rad]. */
  readonly openingAngle: number;
}

/**
 * Burning perimeter of a star in three phases: straight sides present, sides burned out, sliver. Barrere et al.,
 * Rocket Propulsion (1960) and NASA SP-8076 (1972) in the standard parameters; the equations are quoted from memory,
 * not verified, and derived again from the geometry. Undefined where the sides outlast the web, because the phases
 * then follow in another order.
 */
export function starClosedForm(star: StarMeasures): SectionClosedForm | undefined {
  const { points: n, outerRadius: R, fillet: f } = star;
  const l = R - star.web - f;
  const b = (star.angularFraction * Math.PI) / n;
  const land = Math.PI / n - b;
  const h = star.openingAngle / 2;
  const sidesGone = (l * Math.sin(b)) / Math.cos(h) - f;
  if (sidesGone > star.web) return undefined;
  const burnout = Math.sqrt(R * R + l * l - 2 * R * l * Math.cos(b)) - f;
  const perimeter = (w: number): number => {
    const s = f + w;
    if (w >= burnout) return 0;
    const arcs = b + Math.asin(Math.min(1, (l * Math.sin(b)) / s));
    if (w > star.web) {
      const cos = (R * R - l * l - s * s) / (2 * l * s);
      return 2 * n * s * Math.max(0, arcs - Math.acos(Math.max(-1, Math.min(1, cos))));
    }
    if (w > sidesGone) return 2 * n * ((l + s) * land + s * arcs);
    const turn = Math.PI / 2 + Math.PI / n - h - 1 / Math.tan(h);
    return 2 * n * ((l * Math.sin(b)) / Math.sin(h) + s * turn + l * land);
  };
  // In the sliver the perimeter falls as a square root at the end: depth = end - u² keeps the integrand smooth.
  const rule = gaussLegendre(24);
  const over = (from: number, to: number): number =>
    to > from ? integratePanels(perimeter, { lower: from, upper: to, rule }) : 0;
  const sliver = (from: number): number =>
    from < burnout
      ? integratePanels((u) => 2 * u * perimeter(burnout - u * u), {
          lower: 0,
          upper: Math.sqrt(burnout - from),
          rule,
          panels: 4,
        })
      : 0;
  return {
    perimeter,
    section: (w) =>
      over(w, sidesGone) + over(Math.max(w, sidesGone), star.web) + sliver(Math.max(w, star.web)),
    burnout,
  };
}
