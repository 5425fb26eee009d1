import type { ToolRow } from '@/db/queries/tools';
import type { Part } from '@/lib/shop/part';
import { tidyToolId, toolKey } from '@/lib/shop/tool-id';
import { ROLES, type Role, TOOL_STATES, type ToolState } from '@/lib/shop/vocabulary';

/** What the list of tools is asked for, as it stands in the address. */
export interface ToolFilter {
  readonly find: string;
  readonly size: string;
  readonly role: Role | '';
  readonly state: ToolState | 'here' | 'all';
  readonly page: number;
}

type Asked = Readonly<Record<string, string | string[] | undefined>>;

/** Reads the filter from an address; what makes no sense is left out. By default scrapped and lost tools are not shown. */
export function readToolFilter(asked: Asked): ToolFilter {
  const word = (name: string) => (typeof asked[name] === 'string' ? asked[name].slice(0, 80) : '');
  const page = Number(word('page'));
  return {
    find: tidyToolId(word('find')),
    size: word('size'),
    role: ROLES.find((role) => role === word('kind')) ?? '',
    state: TOOL_STATES.find((state) => state === word('state')) ?? (word('state') === 'all' ? 'all' : 'here'),
    page: Number.isSafeInteger(page) && page > 1 ? page : 1,
  };
}

/** The tools that a filter lets through. A part that names no size serves all of them. */
export function filterTools(
  tools: readonly ToolRow[],
  parts: ReadonlyMap<string, Part>,
  filter: ToolFilter,
): ToolRow[] {
  const key = toolKey(filter.find);
  return tools.filter((tool) => {
    if (filter.find !== '' && !tool.lookUpKey.includes(key)) return false;
    if (filter.role !== '' && tool.role !== filter.role) return false;
    if (filter.state === 'here' && filter.find === '' && (tool.state === 'scrapped' || tool.state === 'lost'))
      return false;
    if (filter.state !== 'here' && filter.state !== 'all' && tool.state !== filter.state) return false;
    const fits = parts.get(tool.partId)?.fitsConnectionIds ?? [];
    return filter.size === '' || fits.length === 0 || fits.includes(filter.size);
  });
}
