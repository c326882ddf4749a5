#!/bin/bash
# Records a session in the window as pictures, under a display of its own and by keyboard alone but where said:
#   screenshots.sh [OUT [LANGUAGE]]   open, systems, decide five sets, undo two, hand out, at 1280x800 and 1920x1080, into OUT
#                             (.build/pictures unless told), in English or, by LANGUAGE es, in Spanish; and a walk in files of
#                             six kinds, with the questions they ask
#   screenshots.sh --newcomer [OUT [LANGUAGE]]   the first start with its walk-through, and what a new user does by mouse: a boundary over
#                             the sample's picture, two corrections, a fan turned, sets kept; and a receiver followed
#   screenshots.sh --every [OUT]   every step in both languages, both themes, with text at 100 and 200 in 100, at 1280x800
#   screenshots.sh --readme   only the README's picture, resources/pictures/window.png
# Needs a built program: PLUGSIDE=path/to/plugside, else .build/release or .build/start is used.
set -euo pipefail

root="$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)"
sample="$root/sample-projects/creek-meadow"
program="${PLUGSIDE:-}"
for built in "$root/.build/release/plugside" "$root/.build/start/plugside"; do
    if [[ -z $program && -x $built ]]; then program="$built"; fi
done
if [[ -z $program ]]; then
    echo "Build the program first: cmake --preset release && cmake --build --preset release --target plugside" >&2
    exit 2
fi

newcomer=""
if [[ ${1:-} == --newcomer ]]; then
    newcomer=yes
    shift
fi
language="${2:-en}"
scratch="$(mktemp -d)"
trap 'rm -rf "$scratch"' EXIT
mkdir "$scratch/walk" "$scratch/messy" "$scratch/none" "$scratch/pictured"
cp "$sample/walk.gpx" "$sample/ground.gpkg" "$scratch/walk/"

