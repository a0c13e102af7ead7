"""Makes the reference table of engine/number by arbitrary precision (mpmath, 60 digits and more).

    python3 make-table.py > table.json      the table (needs mpmath; the same lines every time)
    python3 make-table.py --parts           the parts of pi/2 and ln 2 that the program holds

A line is "x [y] expected rest": expected is the true value rounded once to a 64-bit number, and rest the
true value less expected, in units in the last place of expected. Nothing here is taken from the program.
"""
import json
import math
import sys
from fractions import Fraction

from mpmath import mp, mpf

mp.prec = 1400  # enough for sin and cos next to a multiple of pi/2, and for exp of 1e-320
COUNT = 220
GOLDEN = 0.6180339887498949
TINY = 5e-324
EDGES = [0.0, -0.0, TINY, -TINY, 3e-310, -3e-310, 2.2250738585072014e-308, 1e-300, 1e-20, -1e-9, 1e-8]


def spread(lo, hi, count=COUNT):
    return [lo + (hi - lo) * ((k * GOLDEN) % 1) for k in range(1, count + 1)]


def powers(lo, hi, count=COUNT):
    """Numbers of either sign spread evenly in the exponent of ten."""
    return [(-1) ** k * float(mpf(10) ** mpf(e)) for k, e in enumerate(spread(lo, hi, count))]


def around(x):
    return [math.nextafter(x, -math.inf), x, math.nextafter(x, math.inf)]


def near_quarter_turns():
    """Numbers next to multiples of pi/2: the first ones, and those within 1.6e6 that lie nearest of all."""
    bits = 200
    half_pi = int(mp.floor(mp.pi * mpf(2) ** (bits - 1)))
    worst = []
    for k in range(1, 1018000):
        true = k * half_pi
        drop = true.bit_length() - 53
        number = (true + (1 << (drop - 1))) >> drop << drop
        worst.append((abs(true - number), number))
    worst.sort()
    first = [x for k in range(1, 17) for x in around(float(k * mp.pi / 2))]
    return first + [math.ldexp(number, -bits) for _, number in worst[:40]]


def in_range(xs, lo, hi):
    return [x for x in xs if lo <= x <= hi]


def points():
    turns = EDGES + near_quarter_turns() + spread(-4, 4) + powers(1, 6) + [1e6, -1e6, 1.6e6, 0.67434]
    turns += around(math.pi / 4) + around(-math.pi / 4)
    unit = EDGES + spread(-1, 1, 300) + around(0.5) + around(-0.5) + around(0.975) + [1.0, -1.0]
    unit += [1 - float(mpf(10) ** -k) for k in range(1, 16)] + powers(-12, 0, 60)
    arc = EDGES + spread(-4, 4) + powers(-10, 20, 100) + [1e300, -1e300, 1.7976931348623157e308]
    arc += [x for edge in (0.4375, 0.6875, 1.1875, 2.4375) for x in around(edge)]
    growth = EDGES + spread(-745.1, 709.7) + spread(-1, 1) + around(709.782712893384) + around(-745.1332191019411)
    growth += spread(-745.1, -708.4, 40) + [709.78, -708.396, 1.0, 0.34657359027997264]
    positive = [abs(x) for x in powers(-307, 308)] + spread(0.5, 2) + [abs(x) for x in powers(-323, -308, 40)]
    positive += around(1.0) + around(math.sqrt(2)) + [x for x in EDGES if x > 0] + [1.7976931348623157e308, 1e300]
    one = {"sin": turns, "cos": turns, "tan": turns, "asin": unit, "acos": unit, "atan": arc, "exp": growth}
    return {**one, "log": positive}


def pairs():
    xs, ys = powers(-5, 5, 300), powers(-4, 4, 300)[::-1]
    angle = list(zip(xs, ys)) + [(a, b) for a in (1.0, -1e-300, 1e300, TINY) for b in (1.0, -1.0, 1e-300, -1e300)]
    angle += list(zip(spread(-1, 1, 100), spread(-3, 2, 100)))
    length = list(zip(xs, ys)) + [(a, b) for a in (3.0, 1e-320, 1e-160, 1e160, 1.2e308) for b in (4.0, TINY, 3e-161, 9e159, -1e308)]
    bases = [abs(x) for x in powers(-3, 3, 200)] + spread(0.9, 1.1, 100) + [abs(x) for x in powers(-300, 300, 100)]
    raised = list(zip(bases, spread(-30, 30, 200) + spread(-3000, 3000, 100) + spread(-1.1, 1.1, 100)))
    raised += [(x, float(y)) for x in (-1.5, -0.1, 10.0, 3.0, 1e-310) for y in (-3, -2, -1, 1, 2, 3, 5)]
    raised += [(2.0, 1023.5), (2.0, -1074.0), (2.0, -1060.5), (10.0, -320.0), (math.nextafter(1, 2), 1e17), (0.5, 0.5)]
    return {"atan2": angle, "hypot": length, "pow": raised}


FUNCTIONS = {
    "sin": mp.sin, "cos": mp.cos, "tan": mp.tan, "asin": mp.asin, "acos": mp.acos, "atan": mp.atan,
    "exp": mp.exp, "log": mp.log, "atan2": mp.atan2, "hypot": mp.hypot, "pow": mp.power,
}


def exact(x):
    """A true value as a fraction; mpmath's numbers are whole numbers times a power of two."""
    sign, mantissa, exponent, _ = mpf(x)._mpf_
    value = Fraction(int(mantissa)) * Fraction(2) ** exponent
    return -value if sign else value


def written(x):
    text = repr(x)
    return {"inf": "Infinity", "-inf": "-Infinity", "nan": "NaN"}.get(text, text)


def line(name, arguments):
    keeps_zero = name in ("sin", "tan", "asin", "atan") and arguments[0] == 0
    true = exact(FUNCTIONS[name](*[mpf(x) for x in arguments]))
    try:
        rounded = arguments[0] if keeps_zero else true.numerator / true.denominator
        rest = float((true - Fraction(rounded)) / Fraction(math.ulp(rounded)))
    except OverflowError:
        rounded, rest = (math.inf if true > 0 else -math.inf), 0.0
    if name == "atan2" and rounded == 0.0:
        rounded = math.copysign(0.0, arguments[0])
    return " ".join([*map(written, arguments), written(rounded), f"{rest:.4f}"])


def unique(items):
    return list({repr(item): item for item in items}.values())


def parts():
    names = {"pi/2": mp.pi / 2, "pi": +mp.pi, "pi/4": mp.pi / 4, "ln 2": mp.log(2), "log2 e": 1 / mp.log(2)}
    for name, value in names.items():
        print(name, float(value), "tail", float(value - mpf(float(value))))
    left = mp.pi / 2
    for part in (1, 2, 3):
        shift = 33 - 1 - int(mp.floor(mp.log(left, 2)))
        head = mp.floor(left * mpf(2) ** shift) / mpf(2) ** shift
        left -= head
        print("pi/2, 33 bits, part", part, float(head), "after it", float(left))


def main():
    if "--parts" in sys.argv:
        return parts()
    table = {name: [line(name, (x,)) for x in unique(xs)] for name, xs in points().items()}
    table |= {name: [line(name, pair) for pair in unique(some)] for name, some in pairs().items()}
    made = "made by make-table.py with mpmath at 1400 bits; a line is: arguments, true value rounded once, true value less it in ulp"
    print(json.dumps({"made": made, **table}, indent=0))


main()
