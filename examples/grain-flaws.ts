// The same grain sound, cracked and debonded: what the flaw does to the burning area, and by Saint-Robert's law to the pressure.
//   npx tsx examples/grain-flaws.ts > grain-flaws.svg
// The picture of the cracked grain goes to standard output, the comparison to the screen.
import { crack, debond, drawGrain, internalTube, regress, voidBubble, withFlaws } from '../src/index';

const sound = internalTube({ outerDiameter: '50 mm', boreDiameter: '16 mm', length: '100 mm' });
const cracked = withFlaws(sound, {
  flaws: [
    crack({
      plane: 'radial',
      angle: '20 deg',
      innerRadius: '8 mm',
      outerRadius: '18 mm',
      from: '30 mm',
      to: '70 mm',
    }),
    voidBubble({ diameter: '5 mm', distanceFromAxis: '19 mm', angle: '200 deg', position: '60 mm' }),
  ],
});
const debonded = withFlaws(sound, { flaws: [debond({ from: '0 mm', to: '30 mm' })] });

// At equal throat and propellant, pressure goes with the burning area to the power 1/(1 - n). Invented exponent.
const exponent = 0.35;
const reference = regress(sound);
const depths = ['0 mm', '2 mm', '4 mm', '6 mm', '8 mm', '12 mm', '16 mm'] as const;

for (const [name, grain] of [
  ['sound', sound],
  ['cracked, with a void', cracked],
  ['debonded at the head end', debonded],
] as const) {
  const result = regress(grain);
  console.error(`\n${name}: ${String(result)}`);
  for (const flaw of result.flawLighting)
    console.error(`  ${flaw.label}: burns from a depth of ${String(flaw.depth)}`);
  console.error('  depth     area           of sound   pressure of sound');
  for (const depth of depths) {
    const area = result.burningAreaAt(depth);
    const ratio = area.si / reference.burningAreaAt(depth).si;
    console.error(
      `  ${depth.padEnd(8)}  ${String(area).padEnd(13)}  ${ratio.toFixed(3).padStart(8)}  ${(ratio ** (1 / (1 - exponent))).toFixed(3).padStart(9)}`,
    );
  }
  for (const caution of result.cautions) console.error(`  caution: ${caution}`);
}
console.error(
  '\nAn analysis is no permission: a grain with a known crack or debond belongs in no motor. These figures show why.',
);
console.log(drawGrain(cracked));
