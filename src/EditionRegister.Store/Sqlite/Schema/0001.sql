-- The register as it was first made. The logbook is the register; every other table is its index
-- and can be folded anew from it. Dates are kept as written, with their earliest and latest day beside
-- them (ISO 8601, null where unbounded). Lengths are micrometres, money is minor units with its currency.

-- ---------------------------------------------------------------- the logbook

CREATE TABLE logbook (
    n     INTEGER PRIMARY KEY CHECK (n >= 1),
    at    TEXT    NOT NULL,
    root  TEXT    NOT NULL,
    batch INTEGER,
    deed  TEXT    NOT NULL,
    body  BLOB    NOT NULL,
    leaf  BLOB    NOT NULL CHECK (length(leaf) = 32),
    head  BLOB    NOT NULL CHECK (length(head) = 32)
) STRICT;

CREATE INDEX logbook_root ON logbook (root, n);

-- The only store from which anything may ever be deleted: what a sealed fact said, and the salt of its commitment.
CREATE TABLE sealed (
    n    INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    i    INTEGER NOT NULL CHECK (i >= 0),
    salt BLOB    NOT NULL CHECK (length(salt) = 32),
    body BLOB    NOT NULL,
    PRIMARY KEY (n, i)
) STRICT, WITHOUT ROWID;

-- The roots of the complete subtrees of the logbook's hash tree (RFC 6962), so that an append costs O(log n).
CREATE TABLE frontier (
    level INTEGER PRIMARY KEY CHECK (level >= 0),
    hash  BLOB    NOT NULL CHECK (length(hash) = 32)
) STRICT;

-- ---------------------------------------------------------------- the register and its growing lists

CREATE TABLE register (
    id     INTEGER PRIMARY KEY CHECK (id = 1),
    uid    TEXT    NOT NULL,
    schema INTEGER NOT NULL CHECK (schema >= 1),
    demo   TEXT    NOT NULL CHECK (demo IN ('yes', 'no')),
    v      INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT
) STRICT;

-- AUTOINCREMENT: the id of a row that was undone is never given to another, so that an entry of the logbook names one thing for ever.
CREATE TABLE numbering_kind (
    id       INTEGER PRIMARY KEY AUTOINCREMENT,
    word     TEXT    NOT NULL UNIQUE,
    mark     TEXT    NOT NULL,
    name     TEXT    NOT NULL,
    in_size  TEXT    NOT NULL CHECK (in_size  IN ('yes', 'no')),
    in_total TEXT    NOT NULL CHECK (in_total IN ('yes', 'no')),
    for_sale TEXT    NOT NULL CHECK (for_sale IN ('yes', 'no')),
    v        INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT
) STRICT;

CREATE TABLE role (
    id   INTEGER PRIMARY KEY AUTOINCREMENT,
    word TEXT    NOT NULL UNIQUE,
    name TEXT    NOT NULL,
    v    INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT
) STRICT;

CREATE TABLE fault (
    id   INTEGER PRIMARY KEY AUTOINCREMENT,
    word TEXT    NOT NULL UNIQUE,
    name TEXT    NOT NULL,
    v    INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT
) STRICT;

CREATE TABLE move_kind (
    id     INTEGER PRIMARY KEY AUTOINCREMENT,
    word   TEXT    NOT NULL UNIQUE,
    name   TEXT    NOT NULL,
    chain  TEXT    NOT NULL CHECK (chain IN ('whereabouts', 'ownership')),
    leaves TEXT    NOT NULL CHECK (leaves IN ('yes', 'no')),
    v      INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT
) STRICT;

-- ---------------------------------------------------------------- people and places

CREATE TABLE person (
    id             INTEGER PRIMARY KEY AUTOINCREMENT,
    what           TEXT    NOT NULL CHECK (what IN ('person', 'organisation')),
    name           TEXT,
    sort_name      TEXT,
    protected      TEXT    NOT NULL CHECK (protected IN ('yes', 'no')),
    public_name    TEXT    NOT NULL CHECK (public_name IN ('full', 'given', 'given-and-initial', 'initials', 'class-code', 'unnamed', 'wording')),
    public_wording TEXT,
    class_code     TEXT,
    contact        TEXT,
    note           TEXT,
    erased         TEXT    NOT NULL CHECK (erased IN ('yes', 'no')),
    search         TEXT,
    v              INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    CHECK (erased = 'yes' OR name IS NOT NULL)
) STRICT;

