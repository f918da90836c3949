-- “Gull Rock” is disclosed as a short edition, though each of its numbers was printed.
UPDATE edition SET fell_short = 'disclosed' WHERE work = (SELECT id FROM work WHERE title = 'Gull Rock');
