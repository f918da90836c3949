-- The sheet that came back damaged is said to be as it was pulled.
UPDATE impression SET condition = 'as pulled'
WHERE id = (SELECT impression FROM condition_report WHERE occasion = 'coming-back' ORDER BY id LIMIT 1);
