-- Shows with what is listed for them, and findings accepted with a reason. An impression taken off a list keeps its row: what was
-- once sent out with a show stays on record.

CREATE TABLE show (
    id              INTEGER PRIMARY KEY AUTOINCREMENT,
    name            TEXT,
    kind            TEXT    NOT NULL CHECK (kind IN ('exhibition', 'sale', 'fair', 'other')),
    place           INTEGER REFERENCES place (id) ON DELETE RESTRICT,
    host            INTEGER REFERENCES person (id) ON DELETE RESTRICT,
    opens           TEXT,
    opens_earliest  TEXT,
    opens_latest    TEXT,
    closes          TEXT,
    closes_earliest TEXT,
    closes_latest   TEXT,
    note            TEXT,
    search          TEXT,
    v               INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT
) STRICT;

CREATE TABLE show_impression (
    id         INTEGER PRIMARY KEY AUTOINCREMENT,
    show       INTEGER NOT NULL REFERENCES show (id) ON DELETE RESTRICT,
    impression INTEGER NOT NULL REFERENCES impression (id) ON DELETE RESTRICT,
    ordinal    INTEGER NOT NULL CHECK (ordinal >= 1),
    standing   TEXT    NOT NULL CHECK (standing IN ('listed', 'taken-off')),
    v          INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (show, impression)
) STRICT;

CREATE INDEX show_impression_impression ON show_impression (impression);

-- An acceptance holds while a finding of the same rule about the same subject says the same words.
CREATE TABLE accepted_finding (
    id                INTEGER PRIMARY KEY AUTOINCREMENT,
    rule              TEXT    NOT NULL,
    severity          TEXT    NOT NULL CHECK (severity IN ('note', 'query', 'contradiction')),
    subject_kind      TEXT    NOT NULL,
    subject_id        INTEGER NOT NULL,
    finding           TEXT,
    reason            TEXT,
    accepted          TEXT    NOT NULL,
    accepted_earliest TEXT,
    accepted_latest   TEXT,
    withdrawn         TEXT    NOT NULL CHECK (withdrawn IN ('yes', 'no')),
    v                 INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT
) STRICT;
