#include "lessons/read_problem.hpp"

#include <algorithm>

#include "base/utf8.hpp"
#include "lessons/asked.hpp"
#include "lessons/open_faces.hpp"
#include "lessons/read_description.hpp"
#include "lessons/read_measure.hpp"
#include "lessons/round_to.hpp"

namespace fw::lessons {
namespace {

using words::message;

constexpr std::size_t longest_id = 64;

bool is_id(std::string_view text) {
  return !text.empty() && text.size() <= longest_id && std::all_of(text.begin(), text.end(), [](char c) {
    return is_ascii_letter(c) || is_ascii_digit(c) || c == '-' || c == '_';
  });
}

std::string read_id(const JsonNode& problem, std::set<std::string>& ids, const Context& context) {
  const JsonNode* node = problem.find("id");
  if (node == nullptr) {
    context.fault(problem, message("the key \"id\" is missing: a short name of the problem, such as \"crate\""));
    return "";
  }
  const std::string* id = text_at(*node, message("an id"), context);
  if (id == nullptr) {
    return "";
  }
  if (!is_id(*id)) {
    context.fault(*node, message("{id} is not an id: write 1 to {most} letters a-z and A-Z, digits, - or _",
                                 {{"id", in_quotes(*id)}, {"most", longest_id}}));
  } else if (!ids.insert(*id).second) {
    context.fault(*node, message("an earlier problem already has the id {id}: give each problem its own",
                                 {{"id", in_quotes(*id)}}));
  }
  return *id;
}

std::string read_prompt(const JsonNode& problem, const Context& context) {
  const JsonNode* node = problem.find("prompt");
  const std::string* prompt = node == nullptr ? nullptr : text_at(*node, message("a prompt"), context);
  return prompt == nullptr ? "" : *prompt;
}

solids::Known read_known(const JsonNode& problem, const Context& context) {
  solids::Known known;
  const JsonNode* node = problem.find("known");
  if (node == nullptr) {
    return known;
  }
  if (!node->is(JsonNode::Kind::Object)) {
    context.fault(*node, message("\"known\" is an object such as {example}; found {found}",
                                 {{"example", "{\"volume\": \"180 cm^3\"}"}, {"found", found_text(*node)}}));
    return known;
  }
  check_keys(*node, whole_measures(), "\"known\"", context);
  for (const std::string& key : whole_measures()) {
    if (const JsonNode* value = node->find(key)) {
      if (std::optional<units::WrittenQuantity> quantity =
              read_quantity(*value, *dimension_of_whole(key), context.at(key))) {
        known.emplace(key, std::move(*quantity));
      }
    }
  }
  return known;
}

std::vector<std::string> read_find(const JsonNode& problem, const Context& context) {
  std::vector<std::string> find;
  const JsonNode* node = problem.find("find");
  if (node == nullptr) {
    return find;
  }
  if (!node->is(JsonNode::Kind::List) || node->items.empty()) {
    context.fault(*node, message("\"find\" is a list of what to find, such as [\"surface_area\"]; found {found}",
                                 {{"found", found_text(*node)}}));
    return find;
  }
  for (const JsonNode& item : node->items) {
    if (const std::string* asked = text_at(item, message("what to find"), context)) {
      if (std::find(find.begin(), find.end(), *asked) != find.end()) {
        context.fault(item, message("{asked} is asked twice: keep one of them", {{"asked", in_quotes(*asked)}}));
      }
      find.push_back(*asked);
    }
  }
  return find;
}

Finding::Kind kind_of(solids::Severity severity) {
  switch (severity) {
    case solids::Severity::Impossible:
      return Finding::Kind::Impossible;
    case solids::Severity::Missing:
      return Finding::Kind::Missing;
    case solids::Severity::Rounding:
      return Finding::Kind::Rounding;
    case solids::Severity::Masking:
      return Finding::Kind::Masking;
  }
  return Finding::Kind::Impossible;
}

// The value of a key, or the item of a list by its number from 1; null when there is none.
const JsonNode* part_of(const JsonNode& node, const std::string& name) {
  if (!node.is(JsonNode::Kind::List)) {
    return node.find(name);
  }
  for (std::size_t i = 0; i < node.items.size(); ++i) {
    if (std::to_string(i + 1) == name) {
      return &node.items[i];
    }
  }
  return nullptr;
}

// The byte where the measure "base.side" or "volume" of a problem stands; its solid where it does not.
std::size_t offset_of(const JsonNode& problem, const std::string& measure) {
  const JsonNode* solid = problem.find("solid");
  const JsonNode* known = problem.find("known");
  if (const JsonNode* value = known == nullptr ? nullptr : known->find(measure)) {
    return value->offset;
  }
  const JsonNode* node = solid;
  for (std::size_t start = 0; start < measure.size();) {
    const std::size_t end = std::min(measure.find('.', start), measure.size());
    const JsonNode* next = part_of(*node, measure.substr(start, end - start));
    if (next == nullptr) {
      break;
    }
    node = next;
    start = end + 1;
  }
  return node->offset;
}

enum class Told { AsErrors, AsRemarks };

void tell(const std::vector<solids::Fault>& faults, Told told, const JsonNode& problem, const Context& context) {
  for (const solids::Fault& fault : faults) {
    Finding finding;
    finding.kind = kind_of(fault.severity);
    finding.message = fault.message;
    finding.nearest = fault.nearest;
    finding.is_remark = told == Told::AsRemarks;
    context.at_measure(fault.measure).add(offset_of(problem, fault.measure), std::move(finding));
  }
}

std::vector<std::string> problem_keys(const TaskReader& tasks) {
  std::vector<std::string> keys{"id", "prompt", "solid", "open", "known", "find", "round_to"};
  keys.insert(keys.end(), tasks.keys.begin(), tasks.keys.end());
  return keys;
}

/// The parts of a problem that its solid is made of.
struct Parts {
  std::string id, prompt;
  std::optional<solids::Description> description;  ///< none: it cannot be read
  solids::Known known;
};
Parts read_parts(const JsonNode& node, std::set<std::string>& ids, const Context& context) {
  Parts parts;
  parts.id = read_id(node, ids, context);
  parts.prompt = read_prompt(node, context);
  const std::size_t errors_before_solid = context.errors();
  const JsonNode* solid = node.find("solid");
  if (solid == nullptr) {
    context.fault(node, message("the key \"solid\" is missing: it says which solid the problem is about"));
  } else {
    parts.description = read_description(*solid, context);
  }
  parts.known = read_known(node, context);
  if (context.errors() != errors_before_solid) {
    parts.description.reset();
  }
  return parts;
}

// The class is told to round, and nothing judges by it.
void tell_unjudged_rounding(const Problem& problem, const JsonNode& node, const Context& context) {
  const std::optional<int> said = round_to_in(problem.prompt);
  if (!said || problem.round_to) {
    return;
  }
  const RoundTo& row = *round_to_places(*said);
  Finding finding;
  finding.kind = Finding::Kind::Rounding;
  finding.message = message(
      "the prompt says to round to the nearest {place}: add \"round_to\": \"{key}\", so that answers "
      "are checked that way",
      {{"place", std::string(row.place)}, {"key", std::string(row.key)}});
  finding.is_remark = true;
  context.add(node.find("prompt")->offset, std::move(finding));
}

void tell_masking(const std::vector<words::Message>& hints, std::size_t offset, const Context& context) {
  for (const words::Message& hint : hints) {
    Finding finding;
    finding.kind = Finding::Kind::Masking;
    finding.message = hint;
    finding.is_remark = true;
    context.add(offset, std::move(finding));
  }
}

}  // namespace

std::string problem_name(const JsonNode& node, std::size_t number) {
  const JsonNode* id = node.find("id");
  return id != nullptr && id->is(JsonNode::Kind::Text) && is_id(id->text)
             ? id->text
             : said(message("problem {number}", {{"number", number}}));
}

std::vector<std::string> find_of(const Problem& problem) {
  std::vector<std::string> names;
  for (const Task& task : problem.tasks) {
    const std::string name = task->find();
    if (!name.empty() && std::find(names.begin(), names.end(), name) == names.end()) {
      names.push_back(name);
    }
  }
  return names;
}

std::optional<Problem> read_problem(const JsonNode& node, std::size_t number, const TaskReader& tasks,
                                    std::set<std::string>& ids, Report& report) {
  const Context context(report, problem_name(node, number));
  const std::size_t errors_before = report.errors();
  if (!node.is(JsonNode::Kind::Object)) {
    context.fault(node, message("a problem is an object in {braces}; found {found}",
                                {{"braces", "{ }"}, {"found", found_text(node)}}));
    return std::nullopt;
  }
  check_keys(node, problem_keys(tasks), message("a problem"), context);
  Parts parts = read_parts(node, ids, context);
  const std::vector<std::string> find = read_find(node, context);
  tasks.check_form(node, context);
  if (!parts.description) {
    return std::nullopt;
  }
  const Result<solids::Solid, std::vector<solids::Fault>> solid = solids::Solid::make(*parts.description, parts.known);
  if (!solid) {
    tell(solid.error(), Told::AsErrors, node, context);
    return std::nullopt;
  }
  tell(solid->remarks(), Told::AsRemarks, node, context);
  if (report.errors() != errors_before) {
    return std::nullopt;
  }
  Problem problem{std::move(parts.id), std::move(parts.prompt), std::move(*parts.description), std::move(parts.known),
                  *solid};
  if (const JsonNode* open = node.find("open")) {
    problem.open = read_open(*open, problem.solid, context.at("open"));
  }
  problem.tasks = tasks.read({node, find, problem, context});
  problem.round_to = read_round_to(node, context);
  if (problem.round_to &&
      std::none_of(problem.tasks.begin(), problem.tasks.end(), [](const Task& task) { return task->is_rounded(); })) {
    context.fault(*node.find("round_to"),
                  message("\"round_to\" goes with a measure to find, as in \"find\": [\"surface_area\"]"));
  }
  tell_unjudged_rounding(problem, node, context);
  tell_masking(tasks.masking(problem), node.find("solid")->offset, context);
  return report.errors() == errors_before ? std::optional(std::move(problem)) : std::nullopt;
}

}  // namespace fw::lessons
