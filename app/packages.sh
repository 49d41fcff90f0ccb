# Sees to the Debian packages that a script needs, and to build folders.  Read by app/run and tests/run;
# POSIX sh.
#
#   need_packages [MORE...]      installs what building and showing the program takes, and MORE; or says
#                                what to install and returns 1
#   configure FOLDER [OPTION...] makes FOLDER a build folder unless it is one; options for meson
# shellcheck shell=sh

build_packages='gcc libc6-dev meson ninja-build pkg-config gettext desktop-file-utils libgtk-4-dev libjson-glib-dev'
# What the window needs and the libraries do not bring along.
window_packages='librsvg2-common fonts-dejavu-core'

_missing ()
{
  for package
  do
    case $(dpkg-query -W -f '${Status}' "$package" 2>/dev/null) in
      *' ok installed') ;;
      *) printf ' %s' "$package" ;;
    esac
  done
}

# Becomes root by the given prefix, which may be empty.
_install ()
{
  become=$1
  shift
  $become apt-get update -q
  $become env DEBIAN_FRONTEND=noninteractive apt-get install -q -y --no-install-recommends "$@"
}

need_packages ()
{
  # The lists are words on purpose.
  # shellcheck disable=SC2086
  set -- $build_packages $window_packages "$@"
  if ! command -v dpkg-query >/dev/null 2>&1 || ! command -v apt-get >/dev/null 2>&1
  then
    command -v meson >/dev/null 2>&1 && pkg-config --exists gtk4 json-glib-1.0 && return 0
    echo "This is no Debian system.  Install what corresponds to these packages of Debian 12: $*" >&2
    return 1
  fi

  missing=$(_missing "$@")
  [ -z "$missing" ] && return 0

  if [ "$(id -u)" -eq 0 ]
  then
    become=''
  elif command -v sudo >/dev/null 2>&1 && sudo -n true 2>/dev/null
  then
    become='sudo -n'
  else
    echo "Some packages are missing, and only the administrator can install them.  Please run:" >&2
    echo "  sudo apt-get install --no-install-recommends$missing" >&2
    return 1
  fi
  echo "Installing missing packages:$missing" >&2
  # shellcheck disable=SC2086
  _install "$become" $missing >&2 && return 0
  echo "The packages could not be installed.  Please install by hand:$missing" >&2
  return 1
}

configure ()
{
  folder=$1
  shift
  [ -f "$folder/build.ninja" ] || meson setup "$folder" "$@"
}
