# Makes a spreadsheet nobody here wrote: dataset, object id and text of museum inscriptions that read as a plain number
# (12/50, 1 up to the size), and of the first twenty prints whose inscription does not.
#   awk -f make-spreadsheet.awk inscriptions.tsv > museum.csv
BEGIN { FS = "\t"; printf "dataset,object id,text\r\n" }
NR == 1 || $1 ~ /^(acm|ima|puam|nmwa)$/ { next }    # CC0 rows only
$3 ~ /^[0-9]+ ?\/ ?[0-9]+$/ {
    split($3, part, "/")
    if (part[1] + 0 >= 1 && part[1] + 0 <= part[2] + 0) print_row()
    next
}
$6 == "yes" && $3 ~ /[A-Za-z][A-Za-z]/ && $3 !~ /^[A-Z.\/]+ ?[0-9IVX\/]*$/ && $3 !~ /^[0-9IVX\/ ]+ ?[A-Z.\/]+$/ && wordy < 20 { wordy++; print_row() }

function print_row() { printf "%s,%s,%s\r\n", quoted($1), quoted($2), quoted($3) }
function quoted(text) { if (text ~ /[",]/) { gsub(/"/, "\"\"", text); text = "\"" text "\"" } return text }
