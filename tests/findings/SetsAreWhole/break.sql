-- The sheet of “Ebb” in copy 1 of “Four Tides” passes to the gallery alone: the copy is a set no longer.
INSERT INTO ownership (id, impression, ordinal, kind, from_state, from_owner, to_state, to_owner, passed, passed_earliest, passed_latest, v)
SELECT (SELECT max(id) FROM ownership) + 1, o.impression, o.ordinal + 1, 'sold', o.to_state, o.to_owner, 'known', (SELECT id FROM person WHERE name = 'Quay Gallery'), '2026-11-10', '2026-11-10', '2026-11-10', (SELECT max(n) FROM logbook)
FROM ownership o JOIN impression i ON i.id = o.impression JOIN print_run r ON r.id = i.run JOIN work w ON w.id = r.work
WHERE w.id IN (SELECT x.part FROM set_part x JOIN print_set s ON s.id = x.print_set JOIN work t ON t.id = s.work WHERE t.title = 'Four Tides')
  AND w.title = 'Ebb' AND i.number = 1 AND i.standing = 'kept' AND i.numbering = (SELECT min(m.id) FROM numbering m JOIN edition e ON e.id = m.edition WHERE e.work = w.id);
