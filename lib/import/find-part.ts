import { ok, type Refusal, type Result, refuse } from '../result';
import type { Part } from '../shop/part';
import { ROLE_LABEL } from '../shop/vocabulary';
import type { Rational } from '../units/rational';
import { quoteCell } from './cell-value';
import type { ToolRow } from './read-tool-row';
import { type ShopIndex, sizeServiceText } from './shop-index';

/**
 * The part that a tools row means: by its key, or else the one part of that kind, size, service and hand. None, or more
 * than one, is refused with what to do about it.
 */
export function findPart(index: ShopIndex, row: ToolRow): Result<Part, Refusal> {
  if (row.partId !== '') return namedPart(index, row);
  const fitting = [...index.parts.values()].filter((part) => suits(index, part, row));
  const narrow = row.service === null ? fitting.filter((part) => servesAll(index, part, row.size)) : fitting;
  const [found, another] = narrow.length === 1 ? narrow : fitting;
  if (found === undefined) return otherHand(index, row) ?? refuse('no-part', noPart(row), 'kind');
  if (another === undefined) return ok(found);
  const keys = fitting.slice(0, 5).map((part) => part.id);
  const more = fitting.length > keys.length ? ' …' : '';
  return refuse(
    'parts',
    `Several parts can be meant. Write one of these keys under part: ${keys.join(', ')}${more}.`,
    'kind',
  );
}

/** The refusal of a hand that is the only thing wrong; undefined when another hand would not help either. */
function otherHand(index: ShopIndex, row: ToolRow): ReturnType<typeof refuse> | undefined {
  const [part] = [...index.parts.values()].filter((known) => suits(index, known, { ...row, hand: null }));
  if (row.hand === null || part === undefined) return undefined;
  const what = ROLE_LABEL[part.role];
  return part.hand === null
    ? refuse('hand', `A ${what} has no hand. Leave the cell empty.`, 'hand')
    : refuse(
        'hand',
        `${part.name} must be ${part.hand}, this row says ${row.hand}. If the tool is marked ${row.hand}, send it back.`,
        'hand',
      );
}

function namedPart(index: ShopIndex, row: ToolRow): Result<Part, Refusal> {
  const part = index.parts.get(row.partId);
  if (part === undefined)
    return refuse(
      'unknown-part',
      `The shop knows no part ${quoteCell(row.partId)}. Add it under Set-up first.`,
      'part',
    );
  if (row.role !== null && part.role !== row.role)
    return refuse(
      'kind',
      `${part.id} is a ${ROLE_LABEL[part.role]}, this row says ${ROLE_LABEL[row.role]}.`,
      'kind',
    );
  const fits = suits(index, part, { ...row, role: part.role, hand: null });
  return fits
    ? ok(part)
    : refuse('fit', `${part.id} does not serve ${sizeServiceText(row.size, row.service)}.`, 'size');
}

function suits(
  index: ShopIndex,
  part: Part,
  row: Pick<ToolRow, 'role' | 'size' | 'service' | 'hand'>,
): boolean {
  if (part.role !== row.role || (row.hand !== null && part.hand !== row.hand)) return false;
  const { size, service } = row;
  if (size === null && service === null) return true;
  return index.connections.some(
    (c) =>
      part.fitsConnectionIds.includes(c.id) &&
      (size === null || (c.odNum === size.num && c.odDen === size.den)) &&
      (service === null || c.service === service),
  );
}

/** Whether a part serves every service of the size in the shop's table. */
function servesAll(index: ShopIndex, part: Part, size: Rational | null): boolean {
  if (size === null) return true;
  const ofSize = index.connections.filter((c) => c.odNum === size.num && c.odDen === size.den);
  return ofSize.every((c) => part.fitsConnectionIds.includes(c.id));
}

function noPart({ role, size, service, hand }: ToolRow): string {
  const what = [hand, role === null ? 'tool' : ROLE_LABEL[role]].filter((word) => word !== null).join(' ');
  const where = sizeServiceText(size, service);
  const remedy = where === '' ? 'Add it under Set-up first' : 'Add the size under Set-up first';
  return `No part for a ${where === '' ? '' : `${where} `}${what}. ${remedy}.`;
}
