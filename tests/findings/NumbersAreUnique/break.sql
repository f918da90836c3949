-- Two sheets of “Harbour at Low Water” bear 3/12 in pencil.
UPDATE impression SET pencilled = '3/12'
WHERE number = 4 AND numbering = (SELECT m.id FROM numbering m JOIN edition e ON e.id = m.edition WHERE e.work = 1 AND m.kind = 'numbered');
