"""The coarse form beside scikit-learn's DBSCAN (radius 8 m, 3 places) on the same places, one after the other in the same run.

coarse_beside_dbscan.py COARSE_BENCHMARK [PLACES]

Places (default 1,000,000): clusters of 50, standard deviation 12 m, one to 20,000 m2; then simulated fields glued together, whose
systems are known. Each code gets the places in the same random order and has a process of its own; seconds are of the partition
alone, without reading, the least of three runs taken in turn; memory is the peak of the process, reading and Python included.
Prints the ratio of seconds, both peaks, the adjusted Rand index with the truth, and the exponent of the coarse form's cost from 1,000
places on. Exit 1 when a bar is missed: half of DBSCAN's seconds, 2 GiB, an exponent of 1.15 (n log n over this range is 1.10)."""

import os
import subprocess
import sys
import tempfile

import numpy as np

DBSCAN = """
import sys, time, numpy as np
from sklearn.cluster import DBSCAN
places = np.fromfile(sys.argv[1]).reshape(-1, 2)
begin = time.perf_counter()
labels = DBSCAN(eps=8.0, min_samples=3).fit(places).labels_
print(time.perf_counter() - begin)
alone = labels < 0
labels[alone] = labels.max() + 1 + np.arange(alone.sum())
labels.astype(np.uint32).tofile(sys.argv[2])
"""
MOST_RATIO, MOST_BYTES, MOST_EXPONENT = 0.5, 2 << 30, 1.15


def clusters_of_fifty(count, source):
    side = (count * 400.0) ** 0.5
    middles = source.uniform(0.0, side, (count // 50 + 1, 2))
    system = np.arange(count) // 50
    return middles[system] + source.normal(0.0, 12.0, (count, 2)), system


def glued_fields(count, program, folder):
    path = os.path.join(folder, "fields")
    subprocess.run([program, "--fields", str(count), path], check=True)
    rows = np.fromfile(path).reshape(-1, 3)
    return rows[:, :2], rows[:, 2].astype(np.int64)


def timed(command):
    """Seconds that the command printed, and its peak in bytes."""
    read, write = os.pipe()
    process = os.posix_spawn(command[0], command, os.environ, file_actions=[(os.POSIX_SPAWN_DUP2, write, 1)])
    os.close(write)
    with os.fdopen(read) as output:
        printed = output.read()
    _, status, usage = os.wait4(process, 0)
    if status != 0:
        sys.exit(f"coarse_beside_dbscan.py: {command[0]} ended with status {status}")
    return float(printed), usage.ru_maxrss * 1024


def index_with(truth, path):
    from sklearn.metrics import adjusted_rand_score
    return adjusted_rand_score(truth, np.fromfile(path, dtype=np.uint32))


def compare(name, places, truth, program, folder, source):
    order = source.permutation(len(places))
    places, truth = np.ascontiguousarray(places[order]), truth[order]
    path, ours, theirs = (os.path.join(folder, file) for file in ("places", "ours", "theirs"))
    places.tofile(path)
    mine, other = [], []
    for _ in range(3):
        mine.append(timed([program, "--partition", path, ours]))
        other.append(timed(["/usr/bin/python3", "-c", DBSCAN, path, theirs]))
    seconds, dbscan_seconds = min(mine)[0], min(other)[0]
    peak, dbscan_peak = max(p for _, p in mine), max(p for _, p in other)
    ratio = seconds / dbscan_seconds
    print(f"{name}, {len(places)} places: coarse {seconds:.2f} s, DBSCAN {dbscan_seconds:.2f} s, ratio {ratio:.2f}; "
          f"peak {peak / 2**20:.0f} MiB, DBSCAN {dbscan_peak / 2**20:.0f} MiB; "
          f"index {index_with(truth, ours):.3f}, DBSCAN {index_with(truth, theirs):.3f}", flush=True)
    return ratio <= MOST_RATIO and peak < MOST_BYTES


def exponent(count, program, folder, source):
    sizes = [size for size in (1000, 3162, 10000, 31623, 100000, 316228, 1000000) if size <= count]
    path, out = os.path.join(folder, "some"), os.path.join(folder, "labels")
    seconds = []
    for size in sizes:
        clusters_of_fifty(size, source)[0].tofile(path)
        seconds.append(min(timed([program, "--partition", path, out])[0] for _ in range(5)))
    slope = np.polyfit(np.log(sizes), np.log(seconds), 1)[0]
    print("cost: " + ", ".join(f"{size} {1000 * s:.1f} ms" for size, s in zip(sizes, seconds)) + f"; exponent {slope:.3f}")
    return slope <= MOST_EXPONENT


def main():
    if len(sys.argv) not in (2, 3):
        print("coarse_beside_dbscan.py: expected COARSE_BENCHMARK [PLACES]", file=sys.stderr)
        return 2
    program, count = os.path.abspath(sys.argv[1]), int(sys.argv[2]) if len(sys.argv) == 3 else 1_000_000
    source = np.random.default_rng(20250101)
    with tempfile.TemporaryDirectory() as folder:
        good = [compare("clusters of fifty", *clusters_of_fifty(count, source), program, folder, source),
                compare("glued fields", *glued_fields(count, program, folder), program, folder, source),
                exponent(count, program, folder, source)]
    return 0 if all(good) else 1


sys.exit(main())
