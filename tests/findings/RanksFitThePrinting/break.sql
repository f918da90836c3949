-- The run of “Gull Rock” is said to have been printed after its maker's death, and its edition to be the first.
UPDATE edition SET rank = 'first' WHERE work = (SELECT id FROM work WHERE title = 'Gull Rock');
UPDATE print_run SET posthumous = 'yes' WHERE work = (SELECT id FROM work WHERE title = 'Gull Rock');
