#!/usr/bin/env bash
# Fails, with the places, where a C++ source is not as clang-format would write it.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
git ls-files -z -- '*.h' '*.cpp' | xargs -0 clang-format --dry-run --Werror
