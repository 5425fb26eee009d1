import { HAND_LABEL, ROLE_LABEL, type Role } from '../shop/vocabulary';
import type { Blocker } from './blocker';
import type { LineVerdict } from './line-verdict';

/** How many reasons a headline names before it counts the rest. */
const HEADLINE_REASONS = 4;

/**
 * The headline of a line that cannot be made or is at risk: "1 in high pressure cannot be made: no die, no threading
 * guide, no GO ring and 3 more". Most limiting first, as the verdict ranks them. For the front page and the plan.
 * Empty for a line that can be made. Symbols: sizeText, the size and service as the shop says it; a
 * plain slash between digits becomes U+2044.
 */
export function verdictHeadline(
  sizeText: string,
  { verdict, blockers }: Pick<LineVerdict, 'verdict' | 'blockers'>,
): string {
  if (verdict === 'can-make') return '';
  const opening = verdict === 'at-risk' ? 'is at risk' : 'cannot be made';
  return `${trueFractions(sizeText)} ${opening}: ${verdictReasons({ blockers })}`;
}

/** The reasons alone, most limiting first: "no die, no threading guide, no GO ring and 3 more". */
export function verdictReasons({ blockers }: Pick<LineVerdict, 'blockers'>): string {
  const reasons = [...new Set(blockers.map(shortReason))];
  const named = reasons.slice(0, HEADLINE_REASONS).join(', ');
  const rest = reasons.length - HEADLINE_REASONS;
  return `${named}${rest > 0 ? ` and ${rest} more` : ''}`;
}

const SHORT_ROLE: Partial<Record<Role, string>> = {
  die: 'die',
  blade: 'blade',
  fluid: 'fluid',
  collet: 'collet',
};

function shortReason(blocker: Blocker): string {
  const name = blocker.role === null ? '' : (SHORT_ROLE[blocker.role] ?? ROLE_LABEL[blocker.role]);
  switch (blocker.kind) {
    case 'unknown-connection':
      return 'no table row';
    case 'unknown-material':
      return 'material not in the table';
    case 'missing':
      return `no ${name}`;
    case 'hand-mismatch':
      return `no ${HAND_LABEL[blocker.wanted]} ${name}`;
    case 'quarantined':
      return `${name} quarantined`;
    case 'needs-first-off':
      return `${name} waits for its first-off`;
    case 'out-for-regrind':
      return `${name} out for regrind`;
    case 'out-for-calibration':
      return `${name} out for calibration`;
    case 'held-elsewhere':
      return blocker.lineId === null ? `${name} on loan` : `${name} with another line`;
    case 'calibration-lapses':
      return `${name} out of calibration before it is done`;
    case 'fluid-not-permitted':
      return 'no permitted fluid';
    case 'fluid-expired':
      return 'fluid out of date';
    case 'fluid-short':
      return 'not enough fluid';
    case 'life-short':
      return `${name} life short`;
    case 'no-sure-edge':
      return `no ${name} sure enough`;
  }
}

/** Digits either side of a slash are a fraction: 9/16 becomes 9⁄16. */
function trueFractions(text: string): string {
  return text.replace(/(\d)\/(\d)/g, '$1⁄$2');
}
