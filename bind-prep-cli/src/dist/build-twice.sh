#!/bin/sh
# Builds the distribution twice, in two fresh clones of the last commit, and compares every file bit by bit.
# usage: bind-prep-cli/src/dist/build-twice.sh [MAVEN OPTION...]
set -eu
root=$(CDPATH='' cd -- "$(dirname -- "$0")/../../.." && pwd -P)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
for turn in one two; do
    git clone -q "$root" "$work/$turn"
    (cd "$work/$turn" && mvn -q -B -ntp -Pdist -DskipTests -pl bind-prep-cli -am "$@" verify)
    # the modules' jars as well; sums by name, without the folder they were made in
    (cd "$work/$turn" && find . -path '*/target/*' \( -name '*.jar' -o -name '*.zip' -o -name '*.tar.gz' -o -name '*.deb' \
        -o -name '*.cdx.json' -o -name '*.sha256' \) ! -path '*/target/lib/*' ! -path '*/target/runtime/*' -type f -exec sha256sum {} + |
        sort -k2) >"$work/$turn.sums"
    [ -s "$work/$turn.sums" ] || { echo 'nothing was built' >&2; exit 1; }
done
cat "$work/one.sums"
if diff "$work/one.sums" "$work/two.sums"; then
    echo "the same $(wc -l <"$work/one.sums") files twice"
else
    echo 'the two builds differ, see above' >&2
    exit 1
fi
