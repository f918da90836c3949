-- What people write, as it was read: typed values beside the text as written and never instead of it, null where nobody read it or
-- where it could not be read.

-- ---------------------------------------------------------------- dates: in EDTF, where the text as written is something else

ALTER TABLE work ADD COLUMN year_edtf TEXT;
ALTER TABLE matrix ADD COLUMN made_edtf TEXT;
ALTER TABLE matrix ADD COLUMN fate_edtf TEXT;
ALTER TABLE print_run ADD COLUMN printed_edtf TEXT;
ALTER TABLE print_run ADD COLUMN ready_edtf TEXT;
ALTER TABLE edition ADD COLUMN declared_edtf TEXT;
ALTER TABLE edition ADD COLUMN closed_edtf TEXT;
ALTER TABLE whereabouts ADD COLUMN moved_edtf TEXT;
ALTER TABLE whereabouts ADD COLUMN until_edtf TEXT;
ALTER TABLE ownership ADD COLUMN passed_edtf TEXT;
ALTER TABLE document ADD COLUMN issued_edtf TEXT;
ALTER TABLE show ADD COLUMN opens_edtf TEXT;
ALTER TABLE show ADD COLUMN closes_edtf TEXT;
ALTER TABLE accepted_finding ADD COLUMN accepted_edtf TEXT;
ALTER TABLE matrix_state ADD COLUMN reached_edtf TEXT;
ALTER TABLE pass ADD COLUMN done_edtf TEXT;
ALTER TABLE grade ADD COLUMN graded_edtf TEXT;
ALTER TABLE sheet_link ADD COLUMN made_edtf TEXT;
ALTER TABLE sheet_change ADD COLUMN changed_edtf TEXT;
ALTER TABLE entitlement ADD COLUMN agreed_edtf TEXT;
ALTER TABLE reservation ADD COLUMN made_edtf TEXT;
ALTER TABLE reservation ADD COLUMN until_edtf TEXT;
ALTER TABLE picture ADD COLUMN taken_edtf TEXT;
ALTER TABLE condition_report ADD COLUMN examined_edtf TEXT;
ALTER TABLE stock_take ADD COLUMN taken_edtf TEXT;

-- ---------------------------------------------------------------- sizes as written, beside the micrometres

ALTER TABLE print_run ADD COLUMN image_written TEXT;
ALTER TABLE print_run ADD COLUMN sheet_written TEXT;

-- ---------------------------------------------------------------- papers: hundredths of g/m2 and of pounds, micrometres

ALTER TABLE print_run ADD COLUMN paper_name TEXT;
ALTER TABLE print_run ADD COLUMN paper_maker TEXT;
ALTER TABLE print_run ADD COLUMN paper_grammage INTEGER CHECK (paper_grammage >= 1);
ALTER TABLE print_run ADD COLUMN paper_pounds INTEGER CHECK (paper_pounds >= 1);
ALTER TABLE print_run ADD COLUMN paper_basis_height INTEGER CHECK (paper_basis_height >= 1);
ALTER TABLE print_run ADD COLUMN paper_basis_width INTEGER CHECK (paper_basis_width >= 1);
ALTER TABLE print_run ADD COLUMN paper_height INTEGER CHECK (paper_height >= 1);
ALTER TABLE print_run ADD COLUMN paper_width INTEGER CHECK (paper_width >= 1);
ALTER TABLE print_run ADD COLUMN paper_edges TEXT;
ALTER TABLE print_run ADD COLUMN paper_lot TEXT;

-- ---------------------------------------------------------------- techniques

-- The id of the Getty Art & Architecture Thesaurus, where it is verified.
CREATE TABLE technique (
    id   INTEGER PRIMARY KEY AUTOINCREMENT,
    word TEXT    NOT NULL UNIQUE,
    name TEXT    NOT NULL,
    aat  TEXT,
    v    INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT
) STRICT;

CREATE TABLE work_technique (
    id        INTEGER PRIMARY KEY AUTOINCREMENT,
    work      INTEGER NOT NULL REFERENCES work (id) ON DELETE RESTRICT,
    ordinal   INTEGER NOT NULL CHECK (ordinal >= 1),
    technique TEXT    NOT NULL REFERENCES technique (word) ON DELETE RESTRICT,
    v         INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT,
    UNIQUE (work, technique)
) STRICT;

ALTER TABLE work ADD COLUMN technique_colours INTEGER CHECK (technique_colours >= 1);
ALTER TABLE work ADD COLUMN technique_support TEXT;

-- ---------------------------------------------------------------- pencilled numbers, inscriptions, edition statements

ALTER TABLE impression ADD COLUMN pencil_kind TEXT CHECK (pencil_kind IN ('numbered', 'proof', 'state', 'size', 'open', 'declined'));
ALTER TABLE impression ADD COLUMN pencil_series TEXT;
ALTER TABLE impression ADD COLUMN pencil_number INTEGER CHECK (pencil_number >= 1);
ALTER TABLE impression ADD COLUMN pencil_size INTEGER CHECK (pencil_size >= 1);
ALTER TABLE impression ADD COLUMN pencil_hedge TEXT CHECK (pencil_hedge IN ('at-least', 'at-most', 'about'));
ALTER TABLE impression ADD COLUMN pencil_notation TEXT CHECK (pencil_notation IN ('arabic', 'roman', 'letters'));
ALTER TABLE impression ADD COLUMN pencil_state INTEGER CHECK (pencil_state >= 1);
ALTER TABLE impression ADD COLUMN pencil_state_of INTEGER CHECK (pencil_state_of >= 1);

ALTER TABLE inscription ADD COLUMN says_kind TEXT CHECK (says_kind IN ('numbered', 'proof', 'state', 'size', 'open', 'declined'));
ALTER TABLE inscription ADD COLUMN says_series TEXT;
ALTER TABLE inscription ADD COLUMN says_number INTEGER CHECK (says_number >= 1);
ALTER TABLE inscription ADD COLUMN says_size INTEGER CHECK (says_size >= 1);
ALTER TABLE inscription ADD COLUMN says_hedge TEXT CHECK (says_hedge IN ('at-least', 'at-most', 'about'));
ALTER TABLE inscription ADD COLUMN says_notation TEXT CHECK (says_notation IN ('arabic', 'roman', 'letters'));
ALTER TABLE inscription ADD COLUMN says_state INTEGER CHECK (says_state >= 1);
ALTER TABLE inscription ADD COLUMN says_state_of INTEGER CHECK (says_state_of >= 1);

-- Who drew, engraved or printed, as the lettering says.
CREATE TABLE inscription_role (
    id          INTEGER PRIMARY KEY AUTOINCREMENT,
    inscription INTEGER NOT NULL REFERENCES inscription (id) ON DELETE RESTRICT,
    ordinal     INTEGER NOT NULL CHECK (ordinal >= 1),
    role        TEXT    NOT NULL,
    name        TEXT,
    v           INTEGER NOT NULL REFERENCES logbook (n) ON DELETE RESTRICT
) STRICT;

CREATE INDEX inscription_role_inscription ON inscription_role (inscription);

-- An edition in somebody's words, and a size that somebody was not sure of: at least, at most or about so many.
ALTER TABLE edition ADD COLUMN statement TEXT;
ALTER TABLE numbering ADD COLUMN hedge TEXT CHECK (hedge IN ('at-least', 'at-most', 'about'));
ALTER TABLE numbering ADD COLUMN hedged_size INTEGER CHECK (hedged_size >= 1);
