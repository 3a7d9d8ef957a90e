#include "solids/statement_parts.hpp"

#include <array>

namespace fw::solids {

using algebra::Expression;
using algebra::Symbol;
using exact::Number;

Symbol base_symbol(const std::string& key, const std::string& letter) { return {"base." + key, letter, 1}; }

Measure measure(const Symbol& symbol, const std::string& title, const std::string& key, std::size_t item) {
  Measure result{symbol, title, key, item};
  return result;
}

Measure base_measure(const Symbol& symbol, const std::string& title, const std::string& key, std::size_t item) {
  Measure result = measure(symbol, title, key, item);
  result.in_base = true;
  return result;
}

std::string subscript(std::size_t number) {
  static const std::array<std::string, 10> digits{"₀", "₁", "₂", "₃", "₄", "₅", "₆", "₇", "₈", "₉"};
  std::string text;
  for (const char digit : std::to_string(number)) {
    text += digits[static_cast<std::size_t>(digit - '0')];
  }
  return text;
}

Field length_field(const std::string& key, const std::string& title, const std::string& symbol) {
  Field field;
  field.key = key;
  field.title = title;
  field.symbols = {symbol};
  return field;
}

Field lengths_field(const std::string& key, const std::string& title, const std::vector<std::string>& symbols,
                    int least, int most) {
  Field field;
  field.key = key;
  field.type = FieldType::Lengths;
  field.title = title;
  field.symbols = symbols;
  field.least = least;
  field.most = most;
  return field;
}

void add_perimeter_and_area(ShapeStatement& shape, const Expression& perimeter, words::Message reason,
                            words::Message area_reason) {
  shape.relations.push_back({{symbols::perimeter(), perimeter}, std::move(reason)});
  shape.relations.push_back({{symbols::base_area(), shape.area}, std::move(area_reason)});
}

Number value_of(const algebra::Bindings& bindings, const Symbol& symbol) {
  const auto found = bindings.find(symbol.name);
  ensure(found != bindings.end(), "a body was asked for before all its measures were known");
  return found->second;
}

double double_of(const algebra::Bindings& bindings, const Symbol& symbol) {
  return value_of(bindings, symbol).to_double();
}

Expression half(const Expression& expression) { return expression / 2; }
Expression square(const Expression& expression) { return power(expression, 2); }

bool has_field(const Description& description, const std::string& key) {
  return description.fields.find(key) != description.fields.end();
}

std::optional<Number> written_length(const Description& description, const std::string& key) {
  const auto found = description.fields.find(key);
  if (found == description.fields.end()) {
    return std::nullopt;
  }
  const auto* entry = std::get_if<LengthEntry>(&found->second);
  if (entry == nullptr || !entry->written) {
    return std::nullopt;
  }
  return entry->written->number.value;
}

std::vector<std::optional<Number>> written_lengths(const Description& description, const std::string& key) {
  std::vector<std::optional<Number>> values;
  const auto found = description.fields.find(key);
  if (found == description.fields.end()) {
    return values;
  }
  if (const auto* list = std::get_if<std::vector<LengthEntry>>(&found->second)) {
    for (const LengthEntry& entry : *list) {
      values.push_back(entry.written ? std::optional<Number>(entry.written->number.value) : std::nullopt);
    }
  }
  return values;
}

std::optional<int> count_of(const Description& description, const std::string& key) {
  const auto found = description.fields.find(key);
  const int* count = found == description.fields.end() ? nullptr : std::get_if<int>(&found->second);
  return count == nullptr ? std::nullopt : std::optional<int>(*count);
}

LengthEntry length_entry(std::string_view text) {
  auto quantity = units::parse_quantity(text);
  ensure(quantity.has_value(), "an example of the catalog is no length");
  return {*quantity};
}

std::vector<LengthEntry> length_entries(const std::vector<std::string>& texts) {
  std::vector<LengthEntry> entries;
  entries.reserve(texts.size());
  for (const std::string& text : texts) {
    entries.push_back(length_entry(text));
  }
  return entries;
}

Fault impossible(const std::string& measure, words::Message message) {
  return {Severity::Impossible, measure, std::move(message), ""};
}
Fault missing(const std::string& measure, words::Message message) {
  return {Severity::Missing, measure, std::move(message), ""};
}

namespace {
const std::array<const char*, 10> polygon_stems{"triang",  "quadrilater", "pentagon", "hexagon",    "heptagon",
                                                "octagon", "nonagon",     "decagon",  "hendecagon", "dodecagon"};
}

std::string name_of(const std::vector<std::string>& words) {
  std::string name;
  for (const std::string& word : words) {
    name += (name.empty() ? "" : " ") + word;
  }
  return name;
}

std::string polygon_noun(int corners) {
  if (corners == 3) {
    return "triangle";
  }
  if (corners == 4) {
    return "quadrilateral";
  }
  return corners <= 12 ? polygon_stems[static_cast<std::size_t>(corners - 3)] : std::to_string(corners) + "-gon";
}

std::string polygon_adjective(int corners) {
  if (corners == 3) {
    return "triangular";
  }
  return polygon_noun(corners) + (corners == 4 ? "" : "al");
}

Number exact_area(const std::vector<ExactPoint>& corners) {
  Number twice;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const ExactPoint& a = corners[i];
    const ExactPoint& b = corners[(i + 1) % corners.size()];
    twice = twice + (a.x * b.y - b.x * a.y);
  }
  return twice / whole(2);
}

ExactPoint exact_centroid(const std::vector<ExactPoint>& corners) {
  Number x;
  Number y;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const ExactPoint& a = corners[i];
    const ExactPoint& b = corners[(i + 1) % corners.size()];
    const Number cross = a.x * b.y - b.x * a.y;
    x = x + (a.x + b.x) * cross;
    y = y + (a.y + b.y) * cross;
  }
  const Number six_areas = whole(6) * exact_area(corners);
  return {x / six_areas, y / six_areas};
}

Number distance(const ExactPoint& a, const ExactPoint& b) {
  const Number x = b.x - a.x;
  const Number y = b.y - a.y;
  return square_root(x * x + y * y);
}

Number distance_from_line(const ExactPoint& point, const ExactPoint& a, const ExactPoint& b) {
  const Number cross = (b.x - a.x) * (point.y - a.y) - (b.y - a.y) * (point.x - a.x);
  return (cross.sign() < 0 ? -cross : cross) / distance(a, b);
}

geometry::Vec2 flat(const ExactPoint& point) { return {point.x.to_double(), point.y.to_double()}; }

Relation apothem_relation(const Symbol& a, const Symbol& s, int count) {
  // A third, a fourth and a sixth of a turn make triangles that a class knows.
  const Number factor = Number::polygon_cotangent(count) / whole(2);
  return {{a, algebra::Expression(s) * factor},
          exact::has_class_form(factor)
              ? message("in a regular polygon, the side determines the apothem")
              : message("from a table: in a regular polygon with {count} sides, the apothem is {factor} times the side",
                        {{"count", std::to_string(count)}, {"factor", exact::class_text(factor)}})};
}

}  // namespace fw::solids
