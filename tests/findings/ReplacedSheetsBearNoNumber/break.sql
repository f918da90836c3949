-- The fourth sheet of “Tide Table” is said to have taken the place of the third, and both have a number.
INSERT INTO sheet_link (impression, kind, other, v)
SELECT spare.id, 'replaces', old.id, (SELECT max(n) FROM logbook)
FROM work w JOIN print_run r ON r.work = w.id JOIN impression old ON old.run = r.id AND old.ordinal = 3 JOIN impression spare ON spare.run = r.id AND spare.ordinal = 4
WHERE w.title = 'Tide Table';
