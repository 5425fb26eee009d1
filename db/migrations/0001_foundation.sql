-- The ledger: everything that happened, in order. Rows are never changed and never removed.
CREATE TABLE entry (
  seq INTEGER PRIMARY KEY AUTOINCREMENT,
  id TEXT NOT NULL UNIQUE CHECK (length(id) BETWEEN 8 AND 64),
  kind TEXT NOT NULL,
  subject_kind TEXT NOT NULL,
  subject_id TEXT NOT NULL,
  actor_id TEXT NOT NULL,
  device_at_ms INTEGER NOT NULL CHECK (device_at_ms BETWEEN 0 AND 7258118400000),
  server_at_ms INTEGER NOT NULL CHECK (server_at_ms BETWEEN 0 AND 7258118400000),
  reason TEXT NOT NULL,
  payload TEXT NOT NULL CHECK (json_valid(payload)),
  -- An entry of kind 'entry-reversed' takes this one back; one entry can be taken back once.
  reverses_id TEXT UNIQUE REFERENCES entry (id),
  batch_id TEXT,
  CHECK ((kind = 'entry-reversed') = (reverses_id IS NOT NULL))
) STRICT;
CREATE INDEX entry_subject ON entry (subject_kind, subject_id, seq);
CREATE INDEX entry_batch ON entry (batch_id) WHERE batch_id IS NOT NULL;
CREATE TRIGGER entry_never_changed BEFORE UPDATE ON entry
BEGIN SELECT RAISE(ABORT, 'the ledger is append-only: an entry is never changed'); END;
CREATE TRIGGER entry_never_removed BEFORE DELETE ON entry
BEGIN SELECT RAISE(ABORT, 'the ledger is append-only: an entry is never removed'); END;
-- INSERT OR REPLACE would otherwise remove an entry without a word to the trigger above.
CREATE TRIGGER entry_never_replaced BEFORE INSERT ON entry
WHEN EXISTS (SELECT 1 FROM entry WHERE id = NEW.id OR seq = NEW.seq OR reverses_id = NEW.reverses_id)
BEGIN SELECT RAISE(ABORT, 'the ledger is append-only: an entry is never replaced'); END;

-- Everything below is derived from the ledger, kept in step in the same transaction, and equal to its replay.
CREATE TABLE shop (
  id TEXT PRIMARY KEY CHECK (id = 'shop'),
  name TEXT NOT NULL,
  units TEXT NOT NULL CHECK (units IN ('in', 'mm')),
  currency TEXT NOT NULL CHECK (length(currency) = 3),
  required_probability REAL NOT NULL CHECK (required_probability BETWEEN 0.5 AND 0.999),
  required_probability_precious REAL NOT NULL CHECK (required_probability_precious BETWEEN 0.5 AND 0.999),
  fluid_waste_factor REAL NOT NULL CHECK (fluid_waste_factor BETWEEN 1 AND 20)
) STRICT;

CREATE TABLE person (
  id TEXT PRIMARY KEY,
  name TEXT NOT NULL,
  role TEXT NOT NULL CHECK (role IN ('attendant', 'lead', 'technician', 'quality'))
) STRICT;

CREATE TABLE connection (
  id TEXT PRIMARY KEY,
  od_num INTEGER NOT NULL CHECK (od_num BETWEEN 1 AND 999),
  od_den INTEGER NOT NULL CHECK (od_den BETWEEN 1 AND 64),
  service TEXT NOT NULL CHECK (service IN ('medium', 'high')),
  tpi REAL NOT NULL CHECK (tpi BETWEEN 4 AND 80),
  hand TEXT NOT NULL CHECK (hand IN ('LH', 'RH')),
  thread_class TEXT NOT NULL,
  thread_length_mm REAL NOT NULL CHECK (thread_length_mm BETWEEN 1 AND 200),
  cone_angle_deg REAL NOT NULL CHECK (cone_angle_deg BETWEEN 10 AND 170),
  nose_mm REAL NOT NULL CHECK (nose_mm BETWEEN 0.1 AND 200),
  not_go_turns_max REAL CHECK (not_go_turns_max BETWEEN 0 AND 10),
  confirmed INTEGER NOT NULL CHECK (confirmed IN (0, 1)),
  in_use INTEGER NOT NULL CHECK (in_use IN (0, 1))
) STRICT;

