#!/usr/bin/env python3
"""The libraries and programs and what each is built on, as CMake has them, in one picture.

    architecture.py OUT.svg     draws it
    architecture.py             fails if shared-core/architecture.svg is not what would be drawn now

Arrows that follow from others are left out: who uses trim also has what trim is built on.
"""
import pathlib
import re
import sys

root = pathlib.Path(__file__).resolve().parents[2]
picture = root / "shared-core/architecture.svg"

# What a folder's target is called where it is not the folder's own name.
shown = {"field_model": "mobile/model", "field_screens": "mobile/screens", "field_start": "lapwright-field",
         "model": "shop/model", "shop_app": "lapwright-shop", "lapwright": "lapwright", "acts": "shop/acts",
         "print": "shop/print", "paint": "mobile/paint", "speech": "mobile/speech", "look": "mobile/look",
         "store": "mobile/store"}
programs = {"field_start", "shop_app", "lapwright"}
width, row, box_height, letter = 1180, 74, 30, 7.4


def dependencies():
    """Target -> targets it links, of every lapwright_library, lapwright_qml_module and the command."""
    found = {}
    for path in sorted(root.glob("shared-core/*/CMakeLists.txt")) + sorted(root.glob("mobile/*/CMakeLists.txt")) + \
            sorted(root.glob("shop/*/CMakeLists.txt")):
        text = path.read_text()
        for name, body in re.findall(r"lapwright_(?:library|qml_module)\((\w+)(.*?)\)\n", text, re.S):
            found[name] = set(re.findall(r"lapwright::(\w+)", body))
        for name, body in re.findall(r"target_link_libraries\((lapwright) PRIVATE(.*?)\)\n", text, re.S):
            found[name] = set(re.findall(r"lapwright::(\w+)", body))
    return found


def reachable(graph, start):
    seen, open_nodes = set(), list(graph[start])
    while open_nodes:
        node = open_nodes.pop()
        if node not in seen:
            seen.add(node)
            open_nodes.extend(graph[node])
    return seen


def reduced(graph):
    """Without the arrows that follow from others."""
    return {node: {near for near in users
                   if not any(near in reachable(graph, other) for other in users if other != near)}
            for node, users in graph.items()}


def levels(graph):
    """How many steps each stands above what is built on nothing."""
    heights = {}

    def height(node):
        if node not in heights:
            heights[node] = 1 + max((height(near) for near in graph[node]), default=-1)
        return heights[node]

    for node in graph:
        height(node)
    rows = [[] for _ in range(max(heights.values()) + 1)]
    for node in sorted(graph):
        rows[heights[node]].append(node)
    return rows


def places(graph, rows):
    """Left to right by where their arrows go, in a few passes up and down."""
    middle = {node: (index + 1) / (len(line) + 1) for line in rows for index, node in enumerate(line)}
    users = {node: [other for other in graph if node in graph[other]] for node in graph}
    for step in range(8):
        for line in rows if step % 2 == 0 else reversed(rows):
            near = {node: (list(graph[node]) if step % 2 == 0 else users[node]) or [node] for node in line}
            line.sort(key=lambda node: (sum(middle[other] for other in near[node]) / len(near[node]), node))
            for index, node in enumerate(line):
                middle[node] = (index + 1) / (len(line) + 1)
    return middle


def draw():
    graph = reduced(dependencies())
    rows = levels(graph)
    middle = places(graph, rows)
    height = len(rows) * row + 20
    at = {node: (middle[node] * width, height - 30 - index * row) for index, line in enumerate(rows) for node in line}
    lines = [f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width} {height}" font-family="sans-serif" '
             f'font-size="13">', "<title>What is built on what in Lapwright</title>",
             f'<rect width="{width}" height="{height}" fill="#ffffff"/>']
    for node, users in sorted(graph.items()):
        x, y = at[node]
        for near in sorted(users):
            to_x, to_y = at[near]
            lines.append(f'<path d="M{x:.0f},{y + box_height / 2:.0f} C{x:.0f},{y + row * 0.55:.0f} {to_x:.0f},'
                         f'{to_y - row * 0.55:.0f} {to_x:.0f},{to_y - box_height / 2:.0f}" fill="none" '
                         f'stroke="#5b6b66" stroke-width="1.2"/>')
    for node in sorted(graph):
        x, y = at[node]
        name = shown.get(node, node)
        wide = len(name) * letter + 18
        fill = "#0f5c52" if node in programs else "#cfe4dd" if "/" not in name else "#f3dfcf"
        ink = "#ffffff" if node in programs else "#15211f"
        lines.append(f'<rect x="{x - wide / 2:.0f}" y="{y - box_height / 2:.0f}" width="{wide:.0f}" '
                     f'height="{box_height}" fill="{fill}" stroke="#15211f"/>')
        lines.append(f'<text x="{x:.0f}" y="{y + 4.5:.1f}" text-anchor="middle" fill="{ink}">{name}</text>')
    return "\n".join(lines + ["</svg>", ""])


def main():
    if len(sys.argv) > 1:
        pathlib.Path(sys.argv[1]).write_text(draw())
        return 0
    if picture.read_text() == draw():
        print("Totals: 1 passed, 0 failed, 0 skipped")
        return 0
    print("shared-core/architecture.svg is not what CMake has: tests/tools/architecture.py shared-core/architecture.svg")
    return 1


if __name__ == "__main__":
    sys.exit(main())
