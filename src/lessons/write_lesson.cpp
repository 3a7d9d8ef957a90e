#include "lessons/write_lesson.hpp"

#include <nlohmann/json.hpp>
#include <utility>

#include "base/overload.hpp"
#include "lessons/asked.hpp"
#include "lessons/write_net.hpp"
#include "solids/catalog.hpp"

namespace fw::lessons {
namespace {

// A member of an object: its key and its value as JSON text.
using Members = std::vector<std::pair<std::string, std::string>>;

std::string quote(const std::string& text) { return nlohmann::json(text).dump(); }

std::string in_line(const std::vector<std::string>& items, char open, char close) {
  std::string text(1, open);
  for (std::size_t i = 0; i < items.size(); ++i) {
    text += (i == 0 ? "" : ", ") + items[i];
  }
  return text + close;
}

std::string object_in_line(const Members& members) {
  std::vector<std::string> items;
  for (const auto& [key, value] : members) {
    items.push_back(quote(key) + ": " + value);
  }
  return in_line(items, '{', '}');
}

// One member a line; `indent` is the column of the closing brace.
std::string object_in_lines(const Members& members, std::size_t indent) {
  std::string text = "{\n";
  for (std::size_t i = 0; i < members.size(); ++i) {
    text += std::string(indent + 2, ' ') + quote(members[i].first) + ": " + members[i].second;
    text += i + 1 == members.size() ? "\n" : ",\n";
  }
  return text + std::string(indent, ' ') + "}";
}

std::string length_text(const solids::LengthEntry& length) {
  return quote(length.written ? length.written->text : "?");
}

std::string value_text(const solids::FieldValue& value) {
  return std::visit(
      Overload{[](const solids::LengthEntry& length) { return length_text(length); },
               [](const std::vector<solids::LengthEntry>& lengths) {
                 std::vector<std::string> items;
                 for (const solids::LengthEntry& length : lengths) {
                   items.push_back(length_text(length));
                 }
                 return in_line(items, '[', ']');
               },
               [](int count) { return std::to_string(count); },
               [](const std::vector<solids::PointEntry>& points) {
                 std::vector<std::string> items;
                 for (const solids::PointEntry& point : points) {
                   items.push_back(in_line({coordinate_text(point.x), coordinate_text(point.y)}, '[', ']'));
                 }
                 return in_line(items, '[', ']');
               },
               [](const std::string& word) { return quote(word); }},
      value);
}

// The fields in the order in which the kind states them.
void push_fields(const solids::Description& description, const std::vector<solids::Field>& order, Members& members) {
  for (const solids::Field& field : order) {
    const auto found = description.fields.find(field.key);
    if (found != description.fields.end()) {
      members.emplace_back(field.key, value_text(found->second));
    }
  }
}

std::string solid_text(const solids::Description& description) {
  Members members{{"kind", quote(description.kind)}};
  for (const solids::Description& base : description.base) {
    Members base_members{{"shape", quote(base.kind)}};
    if (const solids::ShapeKind* shape = solids::find_base_shape(base.kind)) {
      push_fields(base, shape->fields, base_members);
    }
    members.emplace_back("base", object_in_line(base_members));
  }
  if (const solids::Kind* kind = solids::find_kind(description.kind)) {
    push_fields(description, kind->fields, members);
  }
  return object_in_line(members);
}

std::string known_text(const solids::Known& known) {
  Members members;
  for (const std::string& name : whole_measures()) {
    const auto found = known.find(name);
    if (found != known.end()) {
      members.emplace_back(name, quote(found->second.text));
    }
  }
  return object_in_line(members);
}

std::string supply_text(const Supply& supply) {
  Members members{{supply.purpose, quote(supply.measure)}};
  if (supply.each) {
    members.emplace_back("each", quote(supply.each->text));
  }
  if (!supply.item.empty()) {
    members.emplace_back("item", quote(supply.item));
  }
  if (supply.box) {
    members.emplace_back("box", object_in_line({{"length", quote(supply.box->length.text)},
                                                {"width", quote(supply.box->width.text)},
                                                {"height", quote(supply.box->height.text)}}));
  }
  if (supply.rounding != Rounding::Up) {
    members.emplace_back("round", quote(supply.rounding == Rounding::Down ? "down" : "none"));
  }
  if (supply.price) {
    members.emplace_back("price", quote(supply.price->text));
  }
  if (supply.coats != 1) {
    members.emplace_back("coats", std::to_string(supply.coats));
  }
  return object_in_line(members);
}

std::string open_text(const std::vector<OpenFaces>& open) {
  std::vector<std::string> names;
  for (const OpenFaces& entry : open) {
    const bool is_number = entry.name.find_first_not_of("0123456789") == std::string::npos;
    names.push_back(is_number ? entry.name : quote(entry.name));
  }
  return in_line(names, '[', ']');
}

// What is asked in another way than by "find" alone.
void push_task(const Problem& problem, Members& members) {
  if (problem.scale) {
    members.emplace_back("scale", quote(problem.scale->text));
    if (!problem.scale->copy.empty()) {
      members.emplace_back("copy", known_text(problem.scale->copy));
    }
  }
  if (problem.unit) {
    members.emplace_back("unit", quote(problem.unit->ascii()));
  }
  if (problem.claim) {
    members.emplace_back("claim", object_in_line({{problem.claim->measure, quote(problem.claim->value.text)}}));
  }
  if (problem.face) {
    members.emplace_back("face", std::to_string(problem.face->index() + 1));
  }
  if (problem.wrong) {
    members.emplace_back("wrong", object_in_line({{"answer", quote(problem.wrong->text)}}));
  }
  if (!problem.between.empty()) {
    std::vector<std::string> bounds;
    for (const units::WrittenQuantity& bound : problem.between) {
      bounds.push_back(quote(bound.text));
    }
    members.emplace_back("between", in_line(bounds, '[', ']'));
  }
}

std::string problem_text(const Problem& problem) {
  Members members{{"id", quote(problem.id)}};
  if (!problem.prompt.empty()) {
    members.emplace_back("prompt", quote(problem.prompt));
  }
  members.emplace_back("solid", solid_text(problem.description));
  if (!problem.open.empty()) {
    members.emplace_back("open", open_text(problem.open));
  }
  if (!problem.known.empty()) {
    members.emplace_back("known", known_text(problem.known));
  }
  if (!problem.find.empty()) {
    std::vector<std::string> asked;
    for (const std::string& name : problem.find) {
      asked.push_back(quote(name));
    }
    members.emplace_back("find", in_line(asked, '[', ']'));
  }
  if (problem.supply) {
    members.emplace_back("supply", supply_text(*problem.supply));
  }
  push_task(problem, members);
  if (problem.net) {
    members.emplace_back("net", net_text(*problem.net));
  }
  return object_in_lines(members, 4);
}

}  // namespace

std::string write_lesson(const Lesson& lesson) {
  std::string problems = "[\n";
  for (std::size_t i = 0; i < lesson.problems.size(); ++i) {
    problems += "    " + problem_text(lesson.problems[i]) + (i + 1 == lesson.problems.size() ? "\n" : ",\n");
  }
  return object_in_lines({{"lesson", "1"}, {"title", quote(lesson.title)}, {"problems", problems + "  ]"}}, 0) + "\n";
}

}  // namespace fw::lessons