CREATE TABLE material (
  id TEXT PRIMARY KEY,
  name TEXT NOT NULL,
  condition TEXT NOT NULL,
  factor REAL NOT NULL CHECK (factor BETWEEN 0.05 AND 50),
  factor_give_or_take REAL NOT NULL CHECK (factor_give_or_take BETWEEN 1 AND 20),
  is_reference INTEGER NOT NULL CHECK (is_reference IN (0, 1))
) STRICT;

CREATE TABLE part (
  id TEXT PRIMARY KEY,
  role TEXT NOT NULL,
  name TEXT NOT NULL,
  designation TEXT NOT NULL,
  hand TEXT CHECK (hand IN ('LH', 'RH')),
  adjustable INTEGER NOT NULL CHECK (adjustable IN (0, 1)),
  matched_pair INTEGER NOT NULL CHECK (matched_pair IN (0, 1)),
  regrind_limit INTEGER NOT NULL CHECK (regrind_limit BETWEEN 0 AND 20),
  supplier TEXT NOT NULL,
  price_minor INTEGER CHECK (price_minor >= 0),
  lead_time_days INTEGER CHECK (lead_time_days >= 0),
  permits_all_materials INTEGER NOT NULL CHECK (permits_all_materials IN (0, 1)),
  chlorinated TEXT NOT NULL CHECK (chlorinated IN ('yes', 'no', 'unknown')),
  opened_life_days INTEGER CHECK (opened_life_days >= 0),
  drops_per_ml REAL CHECK (drops_per_ml BETWEEN 5 AND 200)
) STRICT;
CREATE TABLE part_fit (
  part_id TEXT NOT NULL REFERENCES part (id),
  connection_id TEXT NOT NULL REFERENCES connection (id),
  PRIMARY KEY (part_id, connection_id)
) STRICT, WITHOUT ROWID;
CREATE TABLE part_permit (
  part_id TEXT NOT NULL REFERENCES part (id),
  material_id TEXT NOT NULL REFERENCES material (id),
  PRIMARY KEY (part_id, material_id)
) STRICT, WITHOUT ROWID;

CREATE TABLE life_guess (
  part_id TEXT PRIMARY KEY REFERENCES part (id),
  connection_id TEXT NOT NULL REFERENCES connection (id),
  ends REAL NOT NULL CHECK (ends BETWEEN 1 AND 1000000),
  give_or_take REAL NOT NULL CHECK (give_or_take BETWEEN 1.05 AND 20)
) STRICT;

CREATE TABLE job (
  id TEXT PRIMARY KEY,
  title TEXT NOT NULL,
  status TEXT NOT NULL CHECK (status IN ('open', 'done', 'cancelled'))
) STRICT;
CREATE TABLE job_line (
  id TEXT PRIMARY KEY,
  job_id TEXT NOT NULL REFERENCES job (id),
  line_no INTEGER NOT NULL CHECK (line_no BETWEEN 1 AND 999),
  -- No foreign key: a plan may name a size or a material for which the shop has no row, and must then say so.
  connection_id TEXT NOT NULL,
  material_id TEXT NOT NULL,
  heat TEXT NOT NULL,
  ends INTEGER NOT NULL CHECK (ends BETWEEN 1 AND 100000),
  cone INTEGER NOT NULL CHECK (cone IN (0, 1)),
  thread INTEGER NOT NULL CHECK (thread IN (0, 1)),
  assemble INTEGER NOT NULL CHECK (assemble IN (0, 1)),
  start_on_day TEXT NOT NULL CHECK (start_on_day GLOB '????-??-??'),
  due_on_day TEXT NOT NULL CHECK (due_on_day >= start_on_day),
  value TEXT NOT NULL CHECK (value IN ('ordinary', 'precious')),
  UNIQUE (job_id, line_no)
) STRICT;

CREATE TABLE purchase_order (
  id TEXT PRIMARY KEY,
  part_id TEXT NOT NULL REFERENCES part (id),
  quantity INTEGER NOT NULL CHECK (quantity BETWEEN 1 AND 10000),
  received_quantity INTEGER NOT NULL CHECK (received_quantity BETWEEN 0 AND quantity),
  placed_on_day TEXT NOT NULL,
  promised_on_day TEXT NOT NULL,
  expected_on_day TEXT NOT NULL
) STRICT;

