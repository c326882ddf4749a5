"""The files of the project, as the house rules look at them."""
import os
import re
import shutil
import subprocess

SOURCES = (".cpp", ".h")


class Tree:
    """Files below `root` by their path from it. Tracked ones where git knows them, else all but build output."""

    def __init__(self, root):
        self.root = root
        self.files = sorted(self._tracked() or self._walked())

    def _tracked(self):
        if not shutil.which("git") or not os.path.exists(os.path.join(self.root, ".git")):
            return []
        listed = subprocess.run(["git", "-c", "safe.directory=*", "-C", self.root, "ls-files", "-z", "--cached", "--others",
                                 "--exclude-standard"], capture_output=True, check=False)
        names = listed.stdout.decode().split("\0") if listed.returncode == 0 else []
        return [name for name in names if name and os.path.isfile(os.path.join(self.root, name))]

    def _walked(self):
        found = []
        for folder, folders, names in os.walk(self.root):
            folders[:] = [name for name in folders if name not in (".git", ".build", ".cache", "__pycache__")]
            found += [os.path.relpath(os.path.join(folder, name), self.root) for name in names]
        return found

    def below(self, *folders, ending=SOURCES):
        starts = tuple(folder + "/" for folder in folders)
        return [name for name in self.files if name.startswith(starts) and name.endswith(ending)]

    def text(self, name):
        with open(os.path.join(self.root, name), encoding="utf-8", errors="replace") as file:
            return file.read()

    def lines(self, name):
        return self.text(name).split("\n")

    def has(self, name):
        return os.path.exists(os.path.join(self.root, name))

    def is_text(self, name):
        with open(os.path.join(self.root, name), "rb") as file:
            return b"\0" not in file.read(8192)


def string_literals(source):
    """(line number, text) of the string literals of C++ source, comments left out."""
    token = re.compile(r'//[^\n]*|/\*.*?\*/|\'(?:\\.|[^\'\\\n])\'|"((?:\\.|[^"\\\n])*)"', re.S)
    return [(source.count("\n", 0, match.start()) + 1, match.group(1))
            for match in token.finditer(source) if match.group(1) is not None]
