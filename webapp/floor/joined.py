"""One script and one stylesheet for a start: what is written in a hundred small files is asked for at once.

A phone pays for each file it opens, far more than for what stands in it. In the pack the floor's modules therefore lie
together, each as a function of its own under its own name, run when first needed and once. Under its own address each
leads there, so that a module is one and the same by whatever way it is come by. Where no worker stands between, a
browser loads the modules as they are written.
"""

from __future__ import annotations

import re
from functools import lru_cache
from pathlib import Path

import tree_sitter_javascript
from tree_sitter import Language, Node, Parser

from webapp.floor.modules import ENTRY, modules_of
from webapp.places import STATIC_DIR

ADDRESS = "/joined/floor.js"
STYLE = "style/app.css"
_HEAD = """const made = new Map();
export function need(name) {
  if (!made.has(name)) made.set(name, modules[name]());
  return made.get(name);
}
const modules = {
"""
_WIDE = re.compile("[\u0100-\uffff]")
_SHEET = re.compile(r"""@import url\("([^"]+)"\) layer\((\w+)\);""")
_PRELOAD = re.compile(r'\n *<link rel="modulepreload" href="([^"]+)">')
_HEAD_LINES = (
    f'  <link rel="modulepreload" href="{ADDRESS}">\n'
    '  <link rel="preload" href="/data/start.json" as="fetch" crossorigin>\n'
)
# Icons drawn from another file cost a document each; icons.js looks for this one.
SPRITE = "/static/icons/sprite.svg"
_SILENT = '<svg data-part="sprite" hidden aria-hidden="true"'


def joined_names() -> list[str]:
    """Return the modules that a form starts with, below static: nearly all, and what other pages share of them."""
    return sorted(modules_of("log"))


def joined_script(names: list[str]) -> str:
    """Return one module that holds all of these and gives any by name: `need("slate/queue.js")`."""
    whole = _HEAD + "".join(f'"{name}"() {{\n{_wrapped(name, names)}}},\n' for name in names) + "};\n"
    # One byte a character: a browser would keep, and read, twice as much for a single dash or thin space.
    return _WIDE.sub(lambda found: f"\\u{ord(found[0]):04x}", whole)


def stand_in(name: str) -> str:
    """Return what stands at a joined module's own address: the same names, from the joined script."""
    exported = sorted(_exports(_tree(_text(name)), name))
    keep = f"export const {{ {', '.join(exported)} }} = " if exported else ""
    return f'import {{ need }} from "{ADDRESS}";\n{keep}need("{name}");\n'


def with_joined(shell: str) -> str:
    """Return a shell that names the joined script and the data in its head, and has its icons in itself."""
    inside = {f"/static/{name}" for name in joined_names()} - {f"/static/{ENTRY}"}
    shell = _PRELOAD.sub(lambda found: "" if found[1] in inside else found[0], shell)
    shell = shell.replace("</head>", _HEAD_LINES + "</head>", 1).replace(f"{SPRITE}#", "#icon-")
    sprite = _text(SPRITE.removeprefix("/static/")).replace("<svg", _SILENT, 1).replace(' id="', ' id="icon-')
    return shell.replace("<body>", f"<body>\n{sprite}", 1)


def joined_style() -> str:
    """Return the stylesheet with all that it imports, each in its layer."""
    folder = (STATIC_DIR / STYLE).parent

    def whole(found: re.Match[str]) -> str:
        return f"@layer {found[2]} {{\n{(folder / found[1]).read_text(encoding='utf-8')}\n}}"

    return _SHEET.sub(whole, (STATIC_DIR / STYLE).read_text(encoding="utf-8"))


def is_in_style(name: str) -> bool:
    """Tell whether a file below static is part of the joined stylesheet."""
    return name.endswith(".css") and name != STYLE


def _wrapped(name: str, names: list[str]) -> str:
    source = _text(name).encode()
    edits: list[tuple[int, int, str]] = []
    tree = _tree(source.decode())
    for node in tree.children:
        if node.type == "import_statement":
            edits.append((node.start_byte, node.end_byte, _import(node, name)))
        elif node.type == "export_statement":
            edits.append(_export(node))
    edits += _later_imports(tree, name, names)
    for start, end, words in sorted(edits, reverse=True):
        source = source[:start] + words.encode() + source[end:]
    given = ", ".join(f"{out}: {own}" if out != own else out for out, own in sorted(_exports(tree, name).items()))
    return f"{source.decode().rstrip()}\nreturn {{ {given} }};\n"


def _import(node: Node, name: str) -> str:
    wanted = f'need("{_target(node.child_by_field_name("source"), name)}")'
    clause = next((child for child in node.children if child.type == "import_clause"), None)
    if clause is None:
        return f"{wanted};"
    (named,) = clause.children
    return f"const {{ {', '.join(f'{out}: {own}' for out, own in _pairs(named))} }} = {wanted};"


def _export(node: Node) -> tuple[int, int, str]:
    declared = node.child_by_field_name("declaration")
    return node.start_byte, declared.start_byte if declared is not None else node.end_byte, ""


def _exports(tree: Node, name: str) -> dict[str, str]:
    """Return the names a module gives, each with what stands behind it: its own name, or another module's."""
    found: dict[str, str] = {}
    for node in tree.children:
        if node.type != "export_statement":
            continue
        declared = node.child_by_field_name("declaration")
        if declared is None:
            (clause,) = (child for child in node.children if child.type == "export_clause")
            source = node.child_by_field_name("source")
            beside = f'need("{_target(source, name)}").' if source is not None else ""
            found |= {out: beside + own for own, out in _pairs(clause)}
        elif (named := declared.child_by_field_name("name")) is not None:
            found[_words(named)] = _words(named)
        else:
            parts = [child for child in declared.children if child.type == "variable_declarator"]
            found |= {one: one for part in parts if (one := _words(part.child_by_field_name("name")))}
    return found


def _later_imports(tree: Node, name: str, names: list[str]) -> list[tuple[int, int, str]]:
    found, todo = [], [tree]
    while todo:
        node = todo.pop()
        todo += node.children
        if node.type == "call_expression" and node.children[0].type == "import":
            target = _target(node.children[1].children[1], name)
            inside = f'Promise.resolve().then(() => need("{target}"))'
            found.append((node.start_byte, node.end_byte, inside if target in names else f'import("/static/{target}")'))
    return found


def _pairs(clause: Node) -> list[tuple[str, str]]:
    """Return (name before `as`, name after it) of an import or export clause."""
    specifiers = [child for child in clause.children if child.type.endswith("_specifier")]
    names = [(part.child_by_field_name("name"), part.child_by_field_name("alias")) for part in specifiers]
    return [(_words(own), _words(out or own)) for own, out in names]


def _target(source: Node | None, name: str) -> str:
    relative = _words(source).strip("\"'")
    return ((STATIC_DIR / name).parent / relative).resolve().relative_to(STATIC_DIR.resolve()).as_posix()


def _words(node: Node | None) -> str:
    return (node.text or b"").decode() if node is not None else ""


def _text(name: str) -> str:
    return Path(STATIC_DIR / name).read_text(encoding="utf-8")


@lru_cache(maxsize=512)
def _tree(text: str) -> Node:
    return Parser(Language(tree_sitter_javascript.language())).parse(text.encode()).root_node
