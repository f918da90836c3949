-- The third pass of “Groynes in Fog” is said to have taken in and given out twelve sheets, where eleven were left at hand.
UPDATE pass SET sheets_in = 12, sheets_out = 12 WHERE ordinal = 3 AND run = (SELECT r.id FROM print_run r JOIN work w ON w.id = r.work WHERE w.title = 'Groynes in Fog' AND r.ordinal = 1);
