#include "reasoning/phrases.hpp"

#include "base/listing.hpp"

namespace fw::reasoning {
namespace {

using algebra::Symbol;
namespace whole = solids::symbols;

struct Whole {
  const Symbol& symbol;
  const char* title;
};

std::vector<Whole> wholes() {
  return {{whole::surface_area(), "surface area"},
          {whole::lateral_area(), "lateral area"},
          {whole::base_area(), "base area"},
          {whole::volume(), "volume"},
          {whole::perimeter(), "perimeter of the base"},
          {counted_area(), "area of the faces that count"}};
}

// "square feet": the plural of the unit's noun, which stands last.
std::string plural_of_unit(const units::Unit& unit) {
  const std::string& name = unit.name();
  const auto ends_with = [&](const std::string& end) {
    return name.size() >= end.size() && name.compare(name.size() - end.size(), end.size(), end) == 0;
  };
  if (ends_with("foot")) {
    return name.substr(0, name.size() - 4) + "feet";
  }
  return ends_with("s") ? name : name + (ends_with("inch") ? "es" : "s");
}

}  // namespace

std::string article(const std::string& noun) {
  return std::string("aeiou").find(noun.empty() ? ' ' : noun.front()) == std::string::npos ? "a " : "an ";
}

const Symbol& counted_area() {
  static const Symbol symbol{"counted_area", "A", 2};
  return symbol;
}

std::string sentence(std::string text) {
  if (!text.empty() && text.front() >= 'a' && text.front() <= 'z') {
    text.front() = static_cast<char>(text.front() - 'a' + 'A');
  }
  if (!text.empty() && text.back() != '.') {
    text += '.';
  }
  return text;
}

std::string title_of(const solids::Solid& solid, const Symbol& measure) {
  for (const Whole& one : wholes()) {
    if (one.symbol == measure) {
      return one.title;
    }
  }
  for (const solids::Measure& one : solid.statement().measures) {
    if (one.symbol == measure) {
      return one.title;
    }
  }
  return measure.letter;
}

std::optional<Symbol> measure_named(const solids::Solid& solid, const std::string& name) {
  for (const Whole& one : wholes()) {
    if (one.symbol.name == name && solid.values().count(name) != 0) {
      return one.symbol;
    }
  }
  for (const solids::Measure& one : solid.statement().measures) {
    const std::string field = one.in_base ? "base." + one.key : one.key;
    if (one.symbol.name == name || (!one.key.empty() && field == name)) {
      return one.symbol;
    }
  }
  return std::nullopt;
}

std::string face_numbers(const std::vector<solids::FaceId>& faces) {
  std::vector<std::string> runs;  // "1", "3–5"
  for (std::size_t i = 0; i < faces.size();) {
    std::size_t end = i + 1;
    while (end < faces.size() && faces[end].index() == faces[end - 1].index() + 1) {
      ++end;
    }
    const bool is_long = end - i > 2;
    end = is_long ? end : i + 1;
    runs.push_back(std::to_string(faces[i].index() + 1) +
                   (is_long ? "–" + std::to_string(faces[end - 1].index() + 1) : ""));
    i = end;
  }
  return joined_with_and(runs);
}

std::string unit_in_words(const units::Unit& unit) { return plural_of_unit(unit) + " (" + unit.text() + ")"; }

std::string asked_sentence(const solids::Solid& solid, const Symbol& measure, const units::Unit& unit) {
  const std::string title = title_of(solid, measure);
  std::string text = "Asked is the " + title + " " + measure.letter + ". ";
  const std::string counted = unit_in_words(unit) + ".";
  switch (measure.dimension) {
    case 2:
      return text + "An area covers, so it is counted in " + counted;
    case 3:
      return text + "A volume fills, so it is counted in " + counted;
    default:
      return text + "It is a length, measured in " + counted;
  }
}

std::string name_sentence(const solids::Solid& solid) {
  return "The solid is " + article(solid.name()) + solid.name() + ". It has " + std::to_string(solid.faces().size()) +
         " faces.";
}

}  // namespace fw::reasoning
