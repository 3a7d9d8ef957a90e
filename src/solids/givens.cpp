#include "solids/givens.hpp"

#include <algorithm>
#include <array>

#include "base/spelling.hpp"
#include "exact/print_number.hpp"

namespace fw::solids {

using exact::Number;
using units::Unit;
using units::WrittenQuantity;

namespace {

struct KnownRow {
  const char* key;
  const char* title;
  const algebra::Symbol& (*symbol)();
};
const std::array<KnownRow, 4>& known_rows() {
  static const std::array<KnownRow, 4> rows{KnownRow{"surface_area", "surface area", &symbols::surface_area},
                                            KnownRow{"lateral_area", "lateral area", &symbols::lateral_area},
                                            KnownRow{"base_area", "base area", &symbols::base_area},
                                            KnownRow{"volume", "volume", &symbols::volume}};
  return rows;
}

/// The length entries of a field, of either form.
std::vector<const WrittenQuantity*> written_in(const FieldValue& value) {
  std::vector<const WrittenQuantity*> found;
  if (const auto* entry = std::get_if<LengthEntry>(&value)) {
    if (entry->written) {
      found.push_back(&*entry->written);
    }
  } else if (const auto* list = std::get_if<std::vector<LengthEntry>>(&value)) {
    for (const LengthEntry& item : *list) {
      if (item.written) {
        found.push_back(&*item.written);
      }
    }
  }
  return found;
}

/// A description's own fields in the order of its kind's table, so that "the first length written" is settled.
std::vector<std::string> field_order(const std::vector<Field>& fields) {
  std::vector<std::string> keys;
  keys.reserve(fields.size());
  for (const Field& field : fields) {
    keys.push_back(field.key);
  }
  return keys;
}

std::optional<Unit> first_unit(const Description& description, const std::vector<Field>& fields) {
  for (const std::string& key : field_order(fields)) {
    const auto found = description.fields.find(key);
    if (found == description.fields.end()) {
      continue;
    }
    for (const WrittenQuantity* quantity : written_in(found->second)) {
      return quantity->unit;
    }
    const auto* word = std::get_if<std::string>(&found->second);
    if (word != nullptr && key == "unit") {
      return Unit::find(*word);
    }
  }
  return std::nullopt;
}

Unit first_unit(const Description& description, const Known& known) {
  if (!description.base.empty()) {
    if (const ShapeKind* shape = find_base_shape(description.base.front().kind)) {
      if (const auto unit = first_unit(description.base.front(), shape->fields)) {
        return *unit;
      }
    }
  }
  if (const Kind* kind = find_kind(description.kind)) {
    if (const auto unit = first_unit(description, kind->fields)) {
      return *unit;
    }
  }
  for (const auto& entry : known) {
    if (const auto root = entry.second.unit.root()) {
      return *root;
    }
  }
  return Unit::centimeter();
}

/// Whether a class would write every length in this unit: 30 in is 2.5 ft, but 31 in is 2 7/12 ft.
bool is_written_well_in(const Unit& unit, const Description& description) {
  constexpr int most_places = 2;
  for (const auto& [key, value] : description.fields) {
    for (const WrittenQuantity* quantity : written_in(value)) {
      const bool has_two_units = quantity->number.text == quantity->text;  // "2 ft 7 in"
      const bool is_converted = quantity->has_unit && (has_two_units || !(quantity->unit == unit));
      if (is_converted && quantity->unit.converts_to(unit) &&
          !exact::decimals_needed(quantity->number.value * units::conversion(quantity->unit, unit), most_places)) {
        return false;
      }
    }
  }
  return std::all_of(description.base.begin(), description.base.end(),
                     [&](const Description& base) { return is_written_well_in(unit, base); });
}

}  // namespace

std::string known_title(const std::string& key) {
  for (const KnownRow& row : known_rows()) {
    if (key == row.key) {
      return row.title;
    }
  }
  return "";
}

Unit working_unit(const Description& description, const Known& known) {
  const Unit unit = first_unit(description, known);
  const bool is_in_feet = unit.text() == "ft" && known.empty();
  return is_in_feet && !is_written_well_in(unit, description) ? *Unit::find("in") : unit;
}

// ---- the form of what is written ----

namespace {

class FormCheck {
 public:
  std::vector<Fault> faults;

  void check_fields(const Description& description, const std::vector<Field>& fields, const std::string& prefix,
                    const std::string& owner) {
    for (const auto& entry : description.fields) {
      const auto field =
          std::find_if(fields.begin(), fields.end(), [&](const Field& f) { return f.key == entry.first; });
      if (field == fields.end()) {
        faults.push_back(
            impossible(prefix + entry.first,
                       message("{solid:a} has no {key}; it has {keys:or}",
                               {{"solid", Noun{owner}}, {"key", entry.first}, {"keys", field_order(fields)}})));
      } else {
        check_value(*field, entry.second, prefix + entry.first);
      }
    }
  }

