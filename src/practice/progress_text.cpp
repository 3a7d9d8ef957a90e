#include "practice/progress_text.hpp"

#include <nlohmann/json.hpp>
#include <optional>

namespace fw::practice {
namespace {

using nlohmann::json;
using words::message;

constexpr int version = 1;

auto damaged(const words::Message& what) {
  return failure(message("Your practice file is damaged: {what}.", {{"what", what}}));
}

/// A whole number within these bounds; nothing for anything else, so that no number is bent.
std::optional<std::int64_t> number_at(const json& entry, const char* key, std::int64_t low, std::int64_t high) {
  const auto found = entry.find(key);
  if (found == entry.end() || !found->is_number_integer()) {
    return std::nullopt;
  }
  if (found->is_number_unsigned() && found->get<std::uint64_t>() > static_cast<std::uint64_t>(high)) {
    return std::nullopt;
  }
  const auto number = found->get<std::int64_t>();
  return number < low || number > high ? std::nullopt : std::optional(number);
}

std::optional<SkillRecord> record_from(const json& entry) {
  constexpr std::int64_t day_most = 100'000'000;
  if (!entry.is_object()) {
    return std::nullopt;
  }
  const auto seen = number_at(entry, "seen", 0, most_answers);
  const auto right = number_at(entry, "right", 0, most_answers);
  const auto box = number_at(entry, "box", 0, static_cast<std::int64_t>(days_in_box.size()) - 1);
  const auto back = number_at(entry, "back", -day_most, day_most);
  const auto causes = entry.find("causes");
  const bool has_helped = entry.contains("helped");  // files of earlier versions lack it
  const auto helped = has_helped ? number_at(entry, "helped", 0, most_answers) : std::optional<std::int64_t>(0);
  if (!seen || !right || !helped || !box || !back || causes == entry.end() || !causes->is_object()) {
    return std::nullopt;
  }
  SkillRecord record;
  record.seen = static_cast<std::uint32_t>(*seen);
  record.right = static_cast<std::uint32_t>(*right);
  record.helped = static_cast<std::uint32_t>(*helped);
  record.box = static_cast<int>(*box);
  record.back = static_cast<int>(*back);
  for (const auto& [cause, count] : causes->items()) {
    const auto number = number_at(*causes, cause.c_str(), 1, most_answers);
    if (!number) {
      return std::nullopt;
    }
    record.causes[cause] = static_cast<std::uint32_t>(*number);
  }
  return record;
}

}  // namespace

std::string progress_text(const Progress& progress) {
  json skills = json::object();
  for (const auto& [skill, record] : progress.skills) {
    skills[skill] = {{"seen", record.seen},     {"right", record.right}, {"helped", record.helped},
                     {"causes", record.causes}, {"box", record.box},     {"back", record.back}};
  }
  return json{{"progress", version}, {"skills", skills}}.dump(2) + "\n";
}

Result<Progress, words::Message> read_progress(std::string_view text) {
  if (text.size() > progress_byte_limit) {
    return damaged(message("it is too large"));
  }
  const json read = json::parse(text, nullptr, false);
  if (!read.is_object() || !read.contains("progress") || !read.contains("skills") || !read.at("skills").is_object()) {
    return damaged(message("it should be a JSON object with \"progress\" and \"skills\""));
  }
  constexpr std::int64_t any_version = 1'000'000;
  if (!number_at(read, "progress", 1, any_version)) {
    return damaged(message("\"progress\" should be the number of a version"));
  }
  Progress progress;
  for (const auto& [skill, entry] : read.at("skills").items()) {
    const std::optional<SkillRecord> record = record_from(entry);
    if (!record || !is_key(skill)) {
      return damaged(message("an entry of its skills is missing or no whole number"));
    }
    progress.skills[skill] = *record;
  }
  if (!is_sound(progress)) {
    return damaged(message("its counts do not fit each other"));
  }
  return progress;
}

}  // namespace fw::practice
