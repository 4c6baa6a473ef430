import type { MotorDocument } from './document';

/**
 * Returns the document of Tern-54, the invented club motor of the examples. All of its values are invented.
 *
 * @example parseMotor(demoMotor()).name // => 'Tern-54'
 */
export function demoMotor(): MotorDocument {
  const joint = {
    thread: 'M5',
    boltClass: 'A2-70',
    count: 8,
    shearPlane: 'thread',
    holeDiameter: { value: '5.3 mm', plusMinus: '0.1 mm' },
    edgeDistance: { value: '12 mm', plusMinus: '0.3 mm' },
    engagement: '9 mm',
    gap: '0.05 mm',
    positionTolerance: '0 mm',
  } as const;
  const seal = {
    ring: '133',
    grooveDiameter: { value: '46.8 mm', plusMinus: '0.03 mm' },
    grooveWidth: { value: '3.7 mm', plusMinus: '0.1 mm' },
    closureDiameter: { value: '50.9 mm', plusMinus: '0.02 mm' },
    hardness: 90,
    position: { value: '20.5 mm', plusMinus: '0.1 mm' },
  } as const;
  return {
    version: 2,
    name: 'Tern-54',
    notes: ['An invented motor; all values are invented.'],
    case: {
      material: '6061-T6 drawn tube',
      outsideDiameter: { value: '54 mm', plusMinus: '0.02 mm' },
      wall: { value: '1.5 mm', plusMinus: '0.02 mm' },
      length: '390 mm',
      chamberLength: '322 mm',
      wallTemperature: '90 degC',
    },
    liner: { material: 'paper tube', thickness: '1.2 mm' },
    closures: {
      head: {
        material: '6061-T6 bar',
        thickness: { value: '14 mm', plusMinus: '0.1 mm' },
        edgeSupport: 'simply supported',
        opening: '9.7 mm',
        joint,
        layout: {
          innerFace: { value: '28 mm', plusMinus: '0.1 mm' },
          length: '28 mm',
          diameter: { value: '50.9 mm', plusMinus: '0.02 mm' },
          cavity: { diameter: '22 mm', depth: '14 mm' },
        },
        seals: [seal],
      },
      aft: {
        material: '6061-T6 bar',
        thickness: { value: '18 mm', plusMinus: '0.1 mm' },
        edgeSupport: 'simply supported',
        opening: { value: '20 mm', plusMinus: '0.05 mm' },
        joint,
        layout: {
          innerFace: { value: '40 mm', plusMinus: '0.1 mm' },
          length: '40 mm',
          diameter: { value: '50.9 mm', plusMinus: '0.02 mm' },
          recess: { diameter: '26.5 mm', depth: '14 mm' },
        },
        seals: [seal],
      },
    },
    nozzle: {
      throatDiameter: { value: '10.6 mm', plusMinus: '0.05 mm' },
      exitDiameter: '26 mm',
      divergenceHalfAngle: '12 deg',
      efficiency: 0.93,
      throatErosion: '0.01 mm/s',
      insert: {
        material: 'isomoulded graphite',
        outsideDiameter: { value: '26 mm', plusMinus: '0.05 mm' },
        length: '20 mm',
        tensileStrength: '28 MPa',
        compressiveStrength: '90 MPa',
        seat: {
          insertedFrom: 'inside',
          pocketDiameter: { value: '26.15 mm', plusMinus: '0.05 mm' },
          pocketDepth: { value: '12 mm', plusMinus: '0.1 mm' },
          thicknessAtOpening: '14 mm',
        },
      },
    },
    propellant: {
      name: 'sugar-class, cast',
      density: { value: '1750 kg/m^3', plusMinus: '1.5 %' },
      idealDensity: '1841 kg/m^3',
      burnLaw: {
        referenceRate: { value: '7.2 mm/s', plusMinus: '4 %' },
        referencePressure: '4 MPaa',
        exponent: { value: 0.32, plusMinus: 0.02 },
        characterisedFrom: '2 MPaa',
        characterisedTo: '8 MPaa',
        temperatureSensitivity: '0.0012 1/K',
        referenceTemperature: '20 degC',
        source: 'invented for the demo motor',
      },
      gamma: 1.136,
      molarMass: '39.9 g/mol',
      flameTemperature: '1600 K',
      characteristicVelocityEfficiency: { value: 0.95, plusMinus: 0.015 },
      condensedFraction: 0.4,
    },
    grain: {
      segments: [
        {
          shape: 'tubular segment',
          count: 4,
          outerDiameter: '48 mm',
          boreDiameter: { value: '22 mm', plusMinus: '0.1 mm' },
          length: { value: '76 mm', plusMinus: '0.5 mm' },
        },
      ],
      spacing: '2 mm',
      assumedFlaw: {
        segment: 1,
        flaw: {
          flaw: 'radial crack',
          innerRadius: '11 mm',
          outerRadius: '17 mm',
          from: '20 mm',
          to: '50 mm',
        },
        reason: 'a crack of this size could escape visual inspection of the bore',
      },
    },
    ignition: { igniterMass: '0.6 g', igniterDuration: '0.08 s', flameSpreadTime: '0.03 s' },
    ambient: { pressure: '101.3 kPaa', temperature: '20 degC' },
    temperatureRange: { coldest: '0 degC', hottest: '40 degC' },
    stand: {
      axis: 'horizontal',
      movingMass: '2.6 kg',
      members: {
        count: 2,
        length: '0.45 m',
        elasticModulus: '200 GPa',
        secondMoment: '4900 mm^4',
      },
      anchors: { height: '0.2 m', anchorSpacing: '0.7 m', weight: '250 N', count: 2, allowable: '3 kN' },
      restraint: {
        rope: { diameter: '1/4 in', construction: '7x19', grade: 'aircraft carbon' },
        ropeLength: '1.2 m',
        slack: '5 mm',
        legs: 2,
        termination: 'swaged sleeve',
        shackle: '12 kN',
      },
    },
    instruments: [
      {
        measures: 'pressure',
        name: 'chamber',
        range: '1000 psig',
        proofPressure: '2000 psig',
        sampleRate: '1 kHz',
        riseTime: '1 ms',
      },
      {
        measures: 'thrust',
        name: 'load cell',
        range: '2 kN',
        safeOverload: '3 kN',
        sampleRate: '1 kHz',
        riseTime: '2 ms',
      },
      {
        measures: 'temperature',
        name: 'case, middle',
        range: '400 degC',
        expected: '90 degC',
        sampleRate: '10 Hz',
      },
    ],
    factors: { set: 'ground test' },
    meop: { basis: 'worst case', samples: 10_000, seed: 54 },
  };
}
