#include <algorithm>

#include "lessons/asked.hpp"
#include "lessons/asked_value.hpp"
#include "lessons/open_faces.hpp"
#include "lessons/read_description.hpp"
#include "reasoning/unknown.hpp"
#include "tasks/catalog.hpp"
#include "tasks/measure.hpp"

// What a problem asks for, read by the rows of the table.
namespace fw::tasks {
namespace {

using lessons::in_quotes;

bool has_key(const Row& row, const JsonNode& problem) {
  return std::any_of(row.keys.begin(), row.keys.end(),
                     [&](const std::string& key) { return problem.find(key) != nullptr; });
}

// The row whose keys the problem has; null where it has none, or those of several rows, which is a fault.
const Row* row_of(const TaskText& text) {
  const Row* first = nullptr;
  for (const Row& row : rows()) {
    const JsonNode* value = row.keys.empty() || row.is_alone ? nullptr : text.node.find(row.keys.front());
    if (value == nullptr) {
      continue;
    }
    if (first != nullptr) {
      const std::string& key = row.keys.front();
      text.context.at(key).fault(*value, message("{key} can't go with {other}: ask one of them in its own problem",
                                                 {{"key", in_quotes(key)}, {"other", in_quotes(first->keys.front())}}));
      return nullptr;
    }
    first = &row;
  }
  if (first == nullptr) {  // a second key by itself: its row says what it goes with
    const auto other = std::find_if(rows().begin(), rows().end(),
                                    [&](const Row& row) { return !row.is_alone && has_key(row, text.node); });
    first = other == rows().end() ? nullptr : &*other;
  }
  return first;
}

// What compares numbers of a solid is asked alone, and of solids that have such numbers.
void check_fit(const TaskText& text, const Row& row) {
  const JsonNode& find = *text.node.find("find");
  const Message unfit = row.unfit(text.problem.solid);
  const std::string key = in_quotes(row.key);
  if (text.find.size() > 1 || text.node.find("supply") != nullptr) {
    text.context.fault(find, message("{key} is asked by itself: ask for the rest in its own problem", {{"key", key}}));
  } else if (!unfit.empty()) {
    text.context.fault(find, message("{key} {unfit}", {{"key", key}, {"unfit", unfit}}));
  }
}

bool finds(const Row& row, const std::string& name) {
  return std::find(row.finds.begin(), row.finds.end(), name) != row.finds.end();
}

void check_names(const TaskText& text, const Row* row) {
  std::vector<std::string> names = lessons::askable(text.problem.solid);
  for (const Row& other : rows()) {
    if (other.unfit == nullptr) {
      names.insert(names.end(), other.finds.begin(), other.finds.end());
    }
  }
  if (row != nullptr && row->offers != nullptr) {
    const std::vector<std::string> more = row->offers(*text.node.find(row->keys.front()));
    names.insert(names.end(), more.begin(), more.end());
  }
  for (std::size_t i = 0; i < text.find.size(); ++i) {
    if (std::find(names.begin(), names.end(), text.find[i]) == names.end()) {
      text.context.fault(text.node.find("find")->items[i],
                         message("{name} can't be asked about {solid:a}{suggestion}",
                                 {{"name", in_quotes(text.find[i])},
                                  {"solid", Noun{text.problem.solid.name()}},
                                  {"suggestion", lessons::suggestion(text.find[i], names)}}));
    }
  }
}

const Row* row_asked_alone(const TaskText& text) {
  const auto found = std::find_if(rows().begin(), rows().end(), [&](const Row& row) {
    return row.unfit != nullptr && !text.find.empty() && finds(row, text.find.front());
  });
  return found == rows().end() ? nullptr : &*found;
}

void check_alone(const TaskText& text, const Row& row) {
  std::vector<std::string> others{"open", "find"};
  for (const Row& other : rows()) {
    if (&other != &row) {
      others.insert(others.end(), other.keys.begin(), other.keys.end());
    }
  }
  const std::string& own = row.keys.front();
  for (const std::string& key : others) {
    if (const JsonNode* other = text.node.find(key)) {
      text.context.at(key).fault(
          *other,
          message("a problem with {own} asks about the {name} alone: leave {key} out, or make it a problem of its "
                  "own",
                  {{"own", in_quotes(own)}, {"name", own}, {"key", in_quotes(key)}}));
    }
  }
}

void check_open_faces(const TaskText& text, const std::vector<Task>& tasks) {
  if (text.node.find("open") == nullptr) {
    return;
  }
  std::vector<std::string> measures;
  measures.reserve(tasks.size());
  for (const Task& task : tasks) {
    measures.push_back(practice::stated(task).measure());
  }
  lessons::check_open(text.node, text.problem, measures, text.context);
}

void append(std::vector<Task>& tasks, const std::vector<Task>& more) {
  tasks.insert(tasks.end(), more.begin(), more.end());
}

std::vector<Task> read_tasks(const TaskText& text) {
  const Row* row = row_of(text);
  std::vector<Task> tasks = row == nullptr ? std::vector<Task>{} : row->read(text);
  const Row* alone = row_asked_alone(text);
  if (alone != nullptr) {
    check_fit(text, *alone);
  } else if (row == nullptr || !row->judges_find) {
    check_names(text, row);
  }
  if (row == nullptr || !row->takes_find || tasks.empty()) {
    for (const std::string& name : text.find) {
      tasks.push_back(named(name));
    }
  }
  check_open_faces(text, tasks);
  for (const Row& other : rows()) {
    if (other.is_alone && has_key(other, text.node)) {
      check_alone(text, other);
      append(tasks, other.read(text));
    }
  }
  return tasks;
}

void check_form(const JsonNode& problem, const Context& context) {
  for (const Row& row : rows()) {
    const JsonNode* value = row.check_form == nullptr ? nullptr : problem.find(row.keys.front());
    if (value != nullptr) {
      row.check_form(*value, context);
    }
  }
}

const lessons::TaskReader& reader() {
  static const lessons::TaskReader table = [] {
    lessons::TaskReader made;
    for (const Row& row : rows()) {
      made.keys.insert(made.keys.end(), row.keys.begin(), row.keys.end());
    }
    made.check_form = check_form;
    made.read = read_tasks;
    made.masking = practice::masking_hints;
    return made;
  }();
  return table;
}

}  // namespace

Task named(const std::string& find) {
  for (const Row& row : rows()) {
    if (finds(row, find)) {
      return row.named(find);
    }
  }
  return Measure(find);
}

Problem asking(Problem problem, const std::string& key) {
  if (!key.empty() && practice::task_asked(problem, key) == nullptr) {
    problem.tasks = {named(key)};
  }
  return problem;
}

std::optional<std::string> one_measure(const TaskText& text, const JsonNode& key, std::string_view name) {
  const bool is_one =
      text.find.size() == 1 && lessons::asked_value(text.problem, text.problem.solid, text.find.front());
  if (!is_one) {
    text.context.at(name).fault(key, message("{key} goes with one measure to find, as in \"find\": [\"surface_area\"]",
                                             {{"key", in_quotes(name)}}));
    return std::nullopt;
  }
  return text.find.front();
}

Message not_comparable(const units::WrittenQuantity& quantity, const solids::Solid& solid) {
  return message("{value} can't be compared with a solid measured in {unit}",
                 {{"value", in_quotes(quantity.text)}, {"unit", solid.unit().text()}});
}

Noun asked_noun(const Problem& problem, const std::string& measure) {
  for (const reasoning::Askable& one : reasoning::askable_measures(problem.solid)) {
    if (one.name == measure) {
      return {one.title};
    }
  }
  return {measure};
}

Result<lessons::Lesson, std::vector<lessons::Finding>> read_lesson(std::string_view text) {
  return lessons::read_lesson(text, reader());
}

lessons::Reading reading_of(std::string_view text) { return lessons::reading_of(text, reader()); }

std::vector<lessons::Finding> findings_of(std::string_view text) { return reading_of(text).findings; }

}  // namespace fw::tasks
