#!/bin/sh
# SPDX-License-Identifier: Apache-2.0
# SPDX-FileCopyrightText: The Probeleaf authors
# Makes the pictures of the window in this folder: starts the window on the example on a display of its own, works a
# little as a person would, and takes pictures. Needs what ./probeleaf test needs, and xdotool and ImageMagick.
# usage: docs/pictures/make-pictures.sh        (from anywhere; the window must have been built: ./probeleaf window)
set -eu

here=$(CDPATH= cd -- "$(dirname -- "$0")" && pwd)
root=$(CDPATH= cd -- "$here/../.." && pwd)
launch=$root/features/org.probeleaf.feature.workbench/target/probeleaf-workbench/launch
for tool in Xvfb openbox xdotool import; do
  command -v "$tool" >/dev/null || { echo "make-pictures: $tool is missing; install it" >&2; exit 1; }
done
[ -x "$launch" ] || { echo "make-pictures: the window is not built; run ./probeleaf window once" >&2; exit 1; }

temp=$(mktemp -d)
processes=
trap 'kill $processes 2>/dev/null || true; rm -rf "$temp"' EXIT

start_display() {
  : >"$temp/display"
  Xvfb -displayfd 3 -screen 0 1600x1000x24 -nolisten tcp 3>"$temp/display" >/dev/null 2>&1 &
  processes="$processes $!"
  until [ -s "$temp/display" ]; do sleep 0.1; done
  DISPLAY=:$(head -n 1 "$temp/display")
  export DISPLAY
  openbox >/dev/null 2>&1 &
  processes="$processes $!"
}

# start_window DATA [FILE]: a window that fills the screen.
start_window() {
  report=$temp/report.json
  rm -f "$report"
  data=$1
  shift
  PROBELEAF_WINDOW_DATA=$temp/$data PROBELEAF_JAVA_OPTS="-Dprobeleaf.window.report=$report" \
    "$launch" "$@" >"$temp/window.log" 2>&1 &
  window_process=$!
  processes="$processes $window_process"
  window=$(xdotool search --sync --onlyvisible --name Probeleaf | tail -n 1)
  xdotool windowsize --sync "$window" 1580 960 || true
}

# wait_for PATTERN: until the window's report has it.
wait_for() {
  n=0
  until grep -q "$1" "$report" 2>/dev/null; do
    n=$((n + 1))
    [ "$n" -lt 900 ] || { echo "make-pictures: waited in vain for $1" >&2; cat "$temp/window.log" >&2; exit 1; }
    sleep 0.1
  done
}

# A moment for what has no sign of its own: a tile, a tooltip, a caret.
settle() { sleep 2; }

picture() {
  import -window "$window" "$here/$1.png"
  echo "$here/$1.png"
}

# on_screen PAGE X Y: the place of a spot of a page on the screen.
on_screen() {
  tr '{' '\n' <"$report" | sed -n "s/^\"page\":$1,\"x\":\\([-0-9]*\\),\"y\":\\([-0-9]*\\),\"zoom\":\\([0-9.]*\\),.*/\\1 \\2 \\3/p" |
    awk -v x="$2" -v y="$3" '{ printf "%d %d\n", $1 + x * $3, $2 + y * $3 }'
}

click_on() {
  # shellcheck disable=SC2046  # two numbers
  xdotool mousemove $(on_screen "$@")
  sleep 0.3
  xdotool click 1
}

# pin_of PIN: "page x y" of a pin of the example.
pin_of() {
  "$root/probeleaf" trace "$sheet" --from "$1" --json - 2>/dev/null |
    python3 -c 'import json, sys
ref, number = sys.argv[1].split(".")
p = next(p for p in json.load(sys.stdin)["pins"] if p["ref"] == ref and p["number"] == number)
print(p["page"], p["at"][0], p["at"][1])' "$1"
}

