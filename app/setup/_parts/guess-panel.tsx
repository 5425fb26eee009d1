import type { EntryStamp } from '@/app/_shared/form/entry-stamp';
import { Panel } from '@/app/_shared/ui';
import { materialWords } from '@/app/_shared/words/material-words';
import { isEdgeKind } from '@/lib/outlook/edge-histories';
import type { ShopFacts } from '@/lib/outlook/shop-facts';
import { connectionText } from '@/lib/shop/connection-text';
import { GuessForm, type GuessRow } from './guess-form';

/** First guesses of how long edges last, in shop words. */
export function GuessPanel({ facts, stamp }: { facts: ShopFacts; stamp: EntryStamp }) {
  return (
    <Panel title="First guesses">
      <div className="stack">
        <p>
          How long does a new edge last here, in your usual tube? A rough figure is enough: the log takes over
          as edges wear out.
        </p>
        <GuessForm rows={guessRowsOf(facts)} stamp={stamp} />
      </div>
    </Panel>
  );
}

function guessRowsOf(facts: ShopFacts): GuessRow[] {
  const reference = facts.materials.find(({ isReference }) => isReference);
  return facts.parts
    .filter(({ role }) => isEdgeKind(role))
    .flatMap((part) => {
      const guess = facts.guesses.find(({ partId }) => partId === part.id);
      const connection = facts.connections.find(
        ({ id }) => id === (guess?.connectionId ?? part.fitsConnectionIds[0]),
      );
      if (connection === undefined) return [];
      return [
        {
          partId: part.id,
          partName: part.name,
          noun: part.role === 'blade' ? 'cones' : 'threads',
          connectionId: connection.id,
          connectionName: connectionText(connection),
          materialName: reference === undefined ? 'the usual tube' : materialWords(reference),
          ends: guess === undefined ? '' : String(guess.ends),
          giveOrTake: guess === undefined ? '2' : String(guess.giveOrTake),
        },
      ];
    });
}
