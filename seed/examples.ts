// Writes the example files of a first import: npx tsx seed/examples.ts [last day of the log] [first day of the jobs]
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { EXAMPLE_DAYS, exampleFiles } from './example-shop';

const [lastCutDay = EXAMPLE_DAYS.lastCutDay, firstJobDay = EXAMPLE_DAYS.firstJobDay] = process.argv.slice(2);
const folder = join('public', 'examples');
mkdirSync(folder, { recursive: true });
for (const [kind, text] of Object.entries(exampleFiles({ lastCutDay, firstJobDay }))) {
  writeFileSync(join(folder, `${kind}.csv`), text);
}
