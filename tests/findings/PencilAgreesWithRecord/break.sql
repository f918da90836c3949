-- The fifth sheet of “Gull Rock” says 5/10; eight were declared.
UPDATE impression SET pencilled = '5/10'
WHERE number = 5 AND numbering = (SELECT m.id FROM numbering m JOIN edition e ON e.id = m.edition WHERE e.work = 2 AND m.kind = 'numbered');
