-- What one entry had sealed is gone, and no entry says that it was erased.
DELETE FROM sealed WHERE n = 2;
