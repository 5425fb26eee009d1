-- Inspections of an edge, each with what the edge had cut by then. Edges kept so far have none.
ALTER TABLE edge ADD COLUMN readings TEXT NOT NULL DEFAULT '[]' CHECK (json_valid(readings));

-- What is believed of one kind of edge before the log speaks, where the shop has set it.
CREATE TABLE life_belief (
  kind TEXT PRIMARY KEY NOT NULL CHECK (kind IN ('blade', 'die')),
  data TEXT NOT NULL CHECK (json_valid(data))
) STRICT;

-- What one container of a fluid holds, so that an order of fluid counts for what it will bring.
ALTER TABLE part ADD COLUMN container_ml REAL CHECK (container_ml BETWEEN 1 AND 1000000);