  void check_quantity(const WrittenQuantity& quantity, int dimension, const std::string& measure) {
    static const std::array<const char*, 4> dimensions{"", "length", "area", "volume"};
    if (quantity.has_unit && quantity.unit.dimension() != dimension) {
      const Noun wanted{dimensions[static_cast<std::size_t>(dimension)]};
      faults.push_back(
          impossible(measure, message("\"{text}\" is not {wanted:a}", {{"text", quantity.text}, {"wanted", wanted}})));
      return;
    }
    (quantity.has_unit ? with_unit_ : without_unit_).push_back(measure);
    if (!quantity.has_unit && first_bare_.empty()) {
      first_bare_ = quantity.text;
    }
  }

  void check_units_together() {
    if (!with_unit_.empty() && !without_unit_.empty()) {
      faults.push_back(
          impossible(without_unit_.front(),
                     message("\"{text}\" has no unit, but other measures have one: give every measure a unit, or none",
                             {{"text", first_bare_}})));
    }
  }
  void note_unit_word(const std::string& measure) { with_unit_.push_back(measure); }

 private:
  void check_value(const Field& field, const FieldValue& value, const std::string& measure) {
    // The forms stand in the same order as the alternatives of a FieldValue.
    const auto type = static_cast<std::size_t>(field.type);
    if (value.index() != type) {
      static const std::array<const char*, 5> forms{"length", "list of lengths", "whole number", "list of corners",
                                                    "word"};
      faults.push_back(impossible(measure, message("the {field} must be {form:a}",
                                                   {{"field", Noun{field.title}}, {"form", Noun{forms[type]}}})));
      return;
    }
    if (const auto* list = std::get_if<std::vector<LengthEntry>>(&value)) {
      check_size(field, list->size(), measure);
    }
    if (const auto* word = std::get_if<std::string>(&value)) {
      check_word(field, *word, measure);
    }
    for (const WrittenQuantity* quantity : written_in(value)) {
      check_quantity(*quantity, 1, measure);
    }
  }
  void check_size(const Field& field, std::size_t size, const std::string& measure) {
    const auto least = static_cast<std::size_t>(field.least);
    const auto most = static_cast<std::size_t>(field.most);
    if (size < least || (most > 0 && size > most)) {
      const words::Message wanted = least == most ? message("{least}", {{"least", least}})
                                                  : message("{least} to {most}", {{"least", least}, {"most", most}});
      faults.push_back(
          impossible(measure, message("the {field} must be {wanted} lengths, not {size}",
                                      {{"field", Noun{field.title}}, {"wanted", wanted}, {"size", size}})));
    }
  }
  void check_word(const Field& field, const std::string& word, const std::string& measure) {
    if (field.key == "unit") {
      const auto unit = Unit::find(word);
      if (!unit || unit->dimension() != 1) {
        faults.push_back(impossible(measure, message("\"{word}\" is not a unit of length", {{"word", word}})));
      }
      note_unit_word(measure);
    } else if (std::find(field.words.begin(), field.words.end(), word) == field.words.end()) {
      faults.push_back(impossible(
          measure, message("\"{word}\" can't go here; {words:or} can", {{"word", word}, {"words", field.words}})));
    }
  }

