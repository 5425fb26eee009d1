import { expect, it } from 'vitest';
import { LABELS_MOST, labelledTools, labelQuestion } from '@/app/labels/_parts/label-question';
import { listTools } from '@/db/queries/tools';
import { DIE, receive, testShop } from '../../support/db';

// source: hand. Scanned, typed and ticked IDs count once each; what makes no sense falls back.
it('reads what is to be printed', () => {
  expect(labelQuestion({})).toMatchObject({ codeKind: 'data-matrix', firstPlace: 1, role: '', ids: [] });
  const asked = {
    ids: ' d-38-11\r\nD 38 12, d-38-o1',
    id: ['D-38-11', 'D-38-01', 'G-1'],
    code: 'qr',
    kind: 'die',
  };
  expect(labelQuestion({ ...asked, stock: 'a4-3x8', first: '24' })).toMatchObject({
    stock: { id: 'a4-3x8' },
    codeKind: 'qr',
    firstPlace: 24,
    role: 'die',
    ids: ['D-38-11', 'D-38-12', 'D-38-01', 'G-1'],
  });
  expect(labelQuestion({ stock: 'papyrus', first: '2', code: 'runes', kind: 'pet' })).toMatchObject({
    stock: { id: 'tag-25x10' },
    firstPlace: 1,
    codeKind: 'data-matrix',
    role: '',
  });
  expect(labelQuestion({ stock: 'a4-3x8', first: '25' }).firstPlace).toBe(1);
  const many = Array.from({ length: 500 }, (_, at) => `T-${at + 2000}`);
  expect(labelQuestion({ ids: many.join('\n') }).ids).toHaveLength(LABELS_MOST);
});

// source: hand. Look-alike letters find the same tool; what nobody knows is said.
it('finds the tools that are meant', () => {
  const db = testShop();
  receive(db, 'D-56-01', DIE);
  const { found, unknown } = labelledTools(['D-56-O1', 'D-99-99'], listTools(db));
  expect([found.map(({ id }) => id), unknown]).toEqual([['D-56-01'], ['D-99-99']]);
});
