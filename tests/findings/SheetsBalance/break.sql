-- Of the 24 sheets of “Harbour at Low Water” only 2 are said to be spoiled: one sheet is nowhere.
UPDATE print_run SET spoiled = 2 WHERE work = 1;
