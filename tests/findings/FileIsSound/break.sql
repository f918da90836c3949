-- Two indexes share one page of the file.
PRAGMA writable_schema = ON;
UPDATE sqlite_schema SET rootpage = (SELECT rootpage FROM sqlite_schema WHERE name = 'matrix_work') WHERE name = 'kept_column_impression';
