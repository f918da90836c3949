-- 3/12 of “Harbour at Low Water” is said to have been sold before it was printed.
UPDATE ownership SET passed = '2025-11-02', passed_earliest = '2025-11-02', passed_latest = '2025-11-02' WHERE kind = 'sold' AND price = 18000;
