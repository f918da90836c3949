-- The fifth sheet of “Gull Rock” says on its back that it is an artist's proof, in French.
INSERT INTO inscription (impression, ordinal, side, manner, text, says_kind, says_series, says_number, says_size, says_notation, v)
SELECT i.id, 1, 'back', 'written', 'Épreuve d''artiste 2/5', 'proof', 'A/P', 2, 5, 'arabic', (SELECT max(n) FROM logbook)
FROM impression i JOIN numbering m ON m.id = i.numbering JOIN edition e ON e.id = m.edition JOIN work w ON w.id = e.work
WHERE w.title = 'Gull Rock' AND m.kind = 'numbered' AND i.number = 5;
