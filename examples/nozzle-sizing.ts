// A textbook nozzle sizing, redone by hand calculation and then as one call.
// Data of the optimum-nozzle example in K. Niemeyer's rocket propulsion course notes (Oregon State University): γ = 1.2,
// 70 atm in the chamber, 1 atm at the exit; the notes print ε = 9.06, C_F = 1.60. Throat and exhaust are ours.
import { mkdirSync, writeFileSync } from 'node:fs';
import {
  conicalDivergenceFactor,
  deliveredThrustCoefficient,
  insertSolid,
  nozzleContour,
  nozzleRegime,
  optimumExpansionRatio,
  separationPressure,
  sizeNozzle,
  thrust,
  thrustCoefficient,
  thrustCoefficientParts,
} from '../src/index';

const gamma = 1.2;
const chamberPressure = '70 atm';
const ambientPressure = '1 atm';

console.log('— by hand —');
console.log(String(optimumExpansionRatio.explain({ gamma, chamberPressure, ambientPressure })));
const expansionRatio = 9.06; // as one would round it for the drawing
console.log(String(thrustCoefficient.explain({ gamma, expansionRatio, chamberPressure, ambientPressure })));
const divergenceFactor = conicalDivergenceFactor({ halfAngle: '15 deg' });
const { momentum, pressure } = thrustCoefficientParts({
  gamma,
  expansionRatio,
  chamberPressure,
  ambientPressure,
});
const delivered = { momentum, pressure, divergenceFactor, efficiency: 0.97 };
console.log(String(deliveredThrustCoefficient.explain(delivered)));
const throat = thrust.solveFor('throatArea', {
  result: '2 kN',
  thrustCoefficient: deliveredThrustCoefficient(delivered),
  chamberPressure,
});
console.log(`throat area for 2 kN: ${throat.to('mm^2')}\n`);

console.log('— in one call —');
const sized = sizeNozzle({
  target: { thrust: '2 kN' },
  chamberPressure,
  ambientPressure,
  gamma,
  characteristicVelocity: '1500 m/s',
  halfAngle: '15 deg',
  efficiency: 0.97,
  inletDiameter: '60 mm',
});
console.log(`${sized}\n`);

console.log('— what it does at a tenth of the pressure —');
const low = { gamma, expansionRatio, chamberPressure: '7 atm', ambientPressure } as const;
const regime = nozzleRegime(low);
console.log(`${regime.regime}, C_F ${regime.thrustCoefficient.toFixed(3)}. ${regime.cautions.join(' ')}`);
console.log(`${separationPressure(low)}\n`);

console.log('— the profile to turn —');
const contour = nozzleContour({
  throatDiameter: sized.throatDiameter,
  exitDiameter: sized.exitDiameter,
  inletDiameter: '60 mm',
  entranceRadius: '6 mm',
  throatRadius: '12 mm',
  downstreamRadius: '4 mm',
  throatLength: '3 mm',
  divergent: { shape: 'cone', halfAngle: '15 deg' },
});
const bell = nozzleContour({
  throatDiameter: sized.throatDiameter,
  exitDiameter: sized.exitDiameter,
  inletDiameter: '60 mm',
  entranceRadius: '6 mm',
  throatRadius: '12 mm',
  downstreamRadius: '4 mm',
  throatLength: '3 mm',
  divergent: { shape: 'bell', initialAngle: '24 deg', exitAngle: '9 deg' },
});
console.log(String(contour));
const solid = insertSolid({ contour, outerDiameter: '66 mm', density: '1780 kg/m^3' });
console.log(
  `wetted ${solid.wettedArea}, body ${solid.volume}, mass ${solid.mass}, minimum wall ${solid.minWall}`,
);

const half = (path: string, flip: boolean, colour: string): string =>
  `<path d="${path}" fill="none" stroke="${colour}" stroke-width="0.5"${flip ? ' transform="scale(1 -1)"' : ''}/>`;
const left = contour.x.at(0).in('mm') - 5;
const width = Math.max(contour.length.in('mm'), bell.length.in('mm')) + 10;
const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="900" viewBox="${left} -38 ${width} 76">
<rect x="${left}" y="-38" width="${width}" height="76" fill="white"/>
<line x1="${left}" x2="${left + width}" y1="0" y2="0" stroke="#777" stroke-width="0.2" stroke-dasharray="3 1 0.6 1"/>
${half(contour.svgPath, false, '#1b1b1b')}${half(contour.svgPath, true, '#1b1b1b')}
${half(bell.svgPath, false, '#b4441c')}${half(bell.svgPath, true, '#b4441c')}
<g font-family="sans-serif" font-size="3">
<text x="${left + 2}" y="-3.5" fill="#1b1b1b">cone, 15° half angle, ${contour.length.format()}</text>
<text x="${left + 2}" y="5.5" fill="#b4441c">parabolic bell, 24° to 9°, ${bell.length.format()}</text>
</g></svg>
`;
mkdirSync('examples/out', { recursive: true });
writeFileSync('examples/out/nozzle-sizing.svg', svg);
console.log('profile drawn in examples/out/nozzle-sizing.svg');
