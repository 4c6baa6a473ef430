import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { withHoverComments } from '../../scripts/hover-comments';
import { gaugePressure, inputs, length } from '../../src/units';

// What an editor shows on hover, asked of the compiler's own language service on the built form of a declaration.

const tube = inputs(
  { wall: length('t', 'wall thickness', { example: '3 mm' }) },
  { meaning: 'the tube that contains the pressure' },
);
const stress = {
  id: 'stressOf',
  title: 'Stress of a tube',
  equation: 'σ = p·r / t',
  source: 'made for this test',
  inputs: { pressure: gaugePressure('p', 'internal pressure'), tube },
  gives: 'σ, stress (stress)',
  exampleCall: "stressOf({ pressure: '1 MPa', tube: { wall: '3 mm' } })",
};
const built = `import { Group, Parameter, Procedure } from '../../src/units';
/** Own words. */
export declare const stressOf: Procedure<{
    readonly pressure: Parameter<"gauge pressure", "required", undefined>;
    readonly tube: Group<{
        readonly wall: Parameter<"length", "required", undefined>;
    }, "required">;
}, number, undefined>;
`;
const text = withHoverComments(built, new Map([['stressOf', stress]]));
const use = `import { stressOf } from './declared';\nexport const x = stressOf({ pressure: '1 MPa', tube: { wall: '3 mm' } });\n`;

function hover(what: string): string {
  const folder = `${process.cwd()}/tests/package`;
  const files = new Map([
    [`${folder}/declared.d.ts`, text],
    [`${folder}/use.ts`, use],
  ]);
  const host: ts.LanguageServiceHost = {
    getCompilationSettings: () => ({
      strict: true,
      target: ts.ScriptTarget.ES2022,
      module: ts.ModuleKind.ESNext,
      moduleResolution: ts.ModuleResolutionKind.Bundler,
      skipLibCheck: true,
    }),
    getScriptFileNames: () => [...files.keys()],
    getScriptVersion: () => '1',
    getScriptSnapshot: (name) => {
      const content = files.get(name) ?? ts.sys.readFile(name);
      return content === undefined ? undefined : ts.ScriptSnapshot.fromString(content);
    },
    getCurrentDirectory: () => folder,
    getDefaultLibFileName: ts.getDefaultLibFilePath,
    fileExists: (name) => files.has(name) || ts.sys.fileExists(name),
    readFile: (name) => files.get(name) ?? ts.sys.readFile(name),
  };
  const info = ts
    .createLanguageService(host)
    .getQuickInfoAtPosition(`${folder}/use.ts`, use.lastIndexOf(what));
  return ts.displayPartsToString(info?.documentation);
}

describe('what an editor shows', () => {
  it('of a calculation: title, equation, result, source and its own words', () => {
    const shown = hover('stressOf');
    for (const part of [
      'Stress of a tube.',
      'σ = p·r / t',
      'Gives σ, stress',
      'made for this test',
      'Own words.',
    ])
      expect(shown).toContain(part);
  });
  it('of an input: its meaning, kind, domain and example', () => {
    expect(hover('pressure')).toBe('Internal pressure. Takes gauge pressure (MPa).');
    expect(hover('tube')).toBe('The tube that contains the pressure. Takes { wall }.');
    expect(hover('wall')).toBe("Wall thickness. Takes length (mm), above 0 mm. For example '3 mm'.");
  });
  it('a comment cannot be ended from within', () => {
    const sly = new Map([['stressOf', { ...stress, title: 'Stress */ of a tube' }]]);
    expect(withHoverComments(built, sly).match(/\*\//g)).toHaveLength(4);
  });
});
