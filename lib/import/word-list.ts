import type { EndCause, Hand, RejectCause, Role, Service, ToolState } from '../shop/vocabulary';
import {
  END_CAUSES,
  HANDS,
  REJECT_CAUSES,
  ROLE_LABEL,
  ROLES,
  SERVICE_LABEL,
  SERVICES,
  TOOL_STATE_LABEL,
  TOOL_STATES,
} from '../shop/vocabulary';
import { foldWord } from './column';

/** The words that are read as each code of a fixed list. */
export type WordList<C extends string> = ReadonlyMap<string, C>;

/** Builds a word list: every code, and the further words of each, folded. */
function wordList<C extends string>(
  codes: readonly C[],
  words: Partial<Record<C, readonly string[]>>,
): WordList<C> {
  const entries = codes.flatMap((code) =>
    [code, ...(words[code] ?? [])].map((word) => [foldWord(word), code] as const),
  );
  return new Map(entries);
}

/** The code that a word stands for, whatever its case, spaces and dashes. */
export function readWord<C extends string>(list: WordList<C>, text: string): C | undefined {
  return list.get(foldWord(text));
}

export const ROLE_WORDS: WordList<Role> = wordList(ROLES, {
  ...labels(ROLES, (role) => [ROLE_LABEL[role], `${ROLE_LABEL[role]}s`]),
  'coning-body': ['coning body', 'coning bodies', 'body', 'coning tool body', 'tool body', 'coning tool'],
  'coning-guide': ['coning guide', 'coning guides', 'guide', 'guide bushing', 'cone guide'],
  blade: ['blade', 'blades', 'coning blade', 'coning blades', 'matched blades', 'blade pair', 'cutter'],
  'die-stock': ['die stock', 'die stocks', 'stock', 'die holder', 'diestock handle'],
  'threading-guide': ['threading guide', 'threading guides', 'thread guide', 'die guide'],
  die: ['dies', 'threading die', 'threading dies', 'thread die', 'split die'],
  collet: ['collets', 'vise adapter', 'vice adapter', 'vise jaw', 'collet or vise adapter'],
  'go-ring': ['go ring', 'go rings', 'go ring gauge', 'go gauge', 'go'],
  'not-go-ring': [
    'not go ring',
    'not go rings',
    'not go gauge',
    'no go',
    'nogo',
    'no go ring',
    'no go gauge',
    'not go',
    'nogo ring',
  ],
  'length-gauge': ['length gauge', 'thread length gauge', 'thread-length gauge', 'length gauges'],
  'thread-wires': ['thread wire', 'thread measuring wires', 'measuring wires', 'wires', 'wire set'],
  'master-seat': ['master seat', 'master seats', 'master cone', 'seat master'],
  'deburr-tool': ['deburr tool', 'deburring tool', 'deburrer', 'deburr', 'deburring tools'],
  fluid: ['fluids', 'cutting fluid', 'cutting fluids', 'cutting oil', 'oil', 'bottle'],
});

export const SERVICE_WORDS: WordList<Service> = wordList(SERVICES, {
  medium: [SERVICE_LABEL.medium, 'med', 'mp', 'm', 'medium press'],
  high: [SERVICE_LABEL.high, 'hi', 'hp', 'h', 'high press'],
});

export const HAND_WORDS: WordList<Hand> = wordList(HANDS, {
  LH: ['left hand', 'left', 'l', 'left handed'],
  RH: ['right hand', 'right', 'r', 'right handed'],
});

export const STATE_WORDS: WordList<ToolState> = wordList(TOOL_STATES, {
  ...labels(TOOL_STATES, (state) => [TOOL_STATE_LABEL[state]]),
  'in-crib': ['in the crib', 'in crib', 'crib', 'in', 'available', 'ok', 'in stock'],
  issued: ['out', 'in use', 'on loan'],
  regrind: ['out for regrind', 'at regrind', 'regrinding'],
  calibration: ['out for calibration', 'at calibration', 'calibrating'],
  quarantined: ['quarantine', 'on hold', 'hold'],
  scrapped: ['scrap', 'worn out', 'discarded', 'thrown away'],
  lost: ['missing', 'not found'],
});

const END_CODES = END_CAUSES.map((cause) => cause.code);
export const END_CAUSE_WORDS: WordList<EndCause> = wordList(END_CODES, {
  ...labels(END_CODES, (code) =>
    END_CAUSES.filter((cause) => cause.code === code).map((cause) => cause.label),
  ),
  worn: ['worn out', 'blunt', 'dull', 'worn: cuts rough, or GO will not run on'],
  'teeth-broken-worn': [
    'broke at the end of its life',
    'teeth broken',
    'broken when worn',
    'teeth broke off worn',
  ],
  dropped: ['fell', 'dropped it'],
  'chipped-early': ['chipped early', 'chipped', 'chipped when new'],
  'cross-threaded': ['cross threaded by hand', 'cross threaded', 'crossed'],
  galled: ['galled: dry or wrong fluid', 'galling', 'seized'],
  'bad-lot': ['faulty from the maker', 'faulty', 'bad from new'],
  'retired-good': ['taken out while still good', 'retired', 'taken out good', 'retired while good'],
});

const REJECT_CODES = REJECT_CAUSES.map((cause) => cause.code);
export const REJECT_WORDS: WordList<RejectCause> = wordList(REJECT_CODES, {
  ...labels(REJECT_CODES, (code) =>
    REJECT_CAUSES.filter((cause) => cause.code === code).map((cause) => cause.label),
  ),
  'go-tight': ['go will not run on', 'go tight', 'go ring will not run on', 'tight'],
  'not-go-runs-on': ['not go runs on', 'not go runs on too far', 'no go runs on', 'loose'],
  'torn-thread': ['torn', 'rough thread', 'torn or rough thread', 'rough'],
  crooked: ['cross-cut', 'crooked thread', 'cross cut or crooked thread'],
  length: ['thread length', 'too short', 'too long', 'wrong length', 'thread too short or too long'],
  'cone-finish': ['cone finish', 'chatter', 'step', 'tear', 'cone finish: chatter, step or tear'],
  'cone-angle': ['cone angle', 'contact', 'cone angle or contact wrong'],
  nicked: ['nick', 'handling', 'nicked or handled badly'],
  other: ['others', 'unknown'],
});

export const YES_NO_WORDS: WordList<'yes' | 'no'> = wordList(['yes', 'no'], {
  yes: ['y', 'true', '1', 'x', 't', 'ja', 'oui'],
  no: ['n', 'false', '0', 'f', 'none', 'nein', 'non'],
});

export const UNIT_WORDS: WordList<'mm' | 'in'> = wordList(['mm', 'in'], {
  mm: ['millimetre', 'millimetres', 'millimeter', 'millimeters'],
  in: ['inch', 'inches'],
});

export const VALUE_WORDS: WordList<'ordinary' | 'precious'> = wordList(['ordinary', 'precious'], {
  ordinary: ['normal', 'usual', 'standard'],
  precious: ['cannot be remade', 'high', 'irreplaceable'],
});

export const STATUS_WORDS: WordList<'open' | 'done' | 'cancelled'> = wordList(['open', 'done', 'cancelled'], {
  open: ['planned', 'running', 'active'],
  done: ['finished', 'closed', 'complete', 'completed'],
  cancelled: ['canceled', 'stopped'],
});

function labels<C extends string>(
  codes: readonly C[],
  of: (code: C) => readonly string[],
): Record<C, readonly string[]> {
  return Object.fromEntries(codes.map((code) => [code, of(code)])) as Record<C, readonly string[]>;
}
