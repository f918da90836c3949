-- The bench and the whereabouts whole: several matrices with states, passes, grades, sets, entitlements, reservations, condition
-- reports, pictures and stock-takes. What is new about a thing known before stands in columns of its own, null where nobody said.

-- ---------------------------------------------------------------- the bench

ALTER TABLE matrix ADD COLUMN part TEXT;
ALTER TABLE matrix ADD COLUMN place INTEGER REFERENCES place (id) ON DELETE RESTRICT;
ALTER TABLE matrix ADD COLUMN keeper INTEGER REFERENCES person (id) ON DELETE RESTRICT;
ALTER TABLE matrix ADD COLUMN fate_proof INTEGER REFERENCES impression (id) ON DELETE RESTRICT;

-- The code of a matrix; never one that a sheet has had.
CREATE TABLE matrix_code (
    id     INTEGER PRIMARY KEY AUTOINCREMENT,
    code   TEXT    NOT NULL UNIQUE CHECK (length(code) = 8),
    matrix INTEGER NOT NULL,
    v      INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT
) STRICT;

CREATE INDEX matrix_code_matrix ON matrix_code (matrix);

CREATE TABLE matrix_state (
    id               INTEGER PRIMARY KEY AUTOINCREMENT,
    matrix           INTEGER NOT NULL REFERENCES matrix (id) ON DELETE RESTRICT,
    ordinal          INTEGER NOT NULL CHECK (ordinal >= 1),
    name             TEXT    NOT NULL,
    reached          TEXT,
    reached_earliest TEXT,
    reached_latest   TEXT,
    note             TEXT,
    v                INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (matrix, ordinal),
    UNIQUE (matrix, name)
) STRICT;

ALTER TABLE print_run ADD COLUMN cut_into INTEGER CHECK (cut_into >= 1);
ALTER TABLE print_run ADD COLUMN made_of INTEGER CHECK (made_of >= 1);
ALTER TABLE print_run ADD COLUMN ready TEXT;
ALTER TABLE print_run ADD COLUMN ready_earliest TEXT;
ALTER TABLE print_run ADD COLUMN ready_latest TEXT;
ALTER TABLE print_run ADD COLUMN posthumous TEXT CHECK (posthumous IN ('yes', 'no', 'unknown'));
ALTER TABLE print_run ADD COLUMN cancellation_proof TEXT CHECK (cancellation_proof IN ('yes', 'no'));

-- One trip through the press or under the hand. Counts are sheets, null where nobody counted; make-ready on other paper is in none of them.
CREATE TABLE pass (
    id            INTEGER PRIMARY KEY AUTOINCREMENT,
    run           INTEGER NOT NULL REFERENCES print_run (id) ON DELETE RESTRICT,
    ordinal       INTEGER NOT NULL CHECK (ordinal >= 1),
    kind          TEXT    NOT NULL CHECK (kind IN ('printed', 'blind', 'chine-colle', 'hand-colouring', 'leaf', 'letterpress', 'other')),
    name          TEXT,
    side          TEXT    NOT NULL CHECK (side IN ('recto', 'verso', 'unknown')),
    reach         TEXT    NOT NULL CHECK (reach IN ('all', 'some')),
    done          TEXT,
    done_earliest TEXT,
    done_latest   TEXT,
    sheets_in     INTEGER CHECK (sheets_in >= 0),
    added         INTEGER CHECK (added >= 0),
    sheets_out    INTEGER CHECK (sheets_out >= 0),
    spoiled       INTEGER CHECK (spoiled >= 0),
    held_out      INTEGER CHECK (held_out >= 0),
    make_ready    INTEGER CHECK (make_ready >= 0),
    note          TEXT,
    v             INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (run, ordinal),
    CHECK (sheets_in + added = sheets_out + spoiled + held_out)
) STRICT;

CREATE TABLE pass_matrix (
    id     INTEGER PRIMARY KEY AUTOINCREMENT,
    pass   INTEGER NOT NULL REFERENCES pass (id) ON DELETE RESTRICT,
    matrix INTEGER NOT NULL REFERENCES matrix (id) ON DELETE RESTRICT,
    state  INTEGER REFERENCES matrix_state (id) ON DELETE RESTRICT,
    v      INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (pass, matrix)
) STRICT;

