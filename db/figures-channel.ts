import type { OutlookData } from '../lib/outlook/outlook-data';

/** What the server asks of the process that works figures out: the outlook of the shop in this file, at this version and day. */
export interface FiguresAsk {
  readonly id: number;
  readonly path: string;
  readonly version: number;
  readonly today: string;
}

/** The outlook; or `moved`: the record was no longer at that version when it was read. */
export type FiguresAnswer =
  | { readonly id: number; readonly moved: true }
  | { readonly id: number; readonly moved: false; readonly data: OutlookData };
