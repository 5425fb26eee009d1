-- Ends looked at and accepted or refused: the product, where the cut log counts the wear.
CREATE TABLE acceptance (
  id TEXT PRIMARY KEY NOT NULL,
  -- No foreign key: a job that is planned anew replaces its lines.
  job_line_id TEXT,
  connection_id TEXT NOT NULL REFERENCES connection (id),
  material_id TEXT NOT NULL REFERENCES material (id),
  heat TEXT NOT NULL,
  first_end_no INTEGER CHECK (first_end_no BETWEEN 1 AND 100000),
  end_count INTEGER NOT NULL CHECK (end_count BETWEEN 1 AND 500),
  check_kind TEXT NOT NULL CHECK (check_kind IN ('first-off', 'in-process', 'last-off', 'each')),
  decision TEXT NOT NULL CHECK (decision IN ('accepted', 'refused')),
  cause TEXT,
  -- Whether every gauge that the work asks for was recorded.
  gauges_complete INTEGER NOT NULL CHECK (gauges_complete IN (0, 1)),
  regauges_id TEXT,
  person_id TEXT NOT NULL,
  gauged_at_ms INTEGER NOT NULL CHECK (gauged_at_ms BETWEEN 0 AND 7258118400000),
  gauged_on_day TEXT NOT NULL CHECK (gauged_on_day GLOB '????-??-??'),
  recorded_at_ms INTEGER NOT NULL CHECK (recorded_at_ms BETWEEN 0 AND 7258118400000),
  data TEXT NOT NULL CHECK (json_valid(data)),
  CHECK ((decision = 'refused') = (cause IS NOT NULL))
) STRICT;
CREATE INDEX acceptance_line ON acceptance (job_line_id) WHERE job_line_id IS NOT NULL;
CREATE INDEX acceptance_regauges ON acceptance (regauges_id) WHERE regauges_id IS NOT NULL;
CREATE TABLE acceptance_gauge (
  acceptance_id TEXT NOT NULL REFERENCES acceptance (id),
  position INTEGER NOT NULL CHECK (position >= 1),
  tool_id TEXT NOT NULL REFERENCES tool (id),
  role TEXT NOT NULL,
  verdict TEXT NOT NULL CHECK (verdict IN ('pass', 'fail', 'not-used')),
  turns REAL CHECK (turns BETWEEN 0 AND 20),
  PRIMARY KEY (acceptance_id, position)
) STRICT, WITHOUT ROWID;
CREATE INDEX acceptance_gauge_tool ON acceptance_gauge (tool_id, verdict);
-- The marks that ends bear, so that one end is found by its mark.
CREATE TABLE acceptance_mark (
  acceptance_id TEXT NOT NULL REFERENCES acceptance (id),
  position INTEGER NOT NULL CHECK (position >= 1),
  mark TEXT NOT NULL,
  PRIMARY KEY (acceptance_id, position)
) STRICT, WITHOUT ROWID;
CREATE INDEX acceptance_mark_mark ON acceptance_mark (mark);

-- A gauge found out, and every end accepted with it since it was last known good.
CREATE TABLE recall (
  id TEXT PRIMARY KEY NOT NULL,
  gauge_id TEXT NOT NULL REFERENCES tool (id),
  status TEXT NOT NULL CHECK (status IN ('open', 'closed')),
  direction TEXT NOT NULL CHECK (direction IN ('large', 'small', 'unknown')),
  window_from_ms INTEGER CHECK (window_from_ms BETWEEN 0 AND 7258118400000),
  window_to_ms INTEGER NOT NULL CHECK (window_to_ms BETWEEN 0 AND 7258118400000),
  opened_at_ms INTEGER NOT NULL CHECK (opened_at_ms BETWEEN 0 AND 7258118400000),
  data TEXT NOT NULL CHECK (json_valid(data))
) STRICT;
CREATE INDEX recall_gauge ON recall (gauge_id);
CREATE TABLE recall_suspect (
  recall_id TEXT NOT NULL REFERENCES recall (id),
  -- No foreign key: the entry may be taken back while the recall keeps it to be seen.
  acceptance_id TEXT NOT NULL,
  end_count INTEGER NOT NULL CHECK (end_count BETWEEN 1 AND 500),
  -- Ends not yet decided about, found good after all, and gone or to be made again.
  open_ends INTEGER NOT NULL CHECK (open_ends BETWEEN 0 AND end_count),
  good_ends INTEGER NOT NULL CHECK (good_ends BETWEEN 0 AND end_count),
  gone_ends INTEGER NOT NULL CHECK (open_ends + good_ends + gone_ends = end_count AND gone_ends >= 0),
  PRIMARY KEY (recall_id, acceptance_id)
) STRICT, WITHOUT ROWID;
CREATE INDEX recall_suspect_acceptance ON recall_suspect (acceptance_id);

-- The rule an end must meet, where the job or the shop has written one, and the day a job left the house.
ALTER TABLE job ADD COLUMN acceptance_rule TEXT CHECK (json_valid(acceptance_rule));
ALTER TABLE job ADD COLUMN shipped_on_day TEXT CHECK (shipped_on_day GLOB '????-??-??');
ALTER TABLE shop ADD COLUMN acceptance_rule TEXT CHECK (json_valid(acceptance_rule));
