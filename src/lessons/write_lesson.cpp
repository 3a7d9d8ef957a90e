#include "lessons/write_lesson.hpp"

#include <algorithm>
#include <utility>

#include "base/overload.hpp"
#include "lessons/asked.hpp"
#include "lessons/json_text.hpp"
#include "lessons/round_to.hpp"
#include "solids/catalog.hpp"

namespace fw::lessons {
namespace {

std::string length_text(const solids::LengthEntry& length) {
  return quote(length.written ? length.written->text : "?");
}

std::string value_text(const solids::FieldValue& value) {
  return std::visit(
      Overload{[](const solids::LengthEntry& length) { return length_text(length); },
               [](const std::vector<solids::LengthEntry>& lengths) {
                 std::vector<std::string> items;
                 items.reserve(lengths.size());
                 for (const solids::LengthEntry& length : lengths) {
                   items.push_back(length_text(length));
                 }
                 return in_line(items, '[', ']');
               },
               [](int count) { return std::to_string(count); },
               [](const std::vector<solids::PointEntry>& points) {
                 std::vector<std::string> items;
                 items.reserve(points.size());
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
  if (description.is_rounded) {
    members.emplace_back("rounded", "true");
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

std::string open_text(const std::vector<OpenFaces>& open) {
  std::vector<std::string> names;
  for (const OpenFaces& entry : open) {
    const bool is_number = entry.name.find_first_not_of("0123456789") == std::string::npos;
    names.push_back(is_number ? entry.name : quote(entry.name));
  }
  return in_line(names, '[', ']');
}

// What is asked for by more than an entry of "find". What several tasks share, such as a supply, is written once.
void push_tasks(const Problem& problem, Members& members) {
  for (const Task& task : problem.tasks) {
    Members own;
    task->write(own);
    for (auto& [key, value] : own) {
      if (std::none_of(members.begin(), members.end(),
                       [&key = key](const auto& member) { return member.first == key; })) {
        members.emplace_back(key, value);
      }
    }
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
  std::vector<std::string> asked;
  for (const std::string& name : find_of(problem)) {
    asked.push_back(quote(name));
  }
  if (!asked.empty()) {
    members.emplace_back("find", in_line(asked, '[', ']'));
  }
  if (problem.round_to) {
    members.emplace_back("round_to", quote(std::string(round_to_places(*problem.round_to)->key)));
  }
  push_tasks(problem, members);
  return object_in_lines(members, 4);
}

}  // namespace

std::string write_lesson(const Lesson& lesson) {
  std::string problems = "[\n";
  for (std::size_t i = 0; i < lesson.problems.size(); ++i) {
    problems += "    " + problem_text(lesson.problems[i]) + (i + 1 == lesson.problems.size() ? "\n" : ",\n");
  }
  Members members{{"lesson", "1"}, {"title", quote(lesson.title)}};
  std::vector<std::string> notation;
  for (const std::string& word : algebra::words_for(lesson.notation)) {
    notation.push_back(quote(word));
  }
  if (!notation.empty()) {
    members.emplace_back("notation", in_line(notation, '[', ']'));
  }
  members.emplace_back("problems", problems + "  ]");
  return object_in_lines(members, 0) + "\n";
}

}  // namespace fw::lessons
