#!/usr/bin/env bash
# Every header compiles alone, so that including it first works anywhere. Where the source of the same name includes it
# first, the build has shown that already; the others are compiled here. That all did is remembered by content under
# BUILD/headers. Usage: headers.sh BUILD
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
build=$1
mkdir -p "$build/headers"
common=$(git ls-files -z -- '*.h' | xargs -0 cat | sha256sum | cut -d' ' -f1)
[ -e "$build/headers/$common" ] && exit 0
compile="g++ -std=c++20 -fPIC -fsyntax-only -x c++ -Ishared-core -Imobile -Imobile/look -Ishop/model -Ishop/app -Ishop -Ishop/command -Itests"
compile+=" $(pkg-config --cflags Qt6Core Qt6Gui Qt6Qml Qt6Quick Qt6Sql Qt6Test)"
export compile
included_first() {
    local source=${1%.h}.cpp
    [ -f "$source" ] && [[ $(grep -m 1 '^#include' "$source") == *[/\"]"$(basename "$1")"\" ]]
}
git ls-files -- 'shared-core/*.h' 'mobile/*.h' 'shop/*.h' 'tests/*.h' |
    while read -r header; do included_first "$header" || echo "$header"; done | xargs -P "$(nproc)" -I{} bash -c '
    echo "#include \"{}\"" | $compile -I. - || { echo "{} does not compile alone" >&2; exit 1; }'
touch "$build/headers/$common"
