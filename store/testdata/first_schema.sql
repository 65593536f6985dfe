-- The first schema, and a file of its time. DO NOT EDIT.
-- Instants are INTEGER milliseconds since 1970 UTC, days TEXT YYYY-MM-DD.

PRAGMA application_id = 1953654626; -- "trgb"

CREATE TABLE herd (
  id         INTEGER PRIMARY KEY,
  name       TEXT NOT NULL,
  zone       TEXT NOT NULL,
  made_name  TEXT NOT NULL, -- name and zone at the making, which hold again
  made_zone  TEXT NOT NULL, -- when every stated one is taken back
  seq        INTEGER NOT NULL DEFAULT 0,
  look_again INTEGER NOT NULL,
  paused     INTEGER NOT NULL DEFAULT 1
) STRICT;

CREATE INDEX herd_due ON herd (look_again) WHERE paused = 0;

CREATE TABLE person (
  id       INTEGER PRIMARY KEY,
  name     TEXT NOT NULL,
  operator INTEGER NOT NULL DEFAULT 0
) STRICT;

CREATE TABLE member (
  herd   INTEGER NOT NULL REFERENCES herd (id),
  person INTEGER NOT NULL REFERENCES person (id),
  role   TEXT NOT NULL,
  PRIMARY KEY (herd, person)
) STRICT, WITHOUT ROWID;

CREATE INDEX member_person ON member (person);

CREATE TABLE chat (
  id        INTEGER PRIMARY KEY,
  transport TEXT NOT NULL,
  external  TEXT NOT NULL,
  is_group  INTEGER NOT NULL DEFAULT 0,
  herd      INTEGER REFERENCES herd (id),
  person    INTEGER REFERENCES person (id),
  dead      TEXT NOT NULL DEFAULT '', -- why it cannot be reached
  UNIQUE (transport, external)
) STRICT;

CREATE INDEX chat_herd ON chat (herd) WHERE herd IS NOT NULL;

-- The journal. Clustered by herd, so that reading one herd is one run of pages.
CREATE TABLE record (
  herd     INTEGER NOT NULL REFERENCES herd (id),
  seq      INTEGER NOT NULL,
  id       TEXT NOT NULL,
  kind     TEXT NOT NULL,
  version  INTEGER NOT NULL,
  on_day   TEXT NOT NULL,
  zone     TEXT NOT NULL,
  at       INTEGER NOT NULL,
  at_east  INTEGER NOT NULL, -- seconds the zone was east of UTC at that moment
  stated   INTEGER NOT NULL DEFAULT 0,
  said_at  INTEGER NOT NULL,
  said_by  TEXT NOT NULL DEFAULT '',
  person   INTEGER REFERENCES person (id),
  chat     INTEGER REFERENCES chat (id),
  message  TEXT NOT NULL DEFAULT '',
  text     TEXT NOT NULL DEFAULT '',
  judged   TEXT NOT NULL DEFAULT '',
  voids    TEXT,
  body     TEXT NOT NULL CHECK (json_valid(body)),
  PRIMARY KEY (herd, seq),
  UNIQUE (herd, id),
  FOREIGN KEY (herd, voids) REFERENCES record (herd, id)
) STRICT, WITHOUT ROWID;

CREATE INDEX record_source   ON record (chat, message) WHERE chat IS NOT NULL;
CREATE INDEX record_voids    ON record (herd, voids) WHERE voids IS NOT NULL;
CREATE INDEX record_settings ON record (herd, at) WHERE kind = 'settings';

CREATE TRIGGER record_never_changed BEFORE UPDATE ON record
BEGIN SELECT raise(ABORT, 'a record is never changed; void it and add another'); END;

CREATE TRIGGER record_never_deleted BEFORE DELETE ON record
BEGIN SELECT raise(ABORT, 'a record is never deleted; void it'); END;

