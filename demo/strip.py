"""Puts drawings of the day beside each other, two in a row, each under its caption: the pictures in README.md.
strip.py OUT.svg CAPTION DRAWING.svg[#LEFT,TOP,WIDTH,HEIGHT] [CAPTION DRAWING.svg ...]; behind # the part of the drawing
that is shown, in its own units (millimetres of its page)."""
import pathlib
import re
import sys

side, high, gap, head = 124.0, 76.0, 6.0, 9.0  # millimetres


def placed(drawing, number, left, top):
    """The drawing in a frame of its own; its ids get the number, so that hatches of two drawings stay apart."""
    path, _, part = drawing.partition("#")
    text = pathlib.Path(path).read_text()
    opening, inside = re.search(r"<svg[^>]*>", text).group(0), re.sub(r"^.*?<svg[^>]*>|</svg>\s*$", "", text, flags=re.S)
    view_box = part.replace(",", " ") or re.search(r'viewBox="([^"]+)"', opening).group(1)
    wide, tall = (float(number) for number in view_box.split()[2:])
    scale = min(side / wide, high / tall)  # the frame is no larger than the part, so that it hides the rest
    kept = " ".join(re.findall(r'(?:font-family|stroke-linejoin|stroke-linecap|fill|stroke)="[^"]*"', opening))
    inside = re.sub(r'id="([^"]+)"', rf'id="p{number}-\1"', inside)
    inside = re.sub(r"url\(#", f"url(#p{number}-", inside)
    inside = re.sub(r"<title>.*?</title>|<desc>.*?</desc>", "", inside, flags=re.S)
    return (f'<svg x="{left + (side - scale * wide) / 2:g}" y="{top + head:g}" width="{scale * wide:g}" '
            f'height="{scale * tall:g}" viewBox="{view_box}" {kept}>{inside}</svg>')


def main():
    out, rest = sys.argv[1], sys.argv[2:]
    captions, drawings = rest[0::2], rest[1::2]
    width, row = 2 * side + gap, head + high + gap
    height = (len(drawings) + 1) // 2 * row - gap
    parts = [f'<svg xmlns="http://www.w3.org/2000/svg" width="{width:g}mm" height="{height:g}mm" '
             f'viewBox="0 0 {width:g} {height:g}">',
             f'<title>{"; ".join(captions)}</title>',
             f'<rect width="{width:g}" height="{height:g}" fill="#ffffff"/>']
    for at, (caption, drawing) in enumerate(zip(captions, drawings)):
        left, top = at % 2 * (side + gap), at // 2 * row
        parts.append(f'<text x="{left + 1:g}" y="{top + 6:g}" font-family="sans-serif" font-size="5" font-weight="bold">'
                     f"{at + 1}. {caption}</text>")
        parts.append(placed(drawing, at + 1, left, top))
    pathlib.Path(out).write_text("\n".join(parts) + "\n</svg>\n")


if __name__ == "__main__":
    main()
