#!/bin/sh
# test_desk.sh RIMWRIGHT: a drag with the real pointer, undo and save with real keys, on the present display.
# What is checked is the file that the program saves: dragging the bridge to the right moves it towards the
# tail, one press of undo takes the whole drag back.
set -eu
rimwright=$1
folder=$(mktemp -d)
file=$folder/build.rimwright
trap 'kill "$program" 2>/dev/null; rm -rf "$folder"' EXIT
"$rimwright" example >"$file"

saved () { sed -n 's/.*"bridge.offset": \([-0-9.]*\).*/\1/p' "$file"; }

# Presses keys until the file holds what the test named $1 accepts.
until_saved ()
{
  tries=0
  until xdotool key ctrl+s; sleep 0.5; "$1" "$(saved)"
  do
    tries=$((tries + 1))
    [ "$tries" -lt 20 ] || { echo "not ok - $1: the file says $(saved)"; exit 1; }
  done
  echo "ok - $1: $(saved)"
}

moved_to_the_tail () { awk -v x="$1" 'BEGIN { exit !(x > 55 && x < 90) }'; }
as_it_was () { [ "$1" = 54 ]; }

"$rimwright" "$file" 2>"$folder/errors" &
program=$!
xdotool search --sync --onlyvisible --pid "$program" >/dev/null
sleep 3

# The bridge's end on the treble side, where its grip is, in a window of the size it opens with.
xdotool mousemove 1101 214
sleep 0.5
xdotool mousedown 1
for step in 1 2 3 4 5 6 7 8
do
  xdotool mousemove $((1101 + step)) 214
  sleep 0.05
done
xdotool mouseup 1
sleep 0.5
until_saved moved_to_the_tail
xdotool key ctrl+z
sleep 0.5
until_saved as_it_was
[ ! -s "$folder/errors" ] || { cat "$folder/errors"; exit 1; }
