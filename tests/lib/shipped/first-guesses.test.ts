import { expect, it } from 'vitest';
import { SHIPPED_CONNECTIONS } from '@/lib/shipped/connections';
import { firstGuesses } from '@/lib/shipped/first-guesses';
import { LifeGuessSchema } from '@/lib/shop/noun';

const guesses = SHIPPED_CONNECTIONS.flatMap(firstGuesses);

// source: hand. 1 200 ÷ 9 = 133, 1 200 ÷ 16.875 = 71, 1 300 ÷ 10.5 = 124, 900 ÷ 10.9375 = 82: each to the nearest five.
it.each([
  ['die-9-16', '9-16-medium', 135],
  ['die-9-16', '9-16-high', 70],
  ['die-3-8', '3-8-medium', 125],
  ['die-1', '1-medium', 80],
  ['blade-9-16-high', '9-16-high', 50],
])('%s is first guessed at %s: %s ends', (partId, connectionId, ends) => {
  const guess = guesses.find((row) => row.partId === partId && row.connectionId === connectionId);
  expect(guess).toMatchObject({ ends, giveOrTake: 2 });
});

// source: identity.
it('guesses a die and a blade for each connection, in a form that the door accepts', () => {
  for (const connection of SHIPPED_CONNECTIONS) {
    const rows = firstGuesses(connection);
    expect(rows).toHaveLength(2);
    for (const row of rows) expect(LifeGuessSchema.parse(row)).toEqual(row);
  }
});

// source: identity. A size that nobody has told us about gets no figure.
it('guesses nothing for a size it does not hold', () => {
  const [first] = SHIPPED_CONNECTIONS;
  if (first === undefined) throw new Error('no shipped connection');
  expect(firstGuesses({ ...first, odNum: 5, odDen: 16 })).toEqual([]);
});