CREATE TABLE pass_colour (
    id      INTEGER PRIMARY KEY AUTOINCREMENT,
    pass    INTEGER NOT NULL REFERENCES pass (id) ON DELETE RESTRICT,
    ordinal INTEGER NOT NULL CHECK (ordinal >= 1),
    colour  TEXT    NOT NULL,
    ink     TEXT,
    manner  TEXT    NOT NULL CHECK (manner IN ('flat', 'blend', 'a-la-poupee', 'unknown')),
    v       INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (pass, ordinal)
) STRICT;

CREATE TABLE pass_person (
    id     INTEGER PRIMARY KEY AUTOINCREMENT,
    pass   INTEGER NOT NULL REFERENCES pass (id) ON DELETE RESTRICT,
    person INTEGER NOT NULL REFERENCES person (id) ON DELETE RESTRICT,
    v      INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (pass, person)
) STRICT;

CREATE TABLE pass_spoiled (
    id     INTEGER PRIMARY KEY AUTOINCREMENT,
    pass   INTEGER NOT NULL REFERENCES pass (id) ON DELETE RESTRICT,
    fault  TEXT    NOT NULL REFERENCES fault (word) ON DELETE RESTRICT,
    sheets INTEGER NOT NULL CHECK (sheets >= 1),
    v      INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (pass, fault)
) STRICT;

CREATE TABLE pass_held_out (
    id     INTEGER PRIMARY KEY AUTOINCREMENT,
    pass   INTEGER NOT NULL REFERENCES pass (id) ON DELETE RESTRICT,
    kind   TEXT    NOT NULL REFERENCES numbering_kind (word) ON DELETE RESTRICT,
    sheets INTEGER NOT NULL CHECK (sheets >= 1),
    v      INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (pass, kind)
) STRICT;

-- Which sheets went through a pass that not all went through.
CREATE TABLE pass_sheet (
    id         INTEGER PRIMARY KEY AUTOINCREMENT,
    pass       INTEGER NOT NULL REFERENCES pass (id) ON DELETE RESTRICT,
    impression INTEGER NOT NULL REFERENCES impression (id) ON DELETE RESTRICT,
    v          INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (pass, impression)
) STRICT;

ALTER TABLE impression ADD COLUMN after_pass INTEGER REFERENCES pass (id) ON DELETE RESTRICT;
ALTER TABLE impression ADD COLUMN variant TEXT;
ALTER TABLE impression ADD COLUMN dedication TEXT;

-- How a sheet looks beside the guide sheet or the B.A.T.: 1 poor to 5 as good as it gets, null where nobody looked.
CREATE TABLE grade (
    id              INTEGER PRIMARY KEY AUTOINCREMENT,
    impression      INTEGER NOT NULL UNIQUE REFERENCES impression (id) ON DELETE RESTRICT,
    registration    INTEGER CHECK (registration BETWEEN 1 AND 5),
    inking          INTEGER CHECK (inking BETWEEN 1 AND 5),
    edges           INTEGER CHECK (edges BETWEEN 1 AND 5),
    cleanness       INTEGER CHECK (cleanness BETWEEN 1 AND 5),
    likeness        INTEGER CHECK (likeness BETWEEN 1 AND 5),
    against         TEXT    NOT NULL CHECK (against IN ('guide-sheet', 'bon-a-tirer', 'unknown')),
    graded          TEXT,
    graded_earliest TEXT,
    graded_latest   TEXT,
    note            TEXT,
    v               INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT
) STRICT;

-- What one sheet is to another: a ghost pulled after it, or its replacement.
CREATE TABLE sheet_link (
    id            INTEGER PRIMARY KEY AUTOINCREMENT,
    impression    INTEGER NOT NULL REFERENCES impression (id) ON DELETE RESTRICT,
    kind          TEXT    NOT NULL CHECK (kind IN ('ghost-of', 'replaces')),
    other         INTEGER NOT NULL REFERENCES impression (id) ON DELETE RESTRICT,
    made          TEXT,
    made_earliest TEXT,
    made_latest   TEXT,
    note          TEXT,
    v             INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (impression, kind),
    CHECK (impression <> other)
) STRICT;

CREATE INDEX sheet_link_other ON sheet_link (other);

-- A sheet left out, worked over by hand into this work.
ALTER TABLE work ADD COLUMN worked_over INTEGER REFERENCES impression (id) ON DELETE RESTRICT;

