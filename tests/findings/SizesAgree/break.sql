-- The sheet was measured in inches and in centimetres on two days.
UPDATE print_run SET sheet_written = '12 3/16 x 15 3/8 in. (31 x 36 cm)' WHERE work = (SELECT id FROM work WHERE title = 'Harbour at Low Water') AND ordinal = 1;
