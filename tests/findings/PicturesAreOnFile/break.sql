-- A picture on record whose file was never there.
INSERT INTO picture (work, ordinal, impression, sha256, media, bytes, width, height, file_name, standing, v)
SELECT r.work, 1, i.id, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', 'image/jpeg', 1200000, 4000, 3000, 'front.jpg', 'shown', i.v
FROM impression i JOIN print_run r ON r.id = i.run JOIN work w ON w.id = r.work WHERE w.title = 'Harbour at Low Water' AND i.ordinal = 1 AND r.ordinal = 1;
