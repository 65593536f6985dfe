-- The guard against a replaced record looked through all records of the herd for
-- each new one: on a table without rowids "seq or id" uses no index.
DROP TRIGGER record_never_replaced;
CREATE TRIGGER record_never_replaced BEFORE INSERT ON record
WHEN EXISTS (SELECT 1 FROM record WHERE herd = new.herd AND seq = new.seq)
  OR EXISTS (SELECT 1 FROM record WHERE herd = new.herd AND id = new.id)
BEGIN SELECT raise(ABORT, 'a record is never replaced; void it and add another'); END;
