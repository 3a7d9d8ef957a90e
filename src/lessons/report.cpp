#include "lessons/report.hpp"

#include <algorithm>

#include "base/spelling.hpp"

namespace fw::lessons {

using words::Message;
using words::message;

void Report::add(std::size_t offset, Finding finding) {
  errors_ += finding.is_remark ? 0U : 1U;
  entries_.push_back({offset, std::move(finding)});
}

std::vector<Finding> Report::in_order(std::string_view text) const {
  std::vector<Entry> entries = entries_;
  std::stable_sort(entries.begin(), entries.end(), [](const Entry& a, const Entry& b) { return a.offset < b.offset; });
  std::vector<Finding> findings;
  std::size_t walked = 0;
  Place place;
  for (Entry& entry : entries) {
    // place_of() from the last place on: a file with many faults is walked through once.
    const Place step = place_of(text.substr(walked), entry.offset - walked);
    place = step.line == 1 ? Place{place.line, place.column + step.column - 1}
                           : Place{place.line + step.line - 1, step.column};
    walked = entry.offset;
    entry.finding.place = place;
    findings.push_back(std::move(entry.finding));
  }
  return findings;
}

void Context::fault(std::size_t offset, Message message) const {
  Finding finding;
  finding.message = std::move(message);
  add(offset, std::move(finding));
}

void Context::add(std::size_t offset, Finding finding) const {
  finding.problem = problem_;
  finding.measure = measure_;
  report_->add(offset, std::move(finding));
}

Context Context::at(std::string_view key) const {
  return at_measure(measure_.empty() ? std::string(key) : measure_ + "." + std::string(key));
}

Message suggestion(std::string_view word, const std::vector<std::string>& known) {
  // A word this long is no slip of spelling, and comparing it would take long.
  constexpr std::size_t longest_slip = 60;
  if (word.size() <= longest_slip) {
    if (const std::optional<std::string> nearest = nearest_spelling(word, known)) {
      return message("; did you mean \"{word}\"?", {{"word", *nearest}});
    }
  }
  std::vector<std::string> marked;
  marked.reserve(known.size());
  for (const std::string& key : known) {
    marked.push_back("\"" + key + "\"");
  }
  return message("; what can go here is {words:or}", {{"words", marked}});
}

void check_keys(const JsonNode& object, const std::vector<std::string>& known, const words::Value& owner,
                const Context& context) {
  for (std::size_t i = 0; i < object.keys.size(); ++i) {
    const std::string& key = object.keys[i];
    if (std::find(known.begin(), known.end(), key) == known.end()) {
      context.fault(object.key_offsets[i],
                    message("{key} is not a key of {owner}{suggestion}",
                            {{"key", in_quotes(key)}, {"owner", owner}, {"suggestion", suggestion(key, known)}}));
    }
  }
}

const std::string* text_at(const JsonNode& node, const words::Value& what, const Context& context) {
  if (!node.is(JsonNode::Kind::Text)) {
    context.fault(node, message("{what} is text in quotation marks; found {found}",
                                {{"what", what}, {"found", found_text(node)}}));
    return nullptr;
  }
  return &node.text;
}

std::optional<bool> truth_at(const JsonNode& node, const words::Value& what, const Context& context) {
  if (!node.is(JsonNode::Kind::Truth)) {
    context.fault(node,
                  message("{what} is true or false; found {found}", {{"what", what}, {"found", found_text(node)}}));
    return std::nullopt;
  }
  return node.text == "true";
}

}  // namespace fw::lessons
