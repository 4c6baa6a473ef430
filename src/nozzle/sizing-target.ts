import {
  absolutePressure,
  area,
  density,
  force,
  inputs,
  MeopError,
  optional,
  ratio,
  speed,
  type Values,
} from '../units';

const burnLaw = /* @__PURE__ */ inputs(
  {
    referenceRate: speed('r_ref', 'burning rate at the reference pressure', { above: 0, example: '7 mm/s' }),
    referencePressure: absolutePressure('p_ref', 'reference pressure of that rate', { example: '1 MPa' }),
    exponent: ratio('n', 'pressure exponent; no chamber pressure is stable from 1 on', {
      below: 1,
      example: 0.3,
    }),
  },
  { meaning: "burning rate by Saint-Robert's law" },
);

const targetFields = {
  thrust: /* @__PURE__ */ optional(
    /* @__PURE__ */ force('F', 'required thrust', { above: 0, example: '750 N' }),
  ),
  burningArea: /* @__PURE__ */ optional(/* @__PURE__ */ area('A_b', 'burning area')),
  propellantDensity: /* @__PURE__ */ optional(/* @__PURE__ */ density('ρ_p', 'propellant density')),
  burnRate: /* @__PURE__ */ optional(
    /* @__PURE__ */ speed('r', 'burning rate at the chamber pressure', { above: 0 }),
  ),
  burnLaw: /* @__PURE__ */ optional(burnLaw),
};

/** What a nozzle is sized for. */
export const sizingTarget = /* @__PURE__ */ inputs(targetFields, {
  meaning: 'thrust, or burningArea with propellantDensity and either burnRate or burnLaw',
  checks: [
    ({ thrust, ...burning }) => {
      const given = Object.values(burning).some((one) => one !== undefined);
      if (thrust === undefined)
        return given ? undefined : { problem: 'a thrust, or a burning area with its rate, is required' };
      if (!given) return undefined;
      return { code: 'inconsistent', path: 'thrust', problem: either('thrust', 'a burning area') };
    },
    ({ burnRate, burnLaw }) =>
      burnRate !== undefined && burnLaw !== undefined
        ? { code: 'inconsistent', path: 'burnRate', problem: either('burnRate', 'burnLaw') }
        : undefined,
  ],
});

const either = (one: string, other: string): string => `${one} and ${other} are mutually exclusive; give one`;

/** Throat area for a target, in m². @throws MeopError `missing-field` */
export function throatAreaFor(
  { thrust, burningArea, propellantDensity, burnRate, burnLaw }: Values<typeof targetFields>,
  state: Readonly<Record<'chamber' | 'velocity' | 'delivered' | 'discharge', number>>,
): number {
  const { chamber, velocity, delivered, discharge } = state;
  if (thrust !== undefined) return thrust.si / (delivered * chamber);
  if (burningArea === undefined) throw missing('burningArea', 'burning area');
  if (propellantDensity === undefined) throw missing('propellantDensity', 'propellant density');
  const rate =
    burnRate?.si ??
    (burnLaw && burnLaw.referenceRate.si * (chamber / burnLaw.referencePressure.si) ** burnLaw.exponent);
  if (rate === undefined) throw missing('burnRate', 'burning rate at the chamber pressure, or burnLaw');
  return (burningArea.si * rate * propellantDensity.si * velocity) / (discharge * chamber);
}

const missing = (field: string, expected: string): MeopError =>
  new MeopError({ code: 'missing-field', procedure: 'sizeNozzle', path: `target.${field}`, expected });
