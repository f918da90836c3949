-- The size of “Gull Rock” is said to be 7, and 8/8 is given.
UPDATE numbering SET size = 7
WHERE kind = 'numbered' AND edition = (SELECT id FROM edition WHERE work = 2);
