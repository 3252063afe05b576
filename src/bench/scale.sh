#!/bin/sh
# Times the tool on shops of growing size: seconds, seconds of processor, kB of memory, and microseconds a
# pairing. Needs target/jawroom.jar and the test classes (mvn package), and GNU time.
#   sh src/bench/scale.sh FOLDER [SIZE ...]
set -eu
cd "$(dirname "$0")/../.."
folder=$1
shift
test $# -gt 0 || set -- 100 300 1000 3000
mvn -q dependency:build-classpath -Dmdep.outputFile="$folder/classpath" -Dmdep.includeScope=test
for size in "$@"; do
  java -cp "target/classes:target/test-classes:$(cat "$folder/classpath")" \
    org.jawroom.reference.random.BigShop "$size" "$size" "$folder/$size" 1
  command time -o "$folder/took" -f '%e %U %S %M' \
    java -Xmx512m -jar target/jawroom.jar matrix "$folder/$size" -o - --threads 2 >/dev/null 2>&1
  awk -v n="$size" '{
    printf "%5d x %d: %8.1f s, %8.1f s of processor, %7d kB, %6.2f us a pairing\n",
      n, n, $1, $2 + $3, $4, $1 * 1e6 / n / n
  }' "$folder/took"
done
