#!/bin/sh
# Times the survey of a report of SIZE x SIZE pairings, then of two with a workbook, in 256 MB: seconds, seconds of
# processor, kB of memory. Needs target/jawroom.jar and the test classes (mvn package), and GNU time.
#   sh src/bench/survey.sh FOLDER [SIZE]
set -eu
cd "$(dirname "$0")/../.."
folder=$1
size=${2:-1000}
java -cp target/jawroom.jar:target/test-classes org.jawroom.reference.random.BigShop "$size" "$size" "$folder/shop" 1
for clearance in 6 8; do
  java -Xmx512m -jar target/jawroom.jar matrix "$folder/shop" -o "$folder/$clearance" --no-workbook \
    --clearance "${clearance}mm" >/dev/null
done
survey() {
  command time -f '%e s, %U + %S s of processor, %M kB' \
    java -Xmx256m -jar target/jawroom.jar survey "$@" --by machine,limited_by >"$folder/survey"
  head -5 "$folder/survey"
}
survey "$folder/8"
survey "$folder/6" "$folder/8" -o "$folder/survey.xlsx"
