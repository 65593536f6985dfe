-- A file that came in and waits until its sender says what becomes of it.
CREATE TABLE upload (
  herd   INTEGER NOT NULL REFERENCES herd (id),
  key    TEXT NOT NULL,
  person INTEGER REFERENCES person (id), -- who sent it
  name   TEXT NOT NULL,
  bytes  BLOB NOT NULL,
  at     INTEGER NOT NULL,
  PRIMARY KEY (herd, key)
) STRICT;

CREATE INDEX upload_at ON upload (at);

-- Messages whose file is still to be fetched are handled = 2.
CREATE INDEX incoming_fetching ON incoming (id) WHERE handled = 2;
