#pragma once

#include <string>
#include <string_view>

#include "algebra/notation.hpp"

namespace fw::algebra {

/// A number as it is drawn, from the text of a Number: "7 1/2" and "7½" are a whole number beside a stacked fraction,
/// "3√2" a number beside a root, "(15 + 7√5)/4" a fraction, "130π²" a power of π. Its leaves are plain numbers, "π" and
/// signs. A text that cannot be read so, and a plain decimal, are one leaf.
[[nodiscard]] Notation opened_number(std::string_view text);

/// How tightly a notation holds together; brackets are needed round what is looser than its place asks.
enum class Binding { Sum, Product, Power, Atom };
[[nodiscard]] Binding binding_of(const Notation& notation);

/// "π".
[[nodiscard]] bool is_pi(const Notation& notation);
/// "π", "2π", "12.5π": what stands before the letters of a circle without a sign, as in 2πr.
[[nodiscard]] bool is_circle_number(const Notation& notation);

/// Whether it begins with a minus sign.
[[nodiscard]] bool begins_with_minus(const Notation& notation);

/// The space between two neighbors of a row, of which neither is a sign: "9 cm", "2 ft 6 in", but "24ℓ".
[[nodiscard]] bool stand_apart(const Notation& left, const Notation& right);

}  // namespace fw::algebra
