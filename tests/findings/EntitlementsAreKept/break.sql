-- The first four of “Harbour at Low Water” were agreed for the printer, and 3/12 was sold to somebody else.
INSERT INTO entitlement (numbering, first, last, person, v)
SELECT m.id, 1, 4, (SELECT id FROM person WHERE name = 'Joost Averink'), (SELECT max(n) FROM logbook)
FROM numbering m JOIN edition e ON e.id = m.edition JOIN work w ON w.id = e.work
WHERE w.title = 'Harbour at Low Water' AND m.kind = 'numbered';
