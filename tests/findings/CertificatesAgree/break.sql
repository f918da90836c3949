-- The title of the work is put otherwise after certificates were issued.
UPDATE work SET title = 'Harbor at Low Tide' WHERE id = 1;
