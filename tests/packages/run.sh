#!/usr/bin/env bash
# Builds the three Debian packages and tries them where nothing of this project ever was: a clean Debian 12 root gets
# them with what they say they need, and runs the shop's day and every screen from there. Needs root and a network;
# takes some minutes, and is not part of tests/run.sh.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
source tests/tools/setup.sh

ensure_packages "${build_packages[@]}" dpkg-dev mmdebstrap appstream desktop-file-utils lintian
say "Building and packing"
debs=$(mktemp -d)
trap 'rm -rf "$debs"' EXIT
tests/packages/build.sh "$debs"
say "What lintian says; an error ends this"
lintian --fail-on error --tag-display-limit 0 "$debs"/*.deb
appstreamcli validate --no-net mobile/app/*.metainfo.xml shop/app/*.metainfo.xml
desktop-file-validate mobile/app/*.desktop shop/app/*.desktop

say "A clean root"
root=$(mktemp -d)
trap 'rm -rf "$root" "$debs"' EXIT
chmod 755 "$root"
mmdebstrap --quiet --variant=apt bookworm "$root"
mkdir "$root/day"
mkdir -m 700 "$root/run/day" # Qt warns of a runtime folder that others may write to, and the self-tests fail on it
cp "$debs"/*.deb demo/*.json demo/crew_lead.py "$root/day"
inside() { chroot "$root" env DEBIAN_FRONTEND=noninteractive LC_ALL=C.UTF-8 QT_QPA_PLATFORM=offscreen \
    QT_QUICK_BACKEND=software XDG_RUNTIME_DIR=/run/day bash -ec "cd /day; $1"; }
inside 'apt-get -q update; apt-get -q -y install --no-install-recommends ./*.deb'

say "The day"
inside 'lapwright check --install
    lapwright --version; test -s /usr/share/man/man1/lapwright.1.gz || test -s /usr/share/man/man1/lapwright.1
    for house in larkfield hollin depot; do lapwright takeoff $house.job.json -o $house.order.json || test $? = 1; done
    lapwright receive *.order.json --db shop.db
    lapwright plan --db shop.db --stock shop.stock.json --floor shop.floor.json --time 2
    lapwright print --db shop.db -o tickets
    lapwright made cut --db shop.db; lapwright made folded --db shop.db; lapwright load --db shop.db -o load.json
    lapwright check --db shop.db'
say "Every screen"
inside 'for language in en es; do lapwright-field --self-test --language $language; lapwright-shop --db shop.db --self-test --language $language; done'
say "The packages install, and the day runs from them"
