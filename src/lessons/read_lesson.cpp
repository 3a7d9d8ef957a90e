#include "lessons/read_lesson.hpp"

#include <optional>
#include <set>

#include "lessons/located_json.hpp"
#include "lessons/read_problem.hpp"
#include "lessons/report.hpp"

namespace fw::lessons {
namespace {

using Kind = JsonNode::Kind;
using words::message;

// Whether the lesson is of a version that can be read; a later one is not picked at further.
bool is_readable_version(const JsonNode& lesson, const Context& context) {
  const JsonNode* version = lesson.find("lesson");
  if (version == nullptr) {
    context.fault(lesson, message("the key \"lesson\" is missing: a lesson file starts with {start}",
                                  {{"start", "{\"lesson\": 1"}}));
    return true;
  }
  const bool is_whole = version->is(Kind::Number) && version->text.find_first_not_of("0123456789") == std::string::npos;
  if (!is_whole || version->text == "0") {
    context.fault(*version, message("\"lesson\" is the version of the format, the number 1; found {found}",
                                    {{"found", found_text(*version)}}));
    return true;
  }
  if (version->text != "1") {
    context.fault(
        *version,
        message(
            "this lesson has version {version} of the format, and this program reads version 1: get a newer program",
            {{"version", version->text.substr(0, 40)}}));
    return false;
  }
  return true;
}

std::string read_title(const JsonNode& lesson, const Context& context) {
  const JsonNode* node = lesson.find("title");
  if (node == nullptr) {
    context.fault(lesson, message("the key \"title\" is missing, such as \"title\": \"Lantern fair\""));
    return "";
  }
  const std::string* title = text_at(*node, message("a title"), context);
  if (title != nullptr && title->empty()) {
    context.fault(*node, message("a title has at least one letter; found an empty text"));
  }
  return title == nullptr ? "" : *title;
}

std::vector<Problem> read_problems(const JsonNode& lesson, const TaskReader& tasks, const Context& context,
                                   Report& report) {
  std::vector<Problem> problems;
  const JsonNode* node = lesson.find("problems");
  if (node == nullptr) {
    context.fault(lesson, message("the key \"problems\" is missing: a list of problems in [ ]"));
    return problems;
  }
  if (!node->is(Kind::List)) {
    context.fault(*node,
                  message("\"problems\" is a list of problems in [ ]; found {found}", {{"found", found_text(*node)}}));
    return problems;
  }
  if (node->items.empty()) {
    context.fault(*node, message("a lesson has at least one problem; this list is empty"));
  }
  if (node->items.size() > limits::problems) {
    context.fault(node->items[limits::problems], message("a lesson has at most {most} problems; this one has {count}",
                                                         {{"most", limits::problems}, {"count", node->items.size()}}));
    return problems;
  }
  std::set<std::string> ids;
  std::size_t number = 0;
  for (const JsonNode& item : node->items) {
    const std::size_t errors = report.errors();
    std::optional<Problem> problem = read_problem(item, ++number, tasks, ids, report);
    if (problem && report.errors() == errors) {
      problems.push_back(std::move(*problem));
    }
  }
  return problems;
}

/// The problems without an error, where none is an error of the lesson itself.
std::optional<Lesson> without_faulty(Lesson lesson, const std::vector<Finding>& findings) {
  for (const Finding& finding : findings) {
    if (finding.is_remark) {
      continue;
    }
    if (finding.problem.empty()) {
      return std::nullopt;
    }
    std::vector<std::string>& ids = lesson.left_out;
    if (std::find(ids.begin(), ids.end(), finding.problem) == ids.end()) {
      ids.push_back(finding.problem);
    }
  }
  return lesson.problems.empty() ? std::nullopt : std::optional(std::move(lesson));
}

// How the class writes: "notation": ["division", "cross"].
algebra::ClassNotation read_notation(const JsonNode& lesson, const Context& context) {
  algebra::ClassNotation notation;
  const JsonNode* node = lesson.find("notation");
  if (node == nullptr) {
    return notation;
  }
  if (!node->is(Kind::List)) {
    context.fault(*node, message("\"notation\" is a list of words, such as [\"division\", \"cross\"]; found {found}",
                                 {{"found", found_text(*node)}}));
    return notation;
  }
  for (const JsonNode& item : node->items) {
    const std::string* word = text_at(item, message("a word for the notation, such as \"division\""), context);
    if (word == nullptr) {
      continue;
    }
    if (const auto said = algebra::with_word(notation, *word)) {
      notation = *said;
    } else {
      context.fault(item, message("\"{word}\" can't go into \"notation\"{suggestion}",
                                  {{"word", *word}, {"suggestion", suggestion(*word, algebra::notation_words())}}));
    }
  }
  return notation;
}

}  // namespace

Reading reading_of(std::string_view text, const TaskReader& tasks) {
  Report report;
  const Context context(report, "");
  if (text.size() > limits::bytes) {
    context.fault(0, message("the file has {count} bytes; a lesson has at most {most}",
                             {{"count", text.size()}, {"most", limits::bytes}}));
    return {std::nullopt, std::nullopt, report.in_order(text)};
  }
  const Result<JsonNode, std::vector<JsonFault>> root = parse_located(text, limits::nesting);
  if (!root) {
    for (const JsonFault& fault : root.error()) {
      context.fault(fault.offset, fault.message);
    }
    return {std::nullopt, std::nullopt, report.in_order(text)};
  }
  if (!root->is(Kind::Object)) {
    context.fault(*root, message("a lesson is an object in {braces}; found {found}",
                                 {{"braces", "{ }"}, {"found", found_text(*root)}}));
    return {std::nullopt, std::nullopt, report.in_order(text)};
  }
  if (!is_readable_version(*root, context)) {
    return {std::nullopt, std::nullopt, report.in_order(text)};
  }
  check_keys(*root, {"lesson", "title", "notation", "problems"}, message("a lesson"), context);
  Lesson lesson;
  lesson.title = read_title(*root, context);
  lesson.notation = read_notation(*root, context);
  lesson.problems = read_problems(*root, tasks, context, report);
  std::vector<Finding> findings = report.in_order(text);
  if (report.errors() == 0) {
    return {std::move(lesson), std::nullopt, std::move(findings)};
  }
  std::optional<Lesson> others = without_faulty(std::move(lesson), findings);
  return {std::nullopt, std::move(others), std::move(findings)};
}

std::string text(const Finding& finding, std::string_view file) {
  std::string line =
      std::string(file) + ":" + std::to_string(finding.place.line) + ":" + std::to_string(finding.place.column) + ": ";
  // A problem without an id already goes by "problem 3".
  const bool is_number = finding.problem.find(' ') != std::string::npos;
  const std::string problem =
      finding.problem.empty() || is_number ? finding.problem : said(message("problem {id}", {{"id", finding.problem}}));
  line += problem;
  if (!finding.measure.empty()) {
    line += (problem.empty() ? "" : ", ") + finding.measure;
  }
  return line + (problem.empty() && finding.measure.empty() ? "" : ": ") + said(finding.message);
}

Result<Lesson, std::vector<Finding>> read_lesson(std::string_view text, const TaskReader& tasks) {
  Reading reading = reading_of(text, tasks);
  if (reading.lesson) {
    return std::move(*reading.lesson);
  }
  std::vector<Finding> errors;
  for (Finding& finding : reading.findings) {
    if (!finding.is_remark) {
      errors.push_back(std::move(finding));
    }
  }
  return failure(std::move(errors));
}

}  // namespace fw::lessons
