#include "state/keeping.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <string>

#include "app/state/model_support.hpp"

namespace fw::state::test::keeping_test {
namespace {

TEST(Keeping, SettingsComeBackAsTheyWere) {
  Settings settings;
  settings.theme = ThemeName::BrightRoom;
  settings.reduced_motion = true;
  settings.letter_keys = false;
  settings.full_screen = true;
  settings.speed = PlaySpeed::Slow;
  settings.notation = algebra::ClassNotation{algebra::ClassNotation::Parts::Division};
  const auto read = read_settings(settings_text(settings));
  ASSERT_TRUE(read.has_value());
  EXPECT_EQ(read.value(), settings);
  settings.notation = algebra::ClassNotation{};  // the usual one, chosen though a lesson says otherwise
  EXPECT_EQ(read_settings(settings_text(settings)).value(), settings);
}

TEST(Keeping, DamagedSettingsAreToldInASentence) {
  for (const char* text : {"", "{", "[]", "{\"settings\": 1, \"theme\": 7}", "\x80\xff"}) {
    const auto read = read_settings(text);
    ASSERT_FALSE(read.has_value()) << text;
    EXPECT_NE(read.error().find("damaged"), std::string::npos);
  }
}

TEST(Keeping, ThePlaceComesBackWithChangesAndCounts) {
  const Model fresh = demo_model("candle-box");
  const Model left = after(demo_model("shade"), {CountNext{}, CountNext{}, SetMeasure{"slant_height", "15", false},
                                                 StepNet{1}, ShowTotal{true}});
  const auto back = at_place(fresh.state, place_text(left.state, ""));
  ASSERT_TRUE(back.has_value());
  EXPECT_EQ(back->current().id, "shade");
  EXPECT_EQ(back->desk().counted, left.state.desk().counted);
  EXPECT_EQ(back->desk().solid.description(), left.state.desk().solid.description());
  EXPECT_EQ(back->desk().net, left.state.desk().net);
  EXPECT_TRUE(back->desk().total_shown);
}

State opened_at(const std::string& path, const std::string& edge) {
  const std::string text = R"({"lesson": 1, "title": "Cubes", "problems": [
    {"id": "one", "solid": {"kind": "cube", "edge": "4 cm"}, "find": ["volume"]},
    {"id": "two", "solid": {"kind": "cube", "edge": ")" +
                           edge + R"("}, "find": ["volume"]}]})";
  return opened(tasks::read_lesson(text).value_or({}), path);
}

State left_at_two(State state) {
  state.problem = 1;
  state.desks[1] = fresh_desk(state.lesson->problems[1]);
  return state;
}

std::size_t problem_after(const State& fresh, const std::string& text) {
  const auto back = at_place(fresh, text);
  return back ? back->problem : 99;
}

TEST(Keeping, TheTextOfALessonKnowsItsPlace) {
  const std::string kept = place_text(left_at_two(opened_at("cubes.json", "5 cm")), "");
  EXPECT_EQ(problem_after(opened_at("cubes.json", "5 cm"), kept), 1U);
  EXPECT_EQ(problem_after(opened_at("renamed.json", "5 cm"), kept), 1U);
  EXPECT_EQ(problem_after(opened_at("", "5 cm"), kept), 1U) << "a lesson that came without a file";
  EXPECT_EQ(problem_after(opened_at("cubes.json", "6 cm"), kept), 1U) << "changed, in the same file";
  EXPECT_EQ(problem_after(opened_at("other.json", "6 cm"), kept), 0U);
  EXPECT_EQ(problem_after(opened_at("", "6 cm"), kept), 0U);
  const std::string without_file = place_text(left_at_two(opened_at("", "5 cm")), "");
  EXPECT_EQ(problem_after(opened_at("", "6 cm"), without_file), 0U) << "two lessons of the same title";
}

