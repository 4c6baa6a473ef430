import {
  type Arguments,
  type Group,
  type Input,
  type Inputs,
  inputs,
  length,
  optional,
  thermalInsulance,
  type Values,
  words,
} from '../units';
import { inputOf } from '../units/declare/plain-inputs';
import { solid } from './heat-inputs';

const name = /* @__PURE__ */ optional(/* @__PURE__ */ words('name of the step', { example: 'liner' }));

/** A layer that conducts. */
export const conductingLayer = /* @__PURE__ */ inputs(
  {
    name,
    thickness: length('L', 'thickness', { example: '3 mm' }),
    conductivity: solid.conductivity,
  },
  { meaning: 'layer of the wall' },
);

/** A layer that conducts and stores heat. */
export const heatedLayer = /* @__PURE__ */ inputs(
  { ...conductingLayer.fields, density: solid.density, specificHeat: solid.specificHeat },
  { meaning: 'layer of the wall' },
);

const contactStep = /* @__PURE__ */ inputs(
  {
    name,
    contact: thermalInsulance(
      'R_c',
      'resistance of a contact; aluminium on aluminium in air, 10 µm rough, at 1 bar: 2.75e-4 m^2*K/W (Incropera, table 3.1, quoted from memory, not verified)',
      { example: '2.75e-4 m^2*K/W' },
    ),
  },
  { meaning: 'contact between two layers' },
);
type Contact = typeof contactStep.fields;

/** A step of the path through a wall: a layer of one sort, or a contact, which has the field `contact`. */
export const stepWith = <I extends Inputs>(
  layer: Group<I, 'required'>,
): Input<Arguments<I> | Arguments<Contact>, Values<I> | Values<Contact>, 'required'> =>
  inputOf<Arguments<I> | Arguments<Contact>, Values<I> | Values<Contact>>({
    type: 'either',
    meaning: 'layer of the wall, or the contact between two',
    ...(layer.example !== undefined && { example: layer.example }),
    takes: () => `${layer.takes()} or ${contactStep.takes()}`,
    read: (value, at) =>
      typeof value === 'object' && value !== null && 'contact' in value
        ? contactStep.read(value, at)
        : layer.read(value, at),
  });
