-- A word that is on no list.
UPDATE impression SET signed = 'perhaps' WHERE id = (SELECT i.id FROM impression i JOIN print_run r ON r.id = i.run WHERE r.work = 3 AND i.ordinal = 2);
