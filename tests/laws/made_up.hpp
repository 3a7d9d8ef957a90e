#pragma once

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>
#include <functional>
#include <string>
#include <utility>
#include <vector>

#include "solids/solid.hpp"
#include "support/random.hpp"

// Solids of every kind on every base shape, and laws that hold for all of them.
namespace fw::laws {

using solids::Description;
using solids::Solid;

/// Every length of a description changed: `change` gets a number as it is written.
using Change = std::function<exact::Number(const exact::Number&)>;

inline std::string decimal_text(const exact::Number& number) {
  const std::string text = exact::exact_text(number);
  return text.empty() ? exact::fixed_text(number, 4) : text;
}

inline void change_length(solids::LengthEntry& entry, const Change& change, const std::string& unit) {
  if (entry.written) {
    entry.written = *units::parse_quantity(decimal_text(change(entry.written->number.value)) + " " + unit);
  }
}

/// The description with its lengths changed and written in `unit`. Corners of a polygon have no factor of their own:
/// they are taken `times`.
inline Description changed(Description description, const Change& change, const exact::Number& times,
                           const std::string& unit) {
  for (auto& [key, field] : description.fields) {
    if (auto* entry = std::get_if<solids::LengthEntry>(&field)) {
      change_length(*entry, change, unit);
    } else if (auto* list = std::get_if<std::vector<solids::LengthEntry>>(&field)) {
      for (solids::LengthEntry& item : *list) {
        change_length(item, change, unit);
      }
    } else if (auto* points = std::get_if<std::vector<solids::PointEntry>>(&field)) {
      for (solids::PointEntry& point : *points) {
        point.x = *exact::parse_number(decimal_text(point.x.value * times));
        point.y = *exact::parse_number(decimal_text(point.y.value * times));
      }
    } else if (auto* word = std::get_if<std::string>(&field); word != nullptr && key == "unit") {
      *word = unit;
    }
  }
  for (Description& base : description.base) {
    base = changed(base, change, times, unit);
  }
  return description;
}

inline Description scaled(const Description& description, const exact::Number& times, const std::string& unit) {
  return changed(
      description, [&](const exact::Number& length) { return length * times; }, times, unit);
}

/// A row of the shelf with measures made up: each length by a factor of its own or, where no figure has these lengths,
/// or only by rounding, all by the same one. Shrinks toward the shelf's first solid as it stands there.
inline Solid made_up_solid() {
  static const std::vector<Description> shelf = solids::shelf();
  const Description row = shelf[*rc::gen::inRange<std::size_t>(0, shelf.size())];
  const std::string unit = *rc::gen::element<std::string>("cm", "in", "ft", "m", "mm");
  const exact::Number times = exact::Number::ratio(*rc::gen::inRange(2, 9), 2);
  const auto factors = *rc::gen::container<std::vector<int>>(10, rc::gen::map(rc::gen::inRange(0, 110), [](int more) {
                                                               return 100 + (more % 2 == 0 ? more / 2 : -more / 2);
                                                             }));
  std::size_t next = 0;
  const Change each = [&](const exact::Number& length) {
    return length * exact::Number::ratio(factors[next++ % factors.size()], 100);
  };
  auto solid = Solid::make(changed(row, each, times, unit));
  if (!solid || !solid->remarks().empty()) {
    solid = Solid::make(scaled(row, times, unit));
  }
  RC_ASSERT(solid.has_value());
  return *solid;
}

/// What is wrong with a solid, in a sentence; empty if the law holds. Chance comes from the dice alone.
using Law = std::string (*)(const Solid& solid, test::Dice& dice);

/// Holds the law against every solid of the shelf and against made-up ones.
inline void expect_law(const std::string& name, Law law) {
  test::Dice dice(2026);
  for (const Description& description : solids::shelf()) {
    const auto solid = Solid::make(description);
    ASSERT_TRUE(solid.has_value()) << description.kind;
    EXPECT_EQ(law(*solid, dice), "") << solid->name();
  }
  const bool held = rc::check(name, [law] {
    const Solid solid = made_up_solid();
    test::Dice chance(*rc::gen::arbitrary<std::uint64_t>());
    const std::string wrong = law(solid, chance);
    if (!wrong.empty()) {
      std::string values;
      for (const auto& [symbol, value] : solid.values()) {
        values += "\n  " + symbol + " " + std::to_string(value.to_double());
      }
      RC_FAIL(solid.name() + ": " + wrong + values);
    }
  });
  EXPECT_TRUE(held) << name;
}

/// Exact numbers must be the same; of others all digits that a double has.
inline bool same(const exact::Number& a, const exact::Number& b) {
  if (a.is_exact() && b.is_exact()) {
    return a == b;
  }
  return std::abs(a.to_double() - b.to_double()) <= 1e-12 * std::abs(b.to_double());
}

/// Whether two doubles are alike but for `allowed` of the larger one.
inline bool near(double a, double b, double allowed = 1e-9) {
  return std::abs(a - b) <= allowed * std::max(std::abs(a), std::abs(b));
}

/// A sentence that two numbers differ, where they do; else nothing.
inline std::string difference(const std::string& what, const exact::Number& a, const exact::Number& b) {
  return same(a, b) ? "" : what + " is " + exact::fixed_text(a, 9) + " and " + exact::fixed_text(b, 9) + ". ";
}

}  // namespace fw::laws
