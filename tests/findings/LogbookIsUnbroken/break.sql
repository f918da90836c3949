-- An entry is dated back.
UPDATE logbook SET at = '2019-01-01T00:00:00.000Z' WHERE n = 3;
