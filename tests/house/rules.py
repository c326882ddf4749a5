"""The house rules that a program can judge. Each takes a Tree and gives a list of sentences, empty when the rule is kept."""
import re

from tree import SOURCES, string_literals

LAYERS = ("core", "geo", "app")

QT = r"Q[A-Z]\w*|Qt\w*/.*|q[a-z]+\.h"
COORDINATES_AND_FILES = r"(gdal|ogr|cpl|gnm|vrt)\w*\.h(pp)?|gdal/.*|proj(_\w+)?\.h|sqlite3(ext)?\.h|expat\w*\.h|spatialite.*|geotiff.*"
FORBIDDEN_INCLUDES = {
    "core": [QT, COORDINATES_AND_FILES, r"geo/.*", r"app/.*", r"tests/.*"],
    "geo": [QT, r"geos_c\.h|geos/.*", r"app/.*", r"tests/.*"],
    "app": [COORDINATES_AND_FILES, r"geos_c\.h|geos/.*", r"nanoflann\.hpp", r"tests/.*"],
}
# What can ask anyone for anything, and the one source that may.
NETWORK = r"(QtNetwork/)?(Q(Network|Tcp|Udp|Ssl|LocalSocket|Abstract(Socket|NetworkCache)|Dns|Http|Host)\w*)|sys/socket\.h|curl/.*"
SPEAKS_TO_SERVERS = {"app/session/server_imagery.cpp"}


def includes(tree):
    """Arrows run app -> geo -> core, each library is spoken to from one layer only, and a source begins with its own header."""
    found = []
    for layer in LAYERS:
        for name in tree.below(layer):
            own = name[:-len(".cpp")] + ".h"
            if name.endswith(".cpp") and tree.has(own):
                # so that its header is compiled with nothing before it: tests/house compiles only the others alone
                first = re.search(r'^\s*#\s*include\s*[<"]([^>"]+)[>"]', tree.text(name), re.M)
                if not first or first.group(1) != own:
                    found.append(f"{name}: includes {first.group(1) if first else 'nothing'} first, expected \"{own}\".")
            for number, line in enumerate(tree.lines(name), 1):
                include = re.match(r'\s*#\s*include\s*([<"])([^>"]+)[>"]', line)
                if not include:
                    continue
                what = include.group(2)
                if any(re.fullmatch(pattern, what) for pattern in FORBIDDEN_INCLUDES[layer]):
                    found.append(f"{name}, line {number}: {layer} must not include {what}.")
                if re.fullmatch(NETWORK, what) and name not in SPEAKS_TO_SERVERS:
                    found.append(f"{name}, line {number}: only {', '.join(SPEAKS_TO_SERVERS)} may include {what}.")
                generated = what.endswith(".moc")
                if include.group(1) == '"' and not generated and not tree.has(what):
                    found.append(f"{name}, line {number}: \"{what}\" is no path from the project's root.")
    return found


# Sources that are tables and may be as long as the table is.
LONG_TABLES = set()
MOST_LINES = 500
MOST_FUNCTION_LINES = 80


def lengths(tree):
    """No source over 500 lines, no function that a screen does not hold; tables aside."""
    found = []
    for name in tree.below("core", "geo", "app", "tests", "cmake", ending=SOURCES + (".py", ".sh", ".cmake", ".R")):
        lines = tree.lines(name)
        if len(lines) - 1 > MOST_LINES and name not in LONG_TABLES:
            found.append(f"{name}: {len(lines) - 1} lines, at most {MOST_LINES} are expected.")
        if not name.endswith(".cpp"):
            continue
        start = None
        for number, line in enumerate(lines, 1):
            # in the house's format a function's head starts at the margin, and only its closing brace stands there alone
            if re.match(r"[A-Za-z_]", line):
                start = number
            elif line == "}" and start is not None:
                if number - start + 1 > MOST_FUNCTION_LINES:
                    found.append(f"{name}, line {start}: a function of {number - start + 1} lines, at most "
                                 f"{MOST_FUNCTION_LINES} are expected.")
                start = None
    return found


# What no sentence of the program may claim of a method.
CLAIMS = re.compile(r"\b(safe|safely|safest|harmless|allowed|permitted|legal|lawful|approved|no risk|without risk|risk-free|"
                    r"non-?toxic|humane)\b", re.I)
TAGS = {"read", "second-hand", "memory", "practice", "ours"}
WEIGHTS = {"stop", "hold_back", "mind"}


