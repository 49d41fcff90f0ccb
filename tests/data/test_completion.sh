#!/bin/bash
# test_completion.sh RIMWRIGHT COMPLETIONS: what bash offers at each place of a command line.
set -u
PATH=$(cd "$(dirname "$1")" && pwd):$PATH
# shellcheck source=/dev/null
source "$2"
failed=0 number=0

# What is offered for the last of some words, one a line, holds a line that is just LINE.
offers () {
  local line=$1
  shift
  COMP_WORDS=(rimwright "$@")
  COMP_CWORD=$#
  _rimwright 2>/dev/null
  number=$((number + 1))
  if printf '%s\n' "${COMPREPLY[@]}" | grep -Fqx -e "$line"; then
    echo "ok $number - $* offers $line"
  else
    echo "not ok $number - $* offers ${COMPREPLY[*]:-nothing}, not $line"
    failed=1
  fi
}

cd "$(mktemp -d)" || exit 1
touch mine.rimwright
echo 1..14
offers list li
offers papers ''
offers mine.rimwright mi
offers --units list --un
offers rim.outer_diameter= list --set rim.out
offers fraction list --units f
offers csv list --format ''
offers mine.rimwright check mi
offers what-if wh
offers 'setup.action[12]' what-if setup.act
offers bridge.height what-if 'setup.action[12]' bridge.h
offers 'Double C' tuning Dou
offers seasons study se
offers --capo tuning 'Double C' --ca
rm -r "$PWD"
exit $failed
