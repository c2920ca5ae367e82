#!/usr/bin/env bash
# A PostgreSQL server of its own on loopback, for as long as standard input stays open: prints its port when it answers,
# and leaves nothing behind. A line on standard input ends it as a crash does and starts it again; then the port is
# printed again. The superuser is "owner"; the password is that in PGPASSWORD. PostgreSQL refuses to run as
# root, so root hands over to the user that Debian's package made for it.
# Usage: PGPASSWORD=… postgres.sh [SETTING=VALUE...]
set -euo pipefail
programs=$(find /usr/lib/postgresql -maxdepth 2 -name bin 2>/dev/null | sort -V | tail -1)
[ -n "$programs" ] || { echo "postgresql is not installed" >&2; exit 3; }
as_server=()
if [ "$(id -u)" -eq 0 ]; then as_server=(runuser -u postgres --); fi
cd /
folder=$("${as_server[@]}" mktemp -d /tmp/lapwright-postgres.XXXXXX)
started=
finish() {
    [ -z "$started" ] || "${as_server[@]}" "$programs/pg_ctl" -D "$folder/data" -m immediate -w stop >/dev/null 2>&1 || true
    rm -rf "$folder"
}
trap finish EXIT
"${as_server[@]}" tee "$folder/password" <<<"$PGPASSWORD" >/dev/null
"${as_server[@]}" "$programs/initdb" -D "$folder/data" -U owner -A scram-sha-256 --pwfile "$folder/password" --no-sync \
    -E UTF8 --locale C >/dev/null
{
    echo "listen_addresses = '127.0.0.1'"
    echo "unix_socket_directories = '$folder'"
    for setting in "$@"; do echo "${setting%%=*} = '${setting#*=}'"; done
} | "${as_server[@]}" tee -a "$folder/data/postgresql.conf" >/dev/null
for attempt in 1 2 3 4 5; do
    port=$((20000 + (RANDOM + attempt + $$) % 30000))
    if "${as_server[@]}" "$programs/pg_ctl" -D "$folder/data" -o "-p $port" -l "$folder/log" -w start >/dev/null 2>&1; then
        started=yes
        break
    fi
done
[ -n "$started" ] || { cat "$folder/log" >&2; exit 3; }
echo "$port"
while read -r _; do
    "${as_server[@]}" "$programs/pg_ctl" -D "$folder/data" -m immediate -w stop >/dev/null 2>&1
    "${as_server[@]}" "$programs/pg_ctl" -D "$folder/data" -o "-p $port" -l "$folder/log" -w start >/dev/null 2>&1
    echo "$port"
done
