import { describe } from 'vitest';
import { closureForce } from '../../src/structures/closure-force';
import {
  bendingEdgeMargin,
  din472GrooveCapacity,
  grooveBendingStress,
  grooveYieldCapacity,
  middleLineShift,
  retainingRingSize,
  ringShearCapacity,
  shearEdgeMargin,
  tabulatedEdgeMargin,
  wallTension,
} from '../../src/structures/closures';
import { barGrooveConcentration, shoulderConcentration } from '../../src/structures/concentration';
import { fromSiValue, unitOf } from '../../src/units';
import { siList } from '../cases/read-case';
import { caseTest, inch } from './case-check';

// Expected values, sources and provenance: tests/cases/hardware.json.

const lbf = 4.4482216152605;
const capacities = (input: (name: string) => number) => ({
  grooveCapacity_lbf:
    grooveYieldCapacity.si({
      boreDiameter: input('diameter'),
      grooveDepth: input('grooveDepth'),
      yieldStrength: input('grooveYield'),
      contactFactor: input('contactFactor'),
      factor: input('factor'),
    }) / lbf,
  ringShearCapacity_lbf:
    ringShearCapacity.si({
      boreDiameter: input('diameter'),
      ringThickness: input('ringThickness'),
      shearStrength: input('ringShear'),
      contactFactor: input('contactFactor'),
      factor: input('ringFactor'),
    }) / lbf,
});
const named = (name: string, values: readonly number[]): Readonly<Record<string, number>> =>
  Object.fromEntries(values.map((value, i) => [`${name}[${i}]`, value]));
const mm = (si: number) => fromSiValue<'length'>(si, 'length', unitOf('mm'));

describe('retaining rings', () => {
  caseTest('ring-groove-yield-2in', (_, input) =>
    capacities((name) => (name === 'contactFactor' ? 1 : input(name))),
  );
  caseTest('ring-bowed-0688', (_, input) =>
    capacities((name) => input(name === 'factor' ? 'grooveFactor' : name)),
  );
  caseTest('din-472-groove-capacity', (one, input) => {
    const grooves = siList(one.inputs.grooves);
    return named(
      'capacity_kN',
      siList(one.inputs.bores).map(
        (boreDiameter, i) =>
          din472GrooveCapacity.si({
            boreDiameter,
            grooveDiameter: grooves[i],
            yieldStrength: input('grooveYield'),
          }) / 1e3,
      ),
    );
  });
  caseTest('groove-edge-margin', (_, input) => {
    const of = {
      load: input('thrust'),
      grooveDiameter: input('grooveDiameter'),
      yieldStrength: input('yield'),
      factor: input('factor'),
    };
    return {
      edgeShear_in: shearEdgeMargin.si(of) / inch,
      edgeBending_in: bendingEdgeMargin.si({ ...of, grooveDepth: input('grooveDepth') }) / inch,
    };
  });
  caseTest('ring-edge-margin-is-three-depths', ({ inputs }) => {
    const bores = siList(inputs.bores);
    const grooves = siList(inputs.grooves);
    return {
      ...named(
        'edgeMargin_in',
        bores.map((bore) =>
          retainingRingSize(`inch 3000 ${Number((bore / inch).toFixed(3))}`).edgeMargin.in('in'),
        ),
      ),
      ...named(
        'threeDepths_in',
        bores.map((bore, i) => tabulatedEdgeMargin.si({ grooveDepth: (grooves[i] - bore) / 2 }) / inch),
      ),
    };
  });
  caseTest('groove-net-section', (_, input) => {
    const [outsideDiameter, insideDiameter] = [input('outsideDiameter'), input('grooveDiameter')];
    const load = closureForce.si({ pressure: input('pressure'), sealDiameter: input('sealDiameter') });
    const tension = wallTension.si({ load, outsideDiameter, insideDiameter });
    const arm = middleLineShift.si({ grooveDepth: (insideDiameter - input('bore')) / 2 });
    const wall = (outsideDiameter - insideDiameter) / 2;
    return {
      endForce_N: load,
      netArea_mm2: (load / tension) * 1e6,
      membrane_MPa: tension / 1e6,
      wallUnderGroove_mm: wall * 1e3,
      middleLineShift_mm: arm * 1e3,
      bendingUnrestrained_MPa: grooveBendingStress.si({ tension, arm, wall }) / 1e6,
    };
  });
});

describe('stress concentration', () => {
  caseTest('kt-u-groove-bar', ({ inputs }) => {
    const [depths, radii] = [siList(inputs.depths), siList(inputs.rootRadii)];
    return named(
      'Kt',
      siList(inputs.diameters).map(
        (diameter, i) =>
          barGrooveConcentration({
            diameter: mm(diameter),
            depth: mm(depths[i]),
            rootRadius: mm(radii[i]),
          }).factor,
      ),
    );
  });
  caseTest('kt-shoulder-bar', ({ inputs }, input) =>
    named(
      'Kt',
      siList(inputs.filletRadii).map(
        (radius) =>
          shoulderConcentration({
            largeDiameter: mm(input('largeDiameter')),
            smallDiameter: mm(input('smallDiameter')),
            filletRadius: mm(radius),
          }).factor,
      ),
    ),
  );
});
