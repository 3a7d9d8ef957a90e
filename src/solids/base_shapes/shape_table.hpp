#pragma once

#include "solids/statement_parts.hpp"

// One function a base shape, each in a file of its own; the table in catalog.cpp calls them.
namespace fw::solids::shape {

using Stated = Result<ShapeStatement, std::vector<Fault>>;

/// A description of the shape with these fields.
[[nodiscard]] inline Description example(const std::string& shape_key, std::map<std::string, FieldValue> fields) {
  Description description;
  description.kind = shape_key;
  description.fields = std::move(fields);
  return description;
}

/// The origin of the shape's plane.
[[nodiscard]] inline ExactPoint origin() { return {exact::Number(), exact::Number()}; }

}  // namespace fw::solids::shape
