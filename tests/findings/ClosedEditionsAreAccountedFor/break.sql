-- The edition of “Harbour at Low Water” is closed, but what became of its block is not decided.
UPDATE matrix SET fate = 'undecided', fate_date = NULL, fate_earliest = NULL, fate_latest = NULL WHERE work = 1;
