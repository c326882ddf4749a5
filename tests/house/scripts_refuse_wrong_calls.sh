#!/bin/bash
# The scripts are whole, and a wrong call is refused with exit 2 before anything is done.
#   scripts_refuse_wrong_calls.sh ROOT
set -uo pipefail
root=$1
failed=0

for script in "$root"/cmake/*.sh "$root/.ci/run" "$root"/tests/house/*.sh; do
    bash -n "$script" || failed=1
    if grep -nE '\b(read -p|sudo|select )' "$script" | grep -v 'grep -nE'; then
        echo "FAILED $script asks or needs more rights than it says"
        failed=1
    fi
done

expect_refused() {
    local output
    output=$("$@" 2>&1)
    local code=$?
    if [[ $code -ne 2 || $output != *"expected"* ]]; then
        echo "FAILED exit $code of: $*"
        echo "$output"
        failed=1
    fi
}
expect_refused bash "$root/cmake/install-packages.sh" everything
expect_refused bash "$root/cmake/check.sh" --fast
expect_refused bash "$root/cmake/check.sh" --long --fast

# every package is named once, in one of the two sections
doubled=$(grep -vE '^(#|\[|$)' "$root/cmake/packages.txt" | sort | uniq -d)
if [[ -n $doubled ]]; then
    echo "FAILED packages.txt names these twice: $doubled"
    failed=1
fi
if [[ $(grep -cE '^\[(build|checks)\]$' "$root/cmake/packages.txt") -ne 2 ]]; then
    echo "FAILED packages.txt has not its two sections"
    failed=1
fi
exit $failed