# mark KEY TEXT [EXPECTED]
mark() {
  xdotool key "$1"
  wait_for '"typing":true'
  xdotool type "$2"
  if [ $# -gt 2 ]; then xdotool key Tab type "$3"; fi
}

enter() {
  xdotool key Return
  wait_for '"typing":false'
  settle
}

start_display
sheet=$temp/tern-tl8.pdf
cp "$root/examples/tern-tl8/tern-tl8.pdf" "$sheet"

start_window start
settle
picture window-start
kill "$window_process"
while kill -0 "$window_process" 2>/dev/null; do sleep 0.1; done

job=$temp/tern-tl8.probeleaf
"$root/probeleaf" job new "$job" "$sheet" --unit 'Tern TL-8 tide logger, serial 0421' --customer 'Harbour office' \
  --complaint 'Display stays blank after power-on' >/dev/null
start_window work "$job"
wait_for '"recognised":true,"recognising":false'
settle
xdotool mousemove --window "$window" 125 35 click 1
settle
xdotool key f
settle
# shellcheck disable=SC2046  # three numbers each
click_on $(pin_of IC1.21)
wait_for '"focus":true'
settle
mark r '4.9V idle' '5V+-10%' && enter
click_on $(pin_of IC5.9) && settle
mark r '2.2V flat' '5V+-10%' && settle
picture window-reading
enter
click_on $(pin_of IC5.9) && settle
mark t 'Socket of IC5 is loose: reseat, then measure again' && enter
click_on $(pin_of IC3.22) && settle
picture window-trace

# A junction that would be taken away, before the click.
xdotool key Escape
xdotool key shift+d
wait_for '"correcting":"NO_JUNCTION 0"'
# shellcheck disable=SC2046  # two numbers
xdotool mousemove $(on_screen 1 826 446)
# shellcheck disable=SC2046  # two numbers
xdotool mousemove $(on_screen 1 830 450)
wait_for '"trial":"DONE"'
settle
picture window-correct

# Followed through its gates, with suspects for what was read.
xdotool key Escape
settle
# shellcheck disable=SC2046  # three numbers each
click_on $(pin_of IC5.8) && settle
mark r 'bad' && enter
click_on $(pin_of IC1.21) && settle
xdotool key g
xdotool key g
wait_for '"route":[1-9][0-9]'
settle
picture window-suspects
kill "$window_process"
while kill -0 "$window_process" 2>/dev/null; do sleep 0.1; done

# press WORDS: a button, a list or a field by its words.
press() {
  # shellcheck disable=SC2046  # two numbers
  xdotool mousemove $(python3 -c 'import json, sys
print(*json.load(open(sys.argv[1]))["places"][sys.argv[2]])' "$report" "$1")
  sleep 0.3
  xdotool click 1
}

# What is understood of a capture before it is pinned.
cp "$root/examples/tern-tl8/inp-strobe.csv" "$temp/"
start_window work3 "$job"
wait_for '"recognised":true,"recognising":false'
# shellcheck disable=SC2046  # three words
click_on $(pin_of IC5.8)
settle
xdotool key c
wait_for 'It is delimited text'
settle
xdotool key ctrl+a
xdotool type "$temp/inp-strobe.csv"
settle
settle
whole=$window
window=$(xdotool search --onlyvisible --name 'Pin a capture' | tail -n 1)
picture window-capture
window=$whole
kill "$window_process"
while kill -0 "$window_process" 2>/dev/null; do sleep 0.1; done

# Two captures of the strobe of the inputs: judged with cursors on it, then laid on the good one.
"$root/probeleaf" capture "$job" IC5.8 "$root/examples/tern-tl8/inp-strobe-good.csv" --note 'good board' >/dev/null
"$root/probeleaf" capture "$job" IC5.8 "$root/examples/tern-tl8/inp-strobe.csv" --note 'while it reads' >/dev/null
start_window work2 "$job"
wait_for '"recognised":true,"recognising":false'
settle
xdotool mousemove --window "$window" 215 35 click 1
wait_for '"plot":'
settle
press plot
xdotool key ctrl+Left key b key ctrl+Right key ctrl+Right
wait_for '1/\|Hz'
settle
picture window-waveform
press 'compare with nothing'
sleep 1
xdotool key Down Return
wait_for 'Differs from'
press Difference
settle
picture window-compared
kill "$window_process"
while kill -0 "$window_process" 2>/dev/null; do sleep 0.1; done

# Readings of one place over time, with a leg lifted between.
"$root/probeleaf" reading "$job" IC5.8 '1.3V @ cold [scope, 10:1]' --expect 74LS >/dev/null
"$root/probeleaf" change "$job" lift IC9.1 --temporary >/dev/null
"$root/probeleaf" reading "$job" IC5.8 '0.2V @ cold [scope, 10:1]' --expect 74LS >/dev/null
"$root/probeleaf" putback "$job" --all >/dev/null
"$root/probeleaf" reading "$job" IC5.8 '1.4V @ warm [scope, 10:1]' --expect 74LS >/dev/null
start_window work3 "$job"
wait_for '"recognised":true,"recognising":false'
settle
xdotool mousemove --window "$window" 215 35 click 1
wait_for '"plot":'
settle
press Readings
xdotool key Down Return
wait_for '"selected":"N'
settle
picture window-readings
