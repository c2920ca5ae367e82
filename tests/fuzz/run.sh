#!/usr/bin/env bash
# Fuzzes every target for SECONDS each (default 30) under the address and undefined-behaviour sanitizers and prints
# executions and coverage. An input that fails is left in build/fuzz/found: put it into regressions/<target>, mend, run again.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
source tests/tools/setup.sh
seconds=${1:-30}
ensure_packages "${build_packages[@]}" clang libclang-rt-14-dev
targets=(documents takeoff cutting parcel labels entries)
build_preset fuzz "${targets[@]/#/fuzz_}"

seeds=build/fuzz/seeds found=build/fuzz/found
mkdir -p "$seeds" "$found"
find tests/documents/{cases,released} tests/command/cases demo shared-core/{trim-library,metal-library,rule-sets,machines} \
    tests/fuzz/regressions -name '*.json' -size -64k | while read -r file; do
    cp "$file" "$seeds/$(sha256sum "$file" | cut -c1-16).json"
done
# Member names and words of the schemas.
grep -hoE '"[a-z_/-]{2,40}"' shared-core/schemas/*.json | sort -u | sed -E 's/"(.*)"/"\\"\1\\""/' >build/fuzz/words.dict

fuzz() {
    local target=$1 corpus=build/fuzz/corpus/$1 first=$seeds
    mkdir -p "$corpus"
    local words=build/fuzz/words.dict
    case $target in
    parcel) first=tests/fuzz/parcels ;;
    labels | entries) first=tests/fuzz/$target words=tests/fuzz/$target.dict ;;
    esac
    build/fuzz/tests/fuzz/fuzz_"$target" -max_total_time="$seconds" -timeout=20 -rss_limit_mb=2048 -max_len=65536 \
        -dict="$words" -artifact_prefix="$found/$target-" -print_final_stats=1 \
        "$corpus" "$first" >"build/fuzz/$target.log" 2>&1 || { tail -40 "build/fuzz/$target.log"; return 1; }
    printf '%-10s %s executions, coverage %s\n' "$target" \
        "$(sed -n 's/^stat::number_of_executed_units: *//p' "build/fuzz/$target.log")" \
        "$(grep -oE 'cov: [0-9]+ ft: [0-9]+' "build/fuzz/$target.log" | tail -1)"
}
failed=0
for target in "${targets[@]}"; do fuzz "$target" || failed=1; done
exit $failed
