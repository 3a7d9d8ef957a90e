#!/usr/bin/env python3
"""Random exact expressions and their values, worked out by SymPy.

Usage: exact_values.py SEED COUNT

Prints one expression a line, in three columns separated by tabs:
  the expression in postfix notation: whole numbers, pi, + - * / sqrt
  its value to 70 significant digits, or 0
  "rational" if SymPy finds it to be a ratio of whole numbers, "real" if it does not
"""

import random
import sys

import mpmath
import sympy

DIGITS = 70


def leaf(pick):
    kind = pick.random()
    if kind < 0.6:
        return str(pick.randint(1, 30))
    if kind < 0.7:
        return "pi"
    return f"{pick.randint(1, 60)} {pick.randint(1, 12)} /"


def value_of(text):
    """The value of a postfix expression, or None where it has none."""
    stack = []
    for word in text.split():
        if word == "pi":
            stack.append(sympy.pi)
        elif word == "sqrt":
            top = stack.pop()
            if top.evalf(DIGITS, maxn=2000) < 0:
                return None
            stack.append(sympy.sqrt(top))
        elif word in "+-*/":
            right, left = stack.pop(), stack.pop()
            if word == "/":
                if is_zero(right):
                    return None
                stack.append(left / right)
            else:
                stack.append({"+": left + right, "-": left - right, "*": left * right}[word])
        else:
            stack.append(sympy.Integer(word))
    return stack[0]


def is_zero(value):
    return abs(value.evalf(DIGITS, maxn=2000)) < sympy.Float("1e-100")


def expression(pick, depth):
    if depth == 0 or pick.random() < 0.1:
        return leaf(pick)
    kind = pick.random()
    if kind < 0.3:
        return expression(pick, depth - 1) + " sqrt"
    left = expression(pick, depth - 1)
    right = expression(pick, depth - 1)
    return f"{left} {right} {pick.choice('++--**/')}"


def is_rational(value):
    if value.is_Rational:
        return True
    simple = sympy.radsimp(sympy.sqrtdenest(sympy.expand(value)))
    return bool(sympy.expand(simple).is_Rational)


def main():
    pick = random.Random(int(sys.argv[1]))
    printed = 0
    while printed < int(sys.argv[2]):
        text = expression(pick, pick.randint(1, 4))
        value = value_of(text)
        if value is None or len(text) > 80:
            continue
        if is_zero(value):
            print(f"{text}\t0\trational")
        else:
            # Scientific notation, the point after the first digit.
            digits = mpmath.nstr(value.evalf(DIGITS, maxn=2000)._to_mpmath(300), DIGITS, min_fixed=1, max_fixed=0)
            print(f"{text}\t{digits}\t{'rational' if is_rational(value) else 'real'}")
        printed += 1


if __name__ == "__main__":
    main()
