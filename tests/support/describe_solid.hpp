#pragma once

#include <sstream>
#include <string>
#include <vector>

#include "solids/solid.hpp"

// Solids in one line of text, for tests:
//   "pyramid | slant_height: 9 cm | base square | side: 6 cm | known volume: 60 cm^3"
// Lists are parted by commas, corners are "x y", "?" is the unknown.
namespace fw::test {

using solids::Description;
using solids::FieldType;
using solids::FieldValue;
using solids::Known;
using solids::LengthEntry;
using solids::Solid;

struct Described {
  Description description;
  Known known;
};

inline std::vector<std::string> parts_of(const std::string& text, const std::string& separator) {
  std::vector<std::string> parts;
  std::size_t start = 0;
  while (true) {
    const std::size_t end = text.find(separator, start);
    parts.push_back(text.substr(start, end == std::string::npos ? end : end - start));
    if (end == std::string::npos) {
      return parts;
    }
    start = end + separator.size();
  }
}

inline LengthEntry length_of(const std::string& text) {
  if (text == "?") {
    return {};
  }
  auto quantity = units::parse_quantity(text);
  ensure(quantity.has_value(), "a test's length cannot be read");
  return {*quantity};
}

inline FieldValue value_of_type(FieldType type, const std::string& text) {
  if (type == FieldType::Length) {
    return length_of(text);
  }
  if (type == FieldType::Count) {
    return std::stoi(text);
  }
  if (type == FieldType::Word) {
    return text;
  }
  if (type == FieldType::Lengths) {
    std::vector<LengthEntry> lengths;
    for (const std::string& part : parts_of(text, ", ")) {
      lengths.push_back(length_of(part));
    }
    return lengths;
  }
  std::vector<solids::PointEntry> points;
  for (const std::string& part : parts_of(text, ", ")) {
    const auto coordinates = parts_of(part, " ");
    points.push_back({*exact::parse_number(coordinates.at(0)), *exact::parse_number(coordinates.at(1))});
  }
  return points;
}

/// A field that the kind does not have is read as a length, so that tests can put one there.
inline FieldType type_of(const std::vector<solids::Field>& fields, const std::string& key) {
  for (const solids::Field& field : fields) {
    if (field.key == key) {
      return field.type;
    }
  }
  return FieldType::Length;
}

inline Described described(const std::string& text) {
  const auto parts = parts_of(text, " | ");
  Described result;
  result.description.kind = parts[0];
  Description* owner = &result.description;
  for (std::size_t i = 1; i < parts.size(); ++i) {
    const auto sides = parts_of(parts[i], ": ");
    if (sides.size() == 1) {
      ensure(parts[i].rfind("base ", 0) == 0, "a test's solid has a part that is no field");
      Description base;
      base.kind = parts[i].substr(5);
      result.description.base = {base};
      owner = &result.description.base.front();
    } else if (sides[0].rfind("known ", 0) == 0) {
      result.known.insert_or_assign(sides[0].substr(6), *units::parse_quantity(sides[1]));
    } else if (sides[0] == "rounded") {
      result.description.is_rounded = true;
    } else {
      const bool is_base = owner != &result.description;
      const auto* kind = solids::find_kind(owner->kind);
      const auto* shape = solids::find_base_shape(owner->kind);
      const auto fields = is_base ? (shape == nullptr ? std::vector<solids::Field>{} : shape->fields)
                                  : (kind == nullptr ? std::vector<solids::Field>{} : kind->fields);
      owner->fields.insert_or_assign(sides[0], value_of_type(type_of(fields, sides[0]), sides[1]));
    }
  }
  return result;
}

inline Result<Solid, std::vector<solids::Fault>> made(const std::string& text) {
  const Described all = described(text);
  return Solid::make(all.description, all.known);
}

/// Requires: the solid exists.
inline Solid solid(const std::string& text) {
  auto result = made(text);
  ensure(result.has_value(), result ? "" : said(result.error().front().message));
  return *result;
}

}  // namespace fw::test
