#!/bin/bash
# Installs what the tests need, builds everything and runs every test. Ends with ctest's closing line.
#   bash cmake/check.sh          about the time of a build
#   bash cmake/check.sh --long   besides: both sanitizer builds, a minute of each fuzzer, the benchmarks, every look (most of an hour)
# Safe to run again at any time.
set -euo pipefail

root="$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)"
long=no
for argument in "$@"; do
    case "$argument" in
        --long) long=yes ;;
        *)
            echo "check.sh: found \"$argument\", expected nothing or --long." >&2
            exit 2
            ;;
    esac
done

bash "$root/cmake/install-packages.sh" all

build_and_test() { # preset, further cmake arguments
    local preset=$1
    shift
    echo "Building preset $preset with tests"
    (cd "$root" && cmake --preset "$preset" "$@" --log-level=WARNING && cmake --build --preset "$preset")
    echo "Running every test of preset $preset"
    ctest --test-dir "$root/.build/$preset" -j2 --output-on-failure --no-tests=error
}

if [[ $long == yes ]]; then
    echo "Fuzzing: one minute each"
    (cd "$root" && cmake --preset release -B .build/fuzz -DCMAKE_CXX_COMPILER=clang++-14 -DPLUGSIDE_FUZZERS=ON \
        --log-level=WARNING)
    cmake --build "$root/.build/fuzz" --target tests/fuzz/all
    find "$root/.build/fuzz/tests/fuzz" -maxdepth 1 -type f -perm -u+x | sort | while read -r fuzzer; do
        name=$(basename "$fuzzer")
        echo "Fuzzing with $name"
        # what it finds new is kept in .build/fuzz/found; a crash ends the check
        inputs=("$root/.build/fuzz/found/$name")
        mkdir -p "${inputs[0]}"
        if [[ -d "$root/tests/fuzz/corpus/${name#fuzz_}" ]]; then inputs+=("$root/tests/fuzz/corpus/${name#fuzz_}"); fi
        options=(-max_total_time=60 -rss_limit_mb=2048 -timeout=20 -verbosity=0 -print_final_stats=1)
        if [[ -f "$root/tests/fuzz/${name#fuzz_}.dict" ]]; then options+=("-dict=$root/tests/fuzz/${name#fuzz_}.dict"); fi
        (cd "${inputs[0]}/.." && "$fuzzer" "${options[@]}" "${inputs[@]}")
    done
    export PLUGSIDE_ACT_SEQUENCES=1000
    build_and_test asan
    export TSAN_OPTIONS="suppressions=$root/tests/sanitizers/thread.supp"
    build_and_test tsan
    echo "Benchmarks"
    (cd "$root" && cmake --preset release -DPLUGSIDE_BENCHMARKS=ON --log-level=WARNING && cmake --build --preset release)
    find "$root/.build/release/tests/benchmarks" -maxdepth 1 -type f -name "*_benchmark" -perm -u+x | sort | while read -r benchmark; do
        "$benchmark" --benchmark_min_time=0.2
    done
    export PLUGSIDE_EVERY_LOOK=1  # of the release build alone: words that fit, in every language and look
fi

build_and_test release