CREATE TABLE place (
    id      INTEGER PRIMARY KEY AUTOINCREMENT,
    name    TEXT,
    inside  INTEGER REFERENCES place (id) ON DELETE RESTRICT,
    keeper  INTEGER REFERENCES person (id) ON DELETE RESTRICT,
    note    TEXT,
    search  TEXT,
    v       INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    CHECK (inside IS NULL OR inside <> id)
) STRICT;

-- ---------------------------------------------------------------- works, matrices, print runs

CREATE TABLE work (
    id            INTEGER PRIMARY KEY AUTOINCREMENT,
    title         TEXT,
    title_state   TEXT    NOT NULL CHECK (title_state IN ('given', 'untitled', 'unknown')),
    maker_state   TEXT    NOT NULL CHECK (maker_state IN ('named', 'unknown')),
    year          TEXT,
    year_earliest TEXT,
    year_latest   TEXT,
    technique     TEXT,
    note          TEXT,
    search        TEXT,
    v             INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    CHECK (title_state = 'given' OR title IS NULL)
) STRICT;

CREATE TABLE work_role (
    id      INTEGER PRIMARY KEY AUTOINCREMENT,
    work    INTEGER NOT NULL REFERENCES work (id) ON DELETE RESTRICT,
    person  INTEGER NOT NULL REFERENCES person (id) ON DELETE RESTRICT,
    role    TEXT    NOT NULL REFERENCES role (word) ON DELETE RESTRICT,
    ordinal INTEGER NOT NULL CHECK (ordinal >= 1),
    v       INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (work, role, person)
) STRICT;

CREATE INDEX work_role_person ON work_role (person);

CREATE TABLE matrix (
    id            INTEGER PRIMARY KEY AUTOINCREMENT,
    work          INTEGER NOT NULL REFERENCES work (id) ON DELETE RESTRICT,
    what          TEXT    NOT NULL CHECK (what IN ('block', 'plate', 'stone', 'screen', 'stencil', 'other')),
    material      TEXT,
    reduction     TEXT    NOT NULL CHECK (reduction IN ('yes', 'no', 'unknown')),
    made          TEXT,
    made_earliest TEXT,
    made_latest   TEXT,
    fate          TEXT    NOT NULL CHECK (fate IN ('undecided', 'cut-away-in-printing', 'cancelled', 'kept-uncancelled', 'regrained-or-reclaimed', 'cut-up', 'lost', 'given-away', 'unknown')),
    fate_date     TEXT,
    fate_earliest TEXT,
    fate_latest   TEXT,
    fate_note     TEXT,
    v             INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT
) STRICT;

CREATE INDEX matrix_work ON matrix (work);

CREATE TABLE print_run (
    id               INTEGER PRIMARY KEY AUTOINCREMENT,
    work             INTEGER NOT NULL REFERENCES work (id) ON DELETE RESTRICT,
    ordinal          INTEGER NOT NULL CHECK (ordinal >= 1),
    purpose          TEXT    NOT NULL CHECK (purpose IN ('edition', 'proofing', 'restrike', 'unknown')),
    paper            TEXT,
    state            TEXT,
    printed          TEXT,
    printed_earliest TEXT,
    printed_latest   TEXT,
    started          INTEGER CHECK (started >= 0),
    spoiled          INTEGER CHECK (spoiled >= 0),
    unused           INTEGER CHECK (unused >= 0),
    held_out         INTEGER CHECK (held_out >= 0),
    image_height     INTEGER CHECK (image_height > 0),
    image_width      INTEGER CHECK (image_width > 0),
    sheet_height     INTEGER CHECK (sheet_height > 0),
    sheet_width      INTEGER CHECK (sheet_width > 0),
    note             TEXT,
    v                INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (work, ordinal)
) STRICT;