# session WIDTH HEIGHT OUT STEPS...: a step is "name: key key key"; its picture is OUT/name.png. Beside keys: at:X,Y a click,
# twice:X,Y a double click, drag:X,Y,X,Y, wait:SECONDS
cat > "$scratch/session.sh" <<'SESSION'
set -euo pipefail
program="$1"; width="$2"; height="$3"; out="$4"; folder="$5"; language="$6"
shift 6
export XDG_CONFIG_HOME="$folder.settings-$width" XDG_DATA_HOME="$folder.data" XDG_RUNTIME_DIR="${folder%/*}"
shopt -s nullglob
"$program" --language "$language" "$folder"/* &
window_process=$!
trap 'kill "$window_process" 2>/dev/null || true' EXIT
window=""
for _ in $(seq 100); do
    window="$(xdotool search --onlyvisible --pid "$window_process" --name Plugside 2>/dev/null | tail -1 || true)"
    if [[ -n $window ]]; then break; fi
    sleep 0.1
done
if [[ -z $window ]]; then
    echo "The window did not open" >&2
    exit 1
fi
xdotool windowmove "$window" 0 0 windowsize "$window" "$width" "$height" windowfocus "$window"
sleep 2
for step in "$@"; do
    name="${step%%:*}"
    for key in ${step#*:}; do
        if [[ $key == dialog ]]; then
            # without a window manager nobody hands the focus to a dialog
            sleep 0.5
            xdotool windowfocus "$(xdotool search --onlyvisible --pid "$window_process" --name 'Hand out|Entregar' | tail -1)"
        elif [[ $key == window ]]; then
            xdotool windowfocus "$window"
        elif [[ $key == *:* ]]; then
            IFS=, read -r x y x_to y_to <<< "${key#*:}"
            case "${key%%:*}" in
                at) xdotool mousemove "$x" "$y" sleep 0.1 click 1 sleep 0.4 ;;
                twice) xdotool mousemove "$x" "$y" sleep 0.1 click --repeat 2 --delay 60 1 ;;
                drag) xdotool mousemove "$x" "$y" mousedown 1 sleep 0.1 mousemove "$(((x + x_to) / 2))" "$(((y + y_to) / 2))" sleep 0.1 \
                    mousemove "$x_to" "$y_to" sleep 0.2 mouseup 1 ;;
                wait) sleep "$x" ;;
                *) echo "No act: $key" >&2; exit 1 ;;
            esac
        else
            xdotool key "$key"
        fi
        sleep 0.35
    done
    sleep 0.8
    import -window root "$out/$name.png"
    echo "  $out/$name.png"
done
SESSION

record() {
    local folder="$1" width="$2" height="$3" out="$4"
    shift 4
    mkdir -p "$out"
    rm -f "$folder"/*-plan.gpkg "$folder"/*-sets.gpx
    xvfb-run -a -s "-screen 0 ${width}x${height}x24" \
        bash "$scratch/session.sh" "$program" "$width" "$height" "$out" "$folder" "$language" "$@" 2> >(grep -v XGetInputFocus >&2)
}

if [[ ${1:-} == --readme ]]; then
    record "$scratch/walk" 1280 800 "$scratch/readme" "window: 5 k k d k f"
    mkdir -p "$root/resources/pictures"
    convert "$scratch/readme/window.png" -strip -dither None -colors 255 -define png:compression-level=9 "$root/resources/pictures/window.png"
    echo "  resources/pictures/window.png: $(stat -c %s "$root/resources/pictures/window.png") bytes"
    exit 0
fi

if [[ ${1:-} == --every ]]; then
    out="${2:-$root/.build/pictures}/every"
    for language in en es; do
        for theme in light sunlight; do
            for percent in 100 200; do
                look=""
                if [[ $theme == sunlight ]]; then look+=" ctrl+l"; fi
                if [[ $percent == 200 ]]; then look+=" ctrl+equal ctrl+equal ctrl+equal ctrl+equal"; fi
                echo "$language, $theme, text at $percent in 100"
                rm -rf "$scratch/walk.settings-1280"
                record "$scratch/walk" 1280 800 "$out/$language-$theme-$percent" \
                    "01-looks-wrong:$look l" \
                    "02-read: v ctrl+m bracketright" \
                    "03-who-dug: i" \
                    "04-notes: Escape t" \
                    "05-not-seen: w" \
                    "06-ground: 2" \
                    "07-drawing: b" \
                    "08-systems: Escape 3" \
                    "09-a-system: ctrl+m bracketright bracketright" \
                    "10-corrections: l o" \
                    "11-method: Escape 4 m" \
                    "11-conditions: n" \
                    "11-label: Escape l" \
                    "11-against: Escape a" \
                    "11-load: Escape o" \
                    "11-sets: Escape 5" \
                    "12-why-this-place: w" \
                    "13-kept: w k" \
                    "14-being-moved: m Up Up" \
                    "15-which-to-go-through: Escape o" \
                    "16-several-at-once: Escape t" \
                    "17-keys: Escape F1" \
                    "18-hand-out: Escape ctrl+s dialog"
            done
        done
    done
    exit 0
fi

out="${1:-$root/.build/pictures}"

if [[ -n $newcomer ]]; then
    echo "The first start, by keys"
    record "$scratch/none" 1280 800 "$out/first-start" \
        "01-look: wait:6" \
        "02-draw: ctrl+m space 2" \
        "03-drawing: d space Right Right Right Right Down Down space Right Right" \
        "04-correct: Return wait:5 3 l" \
        "05-decide: y wait:5 5" \
        "06-hand-out: k wait:5" \
        "07-dialog: ctrl+s dialog" \
        "08-over: Escape window" \
        "09-sunlight: ctrl+l shift+F2 shift+F2" \
        "10-left: Escape"
    cp "$sample/walk.gpx" "$sample/imagery.tif" "$scratch/pictured/"
    echo "A new user, by mouse"
    record "$scratch/pictured" 1280 800 "$out/newcomer" \
        "01-opened: wait:4" \
        "02-drawing: 2 b at:330,330 at:420,240 at:560,215 at:700,225 at:820,300 at:830,560 at:700,640" \
        "03-boundary: at:360,600 twice:360,600" \
        "03-about-the-walk: ctrl+z w" \
        "04-corrections: Return wait:5 3 l t" \
        "05-told: Return" \
        "06-fan-turned: wait:5 ctrl+shift+Right" \
        "07-sets: wait:5 5 k k k d k"
    exit 0
fi

for size in "1280 800" "1920 1080"; do
    read -r width height <<< "$size"
    echo "A session at ${width}x${height}"
    record "$scratch/walk" "$width" "$height" "$out/${width}x${height}" \
        "01-opened:" \
        "01-what-looks-wrong: l" \
        "01-notes: t" \
        "01-not-seen: w" \
        "01-who-dug: v ctrl+m bracketright bracketright i" \
        "02-ground: Escape Escape 2" \
        "02-drawing: b" \
        "02-systems: Escape 3" \
        "03-a-system: ctrl+m bracketright bracketright" \
        "03-corrections: l o" \
        "03-method: Escape 4" \
        "03-conditions: n" \
        "04-sets: Escape 5" \
        "05-first-kept: k" \
        "06-second-dropped: d" \
        "07-third-being-moved: m Up Up shift+Right" \
        "08-third-moved: Return" \
        "09-fourth-and-fifth-kept: n k k" \
        "10-two-undone: ctrl+z ctrl+z" \
        "11-hand-out: ctrl+s dialog" \
        "12-handed-out: Return window" \
        "13-sunlight-and-metres: ctrl+l ctrl+u" \
        "14-keys: F1" \
        "15-why-this-place: Escape ctrl+l w" \
        "16-which-to-go-through: w o space" \
        "17-several-at-once: Escape t" \
        "18-moved-by-hand: Escape ctrl+Up ctrl+shift+Right"
done

/usr/bin/python3 "$root/tests/app/reading/messy_walk.py" "$sample/walk.gpx" "$scratch/messy"
echo "A walk in files of six kinds, at 1280x800"
record "$scratch/messy" 1280 800 "$out/files" \
    "01-a-question:" \
    "02-the-next-one: Return" \
    "03-all-answered: Return" \
    "04-what-a-column-means: Right Right Return f" \
    "05-another-system: Escape shift+Tab u t m space 1 4" \
    "06-sunlight: ctrl+l" \
    "07-one-survey: ctrl+Return"
