"""Puts drawings of the day beside each other, each under its caption: the strip of pictures in README.md.
strip.py OUT.svg CAPTION DRAWING.svg [CAPTION DRAWING.svg ...]"""
import pathlib
import re
import sys

side, high, gap, head = 60.0, 46.0, 4.0, 7.0  # millimetres


def placed(drawing, number, left):
    """The drawing in a frame of its own; its ids get the number, so that hatches of two drawings stay apart."""
    text = pathlib.Path(drawing).read_text()
    opening, inside = re.search(r"<svg[^>]*>", text).group(0), re.sub(r"^.*?<svg[^>]*>|</svg>\s*$", "", text, flags=re.S)
    view_box = re.search(r'viewBox="([^"]+)"', opening).group(1)
    kept = " ".join(re.findall(r'(?:font-family|stroke-linejoin|stroke-linecap|fill|stroke)="[^"]*"', opening))
    inside = re.sub(r'id="([^"]+)"', rf'id="p{number}-\1"', inside)
    inside = re.sub(r"url\(#", f"url(#p{number}-", inside)
    inside = re.sub(r"<title>.*?</title>|<desc>.*?</desc>", "", inside, flags=re.S)
    return (f'<svg x="{left:g}" y="{head:g}" width="{side:g}" height="{high:g}" viewBox="{view_box}" '
            f'preserveAspectRatio="xMidYMin meet" {kept}>{inside}</svg>')


def main():
    out, rest = sys.argv[1], sys.argv[2:]
    captions, drawings = rest[0::2], rest[1::2]
    width = len(drawings) * (side + gap) - gap
    parts = [f'<svg xmlns="http://www.w3.org/2000/svg" width="{width:g}mm" height="{head + high:g}mm" '
             f'viewBox="0 0 {width:g} {head + high:g}">',
             f'<title>{"; ".join(captions)}</title>',
             f'<rect width="{width:g}" height="{head + high:g}" fill="#ffffff"/>']
    for number, (caption, drawing) in enumerate(zip(captions, drawings), 1):
        left = (number - 1) * (side + gap)
        parts.append(f'<text x="{left + 1:g}" y="4" font-family="sans-serif" font-size="3" font-weight="bold">'
                     f"{number}. {caption}</text>")
        parts.append(placed(drawing, number, left))
    pathlib.Path(out).write_text("\n".join(parts) + "\n</svg>\n")


if __name__ == "__main__":
    main()
