import { instance, list, procedure } from '../../../units';
import { outer } from '../grain-inputs';
import { isCore } from './core';
import { cylindricalGrain } from './grain';

/** Cores may overlap. All are open to the chamber from the start. */
export const composedGrain = /* @__PURE__ */ procedure({
  name: 'composedGrain',
  title: 'Grain with any union of cores; ends inhibited by default',
  source: 'geometry',
  inputs: {
    ...outer('none'),
    cores: list(
      'cores that form the cavity',
      instance('a core', 'a core made by cylinderCore, coneCore, finCore or sphereCore', isCore),
    ),
  },
  gives: 'the grain',
  example:
    "composedGrain({ outerDiameter: '50 mm', length: '90 mm', cores: [cylinderCore({ diameter: '14 mm' }), finCore({ count: 4, thickness: '3 mm', tipDiameter: '32 mm', from: '50 mm' })] })",
  run: ({ cores, ...values }) => {
    const envelope = {
      form: 'cylinder',
      radius: values.outerDiameter.si / 2,
      length: values.length.si,
    } as const;
    return cylindricalGrain(
      'composed grain',
      values,
      cores.map((core) => core.place(envelope)),
    );
  },
});
