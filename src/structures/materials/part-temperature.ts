import { optional, temperature, time } from '../../units';

/** The temperature at which a part carries its load. */
export const partTemperature = /* @__PURE__ */ optional(
  temperature('T', 'maximum temperature of the part under load; room temperature where omitted', {
    above: 0,
    example: '80 degC',
    worse: 'high',
  }),
);

/** How long a part is at that temperature. */
export const exposure = /* @__PURE__ */ optional(
  time('t', 'time at that temperature; half an hour is the shortest in handbooks', {
    min: 0,
    example: '0.5 h',
  }),
  1800,
);
