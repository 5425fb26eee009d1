import { invariant } from '../invariant';
import { isMarkable, toolKey } from './tool-id';
import type { Role } from './vocabulary';

/** How the IDs of a role are built: `#` stands for the size code and its dash, then comes the count. */
const STEM: Readonly<Record<Role, string>> = {
  die: 'D-#',
  blade: 'B-#',
  'go-ring': 'G-#GO-',
  'not-go-ring': 'G-#NG-',
  'cone-gauge': 'CG-#',
  'length-gauge': 'LG-#',
  'setting-plug': 'SP-#',
  'coning-guide': 'GDE-#',
  'threading-guide': 'TGD-#',
  collet: 'CLT-#',
  'coning-body': 'BDY-#',
  'die-stock': 'STK-#',
  micrometer: 'MKR-#',
  'thread-wires': 'WIR-#',
  'master-seat': 'MST-#',
  'torque-wrench': 'TQW-#',
  'deburr-tool': 'DBR-#',
  brush: 'BRS-#',
  fluid: 'F-#L',
};

/** Roles bought by the dozen count 01, 02 …; shared bodies carry a letter; the rest count 1, 2 …. */
const TWO_FIGURES: ReadonlySet<Role> = new Set<Role>(['die', 'blade', 'fluid']);
const LETTERED: ReadonlySet<Role> = new Set<Role>(['coning-body', 'die-stock']);

/** A, B, C … without I and O, which an oily mark confuses with 1 and 0. */
const LETTERS = 'ABCDEFGHJKLMNPQRSTUVWXYZ';

/**
 * Proposes the next short ID for a tool: D-38-12 after D-38-11, B-56H-03, G-38-GO-2, BDY-B, F-L08. One above the highest
 * known, so that an ID is never given twice: pass the scrapped and lost tools among `existingIds` too.
 * `sizeText` is the size code (`sizeCode`: 25, 38, 56, 75, 100), with H for high pressure where that matters; leave it
 * out for what serves many sizes. The result is markable and shares its key with no existing ID.
 */
export function suggestToolId(wanted: {
  readonly role: Role;
  readonly sizeText?: string | undefined;
  readonly existingIds: readonly string[];
}): string {
  const { role, sizeText = '', existingIds } = wanted;
  return nextToolId({ role, sizeText, existingKeys: new Set(existingIds.map(toolKey)) });
}

/** The same among keys made once (`toolKey`), for whoever needs many IDs in a row. */
export function nextToolId(wanted: {
  readonly role: Role;
  readonly sizeText?: string | undefined;
  readonly existingKeys: ReadonlySet<string>;
}): string {
  const { role, sizeText = '', existingKeys: keys } = wanted;
  invariant(/^[A-Z0-9]{0,5}$/.test(sizeText), 'suggestToolId requires a size of A–Z and 0–9, at most 5 long');
  const stem = STEM[role].replace('#', sizeText === '' ? '' : `${sizeText}-`);
  let count = 1;
  for (const key of keys) count = Math.max(count, countInKey(key, stem, role) + 1);
  while (keys.has(toolKey(stem + countText(count, role)))) count += 1;
  const id = stem + countText(count, role);
  invariant(isMarkable(id), 'suggestToolId makes markable IDs');
  return id;
}

/** The count that an existing key carries after this stem; 0 when it belongs to another stem. */
function countInKey(key: string, stem: string, role: Role): number {
  const stemKey = stem.replaceAll('O', '0').replaceAll('I', '1');
  if (!key.startsWith(stemKey)) return 0;
  const tail = key.slice(stemKey.length);
  if (!LETTERED.has(role)) return /^\d{1,6}$/.test(tail) ? Number(tail) : 0;
  return tail.length === 1 ? LETTERS.indexOf(tail) + 1 : 0;
}

function countText(count: number, role: Role): string {
  if (!LETTERED.has(role)) return String(count).padStart(TWO_FIGURES.has(role) ? 2 : 1, '0');
  return LETTERS[count - 1] ?? `A${count}`;
}
