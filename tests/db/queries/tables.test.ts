import { expect, it } from 'vitest';
import { setNoun, setNouns } from '@/db/commands/set-noun';
import {
  findConnection,
  listBeliefs,
  listConnections,
  listLifeGuesses,
  listMaterials,
  listParts,
} from '@/db/queries/tables';
import { defaultBelief } from '@/lib/outlook/life-beliefs';
import { SHIPPED_CONNECTIONS } from '@/lib/shipped/connections';
import {
  BLADE,
  BODY,
  DIE,
  ENV,
  envelope,
  FLUID,
  HIGH,
  MATERIALS,
  MEDIUM,
  may,
  must,
  QUARTER,
  RING,
  testDb,
  testShop,
} from '../../support/db';

// source: hand. 1/4 < 3/8 < 9/16 < 3/4 < 1 in, medium before high.
it('listConnections goes from small to large, whatever the order in which they came', () => {
  const db = testDb();
  const nouns = [...SHIPPED_CONNECTIONS].reverse().map((value) => ({ noun: 'connection', value }) as const);
  must(setNouns(db, may('set-up-shop'), { envelope: envelope(), nouns }, ENV));
  expect(listConnections(db).map(({ id }) => id)).toEqual([
    '1-4-medium',
    '1-4-high',
    '3-8-medium',
    '3-8-high',
    '9-16-medium',
    '9-16-high',
    '3-4-medium',
    '1-medium',
  ]);
});

// source: identity. What is read is what was set.
it('a row of the size table comes back whole', () => {
  const db = testShop();
  expect(findConnection(db, HIGH.id)).toEqual(HIGH);
  expect(listConnections(db)).toEqual([QUARTER, MEDIUM, HIGH]);
  expect(findConnection(db, '1-high')).toBeUndefined();
});

// source: identity. What is read is what was set; lists of keys come in the order of the alphabet.
it('parts come back whole, with what they fit and what they are permitted on', () => {
  const db = testShop();
  const oil = { ...FLUID, permittedMaterialIds: ['316'], dropsPerMl: 40, openedLifeDays: 365 };
  must(setNoun(db, may('set-up-shop'), { noun: 'part', value: oil, envelope: envelope() }, ENV));
  const fits = [HIGH.id, MEDIUM.id];
  const parts = listParts(db);
  expect(parts.map(({ id }) => id)).toEqual(['blade-56', 'body', 'die-56', 'oil', 'go-56']);
  expect(parts).toEqual([
    { ...BLADE, fitsConnectionIds: fits },
    { ...BODY, fitsConnectionIds: fits },
    { ...DIE, fitsConnectionIds: fits },
    oil,
    { ...RING, fitsConnectionIds: fits },
  ]);
});

// source: hand. The reference first, then by factor.
it('listMaterials begins with the reference', () => {
  const db = testShop();
  const soft = {
    ...MATERIALS[1],
    id: '304',
    name: '304',
    factor: 0.8,
    isReference: false,
  } as (typeof MATERIALS)[0];
  must(setNoun(db, may('set-up-shop'), { noun: 'material', value: soft, envelope: envelope() }, ENV));
  expect(listMaterials(db)).toEqual([MATERIALS[0], soft, MATERIALS[1]]);
});

// source: identity. What is read is what was set; the last one typed counts.
it('listLifeGuesses gives one guess for each part', () => {
  const db = testShop();
  const guess = { partId: DIE.id, connectionId: HIGH.id, ends: 150, giveOrTake: 2 };
  for (const ends of [120, 150])
    must(
      setNoun(
        db,
        may('set-up-shop'),
        { noun: 'guess', value: { ...guess, ends }, envelope: envelope() },
        ENV,
      ),
    );
  expect(listLifeGuesses(db)).toEqual([guess]);
});

// source: identity. What is read is what was set; the last one said counts, and what was never said is not there.
it('listBeliefs gives what the shop said of each kind', () => {
  const db = testShop();
  expect(listBeliefs(db)).toEqual([]);
  const belief = { ...defaultBelief('die'), livesPerIncident: 12 };
  for (const livesPerIncident of [30, 12])
    must(
      setNoun(
        db,
        may('set-up-shop'),
        { noun: 'belief', value: { ...belief, livesPerIncident }, envelope: envelope() },
        ENV,
      ),
    );
  expect(listBeliefs(db)).toEqual([belief]);
});
