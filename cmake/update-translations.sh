#!/bin/bash
# Brings resources/translations/plugside_es.ts in line with the texts of the sources; new ones stand there unfinished.
#   update-translations.sh [FILE.ts]   that file instead of the one in resources
set -euo pipefail

root="$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)"
file="$(realpath -m "${1:-$root/resources/translations/plugside_es.ts}")"
lupdate=/usr/lib/qt6/bin/lupdate
if [[ ! -x $lupdate ]]; then lupdate="$(command -v lupdate6 || command -v lupdate)"; fi

# Sentences of core and geo are marked by Words::tell and Words::later, those of the window as the toolkit does it. lupdate is
# shown the headers of app alone, so that the texts of Words have one context wherever they stand; what it then misses is no news.
scratch="$(mktemp -d)"
trap 'rm -rf "$scratch"' EXIT
mkdir "$scratch/include"
ln -s "$root/app" "$scratch/include/app"
cd "$root"
find core geo app -name '*.cpp' -o -name '*.h' | grep -v '^core/words/' | LC_ALL=C sort > "$scratch/sources"
"$lupdate" -silent -no-obsolete -locations none -I "$scratch/include" -tr-function-alias tr+=tell,QT_TR_NOOP+=later \
    "@$scratch/sources" -ts "$file" \
    2> >(grep -vE 'lacks Q_OBJECT macro|Qualifying with unknown namespace|Ignoring definition of undeclared' >&2 || true)
