/** Codes that a mark can carry beside its short ID, in the order in which screens show them. */
export const CODE_KINDS = ['data-matrix', 'qr', 'code-128'] as const;
export type CodeKind = (typeof CODE_KINDS)[number];

/** ISO/IEC 16022 (ECC 200), ISO/IEC 18004, ISO/IEC 15417. */
export const CODE_KIND_LABEL: Record<CodeKind, string> = {
  'data-matrix': 'Data Matrix',
  qr: 'QR',
  'code-128': 'Code 128',
};

/** What each is good for. Common practice, no source. */
export const CODE_KIND_USE: Record<CodeKind, string> = {
  'data-matrix': 'smallest: etched on a die or ring a few mm across',
  qr: 'phones read it at once: tags, travellers, bins',
  'code-128': 'any hand scanner reads it: bins, kits, cards',
};

/** Blank margin that a reader needs round a code, in modules. Source: published, from memory. The codes' own standards. */
export const QUIET_MODULES: Record<CodeKind, { readonly across: number; readonly upright: number }> = {
  'data-matrix': { across: 1, upright: 1 },
  qr: { across: 4, upright: 4 },
  'code-128': { across: 10, upright: 0 },
};
