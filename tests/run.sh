#!/usr/bin/env bash
# Builds with the sanitizers and runs everything that must hold: style, lint, structure and tests.
# The last line counts what ran. clang-tidy reads what the last ten commits changed, since the whole tree takes longer
# than everything else together; --tidy reads it all.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
source tests/tools/setup.sh

ensure_packages "${build_packages[@]}" \
    git clang-format clang-tidy libboost-dev coinor-libcbc-dev units python3 \
    qml6-module-qttest qml6-module-qtmultimedia libxml2-utils poppler-utils sqlite3 postgresql libqt6sql6-psql
export QT_QPA_PLATFORM=offscreen QT_LOGGING_RULES='*.debug=false' XDG_RUNTIME_DIR="${XDG_RUNTIME_DIR:-$(mktemp -d)}"

build_preset asan

passed=0 failed=0 skipped=0
check() {
    local name=$1
    shift
    if "$@"; then
        passed=$((passed + 1))
        printf 'pass  %s\n' "$name"
    else
        failed=$((failed + 1))
        printf 'FAIL  %s\n' "$name"
    fi
}

say "Style and structure"
check "every source is formatted" tests/tools/format.sh
check "the arrows between folders point one way" python3 tests/tools/structure.py
check "every header compiles alone" tests/tools/headers.sh build/asan
if [ "${1:-}" = --tidy ]; then
    check "clang-tidy finds nothing" tests/tools/tidy.sh build/asan
else
    mapfile -t recent < <(git log -n 10 --name-only --diff-filter=d --format= -- 'shared-core/*.cpp' 'shop/*.cpp' 'mobile/*.cpp' |
        awk '!seen[$0]++' | while read -r file; do if [ -f "$file" ]; then echo "$file"; fi; done | head -16)
    [ ${#recent[@]} -eq 0 ] || check "clang-tidy finds nothing in what changed last" tests/tools/tidy.sh build/asan "${recent[@]}"
fi

say "Tests"
jobs=$(nproc)
if ! ctest --test-dir build/asan --output-on-failure -j "$jobs"; then
    echo "Some test programs failed; their output stands above."
fi
# Each QtTest program closes with "Totals: 12 passed, 0 failed, 1 skipped, ..."; a program that ended without that
# line (a crash, a time-out) counts as one failure.
read -r test_passed test_failed test_skipped < <(python3 tests/tools/totals.py build/asan/Testing/Temporary/LastTest.log)
passed=$((passed + test_passed)) failed=$((failed + test_failed)) skipped=$((skipped + test_skipped))

echo
echo "$passed passed, $failed failed, $skipped skipped"
[ "$failed" -eq 0 ] && [ "$passed" -gt 0 ]
