import { type Band, bandOf } from '../ensemble/reasons';
import type { EdgeCounts } from '../life/life-fit';
import type { Connection, LifeGuess } from '../shop/noun';
import type { Part } from '../shop/part';
import type { EdgeKind } from '../shop/vocabulary';
import { exposureOfEnd } from '../wear/connection-exposure';
import { isEdgeKind, isUnknownStart, partSizes } from './edge-histories';
import type { Outlook } from './outlook';
import type { ShopFacts } from './shop-facts';

/** How long edges of one part last, in ends of the part's own connection in the shop's reference material. */
export interface PartWear {
  readonly part: Part;
  readonly kind: EdgeKind;
  readonly connection: Connection;
  readonly counts: EdgeCounts;
  /** Edges that say nothing, for nobody knows what they had cut before they were entered. */
  readonly unknownStarts: number;
  /** Typical (median) life of a new edge: how well it is known, not how lives scatter. */
  readonly typicalEnds: Band;
  readonly guess: LifeGuess | undefined;
}

const NONE: EdgeCounts = { worn: 0, incident: 0, removedWorking: 0, inService: 0 };

/** What the log says of every part with an edge, dies before blades, small sizes first. For the page on wear. */
export function partWears({ facts, ensemble }: Pick<Outlook, 'facts' | 'ensemble'>): PartWear[] {
  const sizes = partSizes(facts);
  const tools = new Map(facts.tools.map((tool) => [tool.id, tool]));
  const unknown = new Map<string, number>();
  for (const edge of facts.edges) {
    const tool = tools.get(edge.toolId);
    if (tool !== undefined && isUnknownStart(tool, edge))
      unknown.set(tool.partId, (unknown.get(tool.partId) ?? 0) + 1);
  }
  const wears = facts.parts.flatMap((part): PartWear[] => {
    const { id: partId, role: kind } = part;
    const connection = ownConnection(facts, part);
    const odIn = sizes.get(partId);
    if (!isEdgeKind(kind) || connection === undefined || odIn === undefined) return [];
    const life = ensemble.medianLife(kind, { partId, odIn, regrinds: 0 });
    if (life === undefined) return [];
    const perEnd = exposurePerEnd(kind, connection);
    return [
      {
        ...{ part, kind, connection },
        counts: ensemble.fit(kind)?.countsByPart[partId] ?? NONE,
        unknownStarts: unknown.get(partId) ?? 0,
        typicalEnds: bandOf(life.map((exposure) => exposure / perEnd)),
        guess: facts.guesses.find((guess) => guess.partId === partId),
      },
    ];
  });
  return wears.sort((a, b) => orderOf(a) - orderOf(b));
}

function orderOf({ kind, connection }: PartWear): number {
  const size = connection.odNum / connection.odDen + (connection.service === 'high' ? 1e-6 : 0);
  return (kind === 'die' ? 0 : 1000) + size;
}

/** The connection in whose ends a part's life is told: that of its first guess, else the first one in use that it fits. */
export function ownConnection(
  { guesses, connections }: Pick<ShopFacts, 'guesses' | 'connections'>,
  part: Pick<Part, 'id' | 'fitsConnectionIds'>,
): Connection | undefined {
  const typedFor = guesses.find(({ partId }) => partId === part.id)?.connectionId;
  const fits = connections.filter(({ id }) => part.fitsConnectionIds.includes(id));
  return fits.find(({ id }) => id === typedFor) ?? fits.find(({ inUse }) => inUse) ?? fits[0];
}

/** What one end costs an edge of this kind: turns of a thread, mm³ of a cone. */
export function exposurePerEnd(kind: EdgeKind, connection: Connection): number {
  return exposureOfEnd({ operation: kind === 'blade' ? 'cone' : 'thread', connection });
}
