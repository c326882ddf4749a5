#!/bin/bash
# Brings resources/translations/plugside_es.ts in line with the texts of the sources; new ones stand there unfinished.
#   update-translations.sh [FILE.ts]   that file instead of the one in resources
set -euo pipefail

root="$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)"
file="$(realpath -m "${1:-$root/resources/translations/plugside_es.ts}")"
lupdate=/usr/lib/qt6/bin/lupdate
if [[ ! -x $lupdate ]]; then lupdate="$(command -v lupdate6 || command -v lupdate)"; fi

# Sentences of core and geo are marked by Words::tell and Words::later, those of the window as the toolkit does it. The class Words is
# not shown to lupdate, so that its texts have one context wherever they stand; that it cannot know it is no news.
cd "$root"
find core geo app -name '*.cpp' -o -name '*.h' | grep -v '^core/words/' | LC_ALL=C sort > "$file.list"
"$lupdate" -silent -no-obsolete -locations none -tr-function-alias tr+=tell,QT_TR_NOOP+=later "@$file.list" -ts "$file" \
    2> >(grep -vE 'lacks Q_OBJECT macro|Qualifying with unknown namespace' >&2 || true)
rm "$file.list"
