# Sourced by tests/run.sh and demo/run.sh: installs what this Debian is missing and builds a preset.

say() { printf '\n== %s\n' "$*"; }

# ensure_packages NAME...: installs the missing ones, or does nothing and says nothing.
ensure_packages() {
    local missing=() name
    for name in "$@"; do
        dpkg-query -W -f='${Status}' "$name" 2>/dev/null | grep -q 'install ok installed' || missing+=("$name")
    done
    [ ${#missing[@]} -eq 0 ] && return 0
    say "Installing ${missing[*]}"
    local as_root=()
    if [ "$(id -u)" -ne 0 ]; then as_root=(sudo); fi
    "${as_root[@]}" apt-get update -q
    "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends "${missing[@]}"
}

build_packages=(build-essential cmake ninja-build pkg-config ccache mold
    qt6-base-dev qt6-base-dev-tools libqt6opengl6-dev libgl1-mesa-dev qt6-svg-dev libqt6sql6-sqlite
    qt6-declarative-dev qt6-declarative-dev-tools
    qml6-module-qtqml qml6-module-qtqml-models qml6-module-qtqml-workerscript qml6-module-qtquick
    qml6-module-qtquick-window qml6-module-qtquick-layouts qml6-module-qtquick-templates qml6-module-qtquick-controls
    qml6-module-qtquick-dialogs qml6-module-qt-labs-folderlistmodel
    fonts-clear-sans fonts-dejavu-core
    qt6-tools-dev qt6-tools-dev-tools qt6-l10n-tools
    nlohmann-json3-dev libvalijson-dev libsodium-dev coinor-libclp-dev libboost-dev libzxing-dev
    libarchive-dev)

# build_preset PRESET [TARGET...]: configures once, then builds what changed.
build_preset() {
    local preset=$1
    shift
    say "Building (preset $preset)"
    [ -f "build/$preset/build.ninja" ] || cmake --preset "$preset" >"build-$preset.log" 2>&1 || {
        cat "build-$preset.log" >&2
        return 1
    }
    rm -f "build-$preset.log"
    if [ $# -gt 0 ]; then cmake --build "build/$preset" --target "$@"; else cmake --build "build/$preset"; fi
}