TEST(Keeping, PlacesOfSeveralLessonsAreKept) {
  std::string kept;
  const auto edge = [](int number) { return std::to_string(number) + " cm"; };
  for (int number = 1; number <= 40; ++number) {
    kept = place_text(left_at_two(opened_at("", edge(number))), kept);
  }
  EXPECT_EQ(problem_after(opened_at("", edge(10)), kept), 0U) << "left longest ago";
  for (int number = 11; number <= 40; ++number) {
    EXPECT_EQ(problem_after(opened_at("", edge(number)), kept), 1U) << number;
  }
  EXPECT_EQ(place_text(left_at_two(opened_at("", edge(40))), kept), kept) << "saved twice, kept once";
}

TEST(Keeping, AFileOfTheFirstVersionIsRead) {
  const std::string kept = R"({"place": 1, "lesson": "cubes.json", "title": "Cubes", "problem": "two", "desks": {}})";
  EXPECT_EQ(problem_after(opened_at("cubes.json", "5 cm"), kept), 1U);
  EXPECT_EQ(problem_after(opened_at("other.json", "5 cm"), kept), 0U);
}

TEST(Keeping, APathThatIsNoUtf8IsNoFault) {
  const std::string kept = place_text(left_at_two(opened_at("cub\xe9s.json", "5 cm")), "");
  EXPECT_EQ(problem_after(opened_at("cub\xe9s.json", "5 cm"), kept), 1U);
}

/// A file as it may come back from a bad disk or a curious hand: a part cut out, doubled, or replaced.
std::string damaged(std::string text) {
  const auto size = text.size();
  const auto from = *rc::gen::inRange<std::size_t>(0, size);
  const auto length = *rc::gen::inRange<std::size_t>(0, std::min<std::size_t>(size - from, 40) + 1);
  switch (*rc::gen::inRange(0, 4)) {
    case 0:
      return text.erase(from, length);
    case 1:
      return text.insert(from, text.substr(from, length));
    case 2: {
      const std::string piece = *rc::gen::element<std::string>("null", "7", "-1", "1e99", "true", "[]", "{}", "\"a\"",
                                                               "[-1]", "[99999999999]", "\x80");
      // In place of a whole value, where there is one behind the next colon.
      const auto colon = text.find(": ", from);
      const auto end = colon == std::string::npos ? colon : text.find_first_of(",\n", colon);
      return end == std::string::npos ? text.insert(from, piece) : text.replace(colon + 2, end - colon - 2, piece);
    }
    default:
      text[from] = static_cast<char>(*rc::gen::inRange(0, 256));
      return text;
  }
}

template <class T>
bool is_read_or_told(const Result<T, std::string>& read) {
  return read.has_value() || read.error().find("damaged") != std::string::npos;
}

RC_GTEST_PROP(Keeping, DamagedFilesAreReadOrToldAndNeverMore, ()) {
  static const Model left =
      after(demo_model("shade"), {CountNext{}, SetMeasure{"slant_height", "15", false}, StepNet{1}, ShowTotal{true}});
  static const std::string place = place_text(left.state, place_text(left_at_two(opened_at("cubes.json", "5 cm")), ""));
  Settings chosen;
  chosen.notation = algebra::ClassNotation{algebra::ClassNotation::Parts::Division};
  std::string place_now = place;
  std::string settings_now = settings_text(chosen);
  for (int times = *rc::gen::inRange(1, 4); times > 0; --times) {
    place_now = damaged(place_now);
    settings_now = damaged(settings_now);
  }
  const auto settings = read_settings(settings_now);
  RC_ASSERT(is_read_or_told(settings));
  const auto state = at_place(left.state, place_now);
  RC_ASSERT(is_read_or_told(state));
  if (state) {
    RC_ASSERT(state->problem < state->desks.size());
    RC_ASSERT(state->desks[state->problem].has_value());
    RC_ASSERT(at_place(left.state, place_text(*state, place_now)).has_value());
  }
}

}  // namespace
}  // namespace fw::state::test::keeping_test
