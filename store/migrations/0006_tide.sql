-- The last row of the outbox on each day: how old a message is is told by the
-- days that came after it. Days that nobody asks for any more go.
CREATE TABLE tide (
  day      TEXT PRIMARY KEY,
  outgoing INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
