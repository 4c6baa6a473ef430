import { withFlaws } from '../../ballistics';
import { wireRope } from '../../structures';
import { MeopError } from '../../units';
import { type Findings, findings, type ReadDocument, si } from './fit-check';
import { flawOf } from './flaw-inputs';
import { checkHistory } from './history-checks';
import type { MotorParts } from './motor-schema';
import type { DocumentProblem, Path } from './problems';
import { propellantOf } from './propellant-of';
import { grainOf } from './segment-grain';

/** Errors of lower layers for propellant, grain and rope, and contradictions. */
export function meaningProblems(document: ReadDocument): readonly DocumentProblem[] {
  const found = findings(document.json);
  checkLaw(document, found);
  checkCovariance(document, found);
  checkPropellant(document, found);
  checkGrain(document, found);
  checkTemperatures(document, found);
  checkIgnition(found);
  checkInstruments(document, found);
  checkRope(document, found);
  checkHistory(document, found);
  return found.problems;
}

const law: Path = ['propellant', 'burnLaw'];
const power = ['referenceRate', 'referencePressure', 'exponent'];

function checkLaw({ parts: { propellant } }: ReadDocument, { note, isGiven }: Findings): void {
  const given = power.filter((field) => isGiven([...law, field]));
  if (isGiven([...law, 'bands'])) {
    const [first] = given;
    if (first !== undefined)
      note([...law, first], {
        code: 'contradiction',
        problem: `${first} and bands are mutually exclusive`,
        remedy: 'Give one of them',
      });
  } else if (propellant?.burnLaw !== undefined)
    for (const field of power)
      if (!given.includes(field))
        note([...law, field], {
          code: 'missing-field',
          expected: 'a burn law requires referenceRate, referencePressure and exponent, or bands',
        });
}

function checkCovariance({ parts: { propellant } }: ReadDocument, { note, isGiven }: Findings): void {
  const { covariance, bands, referenceRate, exponent } = propellant?.burnLaw ?? {};
  if (covariance === undefined) return;
  const at: Path = [...law, 'covariance'];
  const [ofCoefficient, both, ofExponent] = covariance.map(si);
  if (bands !== undefined || isGiven([...law, 'bands']))
    note(at, { code: 'contradiction', problem: 'covariance describes one power law, not bands' });
  else if ((referenceRate?.plusMinus ?? 0) > 0 || (exponent?.plusMinus ?? 0) > 0)
    note(at, {
      code: 'contradiction',
      problem: 'covariance and tolerances of referenceRate and exponent are mutually exclusive',
      remedy: 'Omit plusMinus of both, or omit covariance',
    });
  else if (covariance.length !== 3)
    note(at, {
      code: 'out-of-domain',
      expected: 'three numbers: variance of ln a, covariance, variance of n',
    });
  else if (ofCoefficient !== undefined && both !== undefined && ofExponent !== undefined)
    if (!(ofExponent > 0 && ofCoefficient > 0 && both ** 2 <= ofCoefficient * ofExponent * (1 + 1e-9)))
      note(at, {
        code: 'out-of-domain',
        expected: 'positive variances and a covariance² of at most their product',
        remedy: 'Give covariance as fitBurnLaw returns it',
      });
    else {
      const middle = Math.exp(-both / ofExponent);
      // Outside, the coefficient is in other units, which would move the worst case unnoticed.
      if (middle < 1e4 || middle > 1e8)
        note(at, {
          code: 'contradiction',
          problem: `covariance places the middle of the measurements at ${middle.toPrecision(3)} Pa`,
          remedy: 'Give the variances for a in m/s and p in Pa, as fitBurnLaw returns them',
        });
    }
}

const gas = ['molarMass', 'flameTemperature', 'idealCharacteristicVelocity'] as const;

