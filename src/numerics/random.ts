/** A seeded stream of random numbers that can be split: the same seed gives the same numbers on every machine. */
import { requireInteger } from './checks';

/** A stream of random numbers. */
export interface RandomStream {
  /** Uniform whole number from 0 to 2^32 - 1. */
  uint32(): number;
  /** Uniform on [0, 1), all 53 bits random. */
  uniform(): number;
  /** Normal with mean 0 and standard deviation 1. */
  normal(): number;
  /**
   * A new stream for an independent task, selected by its number: it does not depend on how many numbers this
   * stream has given, so results do not depend on the order in which tasks run.
   */
  split(task: number): RandomStream;
}

/**
 * Stream of the generator sfc32 started from a whole-number seed.
 *
 * The seed (and the numbers of the splits that led here) are spread over the state by the 32-bit finaliser of
 * MurmurHash3, and the first 15 outputs are dropped, so that neighbouring seeds give unrelated streams.
 * Source: sfc32 by C. Doty-Humphrey, PractRand (2014), a chaotic generator of 96 bits with a 32-bit counter that makes
 * every cycle at least 2^32 long. Normal numbers by the polar method of Marsaglia and Bray, SIAM Review 6 (1964).
 *
 * @example
 * randomStream(1).uniform() === randomStream(1).uniform() // => true
 */
export function randomStream(seed: number): RandomStream {
  requireInteger('seed', seed, 0);
  // A seed may use all 53 bits of a whole double.
  return fromPath([seed >>> 0, Math.floor(seed / 2 ** 32) >>> 0]);
}

function fromPath(path: readonly number[]): RandomStream {
  const state = new Uint32Array(4);
  // Each word of the state absorbs the whole path, each with a constant of its own (digits of pi, as a nothing-up-my-sleeve).
  const salts = [0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344];
  for (let word = 0; word < 3; word++) {
    let hash = salts[word];
    for (const part of path) hash = mix32((hash ^ part) + 0x9e3779b9);
    state[word] = mix32(hash ^ path.length);
  }
  state[3] = 1;
  for (let i = 0; i < 15; i++) sfc32(state);

  let spare = Number.NaN;
  const uniform = (): number => {
    // 27 high bits of one word and 26 of the next.
    const high = sfc32(state) >>> 5;
    const low = sfc32(state) >>> 6;
    return (high * 2 ** 26 + low) * 2 ** -53;
  };
  return {
    uint32: () => sfc32(state),
    uniform,
    normal: () => {
      if (!Number.isNaN(spare)) {
        const kept = spare;
        spare = Number.NaN;
        return kept;
      }
      for (;;) {
        const u = 2 * uniform() - 1;
        const v = 2 * uniform() - 1;
        const s = u * u + v * v;
        if (s > 0 && s < 1) {
          const factor = Math.sqrt((-2 * Math.log(s)) / s);
          spare = v * factor;
          return u * factor;
        }
      }
    },
    split: (task) => {
      requireInteger('task', task, 0);
      return fromPath([...path, task >>> 0, Math.floor(task / 2 ** 32) >>> 0]);
    },
  };
}

/** Kernel: one step of sfc32 on its four words a, b, c and counter. */
export function sfc32(state: Uint32Array): number {
  const result = (state[0] + state[1] + state[3]) >>> 0;
  state[3] += 1;
  state[0] = state[1] ^ (state[1] >>> 9);
  state[1] = state[2] + (state[2] << 3);
  state[2] = ((state[2] << 21) | (state[2] >>> 11)) + result;
  return result;
}

/** Finaliser of MurmurHash3 (A. Appleby, public domain): every bit of the input changes half the bits of the output. */
function mix32(value: number): number {
  let h = value >>> 0;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}
