#include "lessons/read_description.hpp"

#include <algorithm>

#include "lessons/read_measure.hpp"
#include "solids/catalog.hpp"

namespace fw::lessons {
namespace {

using solids::Field;
using solids::FieldType;
using solids::FieldValue;
using words::Message;
using words::message;
using words::Noun;

Message size_text(int least, int most) {
  if (least > 0 && most > 0) {
    return least == most ? message("{count}", {{"count", least}})
                         : message("{least} to {most}", {{"least", least}, {"most", most}});
  }
  return least > 0 ? message("{least} or more", {{"least", least}}) : message("at most {most}", {{"most", most}});
}

bool is_within(std::size_t size, int least, int most) {
  return size >= static_cast<std::size_t>(std::max(least, 0)) && (most == 0 || size <= static_cast<std::size_t>(most));
}

// The items of a list field, their number checked.
const std::vector<JsonNode>* list_items(const JsonNode& node, int least, int most, const char* example,
                                        const Context& context) {
  if (!node.is(JsonNode::Kind::List)) {
    context.fault(node, message("a list such as {example} belongs here; found {found}",
                                {{"example", example}, {"found", found_text(node)}}));
    return nullptr;
  }
  if (!is_within(node.items.size(), least, most)) {
    context.fault(node, message("this list has {count} items; it should have {size}",
                                {{"count", node.items.size()}, {"size", size_text(least, most)}}));
    return nullptr;
  }
  return &node.items;
}

std::optional<FieldValue> read_lengths(const JsonNode& node, const Field& field, const Context& context) {
  const std::vector<JsonNode>* items = list_items(node, field.least, field.most, "[\"9 cm\", \"11 cm\"]", context);
  if (items == nullptr) {
    return std::nullopt;
  }
  std::vector<solids::LengthEntry> lengths;
  for (const JsonNode& item : *items) {
    if (const std::optional<solids::LengthEntry> length = read_length(item, context, Zero::Allowed)) {
      lengths.push_back(*length);
    }
  }
  return lengths.size() == items->size() ? std::optional<FieldValue>(std::move(lengths)) : std::nullopt;
}

std::optional<FieldValue> read_points(const JsonNode& node, const Field& field, const Context& context) {
  const int most = field.most == 0 ? static_cast<int>(limits::polygon_corners) : field.most;
  const std::vector<JsonNode>* items = list_items(node, field.least, most, "[[0, 0], [8, 0], [4, 3]]", context);
  if (items == nullptr) {
    return std::nullopt;
  }
  std::vector<solids::PointEntry> points;
  for (const JsonNode& item : *items) {
    if (!item.is(JsonNode::Kind::List) || item.items.size() != 2) {
      context.fault(item, message("a point is a list of two numbers, such as [4, 3]; found {found}",
                                  {{"found", found_text(item)}}));
      continue;
    }
    const std::optional<exact::Written> x = read_coordinate(item.items[0], context);
    const std::optional<exact::Written> y = read_coordinate(item.items[1], context);
    if (x && y) {
      points.push_back({*x, *y});
    }
  }
  return points.size() == items->size() ? std::optional<FieldValue>(std::move(points)) : std::nullopt;
}

std::optional<FieldValue> read_count(const JsonNode& node, const Field& field, const Context& context) {
  const int most = field.most == 0 ? static_cast<int>(limits::polygon_corners) : field.most;
  const bool is_whole =
      node.is(JsonNode::Kind::Number) && node.text.find_first_not_of("0123456789") == std::string::npos;
  if (!is_whole) {
    context.fault(node, message("a whole number without quotation marks belongs here, {size}; found {found}",
                                {{"size", size_text(field.least, most)}, {"found", found_text(node)}}));
    return std::nullopt;
  }
  // Six digits are beyond every limit and still fit an int.
  const int count = node.text.size() > 6 ? 999999 : std::stoi(node.text);
  if (!is_within(static_cast<std::size_t>(count), field.least, most)) {
    context.fault(node, message("{found} is out of range: it should be {size}",
                                {{"found", found_text(node)}, {"size", size_text(field.least, most)}}));
    return std::nullopt;
  }
  return FieldValue(count);
}

std::optional<FieldValue> read_word(const JsonNode& node, const Field& field, const Context& context) {
  const std::string* word = text_at(node, message("this"), context);
  if (word == nullptr) {
    return std::nullopt;
  }
  if (!field.words.empty() && std::find(field.words.begin(), field.words.end(), *word) == field.words.end()) {
    context.fault(node, message("{word} can't go here{suggestion}",
                                {{"word", in_quotes(*word)}, {"suggestion", suggestion(*word, field.words)}}));
    return std::nullopt;
  }
  return FieldValue(*word);
}

}  // namespace

std::optional<FieldValue> read_field(const JsonNode& node, const Field& field, const Context& context) {
  switch (field.type) {
    case FieldType::Length: {
      std::optional<solids::LengthEntry> length = read_length(node, context);
      return length ? std::optional<FieldValue>(std::move(*length)) : std::nullopt;
    }
    case FieldType::Lengths:
      return read_lengths(node, field, context);
    case FieldType::Count:
      return read_count(node, field, context);
    case FieldType::Points:
      return read_points(node, field, context);
    case FieldType::Word:
      return read_word(node, field, context);
  }
  return std::nullopt;
}

namespace {

// The values of all fields that stand in the object; faults leave theirs out.
void read_fields(const JsonNode& node, const std::vector<Field>& fields, solids::Description& description,
                 const Context& context) {
  for (const Field& field : fields) {
    const JsonNode* value = node.find(field.key);
    if (value == nullptr) {
      continue;
    }
    if (std::optional<FieldValue> read = read_field(*value, field, context.at(field.key))) {
      description.fields.emplace(field.key, std::move(*read));
    }
  }
}

std::vector<std::string> keys_of(const std::vector<Field>& fields, std::vector<std::string> keys) {
  keys.reserve(keys.size() + fields.size());
  for (const Field& field : fields) {
    keys.push_back(field.key);
  }
  return keys;
}

// The row of a table that the word at `key` names; null, with a fault, when it names none.
template <class Row>
const Row* named_row(const JsonNode& node, const char* key, const std::vector<Row>& rows, const Context& context) {
  std::vector<std::string> names;
  names.reserve(rows.size());
  for (const Row& row : rows) {
    names.push_back(row.key);
  }
  const JsonNode* word_node = node.find(key);
  if (word_node == nullptr) {
    context.fault(node, message("the key \"{key}\" is missing here{suggestion}",
                                {{"key", key}, {"suggestion", suggestion("", names)}}));
    return nullptr;
  }
  const std::string* word = text_at(*word_node, in_quotes(key), context.at(key));
  if (word == nullptr) {
    return nullptr;
  }
  for (const Row& row : rows) {
    if (row.key == *word) {
      return &row;
    }
  }
  context.at(key).fault(*word_node,
                        message("{word} is not a known {key}{suggestion}",
                                {{"word", in_quotes(*word)}, {"key", key}, {"suggestion", suggestion(*word, names)}}));
  return nullptr;
}

Message one(const std::string& key) { return message("{kind:a}", {{"kind", Noun{key}}}); }

bool is_object(const JsonNode& node, const char* example, const Context& context) {
  if (!node.is(JsonNode::Kind::Object)) {
    context.fault(node, message("an object such as {example} belongs here; found {found}",
                                {{"example", example}, {"found", found_text(node)}}));
    return false;
  }
  return true;
}

void read_base(const JsonNode& solid, const solids::Kind& kind, solids::Description& description,
               const Context& context) {
  const JsonNode* node = solid.find("base");
  const Context at_base = context.at("base");
  constexpr const char* example = "{\"shape\": \"square\", \"side\": \"6 cm\"}";
  if (node == nullptr) {
    context.fault(solid, message("the key \"base\" is missing: {kind:a} stands on a base, such as {example}",
                                 {{"kind", Noun{kind.key}}, {"example", example}}));
    return;
  }
  if (!is_object(*node, example, at_base)) {
    return;
  }
  const solids::ShapeKind* shape = named_row(*node, "shape", solids::base_shapes(), at_base);
  if (shape == nullptr) {
    return;
  }
  check_keys(*node, keys_of(shape->fields, {"shape"}), one(shape->key), at_base);
  solids::Description base;
  base.kind = shape->key;
  read_fields(*node, shape->fields, base, at_base);
  description.base.push_back(std::move(base));
}

}  // namespace

std::optional<solids::Description> read_description(const JsonNode& node, const Context& context) {
  const std::size_t errors_before = context.errors();
  if (!is_object(node, "{\"kind\": \"cube\", \"edge\": \"7 cm\"}", context)) {
    return std::nullopt;
  }
  const solids::Kind* kind = named_row(node, "kind", solids::kinds(), context);
  if (kind == nullptr) {
    return std::nullopt;
  }
  std::vector<std::string> keys = keys_of(kind->fields, {"kind", "rounded"});
  if (kind->stands_on_base) {
    keys.push_back("base");
  }
  check_keys(node, keys, one(kind->key), context);
  solids::Description description;
  description.kind = kind->key;
  read_fields(node, kind->fields, description, context);
  if (const JsonNode* rounded = node.find("rounded")) {
    description.is_rounded = truth_at(*rounded, "\"rounded\"", context.at("rounded")).value_or(false);
  }
  if (kind->stands_on_base) {
    read_base(node, *kind, description, context);
  }
  return context.errors() == errors_before ? std::optional(std::move(description)) : std::nullopt;
}

}  // namespace fw::lessons
