// Heat through a wall of layers, on plain SI numbers: finite volumes across, an L-stable second-order step (trapezoid, then
// second-order backward difference, after Bank et al., 1985) in time. The equations are linear and tridiagonal.

/** A layer, with the resistance of the contact behind it for each unit of area (0 where there is none). */
export interface WallLayerSi {
  readonly thickness: number;
  readonly conductivity: number;
  /** Density times specific heat. */
  readonly heatCapacity: number;
  readonly contactBehind: number;
}

/** The wall and what it is between. */
export interface WallMarchSi {
  readonly layers: readonly WallLayerSi[];
  /** Radius of the heated face; infinite for a plane wall. */
  readonly innerRadius: number;
  readonly initial: number;
  readonly outside: { readonly temperature: number; readonly coefficient: number };
  /** Conditions at the heated face, one time interval after the other. */
  readonly stretches: readonly {
    readonly duration: number;
    readonly temperature: number;
    readonly coefficient: number;
  }[];
}

/** Temperatures at the times marched to: the two faces of every layer, and its mean by heat content. */
export interface WallHistorySi {
  readonly time: Float64Array;
  readonly hotFaces: readonly Float64Array[];
  readonly coldFaces: readonly Float64Array[];
  readonly means: readonly Float64Array[];
}

/** Integrates over all intervals, with the given number of cells per layer and steps per interval. */
export function marchWall(wall: WallMarchSi, cells: number, steps: number): WallHistorySi {
  const { layers, innerRadius, initial, outside, stretches } = wall;
  const total = cells * layers.length;
  const capacity = new Float64Array(total);
  /** Resistance from the centre of a cell to either of its faces, for the area of the heated face. */
  const inner = new Float64Array(total);
  const outer = new Float64Array(total);
  let start = 0;
  layers.forEach(({ thickness, conductivity, heatCapacity }, l) => {
    for (let i = 0; i < cells; i++) {
      const [a, b] = [start + thickness * edge(i / cells), start + thickness * edge((i + 1) / cells)];
      const middle = (a + b) / 2;
      capacity[l * cells + i] = heatCapacity * (b - a) * (1 + middle / innerRadius);
      inner[l * cells + i] = spread(a, middle, innerRadius) / conductivity;
      outer[l * cells + i] = spread(middle, b, innerRadius) / conductivity;
    }
    start += thickness;
  });
  const outerArea = 1 + start / innerRadius;
  /** Conductance between a cell and the next. */
  const link = new Float64Array(total - 1);
  let depth = 0;
  layers.forEach(({ thickness, contactBehind }, l) => {
    depth += thickness;
    for (let i = l * cells; i < Math.min((l + 1) * cells, total - 1); i++) {
      const joint = i === (l + 1) * cells - 1 ? contactBehind / (1 + depth / innerRadius) : 0;
      link[i] = 1 / (outer[i] + joint + inner[i + 1]);
    }
  });
  const cold = conductance(outside.coefficient * outerArea, outer[total - 1]);

  const count = stretches.length * steps + 1;
  const history = {
    time: new Float64Array(count),
    hotFaces: layers.map(() => new Float64Array(count)),
    coldFaces: layers.map(() => new Float64Array(count)),
    means: layers.map(() => new Float64Array(count)),
  };
  let temperature = new Float64Array(total).fill(initial);
  const record = (k: number, time: number, gas: number, coefficient: number): void => {
    history.time[k] = time;
    const flux = conductance(coefficient, inner[0]) * (gas - temperature[0]);
    const leaving = cold * (temperature[total - 1] - outside.temperature);
    for (let l = 0; l < layers.length; l++) {
      const [first, last] = [l * cells, (l + 1) * cells - 1];
      const into = first === 0 ? flux : link[first - 1] * (temperature[first - 1] - temperature[first]);
      const out = last === total - 1 ? leaving : link[last] * (temperature[last] - temperature[last + 1]);
      history.hotFaces[l][k] = temperature[first] + into * inner[first];
      history.coldFaces[l][k] = temperature[last] - out * outer[last];
      let [heat, mass] = [0, 0];
      for (let i = first; i <= last; i++) {
        heat += capacity[i] * temperature[i];
        mass += capacity[i];
      }
      history.means[l][k] = heat / mass;
    }
  };
  record(0, 0, stretches[0].temperature, stretches[0].coefficient);

  let k = 0;
  let began = 0;
  for (const { duration, temperature: gas, coefficient } of stretches) {
    const hot = conductance(coefficient, inner[0]);
    // Steps grow from the start of an interval, where the gas changes suddenly.
    for (let s = 1; s <= steps; s++) {
      const step = duration * ((s / steps) ** 2 - ((s - 1) / steps) ** 2);
      temperature = advance(temperature, step, { capacity, link, hot, cold, gas, air: outside.temperature });
      record(++k, began + duration * (s / steps) ** 2, gas, coefficient);
    }
    began += duration;
  }
  return history;
}

// Cells are finest at both faces of a layer, where gradients are steep.
const edge = (u: number): number => u * u * (3 - 2 * u) * 0.8 + 0.2 * u;
// Thickness, or its like in a tube: r1·ln(b/a).
const spread = (a: number, b: number, radius: number): number =>
  radius === Infinity ? b - a : radius * Math.log1p((b - a) / (radius + a));
const conductance = (coefficient: number, resistance: number): number =>
  coefficient === 0 ? 0 : 1 / (1 / coefficient + resistance);

interface WallNet {
  readonly capacity: Float64Array;
  readonly link: Float64Array;
  readonly hot: number;
  readonly cold: number;
  readonly gas: number;
  readonly air: number;
}

const share = 2 - Math.SQRT2; // of the step that the trapezoid covers: both stages then have one matrix

function advance(from: Float64Array, step: number, net: WallNet): Float64Array<ArrayBuffer> {
  const n = from.length;
  const { capacity, link, hot, cold, gas, air } = net;
  const part = (share / 2) * step;
  const diagonal = new Float64Array(n);
  const source = new Float64Array(n);
  source[0] += hot * gas;
  source[n - 1] += cold * air;
  for (let i = 0; i < n; i++)
    diagonal[i] =
      (i > 0 ? link[i - 1] : 0) + (i < n - 1 ? link[i] : 0) + (i === 0 ? hot : 0) + (i === n - 1 ? cold : 0);
  const solve = (rhs: Float64Array<ArrayBuffer>): Float64Array<ArrayBuffer> => {
    const factor = new Float64Array(n);
    let pivot = capacity[0] + part * diagonal[0];
    rhs[0] /= pivot;
    for (let i = 1; i < n; i++) {
      const off = -part * link[i - 1];
      factor[i] = off / pivot;
      pivot = capacity[i] + part * diagonal[i] - off * factor[i];
      rhs[i] = (rhs[i] - off * rhs[i - 1]) / pivot;
    }
    for (let i = n - 2; i >= 0; i--) rhs[i] -= factor[i + 1] * rhs[i + 1];
    return rhs;
  };
  const halfway = from.map((t, i) => {
    const flow =
      diagonal[i] * t - (i > 0 ? link[i - 1] * from[i - 1] : 0) - (i < n - 1 ? link[i] * from[i + 1] : 0);
    return capacity[i] * t - part * flow + 2 * part * source[i];
  });
  const middle = solve(Float64Array.from(halfway));
  const [ahead, behind] = [1 / (share * (2 - share)), (1 - share) ** 2 / (share * (2 - share))];
  return solve(
    Float64Array.from(from, (t, i) => capacity[i] * (ahead * middle[i] - behind * t) + part * source[i]),
  );
}
