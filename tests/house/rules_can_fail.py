"""Shows that each house rule sees what it is there for: a small made-up tree is kept, each of its broken forms is not."""
import os
import sys
import tempfile

from rules import LAYER_TABLE, RULES, TOP_LEVEL
from tree import Tree

TABLE = "# id\tweight\tsentence\treason\tsource\ttag\nask\tmind\tAsk first.\tA reason.\tA source\tread\n"
KEPT = {
    ".ci/run": "true\n", "README.md": "".join(f"| `{name}` | what it holds |\n" for name in LAYER_TABLE),
    "DEVELOPERS.md": "How\n", "LICENSE": "GPL\n", "cmake/start.sh": "true\n", "cmake/check.sh": "true\n",
    "resources/cautions.en.tsv": TABLE,
    "core/units/metres.h": "#pragma once\n#include <cmath>\n",
    "geo/read/gpx.cpp": '#include "geo/read/gpx.h"\n#include <gdal.h>\n#include "core/units/metres.h"\n',
    "geo/write/layers.cpp": "".join(f'const char* {name} = "{name}";\n' for name in LAYER_TABLE),
    "app/canvas/view.cpp": '#include <QWidget>\n#include "geo/read/gpx.h"\n', "geo/read/gpx.h": "#pragma once\n",
    "tests/core/units/metres_test.cpp": "int main() {}\n",
}
BROKEN = [
    ("includes", {"app/window/a.cpp": "#include <QNetworkAccessManager>\n"}),
    ("includes", {"core/units/metres.h": "#pragma once\n#include <QString>\n"}),
    ("includes", {"core/units/metres.h": "#pragma once\n#include <QtCore/QString>\n"}),
    ("includes", {"core/units/metres.h": "#pragma once\n#include <ogr_api.h>\n"}),
    ("includes", {"core/units/metres.h": "#pragma once\n#include <gdal/cpl_error.h>\n"}),
    ("includes", {"core/units/metres.h": "#pragma once\n#include <proj.h>\n"}),
    ("includes", {"core/units/metres.h": "#pragma once\n#include <sqlite3.h>\n"}),
    ("includes", {"core/units/metres.h": "#pragma once\n#include <expat.h>\n"}),
    ("includes", {"core/units/metres.h": '#pragma once\n#include "geo/read/gpx.h"\n'}),
    ("includes", {"core/units/metres.h": '#pragma once\n#include "bearing.h"\n'}),
    ("includes", {"geo/read/gpx.cpp": '#include "geo/read/gpx.h"\n#include <QFile>\n'}),
    ("includes", {"geo/read/gpx.cpp": '#include "geo/read/gpx.h"\n#include "app/canvas/view.cpp"\n'}),
    ("includes", {"app/canvas/view.cpp": "#include <gdal_priv.h>\n"}),
    ("includes", {"app/canvas/view.cpp": "#include <proj.h>\n"}),
    ("includes", {"core/units/metres.cpp": '#include <cmath>\n#include "core/units/metres.h"\n'}),
    ("includes", {"core/units/metres.cpp": "int a;\n"}),
    ("lengths", {"core/units/long.cpp": "int a;\n" * 501}),
    ("lengths", {"core/units/long.cpp": "int f(int a) {\n" + "    ++a;\n" * 80 + "}\n"}),
    ("lengths", {"core/units/long.cpp": "int f(int a,\n      int b) {\n" + "    ++a;\n" * 80 + "}\n"}),
    ("wording", {"resources/cautions.en.tsv": TABLE.replace("Ask first.", "This bait is safe.")}),
    ("wording", {"resources/cautions.en.tsv": TABLE.replace("A reason.", "It is Allowed here.")}),
    ("wording", {"resources/cautions.en.tsv": TABLE.replace("\tread\n", "\n")}),
    ("wording", {"resources/cautions.en.tsv": TABLE.replace("\tread\n", "\theard\n")}),
    ("wording", {"resources/cautions.en.tsv": TABLE.replace("\tmind\t", "\tperhaps\t")}),
    ("wording", {"resources/cautions.en.tsv": None}),
    ("wording", {"app/canvas/view.cpp": 'const char* text = "Trapping is legal here.";\n'}),
    ("traces", {"core/units/a.h": "// see /wo" + "rk/shared/notes\n"}),
    ("traces", {"README.md": "git clone https://git" + "hub.com/x/y\n"}),
    ("traces", {"cmake/start.sh": "curl https://deb.deb" + "ian.org/debian\n"}),
    ("traces", {"core/units/a.h": "// TO" + "DO: write it\n"}),
    ("traces", {"tests/core/units/metres_test.cpp": "GTEST_SK" + "IP();\n"}),
    ("layout", {"notes.txt": "left lying\n"}),
    ("layout", {"scripts/run.sh": "true\n"}),
    ("layout", {"DEVELOPERS.md": None}),
    ("layout", {"core/units/BigName.h": "#pragma once\n"}),
    ("layout", {"core/units/bearing.h": "int a;\n"}),
    ("layout", {"tests/core/nowhere/a_test.cpp": "int main() {}\n"}),
    ("layer_table", {"README.md": "".join(f"| `{name}` | |\n" for name in LAYER_TABLE if name != "main_runs")}),
    ("layer_table", {"README.md": None}),
    ("layer_table", {"geo/write/layers.cpp": '// "mounds"\n'}),
]


def tree_of(files, root):
    for name, text in files.items():
        if text is None:
            continue
        os.makedirs(os.path.dirname(os.path.join(root, name)), exist_ok=True)
        with open(os.path.join(root, name), "w", encoding="utf-8") as file:
            file.write(text)
    return Tree(root)


def main():
    wrong = []
    for rule in RULES:
        with tempfile.TemporaryDirectory() as root:
            wrong += [f"{rule} finds in a tree that keeps it: {finding}" for finding in RULES[rule](tree_of(KEPT, root))]
        if not any(broken == rule for broken, _ in BROKEN):
            wrong.append(f"{rule} has no broken form here.")
    for rule, change in BROKEN:
        with tempfile.TemporaryDirectory() as root:
            findings = RULES[rule](tree_of({**KEPT, **change}, root))
        print(f"{rule}: {findings[0] if findings else 'nothing found'}")
        if not findings:
            wrong.append(f"{rule} did not see {change}")
    for sentence in wrong:
        print("FAILED", sentence)
    print(f"{len(BROKEN)} broken trees, {len(wrong)} failures, {len(TOP_LEVEL)} names at the top level.")
    return 1 if wrong else 0


sys.exit(main())
