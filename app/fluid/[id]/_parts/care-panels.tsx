import { newStamp } from '@/app/_server/entry-stamp';
import { Panel } from '@/app/_shared/ui';
import type { AboutBottle } from './about-bottle';
import { DropsForm, LevelForm, OpenForm } from './bottle-forms';

/** What is done with a bottle at the bench: open it, read it, count its drops. */
export function CarePanels({ tool, facts }: AboutBottle) {
  if (tool.state === 'scrapped' || tool.state === 'lost') return null;
  const about = { toolId: tool.id, today: facts.today };
  return (
    <Panel title="At the bottle">
      <div className="stack">
        {tool.openedOnDay === null ? <OpenForm {...about} stamp={newStamp()} /> : null}
        <LevelForm {...about} stamp={newStamp()} levelMl={tool.levelMl} />
        <details open={tool.dropsPerMl === null && tool.openedOnDay !== null}>
          <summary>Count its drops</summary>
          <DropsForm {...about} stamp={newStamp()} />
        </details>
      </div>
    </Panel>
  );
}
