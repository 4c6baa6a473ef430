import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

// Real logs by others, whose authors keep their rights: they stand beside the checkout and are never part of it.
const folder = join(import.meta.dirname, '..', '..', '..', 'shared', 'firings');

/** Whether the recorded logs are there. */
export const logsPresent = existsSync(folder);

if (!logsPresent)
  console.warn(`recorded logs are not beside the checkout (${folder}): their tests are skipped`);

export const recordedLog = (file: string): string =>
  readFileSync(join(folder, file.replace('../firings/', '')), 'utf8');
