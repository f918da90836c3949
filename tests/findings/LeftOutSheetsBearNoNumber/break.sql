-- A smudged sheet of “Harbour at Low Water”, left out, was pencilled all the same.
UPDATE impression SET pencilled = '12/12' WHERE standing = 'left-out' AND fault = 'smudge';
