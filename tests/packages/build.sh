#!/usr/bin/env bash
# Builds the three Debian packages of the commit that stands in this folder: tests/packages/build.sh FOLDER leaves them
# in FOLDER. The same commit is to give the same bytes wherever and whenever it is built (reproducible.sh compares): times
# come from the commit, and no path of this machine gets into a program.
set -euo pipefail
target=$(realpath -m "$1")
cd "$(dirname "${BASH_SOURCE[0]}")/../.."

SOURCE_DATE_EPOCH=$(git log -1 --format=%ct)
export SOURCE_DATE_EPOCH
cmake --preset release -B build/packages -DLAPWRIGHT_TESTS=OFF \
    -DCMAKE_CXX_FLAGS="-ffile-prefix-map=$PWD=." >/dev/null
cmake --build build/packages
rm -rf "$target"
cpack --config build/packages/CPackConfig.cmake -B "$target"
