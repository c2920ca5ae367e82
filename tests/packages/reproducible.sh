#!/usr/bin/env bash
# Guards that the Debian packages are the same bytes wherever a commit is built: takes this commit out into two folders
# of different names, builds the packages in each, and compares them. Takes as long as two builds, and is not part of
# tests/run.sh.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."

work=$(mktemp -d)
trap 'git worktree remove --force "$work/one" 2>/dev/null; git worktree remove --force "$work/another-folder" 2>/dev/null; rm -rf "$work"' EXIT
for folder in "one" "another-folder"; do
    git worktree add --quiet --detach "$work/$folder" HEAD
    (cd "$work/$folder" && tests/packages/build.sh "$work/debs-of-$folder")
    export CCACHE_DISABLE=1 # the first's objects must not become the second's
done
(cd "$work/debs-of-one" && sha256sum -- *.deb) >"$work/sums"
cat "$work/sums"
(cd "$work/debs-of-another-folder" && sha256sum --check "$work/sums")
echo "The packages are the same bytes from both folders"
