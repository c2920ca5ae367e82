#!/usr/bin/env bash
# One day at an invented shop with three invented houses: measured, ordered, cut, folded, loaded, checked, remade.
# Installs what is missing, builds the command, tells the day in short, and leaves every document in demo/out/.
# demo/run.sh --pictures builds the two apps as well and makes the pictures of their guides anew.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
source tests/tools/setup.sh

ensure_packages "${build_packages[@]}" python3
build_preset release lapwright

lapwright=$PWD/build/release/shop/command/lapwright
houses=$PWD/demo
out=$PWD/demo/out
rm -rf "$out"
mkdir -p "$out"
cd "$out"

indented() { sed 's/^/    /'; }
# Runs the command and shows what it says; a finding that blocks (status 1) is part of the story, an error is not.
tell() {
    local status=0
    "$lapwright" "$@" 2>&1 | indented || status=${PIPESTATUS[0]}
    [ "$status" -le 1 ]
}

say "1. The installer measures Larkfield House. One tape is misread by a foot; closure says so, and which runs it can be:"
tell closure "$houses/larkfield-first-measure.job.json"
echo "    E1 is measured again: 28 feet. Now:"
tell closure "$houses/larkfield.job.json"

say "2. The measured house becomes an order: nothing left in it that cannot be right, and which pieces"
"$lapwright" takeoff "$houses/larkfield.job.json" -o larkfield.order.json >larkfield.pieces.txt 2>larkfield.findings.txt
sed -n '1p' larkfield.findings.txt | indented
sed -n '1,9p;$p' larkfield.pieces.txt | indented
echo "    (all of them in demo/out/larkfield.pieces.txt). Every number says where it comes from:"
"$lapwright" takeoff "$houses/larkfield.job.json" --why H1.1 2>/dev/null | tee why-H1.1.txt | sed -n '1,10p' | indented
for house in hollin depot; do
    "$lapwright" takeoff "$houses/$house.job.json" -o $house.order.json >$house.pieces.txt 2>$house.findings.txt
done

say "3. The shop takes the orders in (one of them twice), merges them by metal, gauge and colour, and plans the cuts"
tell receive larkfield.order.json hollin.order.json depot.order.json hollin.order.json --db shop.db
tell plan --db shop.db --stock "$houses/shop.stock.json" --floor "$houses/shop.floor.json"

say "4. Papers: cut and fold tickets, quality sheets, labels, and confirmations with the cost at the shop's own rates"
tell print --db shop.db -o tickets --rates "$houses/shop.rates.json"
sed -n '/^FOLD/,/^4\./p' tickets/fold-01.txt | indented
echo "    To look at: demo/out/tickets/cut-01.pdf (map and strips of each sheet), fold-01.pdf (steps in the machine),"
echo "    labels-01.pdf (sheets of labels, each with a QR code), quality-01.pdf, order-01.pdf (confirmation and cost)."
"$lapwright" print --db shop.db -o tickets-es --rates "$houses/shop.rates.json" --language es >/dev/null
echo "    The same in Spanish: demo/out/tickets-es. The job in four pictures: demo/out/day.svg."
python3 "$houses/strip.py" day.svg "Measured once on site" "tickets/plan-02.svg#6,21,110,90" \
    "Trim from the slope" "$houses/pictures/eave-drip-edge.svg#0,0,150,100" \
    "Cut, with a proof" "tickets/cut-03-map-2.svg#26,26,246,104" \
    "Folded, step by step" "tickets/fold-01-page-2.svg#14,24,186,114"

say "5. Cut, folded, tied into bundles and loaded"
tell made cut --db shop.db --station slitter
tell made folded --db shop.db --station folder
"$lapwright" load --db shop.db -o load.json --truck "truck 1" >load.txt
sed -n '1,4p' load.txt | indented
echo "    … $(grep -c '^B' load.txt) bundles in demo/out/load.txt"
tell print --db shop.db -o load-papers --labels 4x2
echo "    load-01.pdf is for whoever loads, check-01.pdf for a crew lead without a tablet, bundles-01.pdf a roll of labels."

say "6. The crew lead checks the delivery: one piece short, one damaged. The shop makes them again"
python3 "$houses/crew_lead.py" load.json receipt.json | indented
tell receipt receipt.json --db shop.db
tell remake --db shop.db
tell plan --db shop.db
tell print --db shop.db -o remake-tickets
tell status --db shop.db

say "Everything is in demo/out/: orders, papers (PDF in tickets/, load-papers/ and remake-tickets/), drawings, receipt."

if [ "${1:-}" = --pictures ]; then
    say "Pictures of every screen, for mobile/README.md and shop/README.md"
    cd "$houses/.."
    build_preset release field_pictures shop_pictures
fi
