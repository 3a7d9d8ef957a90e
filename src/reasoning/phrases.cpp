#include "reasoning/phrases.hpp"

#include "lessons/asked_value.hpp"

namespace fw::reasoning {
namespace {

using algebra::Symbol;
namespace whole = solids::symbols;

struct Whole {
  const Symbol& symbol;
  const char* title;
};

std::vector<Whole> whole_numbers() {
  return {{whole::surface_area(), "surface area"},
          {whole::lateral_area(), "lateral area"},
          {whole::base_area(), "base area"},
          {whole::volume(), "volume"},
          {whole::perimeter(), "perimeter of the base"},
          {counted_area(), "area of the faces that count"}};
}

}  // namespace

const Symbol& counted_area() {
  static const Symbol symbol{"counted_area", "A", 2};
  return symbol;
}

std::string title_of(const solids::Solid& solid, const Symbol& measure) {
  for (const Whole& one : whole_numbers()) {
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
  for (const Whole& one : whole_numbers()) {
    if (one.symbol.name == name && solid.values().count(name) != 0) {
      return one.symbol;
    }
  }
  const Symbol* length = lessons::length_named(solid, name);
  return length == nullptr ? std::nullopt : std::optional(*length);
}

std::vector<std::string> face_numbers(const std::vector<solids::FaceId>& faces) {
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
  return runs;
}

Message unit_in_words(const units::Unit& unit) {
  return message("{unit:s} ({symbol})", {{"unit", Noun{unit.name()}}, {"symbol", unit.text()}});
}

Message asked_sentence(const solids::Solid& solid, const Symbol& measure, const units::Unit& unit) {
  const Message counted = unit_in_words(unit);
  const Message why =
      measure.dimension == 2   ? message("It covers a surface, so the unit is {unit}.", {{"unit", counted}})
      : measure.dimension == 3 ? message("It fills the solid, so the unit is {unit}.", {{"unit", counted}})
                               : message("It is a length, so the unit is {unit}.", {{"unit", counted}});
  return message("Find the {measure}, {letter}. {why}",
                 {{"measure", Noun{title_of(solid, measure)}}, {"letter", measure.letter}, {"why", why}});
}

Message name_sentence(const solids::Solid& solid) {
  return message("The solid is {solid:a}. It has {count} {part:s}.",
                 {{"solid", Noun{solid.name()}}, {"count", solid.faces().size()}, {"part", Noun{solid.part()}}});
}

}  // namespace fw::reasoning
