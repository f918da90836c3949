-- The key block of “Groynes in Fog” is said to have come to its second state in October, after it was printed in that state.
UPDATE matrix_state SET reached = '2026-10-02', reached_earliest = '2026-10-02', reached_latest = '2026-10-02'
WHERE name = 'II' AND matrix = (SELECT m.id FROM matrix m JOIN work w ON w.id = m.work WHERE w.title = 'Groynes in Fog' AND m.part = 'key');
