#!/usr/bin/env bash
# Tests of ./run: its words, its outcomes, what it installs. Nothing is built and no package is touched: dpkg-query,
# apt-get, id and sudo are stand-ins in a folder of their own.
set -uo pipefail
here=$(cd "$(dirname "$0")/../.." && pwd)
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
faults=0

# expect WHAT GOT WANTED : WANTED is a pattern
expect() {
  # shellcheck disable=SC2053
  [[ $2 == $3 ]] && return
  printf 'FAILED %s\n  got:    %s\n  wanted: %s\n' "$1" "$2" "$3"
  faults=$((faults + 1))
}

# outcome COMMAND… : its output, then its exit code
outcome() {
  local text code=0
  text=$("$@" 2>&1) || code=$?
  printf '%s\n[%s]' "$text" "$code"
}

stand_in() {
  printf '#!/bin/bash\n%s\n' "$2" >"$scratch/bin/$1"
  chmod +x "$scratch/bin/$1"
}

# with_run COMMANDS : in a shell that has the functions of ./run and the stand-ins, and of the machine only what they use
with_run() {
  PATH="$scratch/bin" outcome /bin/bash -c "source '$here/run'; cd '$scratch'; $1" </dev/null
}

mkdir "$scratch/bin"
for tool in bash env grep mktemp rm cp mkdir dirname diff cat; do ln -s "$(command -v "$tool")" "$scratch/bin/$tool"; done

# Words
expect "help" "$(outcome "$here/run" help)" "usage: ./run COMMAND*fuzz*\[0\]"
expect "no command is help" "$(outcome "$here/run")" "usage: ./run COMMAND*\[0\]"
expect "unknown command" "$(outcome "$here/run" biuld)" "*no command 'biuld'*usage*\[2\]"
expect "validation without data" "$(STREETWRIGHT_DATA='' outcome "$here/run" validate)" "validation skipped: no data folder*\[0\]"
expect "validation of no folder" "$(outcome "$here/run" validate "$scratch/none")" "validation skipped: there is no folder *none?\[0\]"
expect "from another folder, without stdin" "$(cd / && outcome "$here/run" help <&-)" "usage*\[0\]"

# Packages. The stand-in machine has g++ only; cmake was removed but left its settings.
stand_in dpkg-query 'echo "g++ installed"; echo "cmake config-files"; [[ -f '"$scratch"'/all ]] && { echo "cmake installed"; echo "mold installed"; }; exit 1'
stand_in apt-get 'echo "apt-get $*"; [[ $* != *unknown* ]]'
stand_in id 'echo 0'
expect "root installs what is missing" "$(with_run 'need building g++ cmake mold')" \
  "Installing cmake mold by apt: building needs them.*update*install*--no-install-recommends cmake mold?\[0\]"
expect "apt fails" "$(with_run 'need building unknown')" "*could not install: unknown*\[1\]"
touch "$scratch/all"
expect "second time: no apt at all" "$(with_run 'need building g++ cmake mold')" "?\[0\]"
rm "$scratch/all"
stand_in id 'echo 1000'
expect "neither root nor sudo" "$(with_run 'need building g++ cmake mold')" \
  "*neither root nor has sudo*apt-get install --no-install-recommends cmake mold?\[1\]"
stand_in sudo 'echo "sudo"; exec "$@"'
expect "through sudo" "$(with_run 'need building g++ cmake mold')" "*sudo?apt-get*install*cmake mold?\[0\]"
rm "$scratch/bin/dpkg-query"
expect "no Debian" "$(with_run 'need building g++')" "No Debian packages here*g++?\[0\]"

# Demo: a car that fails (1) or is unproven (3) is an answer; a crash or bad input is not.
stand_in program 'echo "proof of $2"; exit ${2#car}'
for code in 0 1 3; do
  expect "proof that ends with $code" "$(with_run "program=program; show car$code")" "*program check car$code?proof of*\[0\]"
done
for code in 2 139; do
  expect "proof that ends with $code" "$(with_run "program=program; show car$code")" "*ended with $code.?\[1\]"
done

# The last line, from a report as ctest writes it
case_of() { printf '\t<testcase name="t" classname="t" time="0" status="%s">\n%s\t</testcase>\n' "$1" "${2:-}"; }
{ case_of run; case_of run; } >"$scratch/good"
{ cat "$scratch/good"; case_of notrun $'\t\t<skipped message="SKIP_REGULAR_EXPRESSION_MATCHED"/>\n'; } >"$scratch/skipped"
{ cat "$scratch/skipped"; case_of disabled; } >"$scratch/disabled"
{ cat "$scratch/skipped"; case_of fail; case_of notrun $'\t\t<skipped message="Unable to find executable"/>\n'; } >"$scratch/bad"
expect "all pass" "$(with_run 'count good 0')" "2 passed, 0 failed?\[0\]"
expect "skipped" "$(with_run 'count skipped 0')" "2 passed, 0 failed, 1 skipped?\[0\]"
expect "disabled" "$(with_run 'count disabled 0')" "2 passed, 0 failed, 2 skipped?\[0\]"
expect "failed, and not there to run" "$(with_run 'count bad 0')" "2 passed, 2 failed, 1 skipped?\[1\]"
expect "stale file" "$(with_run 'count good 1')" "2 passed, 1 failed?\[1\]"
expect "nothing ran" "$(: >"$scratch/none"; with_run 'count none 0')" "0 passed, 0 failed?\[1\]"

# Generated files
stand_in program '[[ $1 == schema ]] || exit 1; echo "schema of ${2:-all}"'
list='generated_files=("docs/a.json | schema" "docs/b.json | schema cooling")'
expect "none listed" "$(with_run 'generated_files=(); check_generated program')" "?\[0\]"
expect "not there" "$(with_run "$list; check_generated program")" "*docs/a.json is stale*docs/b.json is stale*\[2\]"
expect "written" "$(with_run "$list; each_generated program put")" "wrote docs/a.json?wrote docs/b.json?\[0\]"
expect "current" "$(with_run "$list; check_generated program")" "?\[0\]"
expect "with its arguments" "$(cat "$scratch/docs/b.json")" "schema of cooling"
echo edited >>"$scratch/docs/b.json"
expect "stale" "$(with_run "$list; check_generated program")" "*edited*docs/b.json is stale: *./run generate*\[1\]"
expect "program fails" "$(with_run 'generated_files=("docs/a.json | nonsense"); check_generated program')" \
  "*streetwright nonsense*failed?\[1\]"

[[ $faults -eq 0 ]] && echo "all of ./run as it should be"
exit "$faults"
