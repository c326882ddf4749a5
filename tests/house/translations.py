"""translations.py ROOT: the Spanish texts beside the texts of the sources; prints what is wrong, exit 1 when anything is.

new, left over:  what cmake/update-translations.sh would add to or take from plugside_es.ts
unfinished:      texts without Spanish
placeholders:    %1, %n, {1} are the same in both; so are blanks at the ends, line breaks, file patterns, and keys in brackets
words:           nothing is called permitted or safe, in the translations and in the cautions
not marked:      a sentence in core or geo that stands outside of Words::tell and Words::later, or in app outside of tr
"""
import pathlib
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ET

# "not allowed", "no field may be handed out": such words only ever speak against something
PROMISES = re.compile(r"\b(permitid[oa]s?|segur[oa]s? de usar|es segur[oa]\b|inofensiv[oa]s?|autorizad[oa]s?|legal(es)?|legalmente)\b", re.I)
ENGLISH_PROMISES = re.compile(r"\b(is|are) (allowed|safe|legal|permitted|harmless)\b", re.I)
# literals with blanks that are no sentences: words that notes are searched for, files' own languages, numbers' patterns
NO_SENTENCES = re.compile(
    r"geo/read/(note_words|text_encoding|degrees_text)|geo/read/notes_grammar_(items|numbers|directions|draft)|core/simulation/|"
    r"app/batch/|app/window/look_sheet\.cpp|core/words/|core/mending/other_diggers\.cpp|geo/frame/vector_library\.cpp")
DATA = {
    # what files and other programs call things
    "SQLite format 3\\0", "Plane of the field", "ESRI Shapefile", "one animal", "two animals", "doubtful mound",
    "double mark", "reversed bearing", "other digger", "outside field", "earlier walk", "swapped coordinates", "lost sign",
    "degrees and minutes", "frozen receiver", "far from track", "compass offset", "set aside", "take back", "one mound",
    "turn fans", "same system", "different systems", "run here", "no run across", "not a gopher", "probe found",
    "probe nothing", "caught here", "plug side", "between mounds", "not told", "fan bearing", "no fan", "not a mound",
    "ground squirrel", "surface plug", "gopher mound", "the same mound as ", "note rule ", "play area", "photograph looks ",
    "the start is a forest", "Hole lies outside", "Interior is disconnected", "Too few", "Montana Dept of Agriculture",
    "PROJ cannot make the projection ", "half past", "year first", "day first", "month first", "not used", "keep clear", "feet and inches", "por los", "por las", "por la", "nothing is ever fetched from a network", "UTM zone ", "WGS 84",
}
# a person never reads these: SQL, parameters of libraries, XML
MACHINE = re.compile(r"SELECT |INSERT |CREATE |PRAGMA |\+proj=|<[a-z/?]|=YES|://|^ (name|lat|lon)=|_")


def messages_of(path):
    found = {}
    for context in ET.parse(path).getroot().findall("context"):
        for message in context.findall("message"):
            translation = message.find("translation")
            finished = translation.get("type") is None and bool(translation.text)
            found[(context.find("name").text, message.find("source").text)] = translation.text if finished else None
    return found


def shape_of(text):
    """What both languages share."""
    return (sorted(set(re.findall(r"%L?\d+|%n|\{\d\}", text))), text[:1].isspace(), text[-1:].isspace(),
            re.findall(r"\*\.\w+", text), sorted(re.findall(r"\(([A-Z]|F\d+|Ctrl\+[A-Z]|Esc)\)", text)), text.count("&"))


def wrong_pairs(messages):
    for (context, source), spanish in messages.items():
        where = f"{context}: {source!r}"
        if spanish is None:
            yield f"unfinished: {where}"
            continue
        if shape_of(source) != shape_of(spanish):
            yield f"placeholders: {where} and {spanish!r}"
        if PROMISES.search(spanish) or ENGLISH_PROMISES.search(source):
            yield f"words: {where} and {spanish!r}"


def compared(ours, fresh):
    for key in fresh.keys() - ours.keys():
        yield f"new: {key[0]}: {key[1]!r}"
    for key in ours.keys() - fresh.keys():
        yield f"left over: {key[0]}: {key[1]!r}"


