-- The newest stock-take of Drawer 2 is said not to have found 1/8 of “Gull Rock”, which is still said to lie there.
UPDATE stock_take_line SET outcome = 'missing'
WHERE impression = (
    SELECT i.id FROM impression i JOIN print_run r ON r.id = i.run JOIN work w ON w.id = r.work
    WHERE w.title = 'Gull Rock' ORDER BY i.ordinal LIMIT 1);
