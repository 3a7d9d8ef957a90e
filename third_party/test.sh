#!/bin/sh
# All tests, in the steps of automatic checking. Without arguments every step; or name the steps to run:
#
#   sh third_party/test.sh grouped    g++: warnings as errors, all tests
#   sh third_party/test.sh asan       clang with sanitizers: every header alone, the tests again, but for the slow
#                                     ones, and damaged lessons and numbers, made up for less than a minute
#   sh third_party/test.sh compare    the program as people build it, and the benchmarks; it must print the same numbers as
#                                     the one built by clang
#   sh third_party/test.sh web        only when it is named: the page is built, and tried in Chromium and Firefox without a
#                                     network
#   sh third_party/test.sh tidy       clang-tidy over the sources that changed since main, or in the last commit
#
# Ends with what each step took and ctest's closing lines. Exit status: 0 if every step passed.
set -eu

cd "$(dirname -- "$0")/.."
mkdir -p build
jobs=$(nproc)
times=build/test-times.txt

say() { printf '\n== %s\n' "$*"; }

# configure PRESET: quiet unless it fails.
configure() {
  cmake --preset "$1" >"build/$1-configure.log" 2>&1 || { cat "build/$1-configure.log" >&2; return 1; }
}

# run_tests PRESET: under a display of its own; the log stays for the closing lines.
run_tests() {
  xvfb-run -a -s "-screen 0 1920x1080x24" ctest --preset "$1"
}

step_grouped() {
  configure grouped
  cmake --build --preset grouped -j "$jobs"
  run_tests grouped
}

step_asan() {
  configure asan
  cmake --build --preset asan -j "$jobs"
  cmake --build --preset headers -j "$jobs"
  run_tests asan
}

# print_numbers PROGRAM FOLDER: what PROGRAM says and prints of every demo lesson, one file a verb or sheet and lesson.
print_numbers() {
  rm -rf "$2"
  mkdir -p "$2"
  for lesson in demo_scenes/*.json; do
    case $lesson in *schema*) continue ;; esac
    name=$(basename "$lesson" .json)
    "$1" check "$lesson" >"$2/$name.check.txt"
    "$1" measure "$lesson" >"$2/$name.measure.txt"
    "$1" measure "$lesson" --json >"$2/$name.measure.json"
    "$1" explain "$lesson" --route both >"$2/$name.explain.txt" || [ $? -eq 1 ]
    "$1" explain "$lesson" --json >"$2/$name.explain.json"
    "$1" nets "$lesson" --count >"$2/$name.nets.txt"
    "$1" nets "$lesson" --count --json >"$2/$name.nets.json"
    for sheet in handout notes key nets; do
      "$1" print "$lesson" --as "$sheet" -o "$2/$name.$sheet.pdf" 2>"$2/$name.$sheet.txt"
    done
  done
}

# The preset bench builds the program with the very flags of the preset release.
step_compare() {
  configure bench
  cmake --build --preset bench -j "$jobs" --target foldwright benchmarks
  print_numbers build/bench/foldwright build/numbers-bench
  configure asan
  cmake --build --preset asan -j "$jobs" --target foldwright
  print_numbers build/asan/foldwright build/numbers-asan
  diff -r build/numbers-bench build/numbers-asan
  echo "g++ and clang print the same numbers for $(find build/numbers-bench -type f | wc -l) outputs"
}

# changed_sources: those of src/ that differ from where the branch left main or, on main itself, from the commit before;
# for a header the source of its name. The most changed first; without a history, all.
changed_sources() {
  base=$(git merge-base HEAD origin/main 2>/dev/null || true)
  if [ -z "$base" ] || [ "$base" = "$(git rev-parse HEAD)" ]; then
    base=$(git rev-parse --verify --quiet HEAD~1 || true)
  fi
  if [ -z "$base" ]; then
    git ls-files 'src/*.cpp' ':!src/web'
    return
  fi
  git diff --numstat --no-renames --diff-filter=d "$base" -- 'src/*.cpp' 'src/*.hpp' ':!src/web' | sort -rn | cut -f 3 |
    sed 's/\.hpp$/.cpp/' | awk '!seen[$0]++' | while read -r file; do
      [ ! -f "$file" ] || echo "$file"
    done
}

# A file takes seven seconds of a core, so that all of them have no room here: cmake --workflow --preset tidy.
step_tidy() {
  most=60
  configure tidy
  cmake --build --preset tidy -j "$jobs" --target fw_glad
  changed_sources >build/changed-sources.txt
  echo "$(wc -l <build/changed-sources.txt) sources changed; the first $most are looked at"
  head -n "$most" build/changed-sources.txt | xargs -r -P "$jobs" -n 1 clang-tidy --quiet -p build/tidy
}

# Not among the usual steps: the page takes as long to build as all the rest. Installs the packages marked web, and from
# npm what tests/cli/page/package-lock.json pins; nothing of that goes into the page.
step_web() {
  sh third_party/bootstrap.sh web-test
  configure grouped
  cmake --build --preset grouped -j "$jobs" --target foldwright foldwright_said
  mkdir -p build/page-tests
  cp tests/cli/page/* build/page-tests/
  (cd build/page-tests && npm ci --ignore-scripts --no-audit --no-fund)
  node build/page-tests/page_test.mjs "$PWD/build/grouped/foldwright" "$PWD/build/web/foldwright.html"
  xvfb-run -a -s "-screen 0 1400x1200x24" \
    node build/page-tests/firefox_test.mjs "$PWD/build/grouped/foldwright" "$PWD/build/web/foldwright.html"
}

closing_lines() {
  status=$?
  for preset in grouped asan; do
    if grep -q "^$preset " "$times" && [ -f "build/$preset/ctest.log" ]; then
      say "ctest, $preset"
      sed -n '/tests passed/,$p' "build/$preset/ctest.log"
    fi
  done
  say "steps"
  cat "$times"
  if [ "$status" -eq 0 ]; then
    echo "all steps passed"
  else
    printf '\nFAILED in the step named last (status %s)\n' "$status"
  fi
  exit "$status"
}

[ $# -gt 0 ] || set -- grouped asan compare tidy
for step in "$@"; do
  case $step in
    grouped | asan | compare | tidy | web) ;;
    *)
      echo "test: there is no step \"$step\"; grouped, asan, compare, tidy and web are the steps" >&2
      exit 2
      ;;
  esac
done

: >"$times"
trap closing_lines EXIT
for step in "$@"; do
  say "step $step"
  rm -f "build/$step/ctest.log"
  printf '%s ' "$step" >>"$times"
  begin=$(date +%s)
  "step_$step"
  printf '%s s\n' $(($(date +%s) - begin)) >>"$times"
done
