import { Panel, SubmitButton } from '@/app/_shared/ui';
import { dataDir, hasShop, type ShopName } from '@/db/shop-files';
import { openDemo, startOwnShop } from '../actions';

/** Which shop is being served, and the one click to the other. Neither loses anything. */
export function WhichShop({ serving }: { serving: ShopName }) {
  const hasOwn = hasShop(dataDir(process.env), 'shop');
  return serving === 'demo' ? (
    <Panel title="This is the demo shop">
      <div className="stack">
        <p>It is invented, and dated from the day it was made. Try anything in it.</p>
        <form action={startOwnShop}>
          <SubmitButton pendingText="Opening…">
            {hasOwn ? 'Open your own shop' : 'Start a shop of your own'}
          </SubmitButton>
        </form>
        <p className="fine">Everyone on this server then sees your own shop. The demo stays as it is.</p>
      </div>
    </Panel>
  ) : (
    <Panel title="This is your own shop">
      <form action={openDemo} className="stack">
        <p className="quiet">
          The invented demo shop is still there to look at. Everyone on this server would see it.
        </p>
        <div>
          <SubmitButton tone="quiet" pendingText="Opening…">
            Open the demo shop
          </SubmitButton>
        </div>
      </form>
    </Panel>
  );
}
