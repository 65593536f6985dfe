-- A file that goes out with a message. It is kept beside its message, so that
-- lists of messages read no files, and only until that was sent or dropped;
-- what it was called is kept as long as the message.
CREATE TABLE attachment (
  outgoing INTEGER PRIMARY KEY REFERENCES outgoing (id) ON DELETE CASCADE,
  kind     TEXT NOT NULL CHECK (kind IN ('photo', 'document')),
  name     TEXT NOT NULL,
  size     INTEGER NOT NULL, -- in bytes, of the file as it was queued
  bytes    BLOB NOT NULL
) STRICT;

CREATE TRIGGER attachment_purged AFTER UPDATE OF state ON outgoing
WHEN new.state IN ('sent', 'dropped')
BEGIN UPDATE attachment SET bytes = x'' WHERE outgoing = new.id; END;
