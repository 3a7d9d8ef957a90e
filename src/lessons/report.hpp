#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "lessons/located_json.hpp"
#include "lessons/read_lesson.hpp"

namespace fw::lessons {

/// Gathers findings by byte offset while a text is read.
class Report {
 public:
  void add(std::size_t offset, Finding finding);
  /// In the order of the text, each with its line and column. Cost: one walk through the text.
  [[nodiscard]] std::vector<Finding> in_order(std::string_view text) const;
  [[nodiscard]] std::size_t errors() const { return errors_; }

 private:
  struct Entry {
    std::size_t offset;
    Finding finding;
  };
  std::vector<Entry> entries_;
  std::size_t errors_ = 0;  ///< findings that are no mere remarks
};

/// Where in the lesson the reader is: each finding made through it names problem and measure.
class Context {
 public:
  Context(Report& report, std::string problem, std::string measure = "")
      : report_(&report), problem_(std::move(problem)), measure_(std::move(measure)) {}

  void fault(std::size_t offset, words::Message message) const;
  void fault(const JsonNode& node, words::Message message) const { fault(node.offset, std::move(message)); }
  /// Its problem and measure are filled in here.
  void add(std::size_t offset, Finding finding) const;

  /// The same problem, at another measure: "base" within "" is "base", "side" within "base" is "base.side".
  [[nodiscard]] Context at(std::string_view key) const;
  [[nodiscard]] Context at_measure(std::string measure) const { return {*report_, problem_, std::move(measure)}; }
  [[nodiscard]] const std::string& problem() const { return problem_; }
  [[nodiscard]] std::size_t errors() const { return report_->errors(); }

 private:
  Report* report_;
  std::string problem_;
  std::string measure_;
};

/// Each key of the object that is not among `known`, with the nearest known one. `owner`: "a pyramid".
void check_keys(const JsonNode& object, const std::vector<std::string>& known, const words::Value& owner,
                const Context& context);

/// The text that must stand at a node; null, with a fault, when something else does. `what`: "an id".
[[nodiscard]] const std::string* text_at(const JsonNode& node, const words::Value& what, const Context& context);
/// The true or false that must stand at a node; nothing, with a fault, when something else does. `what`: "\"flip\"".
[[nodiscard]] std::optional<bool> truth_at(const JsonNode& node, const words::Value& what, const Context& context);

/// "; did you mean "height"?" or, when nothing is near, "; " and all that is known.
[[nodiscard]] words::Message suggestion(std::string_view word, const std::vector<std::string>& known);

}  // namespace fw::lessons
