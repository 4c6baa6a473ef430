// The single causes of a difference between a firing and its prediction.

/** The names of the causes. */
export const causeNames = {
  'burning-area': 'burning area',
  'throat-area': 'throat area',
  'characteristic-velocity': 'characteristic velocity',
  'burning-rate': 'burning rate',
} as const;

/** A single possible cause of a difference between a firing and its prediction, by identifier. */
export type DifferenceCause = keyof typeof causeNames;

/** True for the causes that have the same effect on pressure and thrust. */
export const sameTrace = (id: DifferenceCause): boolean =>
  id === 'burning-area' || id === 'characteristic-velocity';

/** Dependence of times, pressure and thrust on a factor on each cause. */
export function causes(n: number): readonly {
  readonly id: DifferenceCause;
  readonly scale: (f: number) => { readonly time: number; readonly p: number; readonly f: number };
  readonly note: string;
}[] {
  const up = 1 / (1 - n);
  return [
    {
      id: 'burning-area',
      scale: (f) => ({ time: f ** (-n * up), p: f ** up, f: f ** up }),
      note: 'more burning area than drawn: flaws, a longer bore, ends not inhibited',
    },
    {
      id: 'throat-area',
      scale: (f) => ({ time: f ** (n * up), p: f ** -up, f: f ** (1 - up) }),
      note: 'measure the throat before and after the firing',
    },
    {
      id: 'characteristic-velocity',
      // Thrust is proportional to pressure; only the weight of the propellant distinguishes c* from the area.
      scale: (f) => ({ time: f ** (-n * up), p: f ** up, f: f ** up }),
      note: 'c* follows from pressure integral, throat and propellant weight',
    },
    {
      id: 'burning-rate',
      scale: (f) => ({ time: f ** -up, p: f ** up, f: f ** up }),
      note: 'batch, grain temperature or particle size: same impulse, different burn time',
    },
  ];
}
