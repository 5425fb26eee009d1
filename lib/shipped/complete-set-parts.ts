import type { Connection, Material } from '../shop/noun';
import type { Part } from '../shop/part';
import { sizeKey, sizeLabel } from '../shop/size';
import { HAND_LABEL, HANDED_ROLES, ROLE_LABEL, type Role, SERVICE_LABEL } from '../shop/vocabulary';
import { capital } from '../text/capital';
import { threadDesignation } from '../thread/designation';
import { SHIPPED_CONNECTIONS } from './connections';
import { SHIPPED_MATERIALS, TITANIUM_ID } from './materials';
import { priceAndLead } from './price-and-lead';

/** What else the shop's tables hold: a part names only connections and materials that are in them. */
export interface ShopTables {
  readonly connections: readonly Connection[];
  readonly materials: readonly Material[];
}

/**
 * How widely an item is shared: one connection, one tube size in both services, a group of sizes, or every size. What is
 * bound to no size at all names none, and so serves sizes that are added later too.
 */
type Sharing = 'connection' | 'size' | 'body' | 'all' | 'unbound';

/** The items of a complete set with their sharing, in bench order. Source: common practice, no source. */
const ITEMS: readonly (readonly [role: Role, sharing: Sharing])[] = [
  ['collet', 'size'],
  ['coning-body', 'body'],
  ['coning-guide', 'size'],
  ['blade', 'connection'],
  ['die-stock', 'all'],
  ['threading-guide', 'size'],
  ['die', 'size'],
  ['deburr-tool', 'unbound'],
  ['brush', 'unbound'],
  ['fluid', 'unbound'],
  ['cone-gauge', 'connection'],
  ['go-ring', 'size'],
  ['not-go-ring', 'size'],
  ['length-gauge', 'connection'],
  ['setting-plug', 'size'],
  ['micrometer', 'all'],
  ['torque-wrench', 'all'],
];

/**
 * The parts that a complete set for one connection is made of, ready to be set in a shop: coning and threading, the
 * gauges to accept with, and what all sizes share. Blades, cone gauges and length gauges serve one connection; dies,
 * guides, collets and rings the tube size in both services; bodies 1/4 to 9/16, or 3/4 and above; the rest everything.
 * The same key always means the same part, so sets of several connections can simply be put together.
 * Examples: confirm in the fitting maker's manual and with the supplier.
 * @example completeSetParts({ id: '1-medium', odNum: 1, odDen: 1, service: 'medium', tpi: 14, hand: 'LH', threadClass: '2A', threadLengthMm: 19.84375, coneAngleDeg: 59, noseMm: 18.2626, notGoTurnsMax: null, confirmed: false, inUse: true })[6].designation // => "1-14 UNS-LH die, adjustable split"
 */
export function completeSetParts(
  connection: Connection,
  tables: ShopTables = { connections: SHIPPED_CONNECTIONS, materials: SHIPPED_MATERIALS },
): Part[] {
  return ITEMS.map(([role, sharing]) => setPart(role, sharing, connection, tables));
}

function setPart(role: Role, sharing: Sharing, connection: Connection, tables: ShopTables): Part {
  const odIn = connection.odNum / connection.odDen;
  return {
    id: partKey(role, sharing, connection),
    role,
    name: partName(role, sharing, connection),
    designation: designationOf(role, sharing, connection),
    hand: HANDED_ROLES.includes(role) ? connection.hand : null,
    adjustable: role === 'die',
    matchedPair: role === 'blade' && isLarge(connection),
    regrindLimit: role === 'blade' ? 2 : 0,
    fitsConnectionIds: tables.connections
      .filter((other) => isShared(sharing, connection, other))
      .map((other) => other.id),
    supplier: '',
    ...priceAndLead(role, odIn),
    ...fluidFields(role, tables.materials),
  };
}

/** Usual threading oils are kept off titanium until their own sheet permits it; opened they keep a year. */
function fluidFields(role: Role, materials: readonly Material[]) {
  if (role !== 'fluid') {
    return {
      permittedMaterialIds: 'all' as const,
      chlorinated: 'unknown' as const,
      openedLifeDays: null,
      dropsPerMl: null,
      containerMl: null,
    };
  }
  return {
    permittedMaterialIds: materials.filter(({ id }) => id !== TITANIUM_ID).map(({ id }) => id),
    chlorinated: 'unknown' as const,
    openedLifeDays: 365,
    dropsPerMl: 40,
    containerMl: 1000,
  };
}

function isShared(sharing: Sharing, connection: Connection, other: Connection): boolean {
  if (sharing === 'connection') return other.id === connection.id;
  if (sharing === 'size') return sizeOf(other) === sizeOf(connection) && other.hand === connection.hand;
  if (sharing === 'body') return isLarge(other) === isLarge(connection);
  return sharing === 'all';
}

function partKey(role: Role, sharing: Sharing, connection: Connection): string {
  if (sharing === 'all' || sharing === 'unbound') return role;
  if (sharing === 'body') return `${role}-${isLarge(connection) ? 'large' : 'small'}`;
  const size = sizeOf(connection).replace(/[ /]/g, '-');
  return sharing === 'size' ? `${role}-${size}` : `${role}-${size}-${connection.service}`;
}

function partName(role: Role, sharing: Sharing, connection: Connection): string {
  const label = ROLE_LABEL[role];
  if (sharing === 'all' || sharing === 'unbound') return capital(label);
  if (sharing === 'body') return `${isLarge(connection) ? 'Large' : 'Small'} ${label}`;
  const hand = HANDED_ROLES.includes(role) ? `, ${HAND_LABEL[connection.hand]}` : '';
  const service = sharing === 'connection' ? `, ${SERVICE_LABEL[connection.service]}` : '';
  return `${sizeLabel({ num: connection.odNum, den: connection.odDen })} ${label}${hand}${service}`;
}

function designationOf(role: Role, sharing: Sharing, connection: Connection): string {
  if (HANDED_ROLES.includes(role)) {
    const thread = threadText(connection);
    return role === 'die'
      ? `${thread} die, adjustable split`
      : `${thread} ${ROLE_LABEL[role]}, class ${connection.threadClass}`;
  }
  if (role === 'fluid') return 'neat threading oil, 1 L';
  if (sharing === 'all' || sharing === 'unbound') return ROLE_LABEL[role];
  if (sharing === 'body')
    return `${ROLE_LABEL[role]}, ${isLarge(connection) ? '3/4 in and above' : 'up to 9/16 in'}`;
  const service = sharing === 'connection' ? `, ${SERVICE_LABEL[connection.service]}` : '';
  const angle = role === 'blade' || role === 'cone-gauge' ? `, ${connection.coneAngleDeg} deg` : '';
  return `${sizeOf(connection)} in ${ROLE_LABEL[role]}${service}${angle}`;
}

function threadText({ odNum, odDen, tpi, hand }: Connection): string {
  return threadDesignation({ sizeIn: { num: odNum, den: odDen }, tpi, hand }).text;
}

function sizeOf({ odNum, odDen }: Connection): string {
  return sizeKey({ num: odNum, den: odDen });
}

/** Coning bodies come in two frames: up to 9/16, and from 3/4 on. Common practice, no source. */
function isLarge({ odNum, odDen }: Connection): boolean {
  return odNum * 4 >= odDen * 3;
}
