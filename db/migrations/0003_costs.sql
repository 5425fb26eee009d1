-- What things cost the shop, where it has said so.
CREATE TABLE shop_costs (
  id TEXT PRIMARY KEY NOT NULL CHECK (id = 'costs'),
  data TEXT NOT NULL CHECK (json_valid(data))
) STRICT;