function checkPropellant(
  { parts, isSound }: ReadDocument,
  { problems, note, isGiven, tried }: Findings,
): void {
  const { propellant } = parts;
  if (propellant === undefined) return;
  const known = gas.filter((field) => isGiven(['propellant', field]));
  if (known.length < 2) {
    note(['propellant', gas.find((field) => !known.includes(field)) ?? gas[0]], {
      code: 'missing-field',
      expected: `two of ${gas.join(', ')} are required: the third follows from them`,
    });
    return;
  }
  if (!isSound(['propellant']) || problems.length > 0) return;
  const whole = propellant as MotorParts['propellant']; // valid: nothing of it was rejected
  tried(['propellant'], () => {
    try {
      propellantOf(whole);
    } catch (error) {
      throw error instanceof MeopError && error.code === 'burn-law-bands'
        ? error.at('', 'burnLaw.bands')
        : error;
    }
  });
}

function checkGrain({ parts: { grain }, isSound }: ReadDocument, { problems, tried }: Findings): void {
  type Segment = MotorParts['grain']['segments'][number];
  type Flaw = NonNullable<Segment['flaws']>[number];
  grain?.segments?.forEach((segment, i) => {
    const at: Path = ['grain', 'segments', i];
    if (segment === undefined || !isSound(at, 'flaws')) return;
    const sound = segment as Segment; // valid: nothing except possibly its flaws was rejected
    const before = problems.length;
    tried(at, () => grainOf(sound));
    if (problems.length > before) return;
    const check = (flaw: unknown, path: Path): void => {
      if (flaw === undefined || !isSound(path)) return;
      tried(path, () => withFlaws(grainOf(sound), { flaws: [flawOf(flaw as Flaw)] })); // valid: nothing of it was rejected
    };
    sound.flaws?.forEach((flaw, k) => {
      check(flaw, [...at, 'flaws', k]);
    });
    const { assumedFlaw } = grain;
    if (assumedFlaw?.segment === i + 1) check(assumedFlaw.flaw, ['grain', 'assumedFlaw', 'flaw']);
  });
}

function checkTemperatures({ parts: { temperatureRange, ambient } }: ReadDocument, { note }: Findings): void {
  const coldest = si(temperatureRange?.coldest);
  const hottest = si(temperatureRange?.hottest);
  const now = si(ambient?.temperature);
  if (coldest !== undefined && hottest !== undefined && coldest > hottest)
    note(['temperatureRange', 'hottest'], {
      code: 'contradiction',
      expected: `at least the coldest temperature (${temperatureRange?.coldest?.value})`,
      remedy: 'Exchange the two',
    });
  else if (now !== undefined && ((coldest ?? now) > now || (hottest ?? now) < now))
    note(['ambient', 'temperature'], {
      code: 'contradiction',
      expected: 'inside the temperature range',
      remedy: 'Widen temperatureRange',
    });
}

function checkIgnition({ isGiven, note }: Findings): void {
  const pair = ['igniterDuration', 'igniterMass'];
  const [missing, ...others] = pair.filter((field) => !isGiven(['ignition', field]));
  if (missing !== undefined && others.length === 0)
    note(['ignition', missing], {
      code: 'missing-field',
      expected: `required with ${pair.find((field) => field !== missing)}`,
    });
}

function checkInstruments({ parts: { instruments = [] } }: ReadDocument, { note }: Findings): void {
  const names = instruments.map((one) => one?.name);
  names.forEach((name, i) => {
    if (name !== undefined && names.indexOf(name) < i)
      note(['instruments', i, 'name'], {
        code: 'contradiction',
        expected: 'unique among the instruments',
      });
  });
}

function checkRope({ parts: { stand } }: ReadDocument, { tried }: Findings): void {
  const { diameter, construction, grade } = stand?.restraint?.rope ?? {};
  if (diameter !== undefined && construction !== undefined && grade !== undefined)
    tried(['stand', 'restraint', 'rope'], () => wireRope({ diameter: diameter.value, construction, grade }));
}
