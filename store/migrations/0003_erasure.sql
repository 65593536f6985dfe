-- A record is never changed and never deleted, save where its herd is taken out
-- whole, or a person's name and chat out of the herd's records. Which of the two
-- is going on, and for whom, stands here within that one transaction; no row
-- outlives it.
CREATE TABLE erasure (
  herd   INTEGER PRIMARY KEY REFERENCES herd (id),
  person INTEGER REFERENCES person (id) -- whose name goes; NULL: the whole herd goes
) STRICT;

DROP TRIGGER record_never_changed;
CREATE TRIGGER record_never_changed BEFORE UPDATE ON record
WHEN NOT EXISTS (SELECT 1 FROM erasure AS e WHERE e.herd = old.herd AND e.person IS NOT NULL
  AND (old.person = e.person OR old.chat IN (SELECT id FROM chat WHERE person = e.person))
  AND (old.herd, old.seq, old.id, old.kind, old.version, old.on_day, old.zone, old.at, old.at_east, old.stated,
       old.said_at, old.text, old.judged, old.voids, old.body)
   IS (new.herd, new.seq, new.id, new.kind, new.version, new.on_day, new.zone, new.at, new.at_east, new.stated,
       new.said_at, new.text, new.judged, new.voids, new.body))
BEGIN SELECT raise(ABORT, 'a record is never changed; void it and add another'); END;

DROP TRIGGER record_never_deleted;
CREATE TRIGGER record_never_deleted BEFORE DELETE ON record
WHEN NOT EXISTS (SELECT 1 FROM erasure AS e WHERE e.herd = old.herd AND e.person IS NULL)
BEGIN SELECT raise(ABORT, 'a record is never deleted; void it'); END;

-- The highest id that each table ever had, where rows of it were deleted: a
-- button below an old message must never come to mean another one.
CREATE TABLE last_id (
  of TEXT PRIMARY KEY,
  id INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
