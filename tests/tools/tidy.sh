#!/usr/bin/env bash
# clang-tidy over every source of the project. What was clean is remembered by content under BUILD/tidy, so that a
# second run only reads what changed (a source, any header, the compiler's flags or the checks themselves).
# Usage: tidy.sh BUILD [FILE...]
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
build=$1
shift
mkdir -p "$build/tidy"
if [ $# -gt 0 ]; then files=("$@"); else mapfile -t files < <(git ls-files -- 'shared-core/*.cpp' 'shop/*.cpp' 'mobile/*.cpp'); fi
common=$(git ls-files -z -- '*.h' .clang-tidy CMakeLists.txt | xargs -0 cat | sha256sum | cut -d' ' -f1)
todo=()
for file in "${files[@]}"; do
    key=$( (echo "$common"; cat "$file") | sha256sum | cut -d' ' -f1)
    [ -e "$build/tidy/$key" ] || todo+=("$key $file")
done
[ ${#todo[@]} -eq 0 ] && exit 0
export build
printf '%s\n' "${todo[@]}" | xargs -P "$(nproc)" -L1 bash -c '
    if clang-tidy --quiet -p "$build" --extra-arg=-Wno-unknown-warning-option "$1" 2>/dev/null; then touch "$build/tidy/$0"; else exit 1; fi'
