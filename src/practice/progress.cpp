#include "practice/progress.hpp"

#include <algorithm>
#include <cstdlib>
#include <tuple>

#include "base/utf8.hpp"
#include "practice/signatures.hpp"

namespace fw::practice {
namespace {

using words::message;

constexpr const char* other_cause = "other";
constexpr int last_box = static_cast<int>(days_in_box.size()) - 1;
constexpr int farthest_day = 10'000'000;  // the year 29349

bool is_sound(const SkillRecord& record) {
  std::uint64_t wrong = 0;
  for (const auto& [cause, count] : record.causes) {
    if (!is_key(cause) || count == 0) {
      return false;
    }
    wrong += count;
  }
  return record.seen <= most_answers && record.right <= record.seen && record.helped <= record.right &&
         wrong == record.seen - record.right && record.causes.size() <= most_causes && record.box >= 0 &&
         record.box <= last_box && std::abs(record.back) <= farthest_day;
}

void count_cause(SkillRecord& record, const std::string& cause) {
  const bool is_known = record.causes.count(cause) != 0;
  // The last place is kept free for "other", so that no answer is without one.
  const bool has_room = record.causes.size() + 1 < most_causes;
  ++record.causes[is_key(cause) && (is_known || has_room) ? cause : other_cause];
}

void move(SkillRecord& record, const Attempt& attempt, int day) {
  if (attempt.right && !is_due(record, day)) {
    return;
  }
  if (!attempt.right) {
    record.box = 0;
  } else if (!attempt.helped) {
    record.box = std::min(record.box + 1, last_box);
  }
  const int days = days_in_box[static_cast<std::size_t>(record.box)];
  record.back = day + (attempt.right ? std::max(days, 1) : days);
}

std::string quoted(const std::string& field) {
  if (field.find_first_of(",\"\r\n") == std::string::npos) {
    return field;
  }
  std::string text = "\"";
  for (const char c : field) {
    text += c == '"' ? "\"\"" : std::string(1, c);
  }
  return text + '"';
}

std::string row(const std::vector<std::string>& fields) {
  std::string text;
  for (const std::string& field : fields) {
    text += (text.empty() ? "" : ",") + quoted(field);
  }
  return text + "\r\n";
}

std::string title_of(const std::string& skill, const std::vector<TypeName>& all) {
  const auto type = std::find_if(all.begin(), all.end(), [&](const TypeName& one) { return one.key == skill; });
  if (type != all.end()) {
    return type->title;
  }
  std::string title = skill;
  std::replace_if(
      title.begin(), title.end(), [](char c) { return c == '_' || c == '-'; }, ' ');
  return title;
}

/// Of mistakes that are not in the table of signatures: what their family has in common.
words::Message family_message(const std::string& cause) {
  switch (cause.front()) {
    case 'B':
      return message("You may have left out a face, or counted one twice. Check off each face once as you go.");
    case 'G':
      return message("The unit doesn't fit. Are you measuring a length, an area or a volume?");
    case 'M':
      return message("Your method is right. Check each line of arithmetic.");
    case 'N':
      return message("The name doesn't fit. How many bases does the solid have?");
    default:
      return message("Go over the steps once more, and find the line where yours is different.");
  }
}

/// The message of a row of the table speaks of a number; here it is not known any more.
words::Message message_of(const std::string& cause) {
  if (cause == solution_read) {
    return message("You looked at the solution first. Now try one on your own.");
  }
  const std::vector<Signature>& all = signatures();
  const auto row = std::find_if(all.begin(), all.end(), [&](const Signature& one) { return one.id == cause; });
  if (row == all.end()) {
    return family_message(cause == other_cause ? "-" : cause);
  }
  return message("{told:up}", {{"told", row->saying.about(message("the number"))}});
}

}  // namespace

bool is_key(std::string_view text) {
  return !text.empty() && text.size() <= longest_key && is_ascii_letter(text.front()) &&
         std::all_of(text.begin(), text.end(),
                     [](char c) { return is_ascii_letter(c) || is_ascii_digit(c) || c == '-' || c == '_'; });
}

bool is_sound(const Progress& progress) {
  return progress.skills.size() <= most_skills &&
         std::all_of(progress.skills.begin(), progress.skills.end(),
                     [](const auto& skill) { return is_key(skill.first) && is_sound(skill.second); });
}

Progress recorded(Progress progress, const Attempt& attempt, int day) {
  const bool is_new = progress.skills.count(attempt.skill) == 0;
  if (!is_key(attempt.skill) || std::abs(day) > farthest_day / 2 || (is_new && progress.skills.size() >= most_skills)) {
    return progress;
  }
  SkillRecord& record = progress.skills[attempt.skill];
  if (is_new) {
    record.back = day;
  }
  if (record.seen < most_answers) {
    ++record.seen;
    if (attempt.right) {
      ++record.right;
      record.helped += attempt.helped ? 1 : 0;
    } else {
      count_cause(record, attempt.cause);
    }
  }
  move(record, attempt, day);
  return progress;
}

bool is_due(const SkillRecord& record, int day) { return record.back <= day || record.back - day > days_in_box.back(); }

std::vector<std::string> due(const Progress& progress, int day) {
  std::vector<std::tuple<int, int, std::string>> found;
  for (const auto& [skill, record] : progress.skills) {
    if (is_due(record, day)) {
      found.emplace_back(std::min(record.back, day), record.box, skill);
    }
  }
  std::sort(found.begin(), found.end());
  std::vector<std::string> skills;
  for (const auto& one : found) {
    skills.push_back(std::get<std::string>(one));
  }
  return skills;
}

std::vector<std::string> spaced_set(const Progress& progress, int day, const std::vector<std::string>& types,
                                    std::size_t count) {
  std::vector<std::string> order;
  const auto add = [&](const std::string& type) {
    const bool is_asked_for = std::find(types.begin(), types.end(), type) != types.end();
    if (is_asked_for && std::find(order.begin(), order.end(), type) == order.end()) {
      order.push_back(type);
    }
  };
  for (const std::string& skill : due(progress, day)) {
    add(skill);
  }
  for (const std::string& type : types) {
    if (progress.skills.count(type) == 0) {
      add(type);
    }
  }
  std::vector<std::pair<int, std::string>> later;
  for (const auto& [skill, record] : progress.skills) {
    later.emplace_back(record.back, skill);
  }
  std::sort(later.begin(), later.end());
  for (const auto& one : later) {
    add(one.second);
  }
  std::vector<std::string> set;
  for (std::size_t i = 0; i < count && !order.empty(); ++i) {
    set.push_back(order[i % order.size()]);
  }
  return set;
}

std::string csv_text(const Progress& progress, std::string (*date_of)(int day)) {
  std::string text = row({"skill", "seen", "right", "with a hint", "cause", "count", "comes back"});
  for (const auto& [skill, record] : progress.skills) {
    const auto add = [&, &skill = skill, &record = record](const std::string& cause, std::uint32_t count) {
      text += row({skill, std::to_string(record.seen), std::to_string(record.right), std::to_string(record.helped),
                   cause, std::to_string(count), date_of(record.back)});
    };
    for (const auto& [cause, count] : record.causes) {
      add(cause, count);
    }
    if (record.causes.empty()) {
      add("", 0);
    }
  }
  return text;
}

std::vector<SkillSummary> summary(const Progress& progress, int day, const std::vector<TypeName>& types) {
  std::vector<std::string> order;
  for (const TypeName& type : types) {
    if (progress.skills.count(type.key) != 0) {
      order.push_back(type.key);
    }
  }
  for (const auto& [skill, record] : progress.skills) {
    if (std::find(order.begin(), order.end(), skill) == order.end()) {
      order.push_back(skill);
    }
  }
  std::vector<SkillSummary> rows;
  for (const std::string& skill : order) {
    const SkillRecord& record = progress.skills.at(skill);
    SkillSummary one{skill, title_of(skill, types), record.seen, record.right, record.helped, "", 0, {}, 0};
    for (const auto& [cause, count] : record.causes) {
      if (count > one.times || (count == one.times && one.cause == other_cause)) {
        one.cause = cause;
        one.times = count;
      }
    }
    one.message = one.cause.empty() ? words::Message() : message_of(one.cause);
    one.days = is_due(record, day) ? 0 : record.back - day;
    rows.push_back(std::move(one));
  }
  return rows;
}

}  // namespace fw::practice
