#!/bin/sh
# Fuzzes for FUZZ_SECONDS: fuzz.sh TARGET CORPUS, with the words of CORPUS.dict where there are any.  What it
# finds on the way is thrown away, but for the input of a crash, which stays in the folder that it was started
# in.
set -eu

found=$(mktemp -d)
trap 'rm -rf "$found"' EXIT
target=$1 corpus=$2
set --
if [ -f "$corpus.dict" ]; then
  set -- "-dict=$corpus.dict"
fi
"$target" "$@" -max_total_time="${FUZZ_SECONDS:-60}" -timeout=10 -max_len=65536 -print_final_stats=1 \
  "-artifact_prefix=$PWD/" \
  "$found" "$corpus"
