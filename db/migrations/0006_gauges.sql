-- What says whether a gauge was good: calibrations and checks, in the order in which they were entered.
CREATE TABLE gauge_evidence (
  tool_id TEXT NOT NULL REFERENCES tool (id),
  no INTEGER NOT NULL CHECK (no >= 1),
  entry_id TEXT NOT NULL,
  kind TEXT NOT NULL CHECK (kind IN ('calibration', 'interim')),
  on_day TEXT NOT NULL CHECK (on_day GLOB '????-??-??'),
  at_ms INTEGER NOT NULL,
  as_found TEXT NOT NULL CHECK (as_found IN ('in', 'out', 'not-taken')),
  as_left TEXT NOT NULL CHECK (as_left IN ('in', 'out')),
  qualifies INTEGER NOT NULL CHECK (qualifies IN (0, 1)),
  against_tool_id TEXT,
  -- The whole content of a calibration, and the certificate as filed.
  calibration TEXT CHECK (json_valid(calibration)),
  file TEXT CHECK (json_valid(file)),
  PRIMARY KEY (tool_id, no),
  CHECK ((kind = 'calibration') = (calibration IS NOT NULL))
) STRICT, WITHOUT ROWID;
CREATE INDEX gauge_evidence_entry ON gauge_evidence (entry_id);

-- How long a calibration of a gauge is good for, and the knock after which it was set aside.
CREATE TABLE gauge (
  tool_id TEXT PRIMARY KEY NOT NULL REFERENCES tool (id),
  interval_days INTEGER CHECK (interval_days BETWEEN 1 AND 3660),
  interval_ends INTEGER CHECK (interval_ends BETWEEN 1 AND 1000000),
  interval_method TEXT,
  dropped_on_day TEXT,
  dropped_at_ms INTEGER,
  CHECK ((interval_method IS NULL) = (interval_days IS NULL AND interval_ends IS NULL)),
  CHECK ((dropped_on_day IS NULL) = (dropped_at_ms IS NULL))
) STRICT, WITHOUT ROWID;

-- Files kept beside the ledger, each once, by the hash of its bytes. An entry names the hash; bytes are never changed.
CREATE TABLE attachment (
  sha256 TEXT PRIMARY KEY NOT NULL CHECK (length(sha256) = 64),
  type TEXT NOT NULL CHECK (type IN ('application/pdf', 'image/png', 'image/jpeg')),
  data BLOB NOT NULL CHECK (length(data) BETWEEN 1 AND 5242880)
) STRICT;
CREATE TRIGGER attachment_never_changed BEFORE UPDATE ON attachment
BEGIN SELECT RAISE(ABORT, 'a filed certificate is never changed'); END;
CREATE TRIGGER attachment_never_removed BEFORE DELETE ON attachment
BEGIN SELECT RAISE(ABORT, 'a filed certificate is never removed'); END;
