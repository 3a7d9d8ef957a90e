#include "reasoning/unknown.hpp"

#include <algorithm>

#include "exact/print_number.hpp"
#include "reasoning/phrases.hpp"
#include "units/write_quantity.hpp"

namespace fw::reasoning {
namespace {

using algebra::Symbol;
using solids::Description;
using solids::Known;
using solids::Solid;
namespace whole = solids::symbols;

constexpr int rounded_places = 4;  // of a number that has no exact form

std::vector<Symbol> wholes() {
  return {whole::surface_area(), whole::volume(), whole::lateral_area(), whole::base_area()};
}

Askable askable(const Solid& solid, const Symbol& symbol, const std::string& name) {
  return {name, title_of(solid, symbol), symbol.letter, solid.is_given(symbol)};
}

// What a figure is made from.
struct Parts {
  Description description;
  Known known;
};

Parts parts_of(const Solid& solid) { return {solid.description(), known_of(solid)}; }

const solids::Measure* measure_of(const Solid& solid, const Symbol& symbol) {
  const std::vector<solids::Measure>& all = solid.statement().measures;
  const auto found = std::find_if(all.begin(), all.end(), [&](const solids::Measure& m) { return m.symbol == symbol; });
  return found == all.end() || found->key.empty() ? nullptr : &*found;
}

void set_entry(Parts& parts, const solids::Measure& measure, const solids::LengthEntry& entry) {
  Description& owner =
      measure.in_base && !parts.description.base.empty() ? parts.description.base.front() : parts.description;
  const auto field = owner.fields.find(measure.key);
  if (field != owner.fields.end()) {
    if (auto* list = std::get_if<std::vector<solids::LengthEntry>>(&field->second)) {
      if (measure.item < list->size()) {
        (*list)[measure.item] = entry;
      }
      return;
    }
    if (!std::holds_alternative<solids::LengthEntry>(field->second)) {
      return;  // corners of a polygon, a number of sides
    }
  }
  owner.fields[measure.key] = entry;
}

void take_away(Parts& parts, const Solid& solid, const Symbol& symbol) {
  parts.known.erase(symbol.name);
  if (const solids::Measure* measure = measure_of(solid, symbol)) {
    set_entry(parts, *measure, {});
  }
}

units::WrittenQuantity written_value(const Solid& solid, const Symbol& symbol) {
  const exact::Number& value = solid.values().at(symbol.name);
  return units::written_exactly(value, solid.unit().to_the(symbol.dimension), rounded_places);
}

void give(Parts& parts, const Solid& solid, const Symbol& symbol) {
  if (const solids::Measure* measure = measure_of(solid, symbol)) {
    set_entry(parts, *measure, {written_value(solid, symbol)});
  } else {
    parts.known[symbol.name] = written_value(solid, symbol);
  }
}

bool makes_a_solid(const Parts& parts) { return Solid::make(parts.description, parts.known).has_value(); }

std::vector<Message> titles_of(const std::vector<Askable>& all) {
  std::vector<Message> titles;
  titles.reserve(all.size());
  for (const Askable& one : all) {
    titles.push_back(message("the {measure}", {{"measure", Noun{one.title}}}));
  }
  return titles;
}

}  // namespace

Known known_of(const Solid& solid) {
  Known known;
  for (const Symbol& symbol : wholes()) {
    if (const units::WrittenQuantity* written = solid.written(symbol)) {
      known[symbol.name] = *written;
    }
  }
  return known;
}

std::vector<Askable> askable_measures(const Solid& solid) {
  std::vector<Askable> all;
  for (const Symbol& symbol :
       {whole::surface_area(), whole::lateral_area(), whole::base_area(), whole::volume(), whole::perimeter()}) {
    if (solid.values().count(symbol.name) != 0) {
      all.push_back(askable(solid, symbol, symbol.name));
    }
  }
  for (const solids::Measure& measure : solid.statement().measures) {
    const bool is_distance = measure.may_be_zero || solid.values().count(measure.symbol.name) == 0;
    const bool is_listed = std::any_of(all.begin(), all.end(), [&](const Askable& one) {
      return one.name == measure.symbol.name;  // equal legs are one measure
    });
    if (!is_distance && !is_listed) {
      all.push_back(askable(solid, measure.symbol, measure.symbol.name));
    }
  }
  return all;
}

std::vector<Askable> could_be_given(const Solid& solid, const std::string& measure) {
  const std::optional<Symbol> asked = measure_named(solid, measure);
  std::vector<Askable> all;
  if (!asked || !solid.is_given(*asked)) {
    return all;
  }
  Parts without = parts_of(solid);
  take_away(without, solid, *asked);
  if (makes_a_solid(without)) {
    return all;
  }
  std::vector<Symbol> candidates = wholes();
  for (const solids::Measure& one : solid.statement().measures) {
    if (!one.key.empty() && one.key != "vertices") {
      candidates.push_back(one.symbol);
    }
  }
  for (const Symbol& candidate : candidates) {
    const bool has_value = solid.values().count(candidate.name) != 0;
    if (candidate == *asked || !has_value || solid.is_given(candidate)) {
      continue;
    }
    Parts with = without;
    give(with, solid, candidate);
    if (makes_a_solid(with)) {
      all.push_back(askable(solid, candidate, candidate.name));
    }
  }
  return all;
}

Result<Solid, words::Message> asked_for(const Solid& solid, const std::string& measure,
                                        const std::optional<std::string>& instead) {
  const std::optional<Symbol> asked = measure_named(solid, measure);
  if (!asked) {
    return failure(
        message("{solid:a} has no measure \"{measure}\"", {{"solid", Noun{solid.name()}}, {"measure", measure}}));
  }
  if (!solid.is_given(*asked)) {
    return solid;
  }
  Parts parts = parts_of(solid);
  take_away(parts, solid, *asked);
  if (instead) {
    const std::optional<Symbol> given = measure_named(solid, *instead);
    if (!given || *given == *asked) {
      return failure(message("the {measure} can't be found from \"{other}\"",
                             {{"measure", Noun{title_of(solid, *asked)}}, {"other", *instead}}));
    }
    give(parts, solid, *given);
  }
  auto made = Solid::make(parts.description, parts.known);
  if (made) {
    return std::move(made).value();
  }
  const std::vector<Askable> choices = could_be_given(solid, measure);
  const Noun title{title_of(solid, *asked)};
  if (choices.empty()) {
    return failure(message("the {measure} is what fixes this figure, and nothing else could be given in its place",
                           {{"measure", title}}));
  }
  return failure(message("without the {measure}, something is missing: give {choices:or}",
                         {{"measure", title}, {"choices", titles_of(choices)}}));
}

}  // namespace fw::reasoning
