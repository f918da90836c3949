-- A guard is taken away.
DROP TRIGGER logbook_is_never_deleted;
