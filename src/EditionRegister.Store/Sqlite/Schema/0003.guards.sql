-- Guards of what came with the bench and the whereabouts whole.

CREATE TRIGGER matrix_code_is_never_changed BEFORE UPDATE ON matrix_code
WHEN NEW.code <> OLD.code OR NEW.matrix <> OLD.matrix
BEGIN SELECT RAISE(ABORT, 'guard: a code belongs to one matrix for ever'); END;

CREATE TRIGGER matrix_code_is_never_deleted BEFORE DELETE ON matrix_code
BEGIN SELECT RAISE(ABORT, 'guard: a code belongs to one matrix for ever'); END;

CREATE TRIGGER matrix_code_is_no_sheets BEFORE INSERT ON matrix_code
WHEN EXISTS (SELECT 1 FROM code WHERE code = NEW.code) OR EXISTS (SELECT 1 FROM matrix_code WHERE code = NEW.code)
BEGIN SELECT RAISE(ABORT, 'guard: a code is given once'); END;

CREATE TRIGGER code_is_no_matrixs BEFORE INSERT ON code
WHEN EXISTS (SELECT 1 FROM matrix_code WHERE code = NEW.code)
BEGIN SELECT RAISE(ABORT, 'guard: a code is given once'); END;

-- A pass cannot take in more sheets than the one before gave; where only some sheets went through that one, the arithmetic is the program's.
CREATE TRIGGER pass_takes_no_more_than_was_given_when_made BEFORE INSERT ON pass
WHEN NEW.sheets_in > (SELECT sheets_out FROM pass WHERE run = NEW.run AND ordinal = NEW.ordinal - 1 AND reach = 'all')
BEGIN SELECT RAISE(ABORT, 'guard: a pass takes in no more sheets than the one before gave'); END;

CREATE TRIGGER pass_takes_no_more_than_was_given_when_changed BEFORE UPDATE ON pass
WHEN NEW.sheets_in > (SELECT sheets_out FROM pass WHERE run = NEW.run AND ordinal = NEW.ordinal - 1 AND reach = 'all' AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'guard: a pass takes in no more sheets than the one before gave'); END;
