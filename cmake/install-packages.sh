#!/bin/bash
# Installs the Debian packages of cmake/packages.txt that are missing, and asks nothing.
#   bash cmake/install-packages.sh build    what building and running needs
#   bash cmake/install-packages.sh all      that, and what the tests need
# A second run finds nothing missing, takes well under a second and needs no network.
set -euo pipefail

which=${1:-build}
case "$which" in
    build | all) ;;
    *)
        echo "install-packages.sh: found \"$which\", expected build or all." >&2
        exit 2
        ;;
esac
list="$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)/packages.txt"

wanted=()
section=
while read -r word rest; do
    case "$word" in
        '' | '#'*) ;;
        '['*']') section=$word ;;
        *) if [[ $which == all || $section == '[build]' ]]; then wanted+=("$word"); fi ;;
    esac
done <"$list"

if ! command -v dpkg-query >/dev/null; then
    echo "This is no Debian system: see that these are installed by their names there: ${wanted[*]}" >&2
    exit 0
fi

# A package is there when dpkg says "installed" of it or of one that provides it.
installed=$(dpkg-query -W -f '${db:Status-Status} ${Package}, ${Provides}\n' |
    sed -n 's/^installed //p' | tr ',' '\n' | sed 's/ *(.*//; s/^ *//')
missing=()
for package in "${wanted[@]}"; do
    grep -qxF -- "$package" <<<"$installed" || missing+=("$package")
done
if [[ ${#missing[@]} -eq 0 ]]; then
    echo "Packages: all ${#wanted[@]} are there."
    exit 0
fi
if [[ $(id -u) -ne 0 ]]; then
    echo "These packages are missing, and only root can install them:" >&2
    echo "  apt-get install --no-install-recommends ${missing[*]}" >&2
    exit 1
fi

echo "Packages: installing ${#missing[@]} of ${#wanted[@]}: ${missing[*]}"
export DEBIAN_FRONTEND=noninteractive
log=$(mktemp)
trap 'rm -f "$log"' EXIT
for attempt in 1 2 3; do
    # slim systems leave out all of /usr/share/doc, but the published routes that tests read lie there
    if apt-get -q -o Acquire::Retries=3 update >"$log" 2>&1 &&
        apt-get -q -y -o Acquire::Retries=3 -o Dpkg::Use-Pty=0 -o DPkg::Lock::Timeout=120 \
            -o 'Dpkg::Options::=--path-include=/usr/share/doc/glpk-utils/*' \
            install --no-install-recommends "${missing[@]}" >>"$log" 2>&1; then
        echo "Packages: installed."
        exit 0
    fi
    tail -n 15 "$log" >&2
    if [[ $attempt -lt 3 ]]; then
        echo "Packages: attempt $attempt failed, trying again in $((5 * attempt)) s." >&2
        sleep $((5 * attempt))
    fi
done
echo "Packages: could not install ${missing[*]}; the last lines above say why." >&2
exit 1
