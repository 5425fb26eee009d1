import 'server-only';
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

const ROOMS = ['lib', 'db'] as const;

/** When a source that figures are made by was last changed: epoch ms. For development only. */
export function newestSourceMs(): number {
  let newest = 0;
  for (const room of ROOMS) {
    for (const name of readdirSync(room, { recursive: true, encoding: 'utf8' })) {
      if (!name.endsWith('.ts')) continue;
      newest = Math.max(newest, statSync(join(room, name), { throwIfNoEntry: false })?.mtimeMs ?? 0);
    }
  }
  return newest;
}
