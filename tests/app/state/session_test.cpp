#include "state/session.hpp"

#include <gmock/gmock.h>

#include <filesystem>
#include <memory>

#include "app/state/model_support.hpp"
#include "state/worked.hpp"

namespace fw::state::test::session_test {
namespace {

using testing::HasSubstr;

lessons::Lesson demo() { return tasks::read_lesson(platform::asset("lantern_fair.json")).value_or({}); }

TEST(Session, KeepsSettingsAndPlaceForTheNextRun) {
  platform::MemoryFiles files;
  {
    Session session(files, demo(), "");
    session.dispatch({OpenProblem{2}, CountNext{}, SetTheme{ThemeName::Slate}});
    session.dispatch({SetNotation{algebra::ClassNotation{algebra::ClassNotation::Parts::Division}}});
    session.save();
  }
  Session again(files, demo(), "");
  EXPECT_TRUE(again.messages().empty());
  EXPECT_EQ(again.model().state.problem, 2U);
  EXPECT_EQ(again.model().state.desk().counted.size(), 1U);
  EXPECT_EQ(again.model().view.settings.theme, ThemeName::Slate);
  EXPECT_EQ(class_notation(again.model().state).parts, algebra::ClassNotation::Parts::Division);
}

TEST(SessionDeathTest, KeepsThePlaceWhenAnInvariantBreaks) {
  std::string folder = ::testing::TempDir() + "foldwright.XXXXXX";
  ASSERT_NE(::mkdtemp(folder.data()), nullptr);
  ::setenv("XDG_CONFIG_HOME", folder.c_str(), 1);
  ::setenv("XDG_DATA_HOME", folder.c_str(), 1);
  const auto files = platform::desktop_files();
  const auto count_and_break = [&] {
    Session session(*files, demo(), "");
    session.save_at_last_words();
    session.dispatch({OpenProblem{2}, CountNext{}});
    ensure(false, "this one is broken on purpose");
  };
  EXPECT_DEATH(count_and_break(), "broken on purpose");
  const Session after(*files, demo(), "");
  EXPECT_EQ(after.model().state.problem, 2U);
  EXPECT_EQ(after.model().state.desk().counted.size(), 1U);
  std::filesystem::remove_all(folder);
}

TEST(Session, SetsDamagedFilesAsideAndSaysSo) {
  platform::MemoryFiles files;
  const std::string folder = files.config_folder().value();
  ASSERT_FALSE(files.write_atomically(folder + "/settings.json", "{broken").has_value());
  ASSERT_FALSE(files.write_atomically(folder + "/place.json", "[]").has_value());
  Session session(files, demo(), "");
  ASSERT_EQ(session.messages().size(), 2U);
  EXPECT_NE(session.messages()[0].find("settings.json.damaged"), std::string::npos) << session.messages()[0];
  EXPECT_FALSE(files.exists(folder + "/settings.json"));
  EXPECT_EQ(session.model().view.settings, Settings{});
}

TEST(Session, GoesOnWhenTheDiskIsFull) {
  platform::MemoryFiles files;
  files.refuse_writing();
  Session session(files, demo(), "");
  session.dispatch({CountNext{}});
  session.save();
  EXPECT_EQ(session.messages().size(), 1U);
  session.dispatch({CountNext{}});
  session.save();
  EXPECT_EQ(session.messages().size(), 1U) << "said once";
  EXPECT_EQ(session.model().state.desk().counted.size(), 2U);
}

/// Owners of the lesson while dispatch runs, which asks for the day: each copy of the model is one more.
std::weak_ptr<const lessons::Lesson> watched;
long owners = 0;
int day_that_counts_owners() {
  owners = watched.use_count();
  return 20782;
}

TEST(Session, CopiesNothingWhereNothingIsAsked) {
  platform::MemoryFiles files;
  Session session(files, demo(), "", day_that_counts_owners);
  session.dispatch({CountNext{}, StepProblem{1}, CountNext{}});
  const Derived& derived = session.derived();
  watched = session.model().state.lesson;
  const long before = watched.use_count();
  EXPECT_GE(before, 3) << "the state, and the way back";
  const Desk* desks = &session.model().state.desk();
  EXPECT_FALSE(session.dispatch({}));
  EXPECT_EQ(owners, before);
  EXPECT_EQ(&session.model().state.desk(), desks);
  EXPECT_EQ(session.derived().nets.nets, derived.nets.nets);
}

TEST(Session, TellsWhetherAnythingChangedThatIsShown) {
  platform::MemoryFiles files;
  Session session(files, demo(), "", day_that_counts_owners);
  EXPECT_TRUE(session.dispatch({CountNext{}}));
  EXPECT_TRUE(session.dispatch({SetPresenting{true}}));
  EXPECT_FALSE(session.dispatch({SetPresenting{true}, Hover{std::nullopt}}));
}

// What is not saved is told in the window for as long as it is so.
TEST(Session, TellsInTheWindowWhatIsNotSaved) {
  platform::MemoryFiles files;
  Session session(files, demo(), "", day_that_counts_owners);
  EXPECT_EQ(session.model().view.file_news, FileNews{});
  files.refuse_writing();
  session.record({{"volume", "", true}});
  const FileNews lost = session.model().view.file_news;
  EXPECT_THAT(lost.unsaved, HasSubstr("Your answers stay in this window"));
  EXPECT_TRUE(lost.loses_answers);
  session.dispatch({CloseFileNews{}, CountNext{}});
  EXPECT_EQ(session.model().view.file_news, lost) << "stays";
  files.refuse_writing(false);
  session.record({{"volume", "", true}});
  EXPECT_EQ(session.model().view.file_news, FileNews{}) << "all is saved again";
}

TEST(Session, TellsInTheWindowThatThePlaceIsNotSaved) {
  platform::MemoryFiles files;
  Session session(files, demo(), "", day_that_counts_owners);
  files.refuse_writing();
  session.dispatch({StepProblem{1}});
  session.save();
  const FileNews lost = session.model().view.file_news;
  EXPECT_THAT(lost.unsaved, HasSubstr("Your settings and your place in the lesson are not being saved."));
  EXPECT_FALSE(lost.loses_answers);
}

TEST(Session, TellsInTheWindowWhatWasSetAside) {
  platform::MemoryFiles files(std::map<std::string, std::string>{{"data/foldwright/progress.json", "{broken"},
                                                                 {"config/foldwright/place.json", "{broken"},
                                                                 {"config/foldwright/settings.json", "{broken"}});
  Session session(files, demo(), "", day_that_counts_owners);
  const std::string told = session.model().view.file_news.note;
  for (const char* name : {"progress.json", "place.json", "settings.json"}) {
    EXPECT_THAT(told, HasSubstr(name));
  }
  EXPECT_EQ(session.model().view.file_news.unsaved, "");
  session.dispatch({CloseFileNews{}});
  EXPECT_EQ(session.model().view.file_news, FileNews{});
}

TEST(Session, TellsInTheWindowWhichProblemsAreLeftOut) {
  platform::MemoryFiles files;
  const lessons::Reading reading = tasks::reading_of(R"({"lesson": 1, "title": "Two", "problems": [
    {"id": "good", "solid": {"kind": "cube", "edge": "4 cm"}, "find": ["volume"]},
    {"id": "bad", "solid": {"kind": "cube", "edge": "four"}, "find": ["volume"]}]})");
  ASSERT_TRUE(!reading.lesson && reading.others);
  EXPECT_EQ(reading.others->problems.size(), 1U);
  EXPECT_EQ(reading.others->left_out, std::vector<std::string>{"bad"});
  Session session(files, *reading.others, "two.json", day_that_counts_owners);
  EXPECT_EQ(session.model().view.file_news.note,
            "Problem bad has a mistake and is left out. Run foldwright check to see what would be right.");
}

}  // namespace
}  // namespace fw::state::test::session_test
