#include "practice/progress_text.hpp"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

namespace fw::practice::progress_text_test {
namespace {

using ::testing::HasSubstr;

constexpr int today = 20782;

std::string error_of(const std::string& text) {
  const auto read = read_progress(text);
  return read ? "" : said(read.error());
}

TEST(ProgressText, IsAsDocumented) {
  Progress progress = recorded({}, {"surface", "B10", false}, today);
  progress = recorded(progress, {"surface", "", true}, today);
  EXPECT_EQ(progress_text(progress), R"({
  "progress": 1,
  "skills": {
    "surface": {
      "back": 20783,
      "box": 1,
      "causes": {
        "B10": 1
      },
      "helped": 0,
      "right": 1,
      "seen": 2
    }
  }
}
)");
}

RC_GTEST_PROP(ProgressText, IsReadBackAsItWas, ()) {
  Progress progress;
  const int count = *rc::gen::inRange(0, 40);
  for (int i = 0; i < count; ++i) {
    const Attempt attempt{*rc::gen::element<std::string>("name", "surface", "edge-from-volume"),
                          *rc::gen::element<std::string>("A1", "B", "M2", ""), *rc::gen::arbitrary<bool>(),
                          *rc::gen::arbitrary<bool>()};
    progress = recorded(std::move(progress), attempt, today + *rc::gen::inRange(-900, 900));
  }
  RC_ASSERT(read_progress(progress_text(progress)).value() == progress);
}

TEST(ProgressText, HelpIsKeptApartAndAFileWithoutItIsRead) {
  const Progress progress = recorded({}, {"surface", "", true, true}, today);
  EXPECT_EQ(progress.skills.at("surface").right, 1U);
  EXPECT_EQ(progress.skills.at("surface").helped, 1U);
  EXPECT_EQ(read_progress(progress_text(progress)).value(), progress);
  const auto earlier = read_progress(
      R"({"progress": 1, "skills": {"surface": {"seen": 2, "right": 1, "causes": {"A2": 1}, "box": 0, "back": 3}}})");
  ASSERT_TRUE(earlier.has_value());
  EXPECT_EQ(earlier->skills.at("surface").helped, 0U);
  EXPECT_FALSE(read_progress(R"({"progress": 1, "skills": {"surface":
      {"seen": 2, "right": 1, "helped": 2, "causes": {"A2": 1}, "box": 0, "back": 3}}})"));
}

TEST(ProgressText, FitsItsLimitsWhenAllAreReached) {
  Progress progress;
  const auto key = [](std::size_t i) { return std::string(longest_key - 3, 'k') + std::to_string(100 + i); };
  for (std::size_t skill = 0; skill < most_skills; ++skill) {
    SkillRecord& record = progress.skills[key(skill)];
    for (std::size_t cause = 0; cause < most_causes; ++cause) {
      record.causes[key(cause)] = 10'000;
      record.seen += 10'000;
    }
  }
  ASSERT_TRUE(is_sound(progress));
  EXPECT_LE(progress_text(progress).size(), progress_byte_limit);
  EXPECT_EQ(read_progress(progress_text(progress)).value(), progress);
}

TEST(ProgressText, OfALaterVersionIsReadWithoutWhatIsNew) {
  const auto read = read_progress(
      R"({"progress": 7, "mood": "calm", "skills": {"volume":
          {"seen": 2, "right": 1, "causes": {"A2": 1}, "box": 0, "back": 20782, "speed": [1, 2]}}})");
  ASSERT_TRUE(read.has_value()) << said(read.error());
  EXPECT_EQ(read->skills.at("volume").causes.at("A2"), 1U);
}

TEST(ProgressText, ThatIsDamagedIsToldInASentence) {
  const std::string begin = "Your practice file is damaged: ";
  const std::string shape = begin + "it should be a JSON object with \"progress\" and \"skills\".";
  for (const char* text : {"", "{broken", "[]", "{}", R"({"progress": 1})", R"({"progress": 1, "skills": []})"}) {
    EXPECT_EQ(error_of(text), shape) << text;
  }
  for (const char* number : {"0", "-1", "1.5", "\"1\"", "99999999999999999999"}) {
    EXPECT_EQ(error_of(R"({"skills": {}, "progress": )" + std::string(number) + "}"),
              begin + "\"progress\" should be the number of a version.")
        << number;
  }
  const auto with = [](const std::string& skill, const std::string& record) {
    return R"({"progress": 1, "skills": {")" + skill + "\": " + record + "}}";
  };
  const std::string good = R"({"seen": 2, "right": 1, "causes": {"A2": 1}, "box": 0, "back": 20782})";
  EXPECT_EQ(error_of(with("volume", good)), "");
  EXPECT_EQ(error_of(with("two words", good)), begin + "an entry of its skills is missing or no whole number.");
  for (const char* record : {"3", "{}", R"({"seen": 2, "right": 1, "causes": {"A2": 1}, "box": 0})",
                             R"({"seen": -2, "right": 1, "causes": {"A2": 1}, "box": 0, "back": 1})",
                             R"({"seen": 2, "right": 1.0, "causes": {"A2": 1}, "box": 0, "back": 1})",
                             R"({"seen": 2, "right": 1, "causes": {"A2": 1}, "box": 5, "back": 1})",
                             R"({"seen": 2, "right": 1, "causes": {"A2": 1}, "box": 0, "back": 18446744073709551615})",
                             R"({"seen": 2, "right": 1, "causes": [1], "box": 0, "back": 1})",
                             R"({"seen": 2, "right": 2, "causes": {"A2": 0}, "box": 0, "back": 1})"}) {
    EXPECT_EQ(error_of(with("volume", record)), begin + "an entry of its skills is missing or no whole number.")
        << record;
  }
  EXPECT_EQ(error_of(with("volume", R"({"seen": 5, "right": 1, "causes": {"A2": 1}, "box": 0, "back": 1})")),
            begin + "its counts do not fit each other.");
  EXPECT_EQ(error_of(std::string(progress_byte_limit + 1, ' ')), begin + "it is too large.");
}

// However a file is cut off, it is refused or read whole; it is never half.
TEST(ProgressText, CutOffIsRefused) {
  const std::string text = progress_text(recorded({}, {"surface", "B10", false}, today));
  for (std::size_t size = 0; size + 2 < text.size(); ++size) {
    EXPECT_FALSE(read_progress(text.substr(0, size)).has_value()) << size;
  }
}

}  // namespace
}  // namespace fw::practice::progress_text_test