def wording(tree):
    """Cautions say what speaks against a method; nothing that a person reads says that one is allowed or safe."""
    found = []
    tables = [name for name in tree.files if re.fullmatch(r"resources/cautions\.\w+\.tsv", name)]
    if not tables:
        found.append("resources: no table of cautions.")
    for name in tables:
        for number, line in enumerate(tree.lines(name), 1):
            if not line or line.startswith("#"):
                continue
            columns = line.split("\t")
            if len(columns) != 6 or not all(columns):
                found.append(f"{name}, line {number}: {len(columns)} columns, 6 filled ones are expected.")
                continue
            if columns[1] not in WEIGHTS or columns[5] not in TAGS:
                found.append(f"{name}, line {number}: weight {columns[1]}, tag {columns[5]}.")
            found += [f"{name}, line {number}: \"{claim.group(0)}\" claims too much."
                      for claim in CLAIMS.finditer(columns[2] + " " + columns[3])]
    for name in tree.below("core", "geo", "app"):
        for number, text in string_literals(tree.text(name)):
            for claim in CLAIMS.finditer(text):
                if " " in text:
                    found.append(f"{name}, line {number}: \"{claim.group(0)}\" in a sentence claims too much.")
    return found


# Put together here so that this file does not hold what it looks for.
MACHINE_PATHS = [r"(?<![\w.$})/-])/" + folder + r"/[\w.]" for folder in ("work", "home", "root", "Users", "tmp/\\w")]
REGISTRY_HOSTS = [r"\b" + host.replace(" ", r"\.") + r"\b" for host in
                  ("deb debian org", "security debian org", "snapshot debian org", "pypi org", "files pythonhosted org",
                   "registry npmjs org", "npmjs com", "proxy golang org", "cran r-project org", "crates io", "docker io",
                   "ghcr io", "github com", "gitlab com", "packages cloud google com", "artifact" + "registry")]
LEFT_OVERS = [r"\bTO" + r"DO\b", r"\bFIX" + r"ME\b", r"\bXX" + r"X\b", r"\bfor no" + r"w\b", r"GTEST_SK" + r"IP", r"\bDISABL" + r"ED_"]


def traces(tree):
    """No path of a machine, no registry's host, nothing left for later in any file."""
    found = []
    patterns = [re.compile(pattern) for pattern in MACHINE_PATHS + REGISTRY_HOSTS + LEFT_OVERS]
    for name in tree.files:
        if name == "LICENSE" or not tree.is_text(name):
            continue
        for number, line in enumerate(tree.lines(name), 1):
            for pattern in patterns:
                match = pattern.search(line)
                if match:
                    found.append(f"{name}, line {number}: \"{match.group(0)}\" does not belong in the project.")
    return found


TOP_LEVEL = {".ci", ".clang-format", ".gitattributes", ".gitignore", "CMakeLists.txt", "CMakePresets.json", "DEVELOPERS.md",
             "LICENSE", "README.md", "app", "cmake", "core", "geo", "resources", "sample-projects", "tests"}
NEEDED = {"README.md", "DEVELOPERS.md", "LICENSE", "cmake/start.sh", "cmake/check.sh", ".ci/run"}


def layout(tree):
    """The top level holds what the house has and no more; names are plain; tests stand where what they test stands."""
    found = [f"{name}: does not belong at the top level."
             for name in sorted({name.split("/")[0] for name in tree.files} - TOP_LEVEL)]
    found += [f"{name}: is missing." for name in sorted(NEEDED - set(tree.files))]
    for name in tree.below("core", "geo", "app", "tests", ending=SOURCES):
        if not re.fullmatch(r"[a-z0-9_/]+\.(cpp|h)", name):
            found.append(f"{name}: file names are lower case with underscores.")
        if name.endswith(".h") and "#pragma once" not in tree.text(name):
            found.append(f"{name}: a header begins with #pragma once.")
    for name in tree.below("tests/core", "tests/geo", "tests/app", ending="_test.cpp"):
        room = name[len("tests/"):].rsplit("/", 1)[0]
        if not tree.below(room, ending=SOURCES):
            found.append(f"{name}: tests a room that does not exist, {room}.")
    return found


def layers_written(tree):
    """Names of layers that geo/write writes: string literals that are names of the fixed table."""
    texts = {text for name in tree.below("geo/write") for _, text in string_literals(tree.text(name))}
    return texts & set(LAYER_TABLE)


LAYER_TABLE = ("mounds", "burrow_systems", "main_runs", "probe_points", "set_points", "walk_tracks", "field_boundaries", "barriers",
               "keep_clear_areas", "unwalked_areas", "rounds", "system_alternatives", "survey_summary")


def layer_table(tree):
    """README.md tells of every layer that is handed out, and of no other."""
    if not tree.has("README.md"):
        return ["README.md: is missing."]
    rows = re.findall(r"^\|\s*`(\w+)`", tree.text("README.md"), re.M)
    told = [row for row in rows if row in LAYER_TABLE]
    found = [f"README.md: layer {name} has no row in a table." for name in LAYER_TABLE if name not in told]
    found += [f"README.md: layer {name} has {told.count(name)} rows." for name in sorted(set(told)) if told.count(name) > 1]
    found += [f"geo/write: layer {name} is not written." for name in LAYER_TABLE if name not in layers_written(tree)]
    return found


RULES = {rule.__name__: rule for rule in (includes, lengths, wording, traces, layout, layer_table)}
