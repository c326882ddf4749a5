"""keep_rule.py RULE ROOT: prints what breaks the rule below ROOT; exit 1 when anything does."""
import sys

from rules import RULES
from tree import Tree

findings = RULES[sys.argv[1]](Tree(sys.argv[2]))
for finding in findings:
    print(finding)
print(f"{sys.argv[1]}: {len(findings)} findings. {RULES[sys.argv[1]].__doc__}")
sys.exit(1 if findings else 0)
