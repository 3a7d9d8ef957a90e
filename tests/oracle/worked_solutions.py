#!/usr/bin/env python3
"""Puts answers of worked solutions forward, with SymPy.

Usage: worked_solutions.py < figures

Reads figures, one line a fact, columns separated by tabs:
  figure   KIND  SHAPE  COUNT  POINTS  UNIT   a new figure; points as "x y;x y" in UNIT, a dash for none
  given    MEASURE  TEXT                 as the lesson writes it: "6 cm", "2 ft 6 in", "72√2 cm^3"
  answer   MEASURE  UNIT  FORM  VALUE  SHOWN   FORM is "exact" or "digits", SHOWN the answer as the page writes it

From the lengths that fix the figure, given ones as given and the others as answered, every measure is worked out from
coordinates. It must be what is given and what is answered, to 30 digits. Answers shown must be the value rounded.
Prints a line for each answer or given that differs, and "checked N" at the end.
"""

import re
import sys
from fractions import Fraction

import sympy
from sympy import Rational, cos, cot, pi, sin, sqrt

DIGITS = 50
TOLERANCE = sympy.Float("1e-30", DIGITS)
# In centimeters; NIST Handbook 44, Appendix C: 1 in is 2.54 cm.
LENGTHS = {
    "": Rational(1),
    "mm": Rational(1, 10),
    "cm": Rational(1),
    "m": Rational(100),
    "in": Rational(254, 100),
    "ft": Rational(254 * 12, 100),
    "yd": Rational(254 * 36, 100),
}


# ---- reading ----


def number_of(text):
    """"5 1/3", "72√2", "12 + 3√5", "√(25 + 10√5)/2" as a SymPy number."""
    text = text.strip().replace("\u2212", "-").replace(" \u00b7 ", "*").replace("\u00f7", "/")
    mixed = re.fullmatch(r"(\d+) (\d+)/(\d+)", text)
    if mixed:
        whole, above, below = (int(part) for part in mixed.groups())
        return whole + Rational(above, below)
    if re.fullmatch(r"-?[\d.]+(/\d+)?", text):
        plain = Fraction(text)
        return Rational(plain.numerator, plain.denominator)
    text = re.sub(r"(\d+) (\d+)/(\d+)", r"(\1+\2/\3)", text)
    text = re.sub(r"([\d)])\s*(√|π|\()", r"\1*\2", text)
    text = re.sub(r"√(\d+(?:\.\d+)?)", r"sqrt(\1)", text).replace("√", "sqrt").replace("π", "pi")
    text = re.sub(r"\)\s*(sqrt|pi|\()", r")*\1", text)
    text = re.sub(r"sqrt\*\(", "sqrt(", text)
    return sympy.sympify(text, rational=True)


def unit_of(text):
    match = re.fullmatch(r"([a-z]*)(?:\^([23]))?", text)
    if not match:
        raise ValueError("no unit: " + text)
    return LENGTHS[match.group(1)] ** int(match.group(2) or 1)


def quantity_of(text):
    total = Rational(0)
    for amount, unit in re.findall(r"([^a-z^]+?)\s*((?:mm|cm|m|in|ft|yd)(?:\^[23])?|$)", text):
        if amount.strip():
            total += number_of(amount) * unit_of(unit)
    return total


# ---- the figures, from coordinates ----


