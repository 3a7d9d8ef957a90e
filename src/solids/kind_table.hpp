#pragma once

#include "solids/kind_parts.hpp"

// One function a kind, each in a file of its own; the table in catalog.cpp calls them.
namespace fw::solids::kind {

/// A description of the kind with these fields.
[[nodiscard]] inline Description example(const std::string& kind_key, std::map<std::string, FieldValue> fields) {
  Description description;
  description.kind = kind_key;
  description.fields = std::move(fields);
  return description;
}

}  // namespace fw::solids::kind
