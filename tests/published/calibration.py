"""Scores and bins of chances as core computes them, beside scikit-learn's brier_score_loss, log_loss and calibration_curve.
calibration.py CORE_FIGURES: exit 1 with a line for each figure that differs."""

import random
import subprocess
import sys

from sklearn.calibration import calibration_curve
from sklearn.metrics import brier_score_loss, log_loss

TOLERANCE = 1e-9


def figures(chances, outcomes):
    numbers = " ".join(f"{chance!r} {outcome}" for chance, outcome in zip(chances, outcomes))
    lines = subprocess.run([sys.argv[1], "calibration"], input=numbers, capture_output=True, text=True, check=True).stdout
    scores, *bins = [[float(word) for word in line.split()] for line in lines.splitlines()]
    return scores, bins


def differences(name, chances, outcomes):
    (brier, log), bins = figures(chances, outcomes)
    share_true, mean_chance = calibration_curve(outcomes, chances, n_bins=10, strategy="quantile")
    found = []
    if abs(brier - brier_score_loss(outcomes, chances)) > TOLERANCE:
        found.append(f"{name}: Brier score {brier}, expected {brier_score_loss(outcomes, chances)}")
    if abs(log - log_loss(outcomes, chances, labels=[0, 1])) > TOLERANCE:
        found.append(f"{name}: log score {log}, expected {log_loss(outcomes, chances, labels=[0, 1])}")
    if len(bins) != len(share_true):
        return found + [f"{name}: {len(bins)} bins, expected {len(share_true)}"]
    for ours, mean, share in zip(bins, mean_chance, share_true):
        if abs(ours[0] - mean) > TOLERANCE or abs(ours[1] - share) > TOLERANCE:
            found.append(f"{name}: bin {ours}, expected {mean} {share}")
    return found


source = random.Random(20250101)
found = []
for count in (25, 400, 1000, 2503):
    chances = [source.uniform(0.01, 0.99) for _ in range(count)]
    outcomes = [int(source.random() < chance ** 1.5) for chance in chances]
    found += differences(f"{count} chances", chances, outcomes)
    # shares of a few draws: many claims say the same
    shares = [min(max(round(chance * 8) / 8, 0.01), 0.99) for chance in chances]
    found += differences(f"{count} shares of eight draws", shares, outcomes)
    mostly_low = [0.01 if source.random() < 0.7 else chance for chance in chances]
    found += differences(f"{count} chances, most of them the least", mostly_low, outcomes)
for line in found:
    print(line)
sys.exit(1 if found else 0)
