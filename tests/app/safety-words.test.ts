import { describe, expect, it } from 'vitest';
import { CAUTIONS } from '@/lib/cautions';
import { readSources } from '../support/source-files';

/** Words that would promise what no record of tools can know. */
const PROMISES = [
  /safe to (?:pressuri[sz]e|test|use|operate|put into service)/gi,
  /(?:joint|line|assembly|connection|spool) is (?:safe|leak[- ]?(?:free|tight)|pressure[- ]?tight|clean|fit for service)/gi,
  /certified (?:safe|clean)/gi,
  /guarantee[ds]?\b/gi,
  /oxygen[- ]clean\b/gi,
];

/** The one sentence that names such a promise, to deny it. */
const DENIED = 'never says a joint is safe to pressurise';

function promises(text: string): string[] {
  const plain = text.replace(/\s+/g, ' ').replaceAll(DENIED, '');
  return PROMISES.flatMap((pattern) => plain.match(pattern) ?? []);
}

// source: hand. The words are stated; a planted promise is found, the denial is not one.
describe('screens never promise', () => {
  it('that a joint is safe to pressurise, nor that anything is clean', () => {
    const sources = readSources(['app', 'lib', 'seed']);
    const found = [...sources].flatMap(([path, text]) =>
      promises(text.replace(/^\s*(?:\/\/|\*|\/\*\*).*$/gm, '')).map((words) => `${path}: ${words}`),
    );
    expect(sources.size).toBeGreaterThan(100);
    expect(found).toEqual([]);
  });

  it('and the check finds a planted promise', () => {
    expect(promises('This joint is safe to pressurise.')).not.toEqual([]);
    expect(promises('The spool is leak-tight.')).not.toEqual([]);
    expect(promises('Edgekeep never says a joint is safe to pressurise.')).toEqual([]);
  });

  it('and the denial stands among the cautions of acceptance, assembly and the footer', () => {
    const denial = CAUTIONS.find(({ lead }) => lead.includes(DENIED));
    expect(denial?.at).toEqual(['accept', 'assembly', 'footer']);
  });
});
