#include "lessons/read_problem.hpp"

#include <algorithm>

#include "base/spelling.hpp"
#include "lessons/asked.hpp"
#include "lessons/asked_value.hpp"
#include "lessons/masking.hpp"
#include "lessons/open_faces.hpp"
#include "lessons/read_description.hpp"
#include "lessons/read_measure.hpp"
#include "lessons/read_net.hpp"
#include "lessons/read_supply.hpp"
#include "lessons/read_task.hpp"

namespace fw::lessons {
namespace {

constexpr std::size_t longest_id = 64;

bool is_id(std::string_view text) {
  return !text.empty() && text.size() <= longest_id && std::all_of(text.begin(), text.end(), [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' || c == '_';
  });
}

std::string read_id(const JsonNode& problem, std::set<std::string>& ids, const Context& context) {
  const JsonNode* node = problem.find("id");
  if (node == nullptr) {
    context.fault(problem, "the key \"id\" is missing: a short name of the problem, such as \"crate\"");
    return "";
  }
  const std::string* id = text_at(*node, "an id", context);
  if (id == nullptr) {
    return "";
  }
  if (!is_id(*id)) {
    context.fault(*node, in_quotes(*id) + " is no id: write 1 to " + std::to_string(longest_id) +
                             " letters a-z and A-Z, digits, - or _");
  } else if (!ids.insert(*id).second) {
    context.fault(*node, "the id " + in_quotes(*id) + " is taken by a problem before this one: give each its own");
  }
  return *id;
}

std::string read_prompt(const JsonNode& problem, const Context& context) {
  const JsonNode* node = problem.find("prompt");
  const std::string* prompt = node == nullptr ? nullptr : text_at(*node, "a prompt", context);
  return prompt == nullptr ? "" : *prompt;
}

solids::Known read_known(const JsonNode& problem, const Context& context) {
  solids::Known known;
  const JsonNode* node = problem.find("known");
  if (node == nullptr) {
    return known;
  }
  if (!node->is(JsonNode::Kind::Object)) {
    context.fault(*node, "\"known\" is an object such as {\"volume\": \"180 cm^3\"}; found " + found_text(*node));
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
    context.fault(*node,
                  "\"find\" is a list of what is asked for, such as [\"surface_area\"]; found " + found_text(*node));
    return find;
  }
  for (const JsonNode& item : node->items) {
    if (const std::string* asked = text_at(item, "what is asked for", context)) {
      if (std::find(find.begin(), find.end(), *asked) != find.end()) {
        context.fault(item, in_quotes(*asked) + " is asked for twice: keep one of the two");
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
    finding.message = said(fault.message);
    finding.nearest = fault.nearest;
    finding.is_remark = told == Told::AsRemarks;
    context.at_measure(fault.measure).add(offset_of(problem, fault.measure), std::move(finding));
  }
}

std::vector<std::string> problem_keys() {
  std::vector<std::string> keys{"id", "prompt", "solid", "open", "known", "find", "supply", "net"};
  keys.insert(keys.end(), task_keys().begin(), task_keys().end());
  return keys;
}

// What compares numbers of a solid is asked alone, and of solids that have such numbers. Whether it is asked.
bool is_asked_alone(const Problem& problem, const JsonNode* find, const Context& context) {
  const std::string asked = problem.find.empty() ? "" : problem.find.front();
  if (asked != "same_number" && asked != "least_surface") {
    return false;
  }
  if (problem.find.size() > 1 || problem.supply) {
    context.fault(*find, in_quotes(asked) + " is asked alone: ask for the rest in a problem of its own");
  } else if (asked == "same_number" && !has_same_number(problem.solid)) {
    context.fault(*find, in_quotes(asked) +
                             " goes with a solid whose surface area and volume are one number, such as a cube with an "
                             "edge of 6 cm");
  } else if (asked == "least_surface" && !whole_box(problem.solid)) {
    context.fault(*find,
                  in_quotes(asked) + " goes with a box whose length, width and height are whole numbers up to 1000");
  }
  return true;
}

// What can only be judged once the solid stands: whether what is asked for and supplied exists on it.
void check_asked(const JsonNode& node, const Problem& problem, const Context& context) {
  if (problem.scale) {
    return;  // asked of the copy
  }
  std::vector<std::string> names = askable(problem.solid);
  if (problem.supply && problem.supply->purpose != "pack") {
    names.emplace_back("purpose");
  }
  const JsonNode* find = node.find("find");
  if (is_asked_alone(problem, find, context)) {
    return;
  }
  for (std::size_t i = 0; i < problem.find.size(); ++i) {
    if (std::find(names.begin(), names.end(), problem.find[i]) == names.end()) {
      context.fault(find->items[i], in_quotes(problem.find[i]) + " cannot be asked of " +
                                        with_article(problem.solid.name()) + suggestion(problem.find[i], names));
    }
  }
  if (problem.supply) {
    check_supply(*node.find("supply"), problem, context);
  }
}

}  // namespace

std::string problem_name(const JsonNode& node, std::size_t number) {
  const JsonNode* id = node.find("id");
  return id != nullptr && id->is(JsonNode::Kind::Text) && is_id(id->text) ? id->text
                                                                          : "problem " + std::to_string(number);
}

std::optional<Problem> read_problem(const JsonNode& node, std::size_t number, std::set<std::string>& ids,
                                    Report& report) {
  const Context context(report, problem_name(node, number));
  const std::size_t errors_before = report.errors();
  if (!node.is(JsonNode::Kind::Object)) {
    context.fault(node, "a problem is an object in { }; found " + found_text(node));
    return std::nullopt;
  }
  check_keys(node, problem_keys(), "a problem", context);
  std::string id = read_id(node, ids, context);
  std::string prompt = read_prompt(node, context);
  const std::size_t errors_before_solid = report.errors();
  const JsonNode* solid_node = node.find("solid");
  std::optional<solids::Description> description;
  if (solid_node == nullptr) {
    context.fault(node, "the key \"solid\" is missing: it says what stands on the bench");
  } else {
    description = read_description(*solid_node, context);
  }
  solids::Known known = read_known(node, context);
  const bool solid_is_readable = report.errors() == errors_before_solid;
  std::vector<std::string> find = read_find(node, context);
  const JsonNode* supply_node = node.find("supply");
  std::optional<Supply> supply = supply_node == nullptr ? std::nullopt : read_supply(*supply_node, context);
  if (!solid_is_readable) {
    return std::nullopt;
  }
  const Result<solids::Solid, std::vector<solids::Fault>> solid = solids::Solid::make(*description, known);
  if (!solid) {
    tell(solid.error(), Told::AsErrors, node, context);
    return std::nullopt;
  }
  tell(solid->remarks(), Told::AsRemarks, node, context);
  if (report.errors() != errors_before) {
    return std::nullopt;
  }
  Problem problem{std::move(id),
                  std::move(prompt),
                  std::move(*description),
                  std::move(known),
                  std::move(find),
                  std::move(supply),
                  *solid,
                  {}};
  if (const JsonNode* open = node.find("open")) {
    problem.open = read_open(*open, problem.solid, context.at("open"));
    check_open(node, problem, context);
  }
  read_task(node, problem, context);
  check_asked(node, problem, context);
  if (const JsonNode* net = node.find("net")) {
    check_alone(node, context);
    problem.net = read_net(*net, problem.solid, context.at("net"));
  }
  for (const std::string& hint : masking_hints(problem)) {
    Finding finding;
    finding.kind = Finding::Kind::Masking;
    finding.message = hint;
    finding.is_remark = true;
    context.add(solid_node->offset, std::move(finding));
  }
  return report.errors() == errors_before ? std::optional(std::move(problem)) : std::nullopt;
}

}  // namespace fw::lessons
