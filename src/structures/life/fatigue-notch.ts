import { formula, optional, ratio } from '../../units';

/** @example fatigueNotchFactor({ concentration: 3, notchSensitivity: 0.8 }) // => 2.6 */
export const fatigueNotchFactor = /* @__PURE__ */ formula({
  name: 'fatigueNotchFactor',
  title: 'Fatigue notch factor',
  equation: 'K_f = 1 + q·(K_t − 1)',
  source: "Shigley's Mechanical Engineering Design, 9th ed., eq. (6-32) (from memory)",
  inputs: {
    concentration: ratio('K_t', 'elastic stress concentration', { min: 1, example: 3 }),
    notchSensitivity: optional(
      ratio('q', 'notch sensitivity; 1 takes all of the concentration, which is conservative', {
        min: 0,
        max: 1,
        example: 0.9,
      }),
      1,
    ),
  },
  output: ratio('K_f', 'fatigue notch factor'),
  si: ({ concentration, notchSensitivity = 1 }) => 1 + notchSensitivity * (concentration - 1),
});
