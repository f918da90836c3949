-- 7/12 of “Harbour at Low Water”, at the gallery, is said to have been lent: nobody wrote down how it was when it went.
UPDATE whereabouts SET kind = 'lent'
WHERE kind = 'consigned' AND impression = (
    SELECT i.id FROM impression i JOIN numbering m ON m.id = i.numbering JOIN edition e ON e.id = m.edition JOIN work w ON w.id = e.work
    WHERE w.title = 'Harbour at Low Water' AND m.kind = 'numbered' AND i.number = 7);
