#!/usr/bin/env bash
# The day of demo/run.sh through the release build of the command under valgrind: fails on any invalid read or write,
# use of what was never set, or lost memory. Takes many minutes; run by hand. Usage: memcheck.sh [HOUSE...]
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
source tests/tools/setup.sh
ensure_packages "${build_packages[@]}" valgrind python3
build_preset release lapwright
program=$PWD/build/release/shop/command/lapwright houses=$PWD/demo
if [ $# -eq 0 ]; then set -- larkfield hollin depot; fi
day=$(mktemp -d)
trap 'rm -rf "$day"' EXIT
cd "$day"
export QT_QPA_PLATFORM=offscreen

# A finding that blocks (status 1) is part of the story; what valgrind finds ends with 99.
check() {
    local status=0
    valgrind --quiet --error-exitcode=99 --leak-check=full --errors-for-leak-kinds=definite \
        "$program" "$@" >>said.txt 2>>told.txt || status=$?
    printf '%-10s exit status %d\n' "$1" "$status"
    if [ "$status" -gt 1 ]; then
        tail -60 told.txt
        exit 1
    fi
}
for house in "$@"; do check takeoff "$houses/$house.job.json" -o "$house.order.json"; done
check receive ./*.order.json --db shop.db
check plan --db shop.db --stock "$houses/shop.stock.json" --floor "$houses/shop.floor.json" --time 20
check print --db shop.db -o tickets --rates "$houses/shop.rates.json"
check made cut --db shop.db
check made folded --db shop.db
check load --db shop.db -o load.json
check print --db shop.db -o load-papers --labels 4x2
python3 "$houses/crew_lead.py" load.json receipt.json
check receipt receipt.json --db shop.db
check remake --db shop.db
check plan --db shop.db --time 20
check status --db shop.db
check check --db shop.db
echo "valgrind found nothing"
