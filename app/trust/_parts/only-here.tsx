import { Panel } from '@/app/_shared/ui';

/** Https is on, but no other device reaches this machine. */
export function OnlyHere({ port }: { readonly port: number }) {
  return (
    <Panel title="Only this machine can reach it">
      <div className="stack">
        <p>
          Https is on, at <span className="num">https://localhost:{port}</span>, and no tablet can reach it.
          Stop Edgekeep and start it again for the shop’s network:
        </p>
        <pre className="num">npm start -- --https --host 0.0.0.0</pre>
      </div>
    </Panel>
  );
}
