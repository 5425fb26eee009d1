import type { ReleaseHold } from '@/lib/outlook/release-standing';
import { count, listWords } from '../format';

/** What a release waits for, in one phrase: "waits for 12 ends to be accepted and the cleaning record". */
export function releaseWords(holds: readonly ReleaseHold[]): string {
  return holds.length === 0 ? 'the record is complete' : `waits for ${listWords(holds.map(holdWords))}`;
}

function holdWords(hold: ReleaseHold): string {
  switch (hold.kind) {
    case 'ends-to-make':
      return `${count(hold.ends, 'end')} to be made`;
    case 'ends-to-accept':
      return `${count(hold.ends, 'made end')} to be accepted`;
    case 'evidence-open':
      return `${count(hold.ends, 'accepted end')} whose gauge is not on record or under recall`;
    case 'pieces-owed':
      return `the missing pieces of ${listWords(hold.toolIds)} to be found`;
    case 'cleaning-record':
      return 'the cleaning record for oxygen';
  }
}
