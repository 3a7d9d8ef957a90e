#!/bin/sh
# Sets a Debian 12 machine up for Foldwright, from nothing but git and root:
#
#   sh third_party/bootstrap.sh explore   installs, builds, and opens the demo lesson; without a display
#                                         draws it to a file and prints the ledger
#   sh third_party/bootstrap.sh test      installs, builds and passes all tests
#   sh third_party/bootstrap.sh web       installs, and builds the page that opens in any browser: foldwright.html
#   sh third_party/bootstrap.sh package   installs, and makes a Debian package of the program
#
# Only packages that are missing are installed, and only from the machine's own package sources.
# Exit status: 0 done, 2 wrong usage or packages that only root can install, otherwise that of the failing step.
set -eu

here=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd)
cd "$here/.."

say() { printf '\n== %s\n' "$*"; }

usage() {
  echo "usage: sh third_party/bootstrap.sh explore|test|web|package" >&2
  exit 2
}

# Node.js from elsewhere than Debian brings its npm with it.
is_installed() {
  if [ "$1" = npm ] && command -v npm >/dev/null 2>&1; then
    return 0
  fi
  [ "$(dpkg-query -W -f '${db:Status-Status}' "$1" 2>/dev/null || true)" = installed ]
}

# The packages of packages.txt marked with any of the given words that are not there yet.
missing_packages() {
  while read -r mark package _; do
    for wanted in "$@"; do
      if [ "$mark" = "$wanted" ] && ! is_installed "$package"; then
        printf '%s ' "$package"
      fi
    done
  done <"$here/packages.txt"
}

install_packages() {
  if ! command -v apt-get >/dev/null 2>&1 || ! command -v dpkg-query >/dev/null 2>&1; then
    echo "bootstrap: this script knows Debian 12 alone; third_party/packages.txt lists what to install elsewhere" >&2
    exit 2
  fi
  missing=$(missing_packages "$@")
  if [ -z "$missing" ]; then
    return 0
  fi
  if [ "$(id -u)" -ne 0 ]; then
    echo "bootstrap: some packages are missing, and only root can install them. As root, run:" >&2
    echo "  apt-get update && apt-get install --yes --no-install-recommends $missing" >&2
    exit 2
  fi
  say "installing: $missing"
  export DEBIAN_FRONTEND=noninteractive
  apt-get update
  # shellcheck disable=SC2086  # one word a package
  apt-get install --yes --no-install-recommends $missing
}

build_release() {
  say "building the program (build/release)"
  cmake --preset release >build/release-configure.log 2>&1 || { cat build/release-configure.log >&2; return 1; }
  cmake --build --preset release
}

first_problem() {
  sed -n 's/.*"id" *: *"\([^"]*\)".*/\1/p' "$1" | head -n 1
}

draw_off_screen() {
  lesson=$1
  picture=build/release/lantern_fair.png
  problem=$(first_problem "$lesson")
  say "no display: drawing problem \"$problem\" off screen and printing the ledger"
  build/release/foldwright picture "$lesson" --problem "$problem" -o "$picture"
  build/release/foldwright measure "$lesson"
  say "the picture lies in $(pwd)/$picture"
}

explore() {
  install_packages build
  mkdir -p build
  build_release
  lesson=demo_scenes/lantern_fair.json
  if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
    say "opening $lesson"
    if build/release/foldwright show "$lesson"; then
      return 0
    fi
    echo "bootstrap: the window did not open; drawing off screen instead" >&2
  fi
  draw_off_screen "$lesson"
}

# Debian has Dear ImGui as a library for the desktop alone; its source package has what a browser needs. A list of its
# own, so that the machine's package sources stay as they are.
unpack_imgui() {
  sources=$PWD/build/sources
  if [ -f "$sources/imgui/imgui.cpp" ]; then
    return 0
  fi
  say "unpacking the source package imgui (build/sources)"
  mkdir -p "$sources/lists/partial" "$sources/parts"
  # The machine's own package sources, asked for source packages.
  for list in /etc/apt/sources.list /etc/apt/sources.list.d/*; do
    case $list in
      *.sources) sed 's/^Types:.*/Types: deb-src/' "$list" >"$sources/parts/$(basename "$list")" ;;
      *.list) [ ! -f "$list" ] || sed -n 's/^deb /deb-src /p' "$list" >"$sources/parts/$(basename "$list")" ;;
    esac
  done
  own_list="-o Dir::Etc::sourcelist=/dev/null -o Dir::Etc::sourceparts=$sources/parts"
  own_list="$own_list -o Dir::State::lists=$sources/lists -o Dir::Cache::srcpkgcache= -o Dir::Cache::pkgcache="
  # shellcheck disable=SC2086  # one word an option
  (cd "$sources" && apt-get $own_list update && apt-get $own_list --download-only source imgui &&
    dpkg-source -x imgui_*.dsc imgui)
}

# Packages of packages.txt that are marked with the given words, and those that every build needs.
web() {
  install_packages build "$@"
  mkdir -p build
  unpack_imgui
  say "building the page (build/web)"
  cmake --preset web >build/web-configure.log 2>&1 || { cat build/web-configure.log >&2; return 1; }
  cmake --build --preset web --target page foldwright_said
  say "the page is $(pwd)/build/web/foldwright.html"
}

package() {
  install_packages build debian package
  mkdir -p build
  build_release
  if [ -f build/web/foldwright.html ]; then
    say "the page build/web/foldwright.html goes into the package"
  else
    say "without the page: to have it in the package, run sh third_party/bootstrap.sh web first"
  fi
  rm -f build/release/foldwright_*.deb
  (cd build/release && cpack) >build/package.log 2>&1 || { cat build/package.log >&2; return 1; }
  file=$(echo build/release/foldwright_*.deb)
  say "the package is $(pwd)/$file; as root, install it with"
  echo "  apt-get install ./$file"
}

[ $# -eq 1 ] || usage
case $1 in
  explore) explore ;;
  web) web web debian ;;
  package) package ;;
  web-test) web web debian webtest ;;  # for step web of test.sh
  test)
    install_packages build test
    exec sh "$here/test.sh"
    ;;
  *) usage ;;
esac
