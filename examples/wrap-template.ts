// Prints the drilling template of a closure to standard output, to be kept as a file:
//   node scripts/run-ts.mjs examples/wrap-template.ts > template.svg
// Print it at 100 %, check both lines with a ruler, cut it out, wrap it round the case, centre-punch.
import { drillGuideBore, wrapTemplate } from '../src/index';

const template = wrapTemplate({
  title: 'Forward closure, demo motor',
  outsideDiameter: '3 in',
  wall: '0.125 in',
  count: 10,
  holeDiameter: '6.4 mm',
  edgeDistance: '1/2 in',
});
console.log(template.sheets[0]);

// What goes to the eye rather than into the file.
console.error(String(template.pattern));
console.error(template.cautions.join('\n'));
console.error(String(drillGuideBore({ diameter: '6.4 mm', allowance: '0.1 mm', flankAngle: '40 deg' })));
