-- A second run from the block of “Harbour at Low Water”, months after it was cut away.
INSERT INTO print_run (id, work, ordinal, purpose, paper, printed, printed_earliest, printed_latest, started, spoiled, unused, held_out, v)
VALUES (900, 1, 2, 'restrike', 'Japanese kozo, 70 g/m²', '2026-07-04', '2026-07-04', '2026-07-04', 0, 0, 0, 0, (SELECT max(n) FROM logbook));
