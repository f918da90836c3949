-- The second sheet of “Tide Table” is said to be the ghost of the first, pulled two days before it was printed.
INSERT INTO sheet_link (impression, kind, other, made, made_earliest, made_latest, v)
SELECT ghost.id, 'ghost-of', print.id, '2026-03-30', '2026-03-30', '2026-03-30', (SELECT max(n) FROM logbook)
FROM work w JOIN print_run r ON r.work = w.id JOIN impression print ON print.run = r.id AND print.ordinal = 1 JOIN impression ghost ON ghost.run = r.id AND ghost.ordinal = 2
WHERE w.title = 'Tide Table';
