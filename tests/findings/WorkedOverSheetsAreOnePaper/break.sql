-- The sheet of “Neap” that was worked over lies on the shelf again by its old code.
DELETE FROM whereabouts WHERE kind = 'worked-over' AND to_state = 'gone'
  AND impression = (SELECT worked_over FROM work WHERE title = 'Neap, at Night');