def literals_of(code):
    """Each run of adjacent string literals, with the code before it."""
    token = re.compile(r'//[^\n]*|/\*.*?\*/|R"\((.*?)\)"|\'(?:[^\'\\]|\\.)+\'|"((?:[^"\\]|\\.)*)"', re.S)
    run, start, end = [], 0, 0
    for found in token.finditer(code):
        if found.group(2) is None:
            continue
        if run and code[end:found.start()].strip() == "":
            run.append(found.group(2))
        else:
            if run:
                yield "".join(run), code[max(0, start - 160):start]
            run, start = [found.group(2)], found.start()
        end = found.end()
    if run:
        yield "".join(run), code[max(0, start - 160):start]


MARKED = re.compile(r"(Words::tell|Words::later|\btr|QT_TRANSLATE_NOOP|QT_TR_NOOP|translate)\([^;{}]*$")


def unmarked(root):
    for layer in ("core", "geo", "app"):
        for path in sorted((root / layer).rglob("*.cpp")) + sorted((root / layer).rglob("*.h")):
            name = path.relative_to(root).as_posix()
            if NO_SENTENCES.search(name):
                continue
            yield from unmarked_in(name, path.read_text(encoding="utf-8"))


def unmarked_in(name, code):
    for text, before in literals_of(code):
        if not re.search(r"[a-z]{2,}[,;:]? [a-z]{2,}", text) or text in DATA or MACHINE.search(text):
            continue
        if not MARKED.search(before) and not before.rstrip().endswith("#include"):
            yield f"not marked: {name}: {text!r}"


def cautions(root):
    tables = {}
    for language in ("en", "es"):
        rows = [line.split("\t") for line in (root / f"resources/cautions.{language}.tsv").read_text(encoding="utf-8").splitlines()
                if line and not line.startswith("#")]
        tables[language] = [(row[0], row[1], row[5]) for row in rows]
        for row in rows:
            told = " ".join(row[2:4])
            if PROMISES.search(told) or ENGLISH_PROMISES.search(told):
                yield f"words: caution {row[0]}: {told!r}"
            if any(not cell.strip() for cell in row):
                yield f"unfinished: caution {row[0]} in {language}"
    if tables["en"] != tables["es"]:
        yield "new or left over: the cautions of the two languages are not the same ones in the same order"


def findings(root):
    ours = root / "resources/translations/plugside_es.ts"
    with tempfile.TemporaryDirectory() as scratch:
        fresh = pathlib.Path(scratch) / "fresh.ts"
        subprocess.run(["bash", str(root / "cmake/update-translations.sh"), str(fresh)], check=True)
        yield from compared(messages_of(ours), messages_of(fresh))
    yield from wrong_pairs(messages_of(ours))
    yield from cautions(root)
    yield from unmarked(root)


def rules_can_fail():
    """Each rule finds what it is for."""
    assert list(compared({("A", "old"): "x"}, {("A", "new"): None})) == ["new: A: 'new'", "left over: A: 'old'"]
    assert list(wrong_pairs({("A", "one"): None}))
    assert list(wrong_pairs({("A", "%1 of %2"): "%1 de %1"}))
    assert list(wrong_pairs({("A", "{1} of {2}"): "{1} de"}))
    assert list(wrong_pairs({("A", "keep (K)"): "conservar (C)"}))
    assert list(wrong_pairs({("A", " of %1"): "de %1"}))
    assert list(wrong_pairs({("A", "it is allowed"): "está bien"}))
    assert list(wrong_pairs({("A", "do it"): "está permitido"}))
    assert not list(wrong_pairs({("A", "{1} of {2} (K)"): "{2} de {1} (K)"}))
    assert list(unmarked_in("core/a.cpp", 'auto a = "two words of it" + b;'))
    assert list(unmarked_in("core/a.cpp", 'auto a = "two " "words of it";'))
    assert not list(unmarked_in("core/a.cpp", 'auto a = Words::tell("two words " "of it", {b});  // "no text of it"'))


if __name__ == "__main__":
    rules_can_fail()
    wrong = list(findings(pathlib.Path(sys.argv[1])))
    for line in wrong:
        print(line)
    print(f"translations: {len(wrong)} findings")
    sys.exit(1 if wrong else 0)
