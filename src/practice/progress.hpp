#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "practice/attempt.hpp"
#include "practice/type_name.hpp"
#include "words/message.hpp"

namespace fw::practice {

// Days are counted from January 1, 1970, and are given by the caller: this room knows no clock.

/// After how many days a skill of each box is asked again. A wrong answer puts it into box 0: asked again the same day.
/// Source of spacing at all: Pashler et al., Organizing Instruction and Study to Improve Student Learning, IES 2007;
/// of these days: common practice, no source.
inline constexpr std::array<int, 5> days_in_box{0, 1, 3, 7, 21};

/// What is kept of one skill.
struct SkillRecord {
  std::uint32_t seen = 0;
  std::uint32_t right = 0;
  std::uint32_t helped = 0;                     ///< of those right: after a hint
  std::map<std::string, std::uint32_t> causes;  ///< wrong answers by the id of their mistake; "other" where none shows
  int box = 0;                                  ///< place in days_in_box
  int back = 0;                                 ///< the day on which it is asked again
  friend bool operator==(const SkillRecord&, const SkillRecord&) = default;
};

/// What is kept of practice, by skill: no names, no answers, no times of day.
struct Progress {
  std::map<std::string, SkillRecord> skills;  ///< by the key of the problem's type
  friend bool operator==(const Progress&, const Progress&) = default;
};

// Limits, so that what is kept stays small whatever is recorded or read.
inline constexpr std::size_t most_skills = 200;
inline constexpr std::size_t most_causes = 60;  ///< of one skill
inline constexpr std::size_t longest_key = 40;
inline constexpr std::uint32_t most_answers = 1'000'000;  ///< of one skill; what is beyond is not counted

/// Whether this can be the key of a skill or the id of a mistake: a letter, then letters, digits, "-", "_".
[[nodiscard]] bool is_key(std::string_view text);
/// Whether the counts fit each other (each answer is right or has one cause), keys are keys, and all limits are kept.
[[nodiscard]] bool is_sound(const Progress& progress);

/// The progress after an answer given on a day.
///   right: when the skill is due it goes one box up; before its day it stays, since only what is remembered counts
///   right after a hint: when the skill is due it stays in its box, and comes back tomorrow at the soonest
///   wrong: into box 0
/// Sound when `progress` is. An attempt whose skill is no key, or one skill too many, changes nothing.
[[nodiscard]] Progress recorded(Progress progress, const Attempt& attempt, int day);

/// Whether the skill comes back on this day or should have before. A day farther off than any box allows comes from a
/// clock that was wrong, and counts as due.
[[nodiscard]] bool is_due(const SkillRecord& record, int day);
/// The skills that are due, the longest overdue first, of these the lowest box.
[[nodiscard]] std::vector<std::string> due(const Progress& progress, int day);

/// Which of the types to ask on a day, one a question: those that are due, then those never seen, then those that come
/// back soonest; each once before any comes again, so that neighbors differ. None where there are no types.
[[nodiscard]] std::vector<std::string> spaced_set(const Progress& progress, int day,
                                                  const std::vector<std::string>& types, std::size_t count);

/// The table as CSV, one row for each cause of each skill, and one row for a skill without a wrong answer.
/// Columns: skill, seen, right, with a hint, cause, count, comes back (as `date_of` writes a day). Source: RFC 4180.
[[nodiscard]] std::string csv_text(const Progress& progress, std::string (*date_of)(int day));

/// A row for people.
struct SkillSummary {
  std::string skill;
  std::string title;  ///< "surface area"
  std::uint32_t seen = 0;
  std::uint32_t right = 0;
  std::uint32_t helped = 0;  ///< of those right
  std::string cause;         ///< the commonest; empty where every answer was right
  std::uint32_t times = 0;
  words::Message message;  ///< what is said of that cause, with one thing to do
  int days = 0;            ///< until it comes back; 0 when it is due
  friend bool operator==(const SkillSummary&, const SkillSummary&) = default;
};
/// In the order of these types, then other skills by their keys.
[[nodiscard]] std::vector<SkillSummary> summary(const Progress& progress, int day, const std::vector<TypeName>& types);

}  // namespace fw::practice
