/** What an entry form carries so that it can be sent twice and count once: made by `newStamp` in app/_server. */
export interface EntryStamp {
  readonly entryId: string;
  readonly deviceAtMs: number;
  /** The shop that the page showed: what is filled in for one shop must not be entered in another. */
  readonly shop: string;
}
