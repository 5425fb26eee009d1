import { Panel } from '@/app/_shared/ui';

/** How to switch https on, where the program was started without. */
export function HttpsOff() {
  return (
    <Panel title="Https is not switched on">
      <div className="stack">
        <p>
          On the machine that runs Edgekeep, stop it and start it again with these flags. The first makes the
          https address, the second lets the other devices of the shop reach it.
        </p>
        <pre className="num">npm start -- --https --host 0.0.0.0</pre>
        <p>
          Then open this page again. There is no sign-in: serve it only where everyone who reaches the network
          may enter.
        </p>
      </div>
    </Panel>
  );
}
