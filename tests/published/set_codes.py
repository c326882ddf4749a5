"""Check figures of sets on paper beside python-stdnum's ISO/IEC 7064 MOD 97-10. set_codes.py CORE_FIGURES: exit 1 with a line a difference."""

import random
import subprocess
import sys

from stdnum.iso7064 import mod_97_10

source = random.Random(7064)
names = [("".join(source.choice("ABCDEFGHIJKLMNOPQRSTUVWXYZ") for _ in range(source.choice((1, 1, 2)))), source.randint(1, 9999))
         for _ in range(500)]
told = "\n".join(f"{letter} {number}" for letter, number in names)
codes = subprocess.run([sys.argv[1], "set-codes"], input=told, capture_output=True, text=True, check=True).stdout.split()
found = [f"{len(codes)} codes of {len(names)}"] if len(codes) != len(names) else []
for (letter, number), code in zip(names, codes):
    plain = f"{letter}{number:02d}"
    expected = f"{plain}-{mod_97_10.calc_check_digits(plain)}"
    if code != expected:
        found.append(f"{code}, expected {expected}")
print("\n".join(found) or f"{len(names)} codes agree")
sys.exit(1 if found else 0)
