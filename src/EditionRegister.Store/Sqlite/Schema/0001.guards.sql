-- Guards: what the database itself refuses, whoever asks. `check` compares them with this text; the writer puts them back.

CREATE TRIGGER logbook_has_no_gap BEFORE INSERT ON logbook
WHEN NEW.n <> coalesce((SELECT max(n) FROM logbook), 0) + 1
BEGIN SELECT RAISE(ABORT, 'guard: the logbook has no gap'); END;

CREATE TRIGGER logbook_is_never_changed BEFORE UPDATE ON logbook
BEGIN SELECT RAISE(ABORT, 'guard: the logbook is never changed'); END;

CREATE TRIGGER logbook_is_never_deleted BEFORE DELETE ON logbook
BEGIN SELECT RAISE(ABORT, 'guard: nothing is deleted from the logbook'); END;

CREATE TRIGGER sealed_is_never_changed BEFORE UPDATE ON sealed
BEGIN SELECT RAISE(ABORT, 'guard: a sealed fact is erased or kept, never changed'); END;

CREATE TRIGGER code_is_never_changed BEFORE UPDATE ON code
WHEN NEW.code <> OLD.code OR NEW.sheet <> OLD.sheet
BEGIN SELECT RAISE(ABORT, 'guard: a code belongs to one sheet for ever'); END;

CREATE TRIGGER code_is_never_deleted BEFORE DELETE ON code
BEGIN SELECT RAISE(ABORT, 'guard: a code belongs to one sheet for ever'); END;

-- INSERT OR REPLACE deletes without asking the guard above, unless recursive triggers are on.
CREATE TRIGGER code_is_never_replaced BEFORE INSERT ON code
WHEN EXISTS (SELECT 1 FROM code WHERE code = NEW.code)
BEGIN SELECT RAISE(ABORT, 'guard: a code belongs to one sheet for ever'); END;

CREATE TRIGGER number_is_within_size_when_made BEFORE INSERT ON number
WHEN NEW.ordinal > (SELECT size FROM numbering WHERE id = NEW.numbering)
BEGIN SELECT RAISE(ABORT, 'guard: a number lies within its size'); END;

CREATE TRIGGER number_is_within_size_when_changed BEFORE UPDATE ON number
WHEN NEW.ordinal > (SELECT size FROM numbering WHERE id = NEW.numbering)
BEGIN SELECT RAISE(ABORT, 'guard: a number lies within its size'); END;

-- After the first signing or leaving an edition of ours that is wholly known never grows; an open numbering has no size to exceed.
CREATE TRIGGER number_is_not_added_late BEFORE INSERT ON number
WHEN EXISTS (SELECT 1 FROM numbering m JOIN edition e ON e.id = m.edition
             WHERE m.id = NEW.numbering AND m.size_state = 'stated' AND e.extent = 'whole')
 AND EXISTS (SELECT 1 FROM impression i
             WHERE i.numbering IN (SELECT id FROM numbering WHERE edition = (SELECT edition FROM numbering WHERE id = NEW.numbering))
               AND (i.signed = 'yes'
                    OR EXISTS (SELECT 1 FROM whereabouts w JOIN move_kind k ON k.word = w.kind WHERE w.impression = i.id AND k.leaves = 'yes')
                    OR EXISTS (SELECT 1 FROM ownership o JOIN move_kind k ON k.word = o.kind WHERE o.impression = i.id AND k.leaves = 'yes')))
BEGIN SELECT RAISE(ABORT, 'guard: an edition never grows once a sheet is signed or has left'); END;

CREATE TRIGGER number_keeps_its_place BEFORE UPDATE OF numbering, ordinal ON number
WHEN NEW.numbering <> OLD.numbering OR NEW.ordinal <> OLD.ordinal
BEGIN SELECT RAISE(ABORT, 'guard: a number keeps its place in its numbering'); END;

CREATE TRIGGER numbering_size_is_not_raised_late BEFORE UPDATE OF size ON numbering
WHEN (NEW.size > OLD.size OR (OLD.size IS NOT NULL AND NEW.size IS NULL))
 AND EXISTS (SELECT 1 FROM edition e WHERE e.id = NEW.edition AND e.extent = 'whole')
 AND EXISTS (SELECT 1 FROM impression i
             WHERE i.numbering IN (SELECT id FROM numbering WHERE edition = NEW.edition)
               AND (i.signed = 'yes'
                    OR EXISTS (SELECT 1 FROM whereabouts w JOIN move_kind k ON k.word = w.kind WHERE w.impression = i.id AND k.leaves = 'yes')
                    OR EXISTS (SELECT 1 FROM ownership o JOIN move_kind k ON k.word = o.kind WHERE o.impression = i.id AND k.leaves = 'yes')))
BEGIN SELECT RAISE(ABORT, 'guard: an edition never grows once a sheet is signed or has left'); END;

CREATE TRIGGER impression_number_needs_standing_when_made BEFORE INSERT ON impression
WHEN NEW.number IS NOT NULL
 AND NEW.standing <> 'kept'
 AND NOT (NEW.standing = 'held-out'
          AND (SELECT k.in_size FROM numbering m JOIN numbering_kind k ON k.word = m.kind WHERE m.id = NEW.numbering) = 'no')
BEGIN SELECT RAISE(ABORT, 'guard: only a kept sheet, or one held out as a proof, bears a number'); END;

CREATE TRIGGER impression_number_needs_standing_when_changed BEFORE UPDATE ON impression
WHEN NEW.number IS NOT NULL
 AND NEW.standing <> 'kept'
 AND NOT (NEW.standing = 'held-out'
          AND (SELECT k.in_size FROM numbering m JOIN numbering_kind k ON k.word = m.kind WHERE m.id = NEW.numbering) = 'no')
BEGIN SELECT RAISE(ABORT, 'guard: only a kept sheet, or one held out as a proof, bears a number'); END;

CREATE TRIGGER impression_number_is_to_be_had_when_made BEFORE INSERT ON impression
WHEN NEW.number IS NOT NULL
 AND (SELECT fate FROM number WHERE numbering = NEW.numbering AND ordinal = NEW.number) IN ('never-printed', 'void', 'elsewhere')
BEGIN SELECT RAISE(ABORT, 'guard: that number is void, never printed or elsewhere'); END;

CREATE TRIGGER impression_number_is_to_be_had_when_changed BEFORE UPDATE OF numbering, number ON impression
WHEN NEW.number IS NOT NULL
 AND (SELECT fate FROM number WHERE numbering = NEW.numbering AND ordinal = NEW.number) IN ('never-printed', 'void', 'elsewhere')
BEGIN SELECT RAISE(ABORT, 'guard: that number is void, never printed or elsewhere'); END;