  std::vector<std::string> with_unit_, without_unit_;
  std::string first_bare_;
};

template <class Table>
Fault unknown_name(const std::string& measure, const std::string& what, const std::string& name, const Table& table) {
  std::vector<std::string> keys;
  keys.reserve(table.size());
  for (const auto& row : table) {
    keys.push_back(row.key);
  }
  const auto nearest = nearest_spelling(name, keys);
  Fault fault = impossible(measure, nearest ? message("there is no {what} \"{name}\"; did you mean \"{nearest}\"?",
                                                      {{"what", Noun{what}}, {"name", name}, {"nearest", *nearest}})
                                            : message("there is no {what} \"{name}\": there are {keys:and}",
                                                      {{"what", Noun{what}}, {"name", name}, {"keys", keys}}));
  fault.nearest = nearest.value_or("");
  return fault;
}

}  // namespace

std::vector<Fault> form_faults(const Description& description, const Known& known) {
  const Kind* kind = find_kind(description.kind);
  if (kind == nullptr) {
    return {unknown_name("kind", "kind of solid", description.kind, kinds())};
  }
  FormCheck check;
  check.check_fields(description, kind->fields, "", description.kind);
  if (kind->stands_on_base && description.base.size() != 1) {
    check.faults.push_back(missing("base", message("{solid:a} needs a base", {{"solid", Noun{description.kind}}})));
  } else if (!kind->stands_on_base && !description.base.empty()) {
    check.faults.push_back(
        impossible("base", message("{solid:a} takes no base of its own", {{"solid", Noun{description.kind}}})));
  } else if (kind->stands_on_base) {
    const Description& base = description.base.front();
    const ShapeKind* shape = find_base_shape(base.kind);
    if (shape == nullptr) {
      check.faults.push_back(unknown_name("base.shape", "base shape", base.kind, base_shapes()));
    } else {
      check.check_fields(base, shape->fields, "base.", base.kind);
    }
  }
  for (const auto& entry : known) {
    if (known_title(entry.first).empty()) {
      check.faults.push_back(
          impossible(entry.first,
                     message("\"{key}\" can't be a known measure; surface_area, lateral_area, base_area and volume can",
                             {{"key", entry.first}})));
    } else {
      check.check_quantity(entry.second, entry.first == "volume" ? 3 : 2, entry.first);
    }
  }
  check.check_units_together();
  return check.faults;
}

// ---- values in one unit ----

namespace {

LengthEntry entry_in(const LengthEntry& entry, const Unit& unit) {
  LengthEntry result = entry;
  if (result.written) {
    result.written->number.value = result.written->number.value * units::conversion(result.written->unit, unit);
    result.written->unit = unit;
  }
  return result;
}

void convert_values(Description& description, const Unit& unit) {
  std::optional<Unit> point_unit;
  const auto word = description.fields.find("unit");
  if (word != description.fields.end()) {
    if (const auto* text = std::get_if<std::string>(&word->second)) {
      point_unit = Unit::find(*text);
    }
  }
  for (auto& entry : description.fields) {
    if (auto* length = std::get_if<LengthEntry>(&entry.second)) {
      *length = entry_in(*length, unit);
    } else if (auto* list = std::get_if<std::vector<LengthEntry>>(&entry.second)) {
      for (LengthEntry& item : *list) {
        item = entry_in(item, unit);
      }
    } else if (auto* points = std::get_if<std::vector<PointEntry>>(&entry.second)) {
      const Number factor = point_unit ? units::conversion(*point_unit, unit) : Number::whole(1);
      for (PointEntry& point : *points) {
        point.x.value = point.x.value * factor;
        point.y.value = point.y.value * factor;
      }
    }
  }
}

Given given_of(const algebra::Symbol& symbol, const WrittenQuantity& quantity, const Unit& working) {
  Given given;
  given.symbol = symbol;
  const Unit target = quantity.has_unit ? working.to_the(symbol.dimension) : quantity.unit;
  const Number factor = quantity.has_unit ? units::conversion(quantity.unit, target) : Number::whole(1);
  given.value = quantity.number.value * factor;
  given.places = quantity.number.places;
  given.is_fraction = quantity.number.is_fraction;
  given.unit = quantity.has_unit ? quantity.unit : working.to_the(symbol.dimension);
  given.to_written = Number::whole(1) / factor;
  return given;
}

}  // namespace

Description with_values_in(const Description& description, const Unit& unit) {
  Description result = description;
  convert_values(result, unit);
  for (Description& base : result.base) {
    convert_values(base, unit);
  }
  return result;
}

Number Given::half_unit() const {
  const bool is_exact = is_fraction || (places == 0 && !is_rounded);
  return is_exact ? Number() : Number::ratio(1, 2) / exact::power(whole(10), places) / to_written;
}

std::vector<Given> givens(const SolidStatement& statement, const Description& description, const Known& known,
                          const Unit& unit) {
  std::vector<Given> all;
  for (const Measure& measure : statement.measures) {
    if (measure.key.empty() || (measure.in_base && description.base.empty())) {
      continue;
    }
    const Description& owner = measure.in_base ? description.base.front() : description;
    const auto field = owner.fields.find(measure.key);
    if (field == owner.fields.end()) {
      continue;
    }
    const WrittenQuantity* quantity = nullptr;
    if (const auto* entry = std::get_if<LengthEntry>(&field->second)) {
      quantity = entry->written ? &*entry->written : nullptr;
    } else if (const auto* list = std::get_if<std::vector<LengthEntry>>(&field->second)) {
      const bool is_written = measure.item < list->size() && (*list)[measure.item].written;
      quantity = is_written ? &*(*list)[measure.item].written : nullptr;
    }
    if (quantity != nullptr) {
      Given given = given_of(measure.symbol, *quantity, unit);
      given.title = measure.title;
      given.key = measure.key;
      given.field = (measure.in_base ? "base." : "") + measure.key;
      const bool is_of_list = std::holds_alternative<std::vector<LengthEntry>>(field->second);
      given.measure = given.field + (is_of_list ? "." + std::to_string(measure.item + 1) : "");
      given.may_be_zero = measure.may_be_zero;
      all.push_back(given);
    }
  }
  for (const KnownRow& row : known_rows()) {
    const auto found = known.find(row.key);
    if (found != known.end()) {
      Given given = given_of(row.symbol(), found->second, unit);
      given.title = row.title;
      given.key = row.key;
      given.field = given.measure = row.key;
      given.is_known = true;
      all.push_back(given);
    }
  }
  for (Given& given : all) {
    given.is_rounded = description.is_rounded;
  }
  return all;
}

words::Message value_words(const Number& value, int dimension, const Unit& unit, int places) {
  const exact::Shown shown = exact::shown(value, places);
  const words::Amount amount{shown.text, (unit.dimension() == dimension ? unit : unit.to_the(dimension)).text()};
  return shown.exact ? message("{amount}", {{"amount", amount}}) : message("about {amount}", {{"amount", amount}});
}

}  // namespace fw::solids
