#!/usr/bin/env bash
# The process itself: streams that close, signals, exit codes. Run from <build>/tests by ctest.
set -uo pipefail
program=$PWD/../streetwright
export LC_ALL=C.UTF-8
bad=0
expect() { # WHAT WANTED GOT
  [[ $2 == "$3" ]] && return
  echo "$1: wanted '$2', got '$3'"
  bad=1
}
[[ -x $program ]] || { echo "no program at $program: build all before testing"; exit 1; }

"$program" version >/dev/null
expect "good" 0 $?
"$program" chek 2>/dev/null
expect "bad usage" 2 $?

# A reader that goes away is no fault, and nothing is said about it.
said=$({ "$program" fields --markdown; echo "code $?" >&2; } 2>&1 >/dev/null | head -c 200)
expect "all read" "code 0" "$said"
said=$({ { "$program" fields --markdown; echo "code $?" >&3; } | true; } 3>&1 2>&1)
expect "reader gone" "code 0" "$said"

# Output that cannot be written is told.
said=$("$program" version 2>&1 >&-)
expect "closed output" 2 $?
[[ $said == "streetwright: cannot write the output: "* ]] || { echo "closed output said: $said"; bad=1; }
if [[ -w /dev/full ]]; then
  "$program" version >/dev/full 2>/dev/null
  expect "full disk" 2 $?
fi

# Piped, there is no colour and no progress line.
[[ $("$program" help) != *$'\x1b'* ]] || { echo "colour in a pipe"; bad=1; }
exit $bad
