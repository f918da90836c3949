-- A price changed behind the logbook's back.
UPDATE impression SET asking = 1 WHERE id = (SELECT i.id FROM impression i JOIN print_run r ON r.id = i.run WHERE r.work = 2 AND i.ordinal = 1);
