import { expect, it } from 'vitest';
import { findToolId, unknownTool } from '@/db/commands/tool-entry';
import { DIE, receive, sentence, testShop } from '../../support/db';

it('finds a tool by what an oily mark may be read as', () => {
  const db = testShop();
  receive(db, 'D-56-01', DIE);
  for (const typed of ['D-56-01', 'd 56 o1', ' D–56–OI ']) expect(findToolId(db, typed)).toBe('D-56-01');
  expect(findToolId(db, 'D-56-02')).toBeUndefined();
});

it('a hostile ID finds nothing and is only text', () => {
  const db = testShop();
  for (const typed of ['__proto__', 'constructor', `' OR 1=1 --`, '%', 'ﷺ'.repeat(40)])
    expect(findToolId(db, typed)).toBeUndefined();
  expect(sentence(unknownTool('d 9'))).toBe(
    'No tool D-9 is in the record. Check the mark, or receive it first.',
  );
});
