#include "lessons/asked.hpp"

#include <algorithm>

namespace fw::lessons {
namespace {

bool has(const solids::Solid& solid, std::string_view whole) {
  if (whole == "lateral_area") {
    return solid.lateral_area().has_value();
  }
  return whole != "base_area" || solid.base_area().has_value();
}

void push_new(std::vector<std::string>& names, std::string name) {
  if (std::find(names.begin(), names.end(), name) == names.end()) {
    names.push_back(std::move(name));
  }
}

// A measure goes by its symbol's name and, where a lesson gives it, by the key of its field.
void push_names(const solids::Measure& measure, std::vector<std::string>& names) {
  push_new(names, measure.symbol.name);
  if (!measure.key.empty()) {
    push_new(names, measure.in_base ? "base." + measure.key : measure.key);
  }
}

}  // namespace

const std::vector<std::string>& whole_measures() {
  static const std::vector<std::string> names{"surface_area", "lateral_area", "base_area", "volume"};
  return names;
}

std::optional<int> dimension_of_whole(std::string_view name) {
  const std::vector<std::string>& names = whole_measures();
  if (std::find(names.begin(), names.end(), name) == names.end()) {
    return std::nullopt;
  }
  return name == "volume" ? 3 : 2;
}

std::vector<std::string> askable(const solids::Solid& solid) {
  std::vector<std::string> names;
  for (const std::string& whole : whole_measures()) {
    if (has(solid, whole)) {
      names.push_back(whole);
    }
  }
  for (const solids::Measure& measure : solid.statement().measures) {
    push_names(measure, names);
  }
  return names;
}

std::vector<std::string> measures_of_dimension(const solids::Solid& solid, int dimension) {
  std::vector<std::string> names;
  for (const std::string& whole : whole_measures()) {
    if (has(solid, whole) && dimension_of_whole(whole) == dimension) {
      names.push_back(whole);
    }
  }
  if (dimension == 1) {
    names.emplace_back("edges");
    for (const solids::Measure& measure : solid.statement().measures) {
      push_names(measure, names);
    }
  }
  return names;
}

}  // namespace fw::lessons
