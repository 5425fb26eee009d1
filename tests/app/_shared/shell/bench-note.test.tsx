import { renderToStaticMarkup as html } from 'react-dom/server';
import { expect, it } from 'vitest';
import { BenchNoteWords } from '@/app/_shared/shell/bench-note';

const mail = { waiting: 0, sent: 0, reached: true, needsName: false, lookAgainMs: 0 };
const words = (more: Partial<typeof mail>, toSettle = 0) =>
  html(<BenchNoteWords mail={{ ...mail, ...more }} toSettle={toSettle} />);
const spoken = (markup: string) =>
  markup
    .replace(/<[^>]+>/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();

// source: hand. The words asked for: what waits leads to the bench, what is to settle to its page.
it.each([
  [{}, 0, ''],
  [{ waiting: 3 }, 0, '3 bench entries to send'],
  [{ waiting: 1, reached: false }, 0, '1 bench entry to send, no network'],
  [{ waiting: 2, needsName: true }, 0, '2 bench entries to send Choose your name to send'],
  [{ waiting: 1, sent: 2 }, 0, '1 bench entry to send'],
  [{ sent: 1 }, 0, '1 bench entry sent'],
  [{ sent: 2 }, 1, '2 bench entries sent 1 to settle'],
])('%j with %d to settle says: %s', (more, toSettle, said) => {
  expect(spoken(words(more, toSettle))).toBe(said);
});

it('leads to the bench, to what is to settle, and to the names', () => {
  const hrefs = [...words({ waiting: 1, needsName: true }, 1).matchAll(/href="([^"]+)"/g)].map(
    ([, href]) => href,
  );
  expect(hrefs).toEqual(['/bench', '/who', '/bench/conflicts']);
});
