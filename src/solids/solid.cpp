#include "solids/solid.hpp"

#include <algorithm>
#include <cmath>

#include "exact/print_number.hpp"
#include "solids/solid_faces.hpp"

namespace fw::solids {

using algebra::Symbol;
using exact::Number;
using units::Unit;

struct Solid::Table {
  Description description;
  Known known;
  SolidStatement statement;
  Unit unit;
  algebra::Bindings values;
  std::set<std::string> given;
  Surface surface;
  std::vector<Fault> remarks;
};

namespace {

/// Symbols that the lesson speaks of: with a number, with "?", or by the corners of a polygon.
std::set<std::string> labelled_symbols(const SolidStatement& statement, const Description& description) {
  std::set<std::string> symbols;
  for (const Measure& measure : statement.measures) {
    if (measure.key.empty()) {
      continue;
    }
    const Description& owner = measure.in_base ? description.base.front() : description;
    const auto field = owner.fields.find(measure.key);
    if (field == owner.fields.end()) {
      continue;
    }
    const auto* list = std::get_if<std::vector<LengthEntry>>(&field->second);
    if (list == nullptr || measure.item < list->size()) {
      symbols.insert(measure.symbol.name);
    }
  }
  return symbols;
}

const units::WrittenQuantity* written_at(const FieldValue& value, std::size_t item) {
  if (const auto* length = std::get_if<LengthEntry>(&value)) {
    return length->written ? &*length->written : nullptr;
  }
  if (const auto* lengths = std::get_if<std::vector<LengthEntry>>(&value)) {
    return item < lengths->size() && (*lengths)[item].written ? &*(*lengths)[item].written : nullptr;
  }
  return nullptr;
}

std::set<std::string> given_symbols(const SolidStatement& statement, const std::vector<Given>& all) {
  std::set<std::string> symbols;
  for (const Given& given : all) {
    symbols.insert(given.symbol.name);
  }
  for (const Measure& measure : statement.measures) {
    if (measure.key == "vertices") {
      symbols.insert(measure.symbol.name);
    }
  }
  return symbols;
}

Result<SolidStatement, std::vector<Fault>> stated(const Description& description) {
  const Kind& kind = *find_kind(description.kind);
  if (!kind.stands_on_base) {
    return kind.state(description, nullptr);
  }
  const Description& base = description.base.front();
  const auto shape = find_base_shape(base.kind)->state(base);
  if (!shape) {
    return failure(shape.error());
  }
  return kind.state(description, &*shape);
}

void add_assumptions(const SolidStatement& statement, std::vector<Fault>& remarks) {
  for (const words::Message& sentence : statement.assumptions) {
    remarks.push_back(missing("base", sentence));
  }
}

/// Of a solid that doubles cannot hold: its longest and its shortest measure.
Fault too_thin(const SolidStatement& statement, const algebra::Bindings& values, const Unit& unit) {
  const Measure* longest = nullptr;
  const Measure* shortest = nullptr;
  const auto value = [&](const Measure* measure) { return values.at(measure->symbol.name); };
  for (const Measure& measure : statement.measures) {
    if (measure.symbol.dimension != 1 || value(&measure).sign() <= 0) {
      continue;
    }
    longest = longest == nullptr || value(&measure) > value(longest) ? &measure : longest;
    shortest = shortest == nullptr || value(&measure) < value(shortest) ? &measure : shortest;
  }
  ensure(longest != nullptr, "a solid has a length");
  const auto shown = [&](const Measure* measure) {
    const int whole_digits = static_cast<int>(std::floor(std::log10(value(measure).to_double()))) + 1;
    return value_words(value(measure), 1, unit, std::max(2, 2 - whole_digits));
  };
  return impossible("", message("this solid is too thin to build: the {longest} is {long}, but the {shortest} is only "
                                "{short}. Choose lengths that are closer together",
                                {{"longest", Noun{longest->title}},
                                 {"long", shown(longest)},
                                 {"shortest", Noun{shortest->title}},
                                 {"short", shown(shortest)}}));
}

/// What is impossible before what is missing.
std::vector<Fault> ordered(std::vector<Fault> faults) {
  std::stable_sort(faults.begin(), faults.end(),
                   [](const Fault& a, const Fault& b) { return a.severity < b.severity; });
  return faults;
}

}  // namespace

Result<Solid, std::vector<Fault>> Solid::make(const Description& description, const Known& known) {
  const std::vector<Fault> form = form_faults(description, known);
  if (!form.empty()) {
    return failure(ordered(form));
  }
  const Unit unit = working_unit(description, known);
  auto statement = stated(with_values_in(description, unit));
  if (!statement) {
    return failure(ordered(statement.error()));
  }
  for (const auto& entry : known) {
    const bool is_spoken_of =
        std::any_of(statement->relations.begin(), statement->relations.end(), [&](const Relation& relation) {
          return relation.equation.left.operation() == algebra::Operation::Symbol &&
                 relation.equation.left.symbol().name == entry.first;
        });
    if (!is_spoken_of) {
      return failure(std::vector<Fault>{impossible(
          entry.first, message("{solid:a} has no {measure}",
                               {{"solid", Noun{statement->name}}, {"measure", Noun{known_title(entry.first)}}}))});
    }
  }
  const std::vector<Given> all = givens(*statement, description, known, unit);
  auto complete = completed(*statement, all, unit);
  if (!complete) {
    return failure(ordered(complete.error()));
  }
  std::vector<Fault> remarks = complete->remarks;
  add_assumptions(*statement, remarks);
  const BodyStatement body = statement->body(complete->exact);
  auto surface = surface_of(body, complete->used, unit, labelled_symbols(*statement, description));
  if (!surface) {
    return failure(std::vector<Fault>{too_thin(*statement, complete->exact, unit)});
  }
  std::set<std::string> given = given_symbols(*statement, all);
  return Solid(std::make_shared<const Table>(Table{description, known, *statement, unit, complete->used,
                                                   std::move(given), *std::move(surface), std::move(remarks)}));
}

const Description& Solid::description() const { return table_->description; }
const SolidStatement& Solid::statement() const { return table_->statement; }
const Traits& Solid::traits() const { return find_kind(description().kind)->traits; }
Unit Solid::unit() const { return table_->unit; }
const algebra::Bindings& Solid::values() const { return table_->values; }
const units::WrittenQuantity* Solid::written(const Symbol& symbol) const {
  const auto known = table_->known.find(symbol.name);
  if (known != table_->known.end()) {
    return &known->second;
  }
  for (const Measure& measure : table_->statement.measures) {
    if (!(measure.symbol == symbol) || measure.key.empty()) {
      continue;
    }
    const Description& description = table_->description;
    const Description& owner = measure.in_base ? description.base.front() : description;
    const auto field = owner.fields.find(measure.key);
    return field == owner.fields.end() ? nullptr : written_at(field->second, measure.item);
  }
  return nullptr;
}

bool Solid::is_given(const Symbol& symbol) const { return table_->given.count(symbol.name) != 0; }
const Body& Solid::body() const { return table_->surface.body; }
const IdVector<FaceId, Face>& Solid::faces() const { return table_->surface.faces; }
std::size_t Solid::group_count() const { return table_->surface.group_count; }
const IdVector<MarkId, Mark>& Solid::marks() const { return table_->surface.marks; }
const nets::HingeTree& Solid::classic_net() const { return table_->surface.classic_net; }
const std::vector<Fault>& Solid::remarks() const { return table_->remarks; }

std::string Solid::label(MarkId mark) const {
  constexpr int places = 2;
  const Symbol& symbol = marks()[mark].symbol;
  for (const Measure& measure : statement().measures) {
    if (!(measure.symbol == symbol) || measure.key.empty()) {
      continue;
    }
    const Description& owner = measure.in_base ? description().base.front() : description();
    const auto field = owner.fields.find(measure.key);
    if (field == owner.fields.end()) {
      continue;
    }
    const LengthEntry* entry = std::get_if<LengthEntry>(&field->second);
    if (const auto* list = std::get_if<std::vector<LengthEntry>>(&field->second)) {
      entry = measure.item < list->size() ? &(*list)[measure.item] : nullptr;
    }
    if (entry != nullptr) {
      return entry->written ? entry->written->text : "?";
    }
  }
  return units::text(units::Length::of(values().at(symbol.name), unit()), places);
}

units::Area Solid::surface_area() const {
  units::Area sum = faces()[FaceId::at(0)].area;
  for (std::size_t i = 1; i < faces().size(); ++i) {
    sum = sum + faces()[FaceId::at(i)].area;
  }
  return sum;
}

namespace {
std::optional<units::Area> area_of(const Solid& solid, const Symbol& symbol) {
  const auto found = solid.values().find(symbol.name);
  if (found == solid.values().end()) {
    return std::nullopt;
  }
  return units::Area::of(found->second, solid.unit().to_the(2));
}
}  // namespace

std::optional<units::Area> Solid::lateral_area() const { return area_of(*this, symbols::lateral_area()); }
std::optional<units::Area> Solid::base_area() const { return area_of(*this, symbols::base_area()); }

units::Volume Solid::volume() const { return units::Volume::of(values().at(symbols::volume().name), unit().to_the(3)); }

bool operator==(const Solid& a, const Solid& b) {
  return a.table_ == b.table_ || (a.table_->description == b.table_->description && a.table_->known == b.table_->known);
}

// ---- the unit switch ----

namespace {

/// The power of ten that a factor is, if it is one between 10^-6 and 10^6.
std::optional<int> power_of_ten(const Number& factor) {
  for (int power_tried = -6; power_tried <= 6; ++power_tried) {
    if (factor == power(Number::whole(10), power_tried)) {
      return power_tried;
    }
  }
  return std::nullopt;
}

/// The same number in another unit, to the last digit: "2.50" cm is "25.0" mm, "7.5" cm is "2 121/127" in.
exact::Written converted(const exact::Written& number, const Number& factor) {
  constexpr int most_places = 6;
  exact::Written result = number;
  result.value = number.value * factor;
  const auto shift = power_of_ten(factor);
  const auto needed = exact::decimals_needed(result.value, most_places);
  result.is_fraction = number.is_fraction || (!shift && !needed);
  if (result.is_fraction) {
    result.text = exact::exact_text(result.value);
    return result;
  }
  result.places = shift ? std::max(0, number.places - *shift) : *needed;
  result.text = exact::fixed_text(result.value, result.places);
  return result;
}

units::WrittenQuantity converted(const units::WrittenQuantity& quantity, const Unit& unit) {
  if (quantity.has_unit && quantity.unit == unit) {
    return quantity;
  }
  units::WrittenQuantity written;
  written.number =
      converted(quantity.number, quantity.has_unit ? units::conversion(quantity.unit, unit) : Number::whole(1));
  written.unit = unit;
  written.has_unit = true;
  written.text = written.number.text + " " + unit.ascii();
  return written;
}

void convert(Description& description, const Unit& unit) {
  const auto word = description.fields.find("unit");
  const std::string* text = word == description.fields.end() ? nullptr : std::get_if<std::string>(&word->second);
  const auto from = text == nullptr ? std::nullopt : Unit::find(*text);
  for (auto& entry : description.fields) {
    if (auto* length = std::get_if<LengthEntry>(&entry.second)) {
      if (length->written) {
        length->written = converted(*length->written, unit);
      }
    } else if (auto* list = std::get_if<std::vector<LengthEntry>>(&entry.second)) {
      for (LengthEntry& item : *list) {
        if (item.written) {
          item.written = converted(*item.written, unit);
        }
      }
    } else if (auto* points = std::get_if<std::vector<PointEntry>>(&entry.second)) {
      const Number factor = from ? units::conversion(*from, unit) : Number::whole(1);
      for (PointEntry& point : *points) {
        for (exact::Written* coordinate : {&point.x, &point.y}) {
          *coordinate = converted(*coordinate, factor);
        }
      }
    }
  }
  if (text != nullptr) {
    word->second = unit.text();
  }
}

}  // namespace

Description in_unit(const Description& description, const Unit& unit) {
  Description result = description;
  convert(result, unit);
  for (Description& base : result.base) {
    convert(base, unit);
  }
  return result;
}

}  // namespace fw::solids
