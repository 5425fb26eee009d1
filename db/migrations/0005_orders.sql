-- Orders from the draft to the last piece, with who they are placed with and when their day was last said.
ALTER TABLE purchase_order ADD COLUMN status TEXT NOT NULL DEFAULT 'placed'
  CHECK (status IN ('drafted', 'approved', 'placed', 'received', 'cancelled'));
ALTER TABLE purchase_order ADD COLUMN supplier TEXT NOT NULL DEFAULT '';
ALTER TABLE purchase_order ADD COLUMN unit_price_minor INTEGER CHECK (unit_price_minor >= 0);
ALTER TABLE purchase_order ADD COLUMN stated_on_day TEXT NOT NULL DEFAULT '';
ALTER TABLE purchase_order ADD COLUMN first_received_on_day TEXT;
ALTER TABLE purchase_order ADD COLUMN received_on_day TEXT;
ALTER TABLE purchase_order ADD COLUMN chased_on_day TEXT;
ALTER TABLE purchase_order ADD COLUMN why TEXT NOT NULL DEFAULT '';
ALTER TABLE purchase_order ADD COLUMN shown TEXT CHECK (json_valid(shown));
CREATE INDEX purchase_order_status ON purchase_order (status);

-- What the orders kept so far add up to under the new columns.
CREATE TEMP TABLE order_entry AS
  SELECT e.subject_id AS id, e.kind, date(e.server_at_ms / 1000, 'unixepoch') AS on_day FROM entry e
  WHERE e.subject_kind = 'order' AND e.kind IN ('order-slipped', 'order-received')
    AND NOT EXISTS (SELECT 1 FROM entry r WHERE r.reverses_id = e.id);
UPDATE purchase_order SET stated_on_day = max(placed_on_day, coalesce(
  (SELECT on_day FROM order_entry o WHERE o.id = purchase_order.id AND kind = 'order-slipped'
    ORDER BY o.rowid DESC LIMIT 1), placed_on_day));
UPDATE purchase_order SET first_received_on_day =
  (SELECT min(on_day) FROM order_entry o WHERE o.id = purchase_order.id AND kind = 'order-received');
UPDATE purchase_order SET status = 'received', received_on_day =
  (SELECT max(on_day) FROM order_entry o WHERE o.id = purchase_order.id AND kind = 'order-received')
  WHERE received_quantity = quantity;
DROP TABLE order_entry;

-- How a part is bought: packs, least quantity, price breaks, and who else sells it.
ALTER TABLE part ADD COLUMN pack_size INTEGER CHECK (pack_size >= 1);
ALTER TABLE part ADD COLUMN min_quantity INTEGER CHECK (min_quantity >= 1);
ALTER TABLE part ADD COLUMN break_kind TEXT CHECK (break_kind IN ('all-units', 'incremental'));
ALTER TABLE part ADD COLUMN price_breaks TEXT CHECK (json_valid(price_breaks));
ALTER TABLE part ADD COLUMN offers TEXT CHECK (json_valid(offers));
