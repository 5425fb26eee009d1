-- How the shop judges its gauges, where it has said so: the rule of decision and the reliability an interval is to keep.
CREATE TABLE gauge_settings (
  id TEXT PRIMARY KEY NOT NULL CHECK (id = 'gauge-settings'),
  data TEXT NOT NULL CHECK (json_valid(data))
) STRICT;

-- Which gauges were checked or set on a master, for the day on which it is found out.
CREATE INDEX gauge_evidence_against ON gauge_evidence (against_tool_id) WHERE against_tool_id IS NOT NULL;
