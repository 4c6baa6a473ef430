import type { Origin } from './datum';
import type { Material } from './material';
import { number, origin, value } from './shelf-entry';

const memory = (source: string): Origin => origin('typical', source, 'from memory');
const pages = origin('typical', "seal suppliers' property pages");

function seal(
  name: string,
  {
    min,
    max,
    expansion,
    density,
    notes,
  }: {
    readonly min: readonly [celsius: number, from: Origin];
    readonly max: readonly [celsius: number, from: Origin];
    readonly expansion: readonly [perK: string, from: Origin];
    readonly density: string;
    readonly notes: readonly string[];
  },
): Material {
  return {
    name,
    form: 'moulded O-ring compound, 70 or 90 Shore A',
    class: 'elastomer',
    density: value('density', density, memory('handbook value of the compound')),
    thermalExpansion: value('thermal expansion', expansion[0], expansion[1]),
    serviceTemperature: {
      min: value('temperature', `${min[0]} degC`, min[1]),
      max: value('temperature', `${max[0]} degC`, max[1]),
    },
    // Elastomers are incompressible next to their shear stiffness.
    poissonRatio: number(0.499, memory('incompressible elastomer')),
    notes,
  };
}

/** Fluorocarbon rubber, type A. */
export const fkm = (): Material =>
  seal('FKM', {
    min: [-20, { ...pages, note: 'other pages print −26 °C; about 8 K below TR-10' }],
    max: [204, { ...pages, note: 'about 1000 h; seconds tolerate more' }],
    expansion: ['160e-6 1/K', pages],
    density: '1850 kg/m^3',
    notes: [],
  });

/** Nitrile rubber. */
export const nbr = (): Material =>
  seal('NBR', {
    min: [-34, memory("seal suppliers' handbooks, standard compounds")],
    max: [121, memory("seal suppliers' handbooks, standard compounds")],
    expansion: ['112e-6 1/K', memory("seal suppliers' handbooks")],
    density: '1250 kg/m^3',
    notes: ['special compounds reach −55 °C'],
  });

/** Silicone rubber. */
export const silicone = (): Material =>
  seal('silicone', {
    min: [-54, memory("seal suppliers' handbooks, standard compounds")],
    max: [204, memory("seal suppliers' handbooks, standard compounds")],
    expansion: ['180e-6 1/K', memory("seal suppliers' handbooks")],
    density: '1400 kg/m^3',
    notes: ['weak against tearing and extrusion: halve the extrusion gap', 'static seals only'],
  });

interface Liner {
  readonly form: string;
  readonly density: string;
  readonly conductivity: string;
  readonly heat: string;
  readonly from: Origin;
  readonly heatFrom?: Origin;
  readonly notes: readonly string[];
}

const liner = (
  name: string,
  { form, density, conductivity, heat, from, heatFrom, notes }: Liner,
): Material => ({
  name,
  form,
  class: 'liner',
  density: value('density', density, from),
  thermalConductivity: value('thermal conductivity', conductivity, from),
  specificHeat: value('specific heat', heat, heatFrom ?? from),
  notes,
});

/** Paper-phenolic laminate. */
export const paperPhenolic = (): Material =>
  liner('paper phenolic', {
    form: 'laminated tube, grade XX or XXX',
    density: '1350 kg/m^3',
    conductivity: '0.29 W/(m*K)',
    heat: '1500 J/(kg*K)',
    from: memory('laminate data sheets (1300 to 1400 kg/m³, 0.2 to 0.35 W/(m·K), 1300 to 1700 J/(kg·K))'),
    notes: ['chars: inert properties are only a bound', 'weak in interlaminar shear'],
  });

/** Cotton or linen phenolic laminate. */
export const fabricPhenolic = (): Material => ({
  ...liner('fabric phenolic', {
    form: 'laminated tube, cotton or linen',
    density: '1350 kg/m^3',
    conductivity: '0.3 W/(m*K)',
    heat: '1500 J/(kg*K)',
    from: memory('laminate data sheets'),
    notes: ['chars: inert properties are only a bound', 'weak in interlaminar shear'],
  }),
  thermalExpansion: value('thermal expansion', '25e-6 1/K', {
    ...memory('laminate data sheets'),
    note: '20 to 30',
  }),
});

/** Kraft-paper tube. */
export const paperTube = (): Material =>
  liner('paper tube', {
    form: 'spiral or convolute kraft-paper tube',
    density: '750 kg/m^3',
    conductivity: '0.15 W/(m*K)',
    heat: '1340 J/(kg*K)',
    from: origin(
      'typical',
      'values in use (600 to 950 kg/m³, 0.06 to 0.21 W/(m·K))',
      'engineering practice, no published source',
    ),
    heatFrom: memory('Incropera and DeWitt, appendix A.3, paper'),
    notes: ['chars from about 250 to 300 °C: inert properties are only a bound'],
  });