def distance(a, b):
    return sqrt((b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2)


def twice_area(corners):
    ahead = corners[1:] + corners[:1]
    return sum(a[0] * b[1] - a[1] * b[0] for a, b in zip(corners, ahead))


def centroid(corners):
    ahead = corners[1:] + corners[:1]
    cross = [a[0] * b[1] - a[1] * b[0] for a, b in zip(corners, ahead)]
    whole = 3 * sum(cross)
    return tuple(sum((a[i] + b[i]) * c for a, b, c in zip(corners, ahead, cross)) / whole for i in (0, 1))


def distance_to_line(point, a, b):
    across = (b[0] - a[0]) * (point[1] - a[1]) - (b[1] - a[1]) * (point[0] - a[0])
    return sympy.Abs(across) / distance(a, b)


class Base:
    """Corners counterclockwise, the names of the sides, and what else has a name."""

    def __init__(self, corners, sides, more=None, groups=None):
        self.corners = corners
        self.sides = sides
        self.more = more or {}
        self.groups = groups  # of equal slant heights; none: each its own

    def area(self):
        return twice_area(self.corners) / 2

    def lengths(self):
        ahead = self.corners[1:] + self.corners[:1]
        return [distance(a, b) for a, b in zip(self.corners, ahead)]


class RegularBase:
    """A regular polygon by the angle at its center."""

    def __init__(self, count, side):
        self.count = count
        self.side = side
        self.apothem = side / 2 * cot(pi / count)
        self.radius = side / 2 / sin(pi / count)
        self.sides = ["base.side"] * count
        self.more = {"base.apothem": self.apothem}

    def area(self):
        return self.count * self.side * self.apothem / 2

    def lengths(self):
        return [self.side] * self.count


def square(v):
    s = v("base.side")
    return Base([(0, 0), (s, 0), (s, s), (0, s)], ["base.side"] * 4, groups=[0, 0, 0, 0])


def rectangle(v):
    a, b = v("base.length"), v("base.width")
    return Base([(0, 0), (a, 0), (a, b), (0, b)], ["base.length", "base.width"] * 2, groups=[1, 2, 1, 2])


def right_triangle(v):
    a, b = v("base.legs.1"), v("base.legs.2")
    return Base([(0, 0), (a, 0), (0, b)], ["base.legs.1", "base.hypotenuse", "base.legs.2"])


def equilateral_triangle(v):
    s = v("base.side")
    t = s * sqrt(3) / 2
    return Base([(0, 0), (s, 0), (s / 2, t)], ["base.side"] * 3, {"base.height": t}, [0, 0, 0])


def isosceles_triangle(v):
    b, t = v("base.base"), v("base.height")
    return Base([(0, 0), (b, 0), (b / 2, t)], ["base.base", "base.leg", "base.leg"], {}, [1, 2, 2])


def triangle(v):
    b, a, c, t = v("base.base"), v("base.sides.2"), v("base.sides.3"), v("base.height")
    foot = (b ** 2 + c ** 2 - a ** 2) / (2 * b)
    return Base([(0, 0), (b, 0), (foot, t)], ["base.base", "base.sides.2", "base.sides.3"])


def parallelogram(v):
    b, c, t = v("base.base"), v("base.side"), v("base.height")
    lean = sqrt(c ** 2 - t ** 2)
    return Base([(0, 0), (b, 0), (b + lean, t), (lean, t)], ["base.base", "base.side"] * 2, {"base.height": t},
                [1, 2, 1, 2])


def rhombus(v):
    if v("base.diagonals.1") is not None:
        d, e = v("base.diagonals.1") / 2, v("base.diagonals.2") / 2
        height = 4 * d * e / 2 / sqrt(d ** 2 + e ** 2)
        return Base([(0, -e), (d, 0), (0, e), (-d, 0)], ["base.side"] * 4,
                    {"base.height": height, "base.diagonals.1": 2 * d, "base.diagonals.2": 2 * e}, [0] * 4)
    s, t = v("base.side"), v("base.height")
    lean = sqrt(s ** 2 - t ** 2)
    return Base([(0, 0), (s, 0), (s + lean, t), (lean, t)], ["base.side"] * 4, {"base.height": t}, [0] * 4)


def trapezoid(v):
    p, q, t = v("base.bases.1"), v("base.bases.2"), v("base.height")
    c, d = v("base.legs.1"), v("base.legs.2")
    # Right and left leg; the left one's slope follows from both.
    lean = (p - q) / 2 if d is None else ((p - q) ** 2 + d ** 2 - c ** 2) / (2 * (p - q))
    left = "base.legs.1" if d is None else "base.legs.2"
    return Base([(0, 0), (p, 0), (lean + q, t), (lean, t)], ["base.bases.1", "base.legs.1", "base.bases.2", left],
                {"base.height": t})


SHAPES = {
    "square": square,
    "rectangle": rectangle,
    "right triangle": right_triangle,
    "equilateral triangle": equilateral_triangle,
    "isosceles triangle": isosceles_triangle,
    "triangle": triangle,
    "parallelogram": parallelogram,
    "rhombus": rhombus,
    "trapezoid": trapezoid,
}


def base_of(figure, v):
    if figure.shape == "regular polygon":
        return RegularBase(figure.count, v("base.side"))
    if figure.shape == "polygon":
        corners = [tuple(number_of(x) * figure.point_unit for x in point.split()) for point in figure.points]
        if twice_area(corners) < 0:
            corners.reverse()
        return Base(corners, ["base.side." + str(i + 1) for i in range(len(corners))])
    return SHAPES[figure.shape](v)


def base_measures(base):
    all_of = [(name, length) for name, length in zip(base.sides, base.lengths())]
    all_of += list(base.more.items())
    all_of += [("base_area", base.area()), ("perimeter", sum(base.lengths()))]
    if isinstance(base, Base) and len(base.corners) == 3:
        longest = base.lengths()[0]
        all_of.append(("base.height", 2 * base.area() / longest))
    return all_of


def prism(figure, v):
    base, h = base_of(figure, v), v("height")
    area, perimeter = base.area(), sum(base.lengths())
    return base_measures(base) + [("height", h), ("lateral_area", perimeter * h),
                                  ("surface_area", 2 * area + perimeter * h), ("volume", area * h)]


def slants_on_coordinates(figure, v, base, h):
    foot = centroid(base.corners)
    if v("apex_over.1") is not None:
        a, b = base.corners[0], base.corners[1]
        side = distance(a, b)
        ahead = ((b[0] - a[0]) / side, (b[1] - a[1]) / side)
        along, across = v("apex_over.1"), v("apex_over.2")
        foot = (a[0] + along * ahead[0] - across * ahead[1], a[1] + along * ahead[1] + across * ahead[0])
    groups = base.groups if base.groups and v("apex_over.1") is None else range(1, len(base.corners) + 1)
    found = []
    for i, group in enumerate(groups):
        off = distance_to_line(foot, base.corners[i], base.corners[(i + 1) % len(base.corners)])
        name = "slant_height" if group == 0 else "slant_heights." + str(group)
        found.append((name, sqrt(h ** 2 + off ** 2)))
    edges = [("lateral_edge", sqrt(h ** 2 + (c[0] - foot[0]) ** 2 + (c[1] - foot[1]) ** 2)) for c in base.corners]
    return found, edges


def pyramid(figure, v):
    base, h = base_of(figure, v), v("height")
    if isinstance(base, RegularBase):
        slants = [("slant_height", sqrt(h ** 2 + base.apothem ** 2))] * base.count
        edges = [("lateral_edge", sqrt(h ** 2 + base.radius ** 2))]
    else:
        slants, edges = slants_on_coordinates(figure, v, base, h)
    lateral = sum(side * slant / 2 for side, (_, slant) in zip(base.lengths(), slants))
    return base_measures(base) + slants + edges + [("height", h), ("lateral_area", lateral),
                                                   ("surface_area", base.area() + lateral),
                                                   ("volume", base.area() * h / 3)]


def cube(_, v):
    s = v("edge")
    return [("edge", s), ("surface_area", 6 * s ** 2), ("volume", s ** 3)]


def rectangular_prism(_, v):
    a, b, h = v("length"), v("width"), v("height")
    lateral = 2 * h * (a + b)
    return [("length", a), ("width", b), ("height", h), ("perimeter", 2 * (a + b)), ("base_area", a * b),
            ("lateral_area", lateral), ("surface_area", 2 * a * b + lateral), ("volume", a * b * h)]


def regular_polyhedron(figure, v):
    """By the angle between its faces. Source: H. S. M. Coxeter, Regular Polytopes, 2.4 (from memory)."""
    s = v("edge")
    p, q = {4: (3, 3), 6: (4, 3), 8: (3, 4), 12: (5, 3), 20: (3, 5)}[figure.count]
    apothem = s / 2 * cot(pi / p)
    surface = figure.count * p * s * apothem / 2
    half_angle = cos(pi / q) / sin(pi / p)  # its sine
    inradius = apothem * half_angle / sqrt(1 - half_angle ** 2)
    inner = ("face_height", 3 * apothem) if p == 3 else ("apothem", apothem)
    return [("edge", s), inner, ("surface_area", surface), ("volume", surface * inradius / 3)]


KINDS = {
    "cube": cube,
    "rectangular prism": rectangular_prism,
    "regular polyhedron": regular_polyhedron,
    "prism": prism,
    "pyramid": pyramid,
}


# ---- comparing ----


class Figure:
    def __init__(self, kind, shape, count, points, point_unit):
        self.text = " ".join((kind, shape, count, points))
        self.kind, self.shape = kind, shape
        self.count = int(count)
        self.points = [] if points == "-" else points.split(";")
        self.point_unit = unit_of(point_unit)
        self.given, self.answers, self.shown = {}, {}, {}

    def value(self, name):
        value = self.given[name] if name in self.given else self.answers.get(name)
        # Sums of roots under roots would take SymPy minutes: they are put forward with 60 digits.
        return sympy.N(value, 60) if isinstance(value, sympy.Add) else value


def differs(a, b):
    a, b = sympy.N(a, DIGITS), sympy.N(b, DIGITS)
    return not sympy.Abs(a - b) <= TOLERANCE * sympy.Abs(b)


def shown_wrongly(value, shown):
    rounded = shown.startswith("\u2248")
    digits = re.sub(r"[^\d.].*", "", shown.lstrip("\u2248 "))
    if not rounded:
        return False
    places = len(digits.partition(".")[2])
    return sympy.Abs(sympy.N(value, DIGITS) - number_of(digits)) > Rational(1, 2 * 10 ** places) + TOLERANCE


def judge(figure):
    measures = KINDS[figure.kind](figure, figure.value)
    names = {name for name, _ in measures}
    where = figure.text + ", given " + ", ".join(f"{n} {t}" for n, t in figure.given.items())
    for name in list(figure.given) + list(figure.answers):
        if name not in names and not name.startswith("apex_over"):
            print(f"{where}: {name} was not compared")
    for name, forward in measures:
        if name in figure.given and differs(forward, figure.given[name]):
            print(f"{where}: put forward, {name} comes to {sympy.N(forward, 15)}")
        if name in figure.answers:
            ours = figure.answers[name]
            if differs(forward, ours):
                print(f"{where}: {name} is answered {sympy.N(ours, 15)}, and forward it is {sympy.N(forward, 15)}")
            if forward.is_Rational and not ours.is_Rational:
                print(f"{where}: {name} is {forward}, which was not found to be a ratio")
            amount, shown = figure.shown[name]
            if shown_wrongly(amount, shown):
                print(f"{where}: {name} is {sympy.N(amount, 15)}, not {shown}")
    return len(figure.answers)


def main():
    figure, checked = None, 0
    for line in sys.stdin.read().splitlines():
        word, *columns = line.split("\t")
        if word == "figure":
            checked += judge(figure) if figure else 0
            figure = Figure(*columns)
        elif word == "given":
            figure.given[columns[0]] = quantity_of(columns[1])
        else:
            name, unit, form, value, shown = columns
            amount = sympy.Float(value, 60) if form == "digits" else number_of(value)
            figure.answers[name] = amount * unit_of(unit)
            figure.shown[name] = (amount, shown)
    checked += judge(figure) if figure else 0
    print("checked", checked)


if __name__ == "__main__":
    main()