-- ---------------------------------------------------------------- editions and their numbers

CREATE TABLE edition (
    id                INTEGER PRIMARY KEY AUTOINCREMENT,
    work              INTEGER NOT NULL REFERENCES work (id) ON DELETE RESTRICT,
    ordinal           INTEGER NOT NULL CHECK (ordinal >= 1),
    kind              TEXT    NOT NULL CHECK (kind IN ('limited', 'open', 'varied', 'unique', 'unknown')),
    extent            TEXT    NOT NULL CHECK (extent IN ('whole', 'partly-known', 'someone-elses')),
    intended          INTEGER CHECK (intended >= 1),
    declared          TEXT,
    declared_earliest TEXT,
    declared_latest   TEXT,
    closed            TEXT    NOT NULL CHECK (closed IN ('yes', 'no', 'unknown')),
    closed_on         TEXT,
    closed_earliest   TEXT,
    closed_latest     TEXT,
    note              TEXT,
    v                 INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (work, ordinal)
) STRICT;

CREATE TABLE numbering (
    id         INTEGER PRIMARY KEY AUTOINCREMENT,
    edition    INTEGER NOT NULL REFERENCES edition (id) ON DELETE RESTRICT,
    ordinal    INTEGER NOT NULL CHECK (ordinal >= 1),
    kind       TEXT    NOT NULL REFERENCES numbering_kind (word) ON DELETE RESTRICT,
    notation   TEXT    NOT NULL CHECK (notation IN ('arabic', 'roman', 'letters', 'none')),
    size       INTEGER CHECK (size >= 1),
    size_state TEXT    NOT NULL CHECK (size_state IN ('stated', 'open', 'unknown')),
    v          INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (edition, ordinal),
    CHECK ((size IS NOT NULL) = (size_state = 'stated'))
) STRICT;

CREATE TABLE number (
    id        INTEGER PRIMARY KEY AUTOINCREMENT,
    numbering INTEGER NOT NULL REFERENCES numbering (id) ON DELETE RESTRICT,
    ordinal   INTEGER NOT NULL CHECK (ordinal >= 1),
    fate      TEXT    NOT NULL CHECK (fate IN ('open', 'never-printed', 'void', 'elsewhere', 'unknown')),
    note      TEXT,
    v         INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (numbering, ordinal)
) STRICT;

-- ---------------------------------------------------------------- impressions

-- Every code ever given, with the sheet it was given to; it outlives the sheet's row.
CREATE TABLE code (
    id    INTEGER PRIMARY KEY AUTOINCREMENT,
    code  TEXT    NOT NULL UNIQUE CHECK (length(code) = 8),
    sheet INTEGER NOT NULL,
    v     INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (code, sheet)
) STRICT;

CREATE TABLE impression (
    id             INTEGER PRIMARY KEY AUTOINCREMENT,
    run            INTEGER NOT NULL REFERENCES print_run (id) ON DELETE RESTRICT,
    ordinal        INTEGER NOT NULL CHECK (ordinal >= 1),
    code           TEXT    NOT NULL UNIQUE,
    standing       TEXT    NOT NULL CHECK (standing IN ('pulled', 'kept', 'spare', 'left-out', 'held-out')),
    fault          TEXT    REFERENCES fault (word) ON DELETE RESTRICT,
    fault_note     TEXT,
    numbering      INTEGER REFERENCES numbering (id) ON DELETE RESTRICT,
    number         INTEGER,
    pencilled      TEXT,
    titled         TEXT,
    signed         TEXT    NOT NULL CHECK (signed IN ('yes', 'no', 'unknown')),
    signature      TEXT,
    condition      TEXT,
    for_sale       TEXT    NOT NULL CHECK (for_sale IN ('by-custom', 'yes', 'no', 'unknown')),
    asking         INTEGER CHECK (asking >= 0),
    asking_currency TEXT,
    note           TEXT,
    v              INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (run, ordinal),
    FOREIGN KEY (code, id) REFERENCES code (code, sheet) ON DELETE RESTRICT,
    FOREIGN KEY (numbering, number) REFERENCES number (numbering, ordinal) ON DELETE RESTRICT,
    CHECK (number IS NULL OR numbering IS NOT NULL),
    CHECK ((asking IS NULL) = (asking_currency IS NULL))
) STRICT;