-- What was altered on the paper itself; that the record was mistyped is another matter.
CREATE TABLE sheet_change (
    id               INTEGER PRIMARY KEY AUTOINCREMENT,
    impression       INTEGER NOT NULL REFERENCES impression (id) ON DELETE RESTRICT,
    ordinal          INTEGER NOT NULL CHECK (ordinal >= 1),
    what             TEXT    NOT NULL CHECK (what IN ('number', 'title', 'signature', 'inscription', 'other')),
    was              TEXT,
    became           TEXT,
    reason           TEXT,
    changed          TEXT,
    changed_earliest TEXT,
    changed_latest   TEXT,
    v                INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (impression, ordinal)
) STRICT;

-- ---------------------------------------------------------------- editions

ALTER TABLE edition ADD COLUMN printing TEXT CHECK (printing IN ('at-once', 'on-demand'));
ALTER TABLE edition ADD COLUMN rank TEXT CHECK (rank IN ('first', 'later', 'restrike', 'posthumous'));
ALTER TABLE edition ADD COLUMN stated_total INTEGER CHECK (stated_total >= 1);
ALTER TABLE edition ADD COLUMN fell_short TEXT CHECK (fell_short IN ('reset', 'disclosed'));
ALTER TABLE numbering ADD COLUMN name TEXT;

-- Who is to have which numbers, as agreed; whose they are is told by the chain of ownership.
CREATE TABLE entitlement (
    id              INTEGER PRIMARY KEY AUTOINCREMENT,
    numbering       INTEGER NOT NULL REFERENCES numbering (id) ON DELETE RESTRICT,
    first           INTEGER NOT NULL CHECK (first >= 1),
    last            INTEGER NOT NULL CHECK (last >= first),
    person          INTEGER NOT NULL REFERENCES person (id) ON DELETE RESTRICT,
    agreed          TEXT,
    agreed_earliest TEXT,
    agreed_latest   TEXT,
    note            TEXT,
    v               INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (numbering, first)
) STRICT;

-- A work of parts: its own impressions are the copies, each numbered on its colophon.
CREATE TABLE print_set (
    id        INTEGER PRIMARY KEY AUTOINCREMENT,
    work      INTEGER NOT NULL UNIQUE REFERENCES work (id) ON DELETE RESTRICT,
    form      TEXT    NOT NULL CHECK (form IN ('portfolio', 'suite', 'folded-book', 'bound-book', 'exchange')),
    signed_on TEXT    NOT NULL CHECK (signed_on IN ('colophon', 'sheets', 'both', 'unknown')),
    note      TEXT,
    v         INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT
) STRICT;

CREATE TABLE set_part (
    id        INTEGER PRIMARY KEY AUTOINCREMENT,
    print_set INTEGER NOT NULL REFERENCES print_set (id) ON DELETE RESTRICT,
    ordinal   INTEGER NOT NULL CHECK (ordinal >= 1),
    part      INTEGER NOT NULL REFERENCES work (id) ON DELETE RESTRICT,
    v         INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (print_set, ordinal),
    UNIQUE (print_set, part)
) STRICT;

CREATE TABLE set_sheet (
    id       INTEGER PRIMARY KEY AUTOINCREMENT,
    copy     INTEGER NOT NULL REFERENCES impression (id) ON DELETE RESTRICT,
    sheet    INTEGER NOT NULL REFERENCES impression (id) ON DELETE RESTRICT,
    standing TEXT    NOT NULL CHECK (standing IN ('in', 'taken-out')),
    v        INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (copy, sheet),
    CHECK (copy <> sheet)
) STRICT;

CREATE UNIQUE INDEX set_sheet_is_in_one_copy ON set_sheet (sheet) WHERE standing = 'in';

-- ---------------------------------------------------------------- whereabouts, ownership, condition

ALTER TABLE whereabouts ADD COLUMN agreement TEXT;
ALTER TABLE whereabouts ADD COLUMN value INTEGER CHECK (value >= 0);
ALTER TABLE whereabouts ADD COLUMN value_currency TEXT;
ALTER TABLE whereabouts ADD COLUMN show INTEGER REFERENCES show (id) ON DELETE RESTRICT;

CREATE TABLE reservation (
    id             INTEGER PRIMARY KEY AUTOINCREMENT,
    impression     INTEGER NOT NULL REFERENCES impression (id) ON DELETE RESTRICT,
    person         INTEGER REFERENCES person (id) ON DELETE RESTRICT,
    made           TEXT,
    made_earliest  TEXT,
    made_latest    TEXT,
    until          TEXT,
    until_earliest TEXT,
    until_latest   TEXT,
    standing       TEXT    NOT NULL CHECK (standing IN ('standing', 'lifted', 'fulfilled')),
    note           TEXT,
    v              INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT
) STRICT;

