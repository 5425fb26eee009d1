import { Panel, Table } from '@/app/_shared/ui';

const ROWS = [
  { what: 'Every page, hand scanner, printing', http: 'yes', https: 'yes' },
  { what: 'The open bench goes on counting when the network is lost', http: 'yes', https: 'yes' },
  { what: 'The bench opens where there is no network', http: 'no', https: 'yes' },
  { what: 'Reading codes with the camera', http: 'no', https: 'yes' },
  { what: 'An icon of its own on the home screen', http: 'as a bookmark', https: 'yes' },
  { what: 'What is sent cannot be read or changed on the way', http: 'no', https: 'yes' },
] as const;

/** What browsers allow at each of the two addresses; at localhost plain http counts as https does. */
export function WhatWorks() {
  return (
    <Panel title="What works where">
      <div className="stack">
        <Table
          caption="What works on plain http and on https"
          columns={[
            { key: 'what', header: 'What', cell: (row) => row.what, lead: true },
            { key: 'http', header: 'Plain http', cell: (row) => row.http },
            { key: 'https', header: 'Https', cell: (row) => row.https },
          ]}
          rows={ROWS}
          rowKey={(row) => row.what}
        />
        <p className="fine">
          On the machine that runs Edgekeep, at localhost, plain http can do all of it. The plain address
          stays open beside https, for the counter.
        </p>
      </div>
    </Panel>
  );
}
