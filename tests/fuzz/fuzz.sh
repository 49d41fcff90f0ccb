#!/bin/sh
# Fuzzes for FUZZ_SECONDS: fuzz.sh TARGET CORPUS.  What it finds on the way is thrown away, but for the input
# of a crash, which stays in the folder that it was started in.
set -eu

found=$(mktemp -d)
trap 'rm -rf "$found"' EXIT
"$1" -max_total_time="${FUZZ_SECONDS:-60}" -timeout=10 -max_len=65536 -print_final_stats=1 "$found" "$2"
