#!/bin/sh
# test_install.sh BUILD: what is installed into an empty folder is all there, and uninstalling takes all of it away.
set -eu
build=$1
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
failed=0

# Says whether a condition holds, as test N named NAME.
report ()
{
  if [ "$1" = 0 ]; then echo "ok $2 - $3"; else echo "not ok $2 - $3"; failed=1; fi
}

count () { find "$folder" -type f | wc -l; }

echo 1..3
DESTDIR=$folder meson install -C "$build" --no-rebuild --quiet >/dev/null
missing=0
for file in 'bin/rimwright' 'org.rimwright.Rimwright.desktop' 'org.rimwright.Rimwright.metainfo.xml' \
  'mime/packages/org.rimwright.Rimwright.xml' 'scalable/apps/org.rimwright.Rimwright.svg' \
  'org.rimwright.Rimwright-symbolic.svg' 'completions/rimwright' 'man1/rimwright.1'
do
  [ -n "$(find "$folder" -type f -path "*$file")" ] || { echo "# $file is not installed"; missing=1; }
done
report $missing 1 'everything is installed'

program=$(find "$folder" -type f -name rimwright -path '*bin*')
status=0
"$program" check >/dev/null || status=$?
report $status 2 'the installed program answers'

ninja -C "$build" uninstall >/dev/null
left=$(count)
[ "$left" = 0 ] || find "$folder" -type f | sed 's/^/# /'
report "$left" 3 'uninstalled, nothing is left'
exit $failed
