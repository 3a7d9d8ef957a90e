#include "reasoning/measures.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>

#include "exact/print_number.hpp"
#include "units/write_quantity.hpp"

namespace fw::reasoning {
namespace {

using solids::Description;
using solids::FieldValue;
using solids::LengthEntry;
using words::message;
using words::Message;

/// "base.sides.2" taken apart.
struct FieldPath {
  bool in_base = false;
  std::string key;
  std::optional<std::size_t> item;
};

FieldPath path_of(const std::string& field) {
  FieldPath path;
  std::string rest = field;
  if (rest.rfind("base.", 0) == 0) {
    path.in_base = true;
    rest = rest.substr(5);
  }
  const std::size_t dot = rest.find('.');
  path.key = rest.substr(0, dot);
  if (dot != std::string::npos) {
    std::size_t item = 0;
    const char* end = rest.data() + rest.size();
    if (std::from_chars(rest.data() + dot + 1, end, item).ptr == end && item > 0) {
      path.item = item - 1;
    }
  }
  return path;
}

const LengthEntry* entry_at(const Description& part, const std::string& key, std::size_t item) {
  const auto found = part.fields.find(key);
  if (found == part.fields.end()) {
    return nullptr;
  }
  if (const auto* single = std::get_if<LengthEntry>(&found->second)) {
    return item == 0 ? single : nullptr;
  }
  if (const auto* list = std::get_if<std::vector<LengthEntry>>(&found->second)) {
    return item < list->size() ? &(*list)[item] : nullptr;
  }
  return nullptr;
}

bool is_list(const Description& part, const std::string& key) {
  const auto found = part.fields.find(key);
  return found != part.fields.end() && std::holds_alternative<std::vector<LengthEntry>>(found->second);
}

double value_of(const solids::Solid& solid, const algebra::Symbol& symbol) {
  const auto found = solid.values().find(symbol.name);
  return found == solid.values().end() ? 0.0 : found->second.to_double();
}

/// Sliders run from near nothing to two and a half times the prepared number, in steps a class can read.
void set_slider(EditableMeasure& measure, double prepared) {
  measure.step = measure.places > 0 ? 0.1 : 1.0;
  if (prepared > 0 && prepared < 3) {
    measure.step = 0.1;
  }
  if (measure.step < 1) {
    measure.places = std::max(measure.places, 1);
  }
  measure.least = measure.step;
  measure.most = std::max(10.0 * measure.step, std::ceil(prepared * 2.5));
}

std::string unit_text(const LengthEntry& entry, const solids::Solid& solid) {
  if (entry.written) {
    return entry.written->has_unit ? entry.written->unit.text() : std::string();
  }
  return solid.unit() == units::Unit::none() ? std::string() : solid.unit().text();
}

void add_counts(std::vector<EditableMeasure>& measures, const Description& part,
                const std::vector<solids::Field>& fields, const std::string& prefix) {
  for (const solids::Field& field : fields) {
    const auto found = part.fields.find(field.key);
    if (field.type != solids::FieldType::Count || found == part.fields.end() || field.least >= field.most ||
        !field.words.empty()) {
      continue;
    }
    EditableMeasure count;
    count.field = prefix + field.key;
    count.title = field.title;
    count.value = std::get<int>(found->second);
    count.text = std::to_string(std::get<int>(found->second));
    count.least = field.least;
    count.most = std::min(field.most, 12);
    measures.push_back(count);
  }
}

}  // namespace

std::vector<EditableMeasure> editable_measures(const solids::Solid& solid, const solids::Solid& prepared) {
  std::vector<EditableMeasure> measures;
  const Description& description = solid.description();
  for (const solids::Measure& measure : solid.statement().measures) {
    if (measure.key.empty() || (measure.in_base && description.base.empty())) {
      continue;
    }
    const Description& part = measure.in_base ? description.base.front() : description;
    const LengthEntry* entry = entry_at(part, measure.key, measure.item);
    if (entry == nullptr) {
      continue;
    }
    EditableMeasure editable;
    editable.field = (measure.in_base ? "base." : "") + measure.key;
    if (is_list(part, measure.key)) {
      editable.field += "." + std::to_string(measure.item + 1);
    }
    editable.title = measure.title;
    editable.letter = measure.symbol.letter;
    editable.is_unknown = !entry->written;
    editable.unit = unit_text(*entry, solid);
    editable.value = entry->written ? entry->written->number.value.to_double() : value_of(solid, measure.symbol);
    editable.text = entry->written ? entry->written->number.text : "?";
    editable.places = entry->written ? entry->written->number.places : 0;
    const double before = value_of(prepared, measure.symbol);
    set_slider(editable, before > 0 && prepared.unit() == solid.unit() ? before : editable.value);
    measures.push_back(editable);
  }
  if (const solids::Kind* kind = solids::find_kind(description.kind)) {
    add_counts(measures, description, kind->fields, "");
  }
  if (!description.base.empty()) {
    if (const solids::ShapeKind* shape = solids::find_base_shape(description.base.front().kind)) {
      add_counts(measures, description.base.front(), shape->fields, "base.");
    }
  }
  return measures;
}

Result<Description, Message> with_measure(const Description& description, const std::string& field,
                                          const std::string& text) {
  const FieldPath path = path_of(field);
  Description changed = description;
  if (path.in_base && changed.base.empty()) {
    return failure(message("This solid has no base shape to change."));
  }
  Description& part = path.in_base ? changed.base.front() : changed;
  const auto found = part.fields.find(path.key);
  if (found == part.fields.end()) {
    return failure(message("This solid has no measure \"{field}\".", {{"field", field}}));
  }
  if (int* count = std::get_if<int>(&found->second)) {
    int number = 0;
    const char* end = text.data() + text.size();
    if (std::from_chars(text.data(), end, number).ptr != end || text.empty()) {
      return failure(message("\"{text}\" is not a whole number.", {{"text", text}}));
    }
    *count = number;
    return changed;
  }
  const std::size_t item = path.item.value_or(0);
  if (entry_at(part, path.key, item) == nullptr) {
    return failure(message("This solid has no measure \"{field}\".", {{"field", field}}));
  }
  auto* list = std::get_if<std::vector<LengthEntry>>(&found->second);
  LengthEntry& entry = list != nullptr ? (*list)[item] : std::get<LengthEntry>(found->second);
  auto written = units::parse_quantity(text);
  if (!written) {
    return failure(message("{reason}", {{"reason", written.error().message}}));
  }
  units::WrittenQuantity quantity = std::move(written).value();
  if (!quantity.has_unit && entry.written && entry.written->has_unit) {
    quantity = units::written_in(entry.written->unit, quantity.number);
  }
  if (quantity.unit.dimension() != 1) {
    return failure(
        message("\"{text}\" is not a length. Write it with a unit, such as 9 cm or 2 ft.", {{"text", text}}));
  }
  entry.written = std::move(quantity);
  return changed;
}

namespace {

/// Whether the number can be written out in the unit: a short decimal, or a fraction with a small denominator.
bool writable(const units::WrittenQuantity& length, const units::Unit& unit) {
  if (!length.unit.converts_to(unit)) {
    return false;
  }
  const exact::Number value = length.number.value * units::conversion(length.unit, unit);
  if (exact::decimals_needed(value, 6)) {
    return true;
  }
  constexpr int denominators[] = {2, 3, 4, 6, 8, 9, 12, 16, 18, 24, 32, 36};
  return std::any_of(std::begin(denominators), std::end(denominators),
                     [&](int d) { return (value * exact::Number::whole(d)).is_whole(); });
}

template <class Visit>
void for_each_length(const Description& description, const Visit& visit) {
  for (const auto& field : description.fields) {
    if (const auto* single = std::get_if<LengthEntry>(&field.second); single != nullptr && single->written) {
      visit(*single->written);
    }
    if (const auto* list = std::get_if<std::vector<LengthEntry>>(&field.second)) {
      for (const LengthEntry& entry : *list) {
        if (entry.written) {
          visit(*entry.written);
        }
      }
    }
  }
  for (const Description& base : description.base) {
    for_each_length(base, visit);
  }
}

}  // namespace

std::vector<units::Unit> units_to_choose(const Description& description) {
  std::vector<units::Unit> choice;
  for (const units::Unit& unit : units::Unit::lengths()) {
    bool fits = true;
    bool any = false;
    for_each_length(description, [&](const units::WrittenQuantity& length) {
      any = true;
      fits = fits && length.has_unit && writable(length, unit);
    });
    if (any && fits) {
      choice.push_back(unit);
    }
  }
  return choice;
}

}  // namespace fw::reasoning
