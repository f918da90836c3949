-- “Gull Rock” has lost the row of its fifth number.
DELETE FROM number
WHERE ordinal = 5 AND numbering = (SELECT m.id FROM numbering m JOIN edition e ON e.id = m.edition WHERE e.work = 2 AND m.kind = 'numbered');
