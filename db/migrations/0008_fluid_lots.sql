-- Lots of fluid: the safety data sheet, the label and the supplier's answer of each.
CREATE TABLE fluid_lot (
  id TEXT PRIMARY KEY NOT NULL,
  part_id TEXT NOT NULL REFERENCES part (id),
  lot TEXT NOT NULL,
  data TEXT NOT NULL CHECK (json_valid(data)),
  UNIQUE (part_id, lot)
) STRICT;

-- A bottle's life lengthened after an inspection, its dropper counted, and how it ended.
ALTER TABLE tool ADD COLUMN extended_until_day TEXT;
ALTER TABLE tool ADD COLUMN drops_per_ml REAL CHECK (drops_per_ml BETWEEN 5 AND 200);
ALTER TABLE tool ADD COLUMN disposal TEXT CHECK (json_valid(disposal));

-- What the tube will carry, and the cleaning written down for it. Lines planned so far are for ordinary service.
ALTER TABLE job_line ADD COLUMN duty TEXT NOT NULL DEFAULT 'ordinary' CHECK (duty IN ('ordinary', 'oxygen', 'hydrogen', 'potable'));
ALTER TABLE job_line ADD COLUMN cleaning TEXT CHECK (json_valid(cleaning));

-- How long a closed container keeps, and the services that a fluid is permitted for.
ALTER TABLE part ADD COLUMN shelf_life_days INTEGER CHECK (shelf_life_days BETWEEN 0 AND 5000);
ALTER TABLE part ADD COLUMN permitted_duties TEXT NOT NULL DEFAULT '["ordinary"]' CHECK (json_valid(permitted_duties));
