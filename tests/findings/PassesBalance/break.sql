-- The second pass of “Groynes in Fog” is said to have spoiled two sheets and given out ten, one fewer than its run counts; the third took in ten too.
UPDATE pass SET sheets_in = 10, sheets_out = 10 WHERE ordinal = 3 AND run = (SELECT r.id FROM print_run r JOIN work w ON w.id = r.work WHERE w.title = 'Groynes in Fog' AND r.ordinal = 1);
UPDATE pass SET spoiled = 2, sheets_out = 10 WHERE ordinal = 2 AND run = (SELECT r.id FROM print_run r JOIN work w ON w.id = r.work WHERE w.title = 'Groynes in Fog' AND r.ordinal = 1);
