-- The bottle of fluid that a row of the cut log was cut with, where somebody said so; none where it was cut dry.
ALTER TABLE cut ADD COLUMN fluid_id TEXT CHECK (fluid_id IS NULL OR dry = 0);
CREATE INDEX cut_fluid ON cut (fluid_id) WHERE fluid_id IS NOT NULL;

-- How the shop turns what it sees of an edge into a share of its life, where it has said so.
CREATE TABLE reading_settings (
  id TEXT PRIMARY KEY NOT NULL CHECK (id = 'reading-settings'),
  data TEXT NOT NULL CHECK (json_valid(data))
) STRICT;