-- INSERT OR REPLACE deletes without asking the trigger above.
CREATE TRIGGER record_never_replaced BEFORE INSERT ON record
WHEN EXISTS (SELECT 1 FROM record WHERE herd = new.herd AND (seq = new.seq OR id = new.id))
BEGIN SELECT raise(ABORT, 'a record is never replaced; void it and add another'); END;

CREATE TABLE code (
  hash       BLOB PRIMARY KEY, -- SHA-256 of the code; the code itself is kept nowhere
  herd       INTEGER REFERENCES herd (id),
  role       TEXT NOT NULL,
  operator   INTEGER NOT NULL,
  expires_at INTEGER NOT NULL,
  used_at    INTEGER
) STRICT;

CREATE TABLE incoming (
  id      INTEGER PRIMARY KEY AUTOINCREMENT, -- rows go, and no number comes twice
  key     TEXT NOT NULL UNIQUE,
  chat    TEXT NOT NULL,
  raw     BLOB NOT NULL,
  at      INTEGER NOT NULL,
  handled INTEGER NOT NULL DEFAULT 0,
  problem TEXT NOT NULL DEFAULT ''
) STRICT;

CREATE INDEX incoming_waiting ON incoming (id) WHERE handled = 0;

CREATE TABLE outgoing (
  id         INTEGER PRIMARY KEY,
  key        TEXT NOT NULL UNIQUE,
  herd       INTEGER REFERENCES herd (id),
  chat       INTEGER NOT NULL REFERENCES chat (id),
  kind       TEXT NOT NULL,
  text       TEXT NOT NULL,
  buttons    TEXT NOT NULL DEFAULT '',
  reply_to   TEXT NOT NULL DEFAULT '',
  edits      TEXT NOT NULL DEFAULT '',
  quiet      INTEGER NOT NULL DEFAULT 0,
  told       TEXT NOT NULL DEFAULT '',
  good_until INTEGER,
  not_before INTEGER NOT NULL DEFAULT 0,
  state      TEXT NOT NULL CHECK (state IN ('pending', 'sending', 'sent', 'dropped')),
  tries      INTEGER NOT NULL DEFAULT 0,
  sent       TEXT NOT NULL DEFAULT '',
  repeated   INTEGER NOT NULL DEFAULT 0
) STRICT;

CREATE INDEX outgoing_pending ON outgoing (chat, id) WHERE state = 'pending';
CREATE INDEX outgoing_sending ON outgoing (chat) WHERE state = 'sending';
CREATE INDEX outgoing_sent    ON outgoing (chat, sent) WHERE sent <> '';
CREATE INDEX outgoing_told    ON outgoing (herd, told) WHERE told <> '';

CREATE TABLE value (
  name  TEXT PRIMARY KEY,
  value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

PRAGMA user_version = 1;

INSERT INTO herd VALUES (1, 'Long Acre', 'America/Chicago', 'Long Acre', 'America/Chicago', 2, 1778932800000, 0);
INSERT INTO person VALUES (1, 'Ann', 1);
INSERT INTO member VALUES (1, 1, 'owner');
INSERT INTO chat VALUES (1, 'telegram', '4711', 0, 1, 1, '');
INSERT INTO record VALUES (1, 1, 'r1', 'weigh', 1, '2026-05-16', 'America/Chicago', 1778932800000, -18000, 0,
  1778932860000, 'Ann', 1, 1, '17', 'Dot 38 girth', 'certain', NULL, '{"animals":["Dot"],"girth_cm":96.5}');
INSERT INTO record VALUES (1, 2, 'r2', 'void', 1, '2026-05-16', 'America/Chicago', 1778932900000, -18000, 0,
  1778932900000, 'Ann', 1, 1, '18', 'undo', 'certain', 'r1', '{"record":"r1","why":"undo"}');
INSERT INTO outgoing (key, herd, chat, kind, text, state, sent) VALUES ('reply 17', 1, 1, 'reply', 'Dot: girth 38 in.', 'sent', '18');
