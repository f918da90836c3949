-- A sheet at the gallery is said to have been lent: nobody wrote down how it was when it went.
UPDATE whereabouts SET kind = 'lent'
WHERE id = (
    SELECT x.id FROM whereabouts x
    WHERE x.kind = 'consigned' AND NOT EXISTS (SELECT 1 FROM whereabouts l WHERE l.impression = x.impression AND l.ordinal > x.ordinal)
    ORDER BY x.id LIMIT 1);
