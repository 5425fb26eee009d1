-- Kits: what went out together for a line. Which items are still out stands on the tools.
CREATE TABLE kit (
  id TEXT PRIMARY KEY NOT NULL,
  job_line_id TEXT NOT NULL,
  to_person_id TEXT NOT NULL REFERENCES person (id),
  bench TEXT NOT NULL,
  items TEXT NOT NULL CHECK (json_valid(items)),
  issued_at_ms INTEGER NOT NULL,
  status TEXT NOT NULL CHECK (status IN ('out', 'complete', 'lost-approved')),
  missing_tool_ids TEXT NOT NULL CHECK (json_valid(missing_tool_ids)),
  last_seen TEXT NOT NULL,
  closed_at_ms INTEGER,
  lost_tool_ids TEXT NOT NULL CHECK (json_valid(lost_tool_ids)),
  CHECK ((status = 'out') = (closed_at_ms IS NULL))
) STRICT;
CREATE INDEX kit_status ON kit (status, issued_at_ms);

-- A stock-take by scanning.
CREATE TABLE stock_count (
  id TEXT PRIMARY KEY NOT NULL,
  scope TEXT NOT NULL,
  expected INTEGER NOT NULL CHECK (expected >= 0),
  found INTEGER NOT NULL CHECK (found BETWEEN 0 AND expected),
  variances TEXT NOT NULL CHECK (json_valid(variances)),
  counted_at_ms INTEGER NOT NULL,
  counted_by_id TEXT NOT NULL
) STRICT;

-- What a bench entered without network and the record could not take.
CREATE TABLE conflict (
  id TEXT PRIMARY KEY NOT NULL,
  tool_id TEXT NOT NULL,
  what TEXT NOT NULL,
  sentence TEXT NOT NULL,
  sent TEXT NOT NULL CHECK (json_valid(sent)),
  raised_at_ms INTEGER NOT NULL,
  raised_by_id TEXT NOT NULL,
  settled TEXT CHECK (settled IN ('entered', 'dropped')),
  note TEXT NOT NULL
) STRICT;
CREATE INDEX conflict_open ON conflict (raised_at_ms) WHERE settled IS NULL;

-- The kit a tool is out in, the line it is kept for, pieces owed after a breakage, and the first-off owed.
ALTER TABLE tool ADD COLUMN kit_id TEXT;
ALTER TABLE tool ADD COLUMN reservation TEXT CHECK (json_valid(reservation));
ALTER TABLE tool ADD COLUMN pieces TEXT NOT NULL DEFAULT 'none' CHECK (pieces IN ('none', 'owed', 'found', 'not-found'));
ALTER TABLE tool ADD COLUMN adjustments INTEGER NOT NULL DEFAULT 0 CHECK (adjustments >= 0);
ALTER TABLE tool ADD COLUMN first_off_owed INTEGER NOT NULL DEFAULT 0 CHECK (first_off_owed IN (0, 1));
CREATE INDEX tool_kit ON tool (kit_id) WHERE kit_id IS NOT NULL;