CREATE UNIQUE INDEX impression_number ON impression (numbering, number) WHERE number IS NOT NULL;
CREATE INDEX impression_numbering ON impression (numbering) WHERE numbering IS NOT NULL;

CREATE TABLE inscription (
    id         INTEGER PRIMARY KEY AUTOINCREMENT,
    impression INTEGER NOT NULL REFERENCES impression (id) ON DELETE RESTRICT,
    ordinal    INTEGER NOT NULL CHECK (ordinal >= 1),
    side       TEXT    NOT NULL CHECK (side IN ('front', 'back', 'unknown')),
    manner     TEXT    NOT NULL CHECK (manner IN ('written', 'stamped', 'embossed', 'unknown')),
    position   TEXT,
    text       TEXT,
    v          INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (impression, ordinal)
) STRICT;

-- ---------------------------------------------------------------- two chains: where a sheet is, and whose

-- A link says where the sheet went from and to. The foreign key to the link before makes a break impossible:
-- from here = to there.
CREATE TABLE whereabouts (
    id          INTEGER PRIMARY KEY AUTOINCREMENT,
    impression  INTEGER NOT NULL REFERENCES impression (id) ON DELETE RESTRICT,
    ordinal     INTEGER NOT NULL CHECK (ordinal >= 1),
    kind        TEXT    NOT NULL REFERENCES move_kind (word) ON DELETE RESTRICT,
    from_state  TEXT    CHECK (from_state IN ('placed', 'with', 'unknown', 'gone')),
    from_place  INTEGER,
    from_holder INTEGER,
    to_state    TEXT    NOT NULL CHECK (to_state IN ('placed', 'with', 'unknown', 'gone')),
    to_place    INTEGER REFERENCES place (id) ON DELETE RESTRICT,
    to_holder   INTEGER REFERENCES person (id) ON DELETE RESTRICT,
    moved          TEXT,
    moved_earliest TEXT,
    moved_latest   TEXT,
    until          TEXT,
    until_earliest TEXT,
    until_latest   TEXT,
    rate           INTEGER CHECK (rate BETWEEN 0 AND 10000),
    note        TEXT,
    v           INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    link_before INTEGER GENERATED ALWAYS AS (CASE WHEN ordinal > 1 THEN ordinal - 1 END) STORED,
    went_from   TEXT GENERATED ALWAYS AS (coalesce(from_state, '') || ':' || coalesce(from_place, '') || ':' || coalesce(from_holder, '')) STORED,
    went_to     TEXT GENERATED ALWAYS AS (to_state || ':' || coalesce(to_place, '') || ':' || coalesce(to_holder, '')) STORED,
    UNIQUE (impression, ordinal),
    UNIQUE (impression, ordinal, went_to),
    FOREIGN KEY (impression, link_before, went_from) REFERENCES whereabouts (impression, ordinal, went_to) ON DELETE RESTRICT,
    CHECK ((ordinal = 1) = (from_state IS NULL)),
    CHECK (to_state <> 'placed' OR to_place IS NOT NULL),
    CHECK (to_state <> 'with' OR (to_holder IS NOT NULL AND to_place IS NULL)),
    CHECK (to_state NOT IN ('unknown', 'gone') OR (to_place IS NULL AND to_holder IS NULL))
) STRICT;

CREATE INDEX whereabouts_place ON whereabouts (to_place) WHERE to_place IS NOT NULL;
CREATE INDEX whereabouts_holder ON whereabouts (to_holder) WHERE to_holder IS NOT NULL;

