#include "practice/progress.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <set>

#include "tasks/generate/generate.hpp"

namespace fw::practice::progress_test {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

constexpr int today = 20782;

Attempt right(const std::string& skill) { return {skill, "", true}; }
Attempt wrong(const std::string& skill, const std::string& cause) { return {skill, cause, false}; }

Progress after(const std::vector<std::pair<Attempt, int>>& answers, Progress progress = {}) {
  for (const auto& [attempt, day] : answers) {
    progress = recorded(std::move(progress), attempt, day);
  }
  return progress;
}

std::string day_number(int day) { return "day " + std::to_string(day); }

// The days are those of the plan for this program: one, three, seven, twenty-one.
TEST(Progress, ARememberedSkillComesBackAfterOneThreeSevenAndTwentyOneDays) {
  Progress progress;
  int day = today;
  for (const int wait : {1, 3, 7, 21, 21}) {
    progress = recorded(progress, right("surface"), day);
    EXPECT_EQ(progress.skills.at("surface").back, day + wait);
    EXPECT_THAT(due(progress, day + wait - 1), IsEmpty());
    EXPECT_THAT(due(progress, day + wait), ElementsAre("surface"));
    day += wait;
  }
  EXPECT_EQ(progress.skills.at("surface").box, 4);
}

TEST(Progress, AWrongAnswerComesBackTheSameDayAndBeginsAnew) {
  Progress progress = after({{right("volume"), today}, {right("volume"), today + 1}});
  EXPECT_EQ(progress.skills.at("volume").box, 2);
  progress = recorded(progress, wrong("volume", "A2"), today + 4);
  EXPECT_THAT(due(progress, today + 4), ElementsAre("volume"));
  progress = recorded(progress, right("volume"), today + 4);
  EXPECT_EQ(progress.skills.at("volume").back, today + 5);
}

TEST(Progress, MoreOfTheSameOnOneDayMovesNothing) {
  const Progress once = after({{right("volume"), today}});
  const Progress often = after({{right("volume"), today}, {right("volume"), today}}, once);
  EXPECT_EQ(often.skills.at("volume").box, 1);
  EXPECT_EQ(often.skills.at("volume").back, today + 1);
  EXPECT_EQ(often.skills.at("volume").right, 3U) << "but it is counted";
}

TEST(Progress, ADayThatNoBoxReachesComesFromAWrongClock) {
  const Progress progress = after({{right("volume"), today + 9000}});
  EXPECT_THAT(due(progress, today), ElementsAre("volume"));
  EXPECT_EQ(recorded(progress, right("volume"), today).skills.at("volume").back, today + 3);
}

TEST(Progress, TheLongestOverdueIsDueFirst) {
  const Progress progress = after({{right("volume"), today},
                                   {right("surface"), today - 5},
                                   {right("faces"), today - 5},
                                   {wrong("name", "N9"), today - 4}});
  EXPECT_THAT(due(progress, today), ElementsAre("name", "faces", "surface"));
  EXPECT_THAT(due(progress, today + 1), ElementsAre("name", "faces", "surface", "volume"));
}

TEST(Progress, ASetBeginsWithWhatIsDueThenWhatIsNew) {
  const Progress progress =
      after({{right("surface"), today - 3}, {right("volume"), today}, {right("name"), today - 9}});
  const std::vector<std::string> types{"volume", "surface", "cover", "fill"};
  EXPECT_THAT(spaced_set(progress, today, types, 4), ElementsAre("surface", "cover", "fill", "volume"));
  EXPECT_THAT(spaced_set(progress, today, types, 2), ElementsAre("surface", "cover"));
  EXPECT_THAT(spaced_set(progress, today, types, 6),
              ElementsAre("surface", "cover", "fill", "volume", "surface", "cover"));
  EXPECT_THAT(spaced_set(progress, today, {}, 3), IsEmpty());
}

TEST(Progress, WhatIsNoKeyIsNeverKept) {
  for (const char* text : {"", "two words", "1a", "a,b", "=sum", "Käthe", "a\n"}) {
    EXPECT_FALSE(is_key(text)) << text;
    EXPECT_EQ(recorded({}, right(text), today), Progress{}) << text;
  }
  EXPECT_TRUE(is_key("edge-from-volume"));
  EXPECT_TRUE(is_key("surface_area"));
  EXPECT_FALSE(is_key(std::string(longest_key + 1, 'a')));
  const Progress progress = after({{wrong("volume", "no key"), today}, {wrong("volume", ""), today}});
  EXPECT_EQ(progress.skills.at("volume").causes, (std::map<std::string, std::uint32_t>{{"other", 2}}));
}

TEST(Progress, TypesOfTheGeneratorAreKeys) {
  for (const TypeName& type : tasks::type_names()) {
    EXPECT_TRUE(is_key(type.key)) << type.key;
  }
}

TEST(Progress, StaysWithinItsLimits) {
  Progress progress;
  for (std::size_t i = 0; i < most_skills + 5; ++i) {
    progress = recorded(std::move(progress), right("s" + std::to_string(i)), today);
  }
  for (std::size_t i = 0; i < most_causes + 5; ++i) {
    progress = recorded(std::move(progress), wrong("s0", "A" + std::to_string(i)), today);
  }
  EXPECT_EQ(progress.skills.size(), most_skills);
  EXPECT_EQ(progress.skills.at("s0").causes.size(), most_causes);
  EXPECT_TRUE(is_sound(progress));
  progress.skills["s1"] = {most_answers, most_answers, 0, {}, 4, today};
  progress = recorded(progress, wrong("s1", "A1"), today);
  EXPECT_EQ(progress.skills.at("s1").seen, most_answers);
  EXPECT_EQ(progress.skills.at("s1").box, 0) << "still it comes back";
  EXPECT_TRUE(is_sound(progress));
}

TEST(Progress, CountsThatDoNotFitAreNotSound) {
  const Progress good = after({{right("volume"), today}, {wrong("volume", "A2"), today}});
  EXPECT_TRUE(is_sound(good));
  const auto spoiled = [&](void (*spoil)(SkillRecord&)) {
    Progress progress = good;
    spoil(progress.skills.at("volume"));
    return is_sound(progress);
  };
  EXPECT_FALSE(spoiled([](SkillRecord& record) { record.right = 3; }));
  EXPECT_FALSE(spoiled([](SkillRecord& record) { ++record.seen; }));
  EXPECT_FALSE(spoiled([](SkillRecord& record) { record.box = 5; }));
  EXPECT_FALSE(spoiled([](SkillRecord& record) { record.box = -1; }));
  EXPECT_FALSE(spoiled([](SkillRecord& record) { record.back = 2'000'000'000; }));
  EXPECT_FALSE(spoiled([](SkillRecord& record) { record.causes = {{"two words", 1}}; }));
  EXPECT_FALSE(is_sound(Progress{{{"two words", SkillRecord{}}}}));
}

// Of any row of answers on any days.
RC_GTEST_PROP(ProgressLaws, HoldAfterAnyAnswers, ()) {
  const std::vector<std::string> skills{"name", "surface", "volume", "cover"};
  const std::vector<std::string> causes{"A1", "B2", "", "no key"};
  Progress progress;
  std::map<std::string, int> wrong_answers;
  int day = today;
  const int count = *rc::gen::inRange(1, 60);
  for (int i = 0; i < count; ++i) {
    day += *rc::gen::inRange(-1, 12);
    const Attempt attempt{*rc::gen::elementOf(skills), *rc::gen::elementOf(causes), *rc::gen::arbitrary<bool>()};
    const Progress before = progress;
    progress = recorded(progress, attempt, day);
    const SkillRecord& record = progress.skills.at(attempt.skill);
    RC_ASSERT(is_sound(progress));
    RC_ASSERT((attempt.right ? record.back > day : record.back == day));
    RC_ASSERT(record.back - day <= 21);
    for (const std::string& other : skills) {
      const auto kept = before.skills.find(other);
      RC_ASSERT((other == attempt.skill || kept == before.skills.end() || kept->second == progress.skills.at(other)));
    }
    wrong_answers[attempt.skill] += attempt.right ? 0 : 1;
  }
  for (const SkillSummary& one : summary(progress, day, tasks::type_names())) {
    RC_ASSERT(static_cast<int>(one.seen - one.right) == wrong_answers[one.skill]);
    RC_ASSERT(one.cause.empty() == (one.seen == one.right));
    RC_ASSERT((one.days >= 0 && one.days <= 21));
  }
}

RC_GTEST_PROP(ProgressLaws, ASetHasAllThatIsDueAndNoNeighborsAlike, ()) {
  const std::vector<std::string> types{"name", "surface", "volume", "cover", "fill"};
  Progress progress;
  for (int i = 0; i < 8; ++i) {
    progress = recorded(progress, {*rc::gen::elementOf(types), "A1", *rc::gen::arbitrary<bool>()},
                        today + *rc::gen::inRange(0, 9));
  }
  const int day = today + *rc::gen::inRange(9, 30);
  const std::vector<std::string> set = spaced_set(progress, day, types, 10);
  const std::vector<std::string> first = due(progress, day);
  RC_ASSERT(set.size() == 10U);
  RC_ASSERT(std::equal(first.begin(), first.end(), set.begin()));
  RC_ASSERT(std::set<std::string>(set.begin(), set.end()).size() == types.size());
  RC_ASSERT(std::adjacent_find(set.begin(), set.end()) == set.end());
}

/// A reader of CSV after RFC 4180, section 2: fields parted by commas, lines ended by CRLF, quotes doubled.
std::vector<std::vector<std::string>> csv_rows(const std::string& text) {
  std::vector<std::vector<std::string>> rows{{""}};
  bool is_quoted = false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    std::string& field = rows.back().back();
    if (is_quoted && text[i] == '"' && i + 1 < text.size() && text[i + 1] == '"') {
      field += text[++i];
    } else if (text[i] == '"') {
      is_quoted = !is_quoted;
    } else if (!is_quoted && text[i] == ',') {
      rows.back().emplace_back();
    } else if (!is_quoted && text.compare(i, 2, "\r\n") == 0) {
      ++i;
      rows.push_back({""});
    } else {
      field += text[i];
    }
  }
  EXPECT_EQ(rows.back(), std::vector<std::string>{""}) << "the last line has an end";
  rows.pop_back();
  return rows;
}

// What was right with a hint is not yet known by heart.
TEST(ProgressRecorded, RightAfterAHintGoesNoBoxUpAndComesBackTomorrow) {
  const Attempt helped{"volume", "", true, true};
  const Progress once = recorded({}, helped, today);
  EXPECT_EQ(once.skills.at("volume").box, 0);
  EXPECT_EQ(once.skills.at("volume").back, today + 1);
  const Progress known = recorded(recorded({}, right("volume"), today), helped, today + 1);
  EXPECT_EQ(known.skills.at("volume").box, 1);
  EXPECT_EQ(known.skills.at("volume").back, today + 2);
  EXPECT_EQ(recorded(once, wrong("volume", solution_read), today).skills.at("volume").back, today);
}

TEST(ProgressTable, HasARowForEachCause) {
  const Progress progress = after({{wrong("volume", "A2"), today},
                                   {wrong("volume", "A2"), today},
                                   {wrong("volume", "F1"), today},
                                   {right("volume"), today},
                                   {right("name"), today}});
  EXPECT_EQ(csv_text(progress, day_number),
            "skill,seen,right,with a hint,cause,count,comes back\r\n"
            "name,1,1,0,,0,day 20783\r\n"
            "volume,4,1,0,A2,2,day 20783\r\n"
            "volume,4,1,0,F1,1,day 20783\r\n");
  EXPECT_EQ(csv_text({}, day_number), "skill,seen,right,with a hint,cause,count,comes back\r\n");
}

TEST(ProgressTable, IsReadBackWhateverStandsInIt) {
  Progress progress;
  progress.skills["a \"quoted\", long\r\nskill"] = {1, 0, 0, {{"A,1", 1}}, 0, 0};
  const auto rows = csv_rows(csv_text(progress, [](int) { return std::string("1,5 \"days\""); }));
  EXPECT_THAT(rows, ElementsAre(ElementsAre("skill", "seen", "right", "with a hint", "cause", "count", "comes back"),
                                ElementsAre("a \"quoted\", long\r\nskill", "1", "0", "0", "A,1", "1", "1,5 \"days\"")));
}

TEST(ProgressSummary, SaysTheCommonestCauseWithItsMessage) {
  const Progress progress = after({{wrong("surface", "B10"), today},
                                   {wrong("surface", ""), today},
                                   {wrong("surface", "B10"), today},
                                   {right("volume"), today},
                                   {right("surface-of-a-kite"), today}});
  const std::vector<SkillSummary> rows = summary(progress, today, tasks::type_names());
  ASSERT_EQ(rows.size(), 3U);
  EXPECT_EQ(rows[0], (SkillSummary{"surface", "surface area", 3, 0, 0, "B10", 2, rows[0].message, 0}));
  EXPECT_EQ(said(rows[0].message), "The number is the area of the triangles alone. Is the bottom part of the surface?");
  EXPECT_EQ(rows[1], (SkillSummary{"volume", "volume", 1, 1, 0, "", 0, {}, 1}));
  EXPECT_EQ(rows[2].title, "surface of a kite") << "a type of a later version";
  EXPECT_EQ(summary(progress, today + 1, tasks::type_names())[1].days, 0);
}

TEST(ProgressSummary, HasAMessageForEveryCause) {
  for (const char* cause : {"A1", "B", "G1", "G2", "M1", "N9", "L2", "K5", "other", "Z9"}) {
    const std::string message =
        said(summary(after({{wrong("surface", cause), today}}), today, tasks::type_names())[0].message);
    EXPECT_THAT(message, HasSubstr(".")) << cause;
    EXPECT_EQ(message.find('{'), std::string::npos) << message;
  }
  const Progress tie = after({{wrong("surface", ""), today}, {wrong("surface", "Z9"), today}});
  EXPECT_EQ(summary(tie, today, tasks::type_names())[0].cause, "Z9") << "of two alike, the one that says something";
}

}  // namespace
}  // namespace fw::practice::progress_test
