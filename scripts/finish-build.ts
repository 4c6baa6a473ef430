// The last step of the build: what the declarations of calculations say goes into the type declarations.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import * as library from '../src';
import { calculations } from '../src/units';
import { writeHoverComments } from './hover-comments';

if (Object.keys(library).length === 0) throw new Error('the library is empty'); // loads every calculation
const files = readdirSync('dist', { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.d\.c?ts$/.test(name))
  .map((name) => join('dist', name));
writeHoverComments(files, calculations());