-- States: in-crib → issued → in-crib; any → quarantined, calibration, regrind, lost, scrapped; scrapped is final.
CREATE TABLE tool (
  id TEXT PRIMARY KEY,
  -- The ID with look-alike characters folded together (O and 0, I and 1): what a typed or scanned ID is looked up by.
  look_up_key TEXT NOT NULL UNIQUE,
  part_id TEXT NOT NULL REFERENCES part (id),
  role TEXT NOT NULL,
  hand TEXT CHECK (hand IN ('LH', 'RH')),
  lot TEXT NOT NULL,
  received_on_day TEXT NOT NULL,
  opening TEXT NOT NULL CHECK (json_valid(opening)),
  state TEXT NOT NULL CHECK (state IN ('in-crib', 'issued', 'regrind', 'calibration', 'quarantined', 'scrapped', 'lost')),
  state_since_ms INTEGER NOT NULL,
  state_reason TEXT NOT NULL,
  holder_id TEXT REFERENCES person (id),
  job_line_id TEXT,
  bench TEXT NOT NULL,
  back_on_day TEXT,
  due_on_day TEXT,
  expires_on_day TEXT,
  opened_on_day TEXT,
  level_ml REAL CHECK (level_ml BETWEEN 0 AND 1000000),
  CHECK ((state = 'issued') = (holder_id IS NOT NULL))
) STRICT;
CREATE INDEX tool_part ON tool (part_id, state);
CREATE INDEX tool_holder ON tool (holder_id) WHERE holder_id IS NOT NULL;

CREATE TABLE edge (
  tool_id TEXT NOT NULL REFERENCES tool (id),
  edge_no INTEGER NOT NULL CHECK (edge_no >= 1),
  end TEXT CHECK (end IN ('worn', 'incident', 'removed-working')),
  cause TEXT,
  ended_at_ms INTEGER,
  -- The last row logged: an edge found worn wore out somewhere within it.
  last_use TEXT CHECK (json_valid(last_use)),
  PRIMARY KEY (tool_id, edge_no),
  CHECK ((end IS NULL) = (cause IS NULL) AND (end IS NULL) = (ended_at_ms IS NULL))
) STRICT, WITHOUT ROWID;

CREATE TABLE edge_use (
  tool_id TEXT NOT NULL,
  edge_no INTEGER NOT NULL,
  connection_id TEXT NOT NULL REFERENCES connection (id),
  material_id TEXT NOT NULL REFERENCES material (id),
  dry INTEGER NOT NULL CHECK (dry IN (0, 1)),
  rework INTEGER NOT NULL CHECK (rework IN (0, 1)),
  ends INTEGER NOT NULL CHECK (ends >= 0),
  good_ends INTEGER NOT NULL CHECK (good_ends BETWEEN 0 AND ends),
  -- Millionths of a turn (die) or of a mm³ (blade), before any material factor: whole numbers, so sums are exact.
  exposure_micro INTEGER NOT NULL CHECK (exposure_micro BETWEEN 0 AND 9007199254740991),
  PRIMARY KEY (tool_id, edge_no, connection_id, material_id, dry, rework),
  FOREIGN KEY (tool_id, edge_no) REFERENCES edge (tool_id, edge_no)
) STRICT, WITHOUT ROWID;

-- One row of the cut log, with whether it was taken back.
CREATE TABLE cut (
  entry_id TEXT PRIMARY KEY REFERENCES entry (id),
  seq INTEGER NOT NULL,
  tool_id TEXT NOT NULL,
  operation TEXT NOT NULL CHECK (operation IN ('cone', 'thread')),
  connection_id TEXT NOT NULL,
  material_id TEXT NOT NULL,
  heat TEXT NOT NULL,
  ends INTEGER NOT NULL CHECK (ends BETWEEN 1 AND 5000),
  good_ends INTEGER NOT NULL CHECK (good_ends BETWEEN 0 AND ends),
  thread_length_mm REAL CHECK (thread_length_mm BETWEEN 1 AND 200),
  dry INTEGER NOT NULL CHECK (dry IN (0, 1)),
  rework INTEGER NOT NULL CHECK (rework IN (0, 1)),
  job_line_id TEXT,
  person_id TEXT NOT NULL,
  cut_at_ms INTEGER NOT NULL,
  exposure_micro INTEGER NOT NULL CHECK (exposure_micro BETWEEN 0 AND 9007199254740991),
  reversed INTEGER NOT NULL CHECK (reversed IN (0, 1))
) STRICT;
CREATE INDEX cut_tool ON cut (tool_id, seq);
CREATE INDEX cut_job_line ON cut (job_line_id) WHERE job_line_id IS NOT NULL;
