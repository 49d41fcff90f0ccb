#!/bin/bash
# test_package.sh BUILD WITH-DISPLAY: the Debian package, built by the script BUILD, is installed in a bare system,
# works there with and without a window, and leaves nothing behind when it is removed.
#
# Needs an administrator's rights and the packages of Debian 12; skipped (77) without.
# shellcheck disable=SC2317 # most functions are called through ok
set -u
build=$1 with_display=$2
number=0 failed=0

skip () { echo "1..0 # SKIP $*"; exit 77; }
[ "$(id -u)" = 0 ] || skip 'only an administrator may make a bare system'
for tool in dpkg-buildpackage dh debootstrap chroot; do
  command -v "$tool" >/dev/null || skip "$tool is not installed"
done

folder=$(mktemp -d /tmp/rimwright-package.XXXXXX)
root=$folder/root
clean_up () {
  umount "$root/tmp/.X11-unix" "$root/proc" 2>/dev/null
  rm -rf --one-file-system "$folder"
}
trap clean_up EXIT
trap 'exit 1' INT TERM HUP

# Runs a command and reports on it; what it says is shown only where it fails.
ok () {
  local name=$1 status
  shift
  "$@" >"$folder/log" 2>&1
  status=$?
  number=$((number + 1))
  if [ $status = 0 ]; then
    echo "ok $number - $name"
  else
    sed 's/^/# /' "$folder/log" | tail -n 40
    echo "not ok $number - $name"
    failed=1
  fi
  return $status
}

inside () { chroot "$root" env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin LC_ALL=C.UTF-8 HOME=/root DEBIAN_FRONTEND=noninteractive "$@"; }

bare_system () {
  debootstrap --variant=minbase bookworm "$root" && mount -t proc proc "$root/proc"
}

installed () {
  cp "$folder"/deb/rimwright_*.deb "$root/rimwright.deb" && inside apt-get install -q -y --no-install-recommends /rimwright.deb
}

answers () { [ "$(inside rimwright list --format csv | wc -l)" -gt 100 ]; }
checks () { inside rimwright check; }
writes_papers () { inside rimwright papers --into /papers && ls "$root"/papers/*.pdf; }

# Whatever the package holds is there, and what other programs look for where they look.
in_place () {
  local file
  for file in /usr/bin/rimwright /usr/share/applications/org.rimwright.Rimwright.desktop \
    /usr/share/metainfo/org.rimwright.Rimwright.metainfo.xml /usr/share/mime/packages/org.rimwright.Rimwright.xml \
    /usr/share/icons/hicolor/scalable/apps/org.rimwright.Rimwright.svg \
    /usr/share/bash-completion/completions/rimwright; do
    inside test -s "$file" || { echo "$file is missing"; return 1; }
  done
}

# The window of the bare system on a display of this one.
opens_its_window () {
  mkdir -p "$root/tmp/.X11-unix" && mount --bind /tmp/.X11-unix "$root/tmp/.X11-unix" || return 1
  # shellcheck disable=SC2016
  bash "$with_display" -t 60 bash -c '
    chroot "$1" env -i PATH=/usr/bin:/bin HOME=/root LC_ALL=C.UTF-8 DISPLAY="$DISPLAY" GDK_BACKEND=x11 GSK_RENDERER=cairo \
      RIMWRIGHT_EXIT_AFTER_FIRST_FRAME=1 rimwright' bash "$root" | grep ' ms$'
}

removed () {
  local file left=0
  inside dpkg -L rimwright >"$folder/files"
  inside apt-get purge -q -y rimwright
  while read -r file; do
    if [ -f "$root$file" ]; then
      echo "$file is left behind"
      left=1
    fi
  done <"$folder/files"
  return "$left"
}

echo 1..9
ok 'the package is built' "$build" "$folder/deb" || exit 1
ok 'a bare system is made' bare_system || exit 1
ok 'the package is installed' installed || exit 1
ok 'every file is in its place' in_place
ok 'it lists a build' answers
ok 'it checks a build' checks
ok 'it writes papers' writes_papers
ok 'it opens its window' opens_its_window
ok 'removed, it leaves nothing behind' removed
exit $failed
