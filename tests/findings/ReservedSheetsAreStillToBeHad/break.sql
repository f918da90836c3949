-- The sheet of “Neap Tide” that was sold is said to be kept for the friend still.
UPDATE reservation SET standing = 'standing'
WHERE standing = 'lifted' AND impression IN (SELECT impression FROM ownership WHERE kind = 'sold' AND price = 14555);