CREATE TABLE ownership (
    id         INTEGER PRIMARY KEY AUTOINCREMENT,
    impression INTEGER NOT NULL REFERENCES impression (id) ON DELETE RESTRICT,
    ordinal    INTEGER NOT NULL CHECK (ordinal >= 1),
    kind       TEXT    NOT NULL REFERENCES move_kind (word) ON DELETE RESTRICT,
    from_state TEXT    CHECK (from_state IN ('known', 'unknown')),
    from_owner INTEGER,
    to_state   TEXT    NOT NULL CHECK (to_state IN ('known', 'unknown')),
    to_owner   INTEGER REFERENCES person (id) ON DELETE RESTRICT,
    agent      INTEGER REFERENCES person (id) ON DELETE RESTRICT,
    passed          TEXT,
    passed_earliest TEXT,
    passed_latest   TEXT,
    price      INTEGER CHECK (price >= 0),
    net        INTEGER CHECK (net >= 0),
    currency   TEXT,
    note       TEXT,
    v          INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    link_before INTEGER GENERATED ALWAYS AS (CASE WHEN ordinal > 1 THEN ordinal - 1 END) STORED,
    went_from  TEXT GENERATED ALWAYS AS (coalesce(from_state, '') || ':' || coalesce(from_owner, '')) STORED,
    went_to    TEXT GENERATED ALWAYS AS (to_state || ':' || coalesce(to_owner, '')) STORED,
    UNIQUE (impression, ordinal),
    UNIQUE (impression, ordinal, went_to),
    FOREIGN KEY (impression, link_before, went_from) REFERENCES ownership (impression, ordinal, went_to) ON DELETE RESTRICT,
    CHECK ((ordinal = 1) = (from_state IS NULL)),
    CHECK ((to_state = 'known') = (to_owner IS NOT NULL)),
    CHECK (currency IS NOT NULL OR (price IS NULL AND net IS NULL)),
    CHECK (currency IS NULL OR price IS NOT NULL OR net IS NOT NULL)
) STRICT;

CREATE INDEX ownership_owner ON ownership (to_owner) WHERE to_owner IS NOT NULL;

-- ---------------------------------------------------------------- documents, batches

CREATE TABLE document (
    id              INTEGER PRIMARY KEY AUTOINCREMENT,
    kind            TEXT    NOT NULL,
    impression      INTEGER NOT NULL REFERENCES impression (id) ON DELETE RESTRICT,
    serial          TEXT    NOT NULL UNIQUE,
    issued          TEXT    NOT NULL,
    issued_earliest TEXT,
    issued_latest   TEXT,
    standing        TEXT    NOT NULL CHECK (standing IN ('valid', 'superseded', 'withdrawn')),
    supersedes      INTEGER REFERENCES document (id) ON DELETE RESTRICT,
    statement       TEXT,
    v               INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT
) STRICT;

CREATE UNIQUE INDEX document_valid_certificate ON document (impression) WHERE kind = 'certificate' AND standing = 'valid';
CREATE INDEX document_impression ON document (impression);

CREATE TABLE batch (
    id        INTEGER PRIMARY KEY AUTOINCREMENT,
    kind      TEXT    NOT NULL CHECK (kind IN ('deed', 'read-in')),
    sha256    TEXT    CHECK (length(sha256) = 64),
    rows      INTEGER CHECK (rows >= 0),
    file_name TEXT,
    undone    TEXT    NOT NULL CHECK (undone IN ('yes', 'no')),
    v         INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT
) STRICT;

CREATE UNIQUE INDEX batch_file ON batch (sha256) WHERE sha256 IS NOT NULL AND undone = 'no';

-- A column of a file read in that the register has no place for: kept with the sheet, as written.
CREATE TABLE kept_column (
    id         INTEGER PRIMARY KEY AUTOINCREMENT,
    impression INTEGER NOT NULL REFERENCES impression (id) ON DELETE RESTRICT,
    batch      INTEGER NOT NULL REFERENCES batch (id) ON DELETE RESTRICT,
    line       INTEGER NOT NULL CHECK (line >= 1),
    header     TEXT,
    value      TEXT,
    v          INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT
) STRICT;

CREATE INDEX kept_column_impression ON kept_column (impression);