CREATE UNIQUE INDEX reservation_standing ON reservation (impression) WHERE standing = 'standing';

-- A picture in the register's images folder, by the SHA-256 of its bytes. It shows a sheet, a matrix, or the edition as a whole.
CREATE TABLE picture (
    id             INTEGER PRIMARY KEY AUTOINCREMENT,
    work           INTEGER NOT NULL REFERENCES work (id) ON DELETE RESTRICT,
    ordinal        INTEGER NOT NULL CHECK (ordinal >= 1),
    impression     INTEGER REFERENCES impression (id) ON DELETE RESTRICT,
    edition        INTEGER REFERENCES edition (id) ON DELETE RESTRICT,
    matrix         INTEGER REFERENCES matrix (id) ON DELETE RESTRICT,
    sha256         TEXT    NOT NULL CHECK (length(sha256) = 64),
    media          TEXT    NOT NULL CHECK (media IN ('image/jpeg', 'image/png', 'image/webp')),
    bytes          INTEGER NOT NULL CHECK (bytes >= 1),
    width          INTEGER NOT NULL CHECK (width >= 1),
    height         INTEGER NOT NULL CHECK (height >= 1),
    file_name      TEXT,
    caption        TEXT,
    credit         TEXT,
    taken          TEXT,
    taken_earliest TEXT,
    taken_latest   TEXT,
    standing       TEXT    NOT NULL CHECK (standing IN ('shown', 'taken-off')),
    v              INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (work, ordinal)
) STRICT;

CREATE TABLE condition_term (
    id   INTEGER PRIMARY KEY AUTOINCREMENT,
    word TEXT    NOT NULL UNIQUE,
    name TEXT    NOT NULL,
    v    INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT
) STRICT;

CREATE TABLE condition_report (
    id                INTEGER PRIMARY KEY AUTOINCREMENT,
    impression        INTEGER NOT NULL REFERENCES impression (id) ON DELETE RESTRICT,
    ordinal           INTEGER NOT NULL CHECK (ordinal >= 1),
    occasion          TEXT    NOT NULL CHECK (occasion IN ('at-rest', 'going-out', 'coming-back')),
    examined          TEXT,
    examined_earliest TEXT,
    examined_latest   TEXT,
    examiner          INTEGER REFERENCES person (id) ON DELETE RESTRICT,
    summary           TEXT,
    v                 INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (impression, ordinal)
) STRICT;

CREATE TABLE condition_remark (
    id       INTEGER PRIMARY KEY AUTOINCREMENT,
    report   INTEGER NOT NULL REFERENCES condition_report (id) ON DELETE RESTRICT,
    ordinal  INTEGER NOT NULL CHECK (ordinal >= 1),
    term     TEXT    NOT NULL REFERENCES condition_term (word) ON DELETE RESTRICT,
    position TEXT,
    note     TEXT,
    picture  INTEGER REFERENCES picture (id) ON DELETE RESTRICT,
    v        INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (report, ordinal)
) STRICT;

-- What was looked for in a place on a day, and what was found there.
CREATE TABLE stock_take (
    id             INTEGER PRIMARY KEY AUTOINCREMENT,
    place          INTEGER NOT NULL REFERENCES place (id) ON DELETE RESTRICT,
    occasion       TEXT    NOT NULL CHECK (occasion IN ('stock-take', 'delivery', 'return')),
    taken          TEXT,
    taken_earliest TEXT,
    taken_latest   TEXT,
    person         INTEGER REFERENCES person (id) ON DELETE RESTRICT,
    note           TEXT,
    v              INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT
) STRICT;

CREATE TABLE stock_take_line (
    id         INTEGER PRIMARY KEY AUTOINCREMENT,
    stock_take INTEGER NOT NULL REFERENCES stock_take (id) ON DELETE RESTRICT,
    ordinal    INTEGER NOT NULL CHECK (ordinal >= 1),
    code       TEXT    NOT NULL,
    impression INTEGER REFERENCES impression (id) ON DELETE RESTRICT,
    matrix     INTEGER REFERENCES matrix (id) ON DELETE RESTRICT,
    outcome    TEXT    NOT NULL CHECK (outcome IN ('present', 'missing', 'stranger', 'not-ours')),
    v          INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (stock_take, ordinal)
) STRICT;

CREATE INDEX stock_take_line_impression ON stock_take_line (impression);
CREATE INDEX stock_take_place ON stock_take (place);
