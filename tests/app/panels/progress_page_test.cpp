#include <gmock/gmock.h>

#include "app/panels/frame_driver.hpp"
#include "panels/ids.hpp"
#include "state/session.hpp"
#include "tasks/generate/generate.hpp"

namespace fw::panels::test::progress_page_test {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;

constexpr const char* data_path = "data/foldwright/progress.json";
constexpr const char* table_path = "home/Documents/foldwright-practice.csv";

int day_of_test = 20782;
int test_day() { return day_of_test; }

lessons::Lesson demo() { return tasks::read_lesson(platform::asset("lantern_fair.json")).value_or({}); }

TEST(SessionProgress, IsThereAgainInTheNextRun) {
  platform::MemoryFiles files;
  {
    Session session(files, demo(), "", test_day);
    EXPECT_TRUE(session.model().view.progress.rows.empty());
    session.record({{"surface", "B10", false}, {"surface", "", true}});
    EXPECT_TRUE(files.exists(data_path)) << "at once, without save()";
  }
  Session again(files, demo(), "", test_day);
  const auto rows = again.model().view.progress.rows;
  ASSERT_EQ(rows.size(), 1U);
  EXPECT_EQ(rows[0].seen, 2U);
  EXPECT_EQ(rows[0].days, 1);
  EXPECT_TRUE(again.messages().empty());
}

TEST(SessionProgress, ComesNearerWhenANewDayBegins) {
  platform::MemoryFiles files;
  Session session(files, demo(), "", test_day);
  session.record({{"surface", "", true}});
  ++day_of_test;
  EXPECT_TRUE(session.dispatch({})) << "the page shows another day";
  EXPECT_EQ(session.model().view.progress.rows.at(0).days, 0);
  EXPECT_FALSE(session.dispatch({}));
  --day_of_test;
}

TEST(SessionProgress, DamagedIsSetAsideWithAMessage) {
  platform::MemoryFiles files(std::map<std::string, std::string>{{data_path, "{broken"}});
  Session session(files, demo(), "", test_day);
  ASSERT_EQ(session.messages().size(), 1U);
  EXPECT_THAT(session.messages()[0], HasSubstr("It was set aside as data/foldwright/progress.json.damaged."));
}

TEST(SessionProgress, RefusedWritingIsSaidOnce) {
  platform::MemoryFiles files;
  files.refuse_writing();
  Session session(files, demo(), "", test_day);
  session.record({{"surface", "", true}});
  session.record({{"surface", "", true}});
  EXPECT_THAT(session.messages(),
              ElementsAre(HasSubstr("\"data/foldwright/progress.json\" cannot be written: no space is left.")));
  EXPECT_EQ(session.model().view.progress.rows.at(0).seen, 2U);
}

TEST(SessionProgress, IsExportedAndErasedByCommands) {
  platform::MemoryFiles files;
  Session session(files, demo(), "", test_day);
  session.record({{"surface", "B10", false}});
  session.dispatch({ShowProgress{true}, ExportProgress{}});
  EXPECT_EQ(session.model().view.progress.message, "The table is in home/Documents/foldwright-practice.csv");
  EXPECT_TRUE(files.exists(table_path));
  session.dispatch({EraseProgress{true}});
  EXPECT_TRUE(files.exists(data_path)) << "nobody was asked";
  session.dispatch({EraseProgress{false}});
  EXPECT_TRUE(session.model().view.progress.asks);
  EXPECT_TRUE(files.exists(data_path));
  session.dispatch({ExportProgress{}, EraseProgress{true}});
  EXPECT_TRUE(files.exists(data_path)) << "something else came between";
  session.dispatch({EraseProgress{false}, EraseProgress{true}});
  EXPECT_TRUE(files.texts().empty());
  EXPECT_TRUE(session.model().view.progress.rows.empty());
  EXPECT_EQ(session.model().view.progress.message, "Everything is erased.");
  session.dispatch({Undo{}});
  EXPECT_TRUE(session.model().view.progress.rows.empty()) << "undo does not bring it back";
}

TEST(ProgressCommands, OnePageIsOpenAtATime) {
  Model model = after(demo_model(), {ShowKeys{true}, ShowProgress{true}});
  EXPECT_TRUE(model.view.progress.shown);
  EXPECT_FALSE(model.view.keys_shown);
  model = after(std::move(model), {EraseProgress{false}, ShowKeys{true}});
  EXPECT_FALSE(model.view.progress.shown);
  EXPECT_FALSE(after(std::move(model), {ShowProgress{true}}).view.progress.asks) << "asked anew";
}

TakeProgress kept(const std::vector<practice::Attempt>& attempts, const std::string& message = "") {
  practice::Progress progress;
  for (const practice::Attempt& attempt : attempts) {
    progress = practice::recorded(std::move(progress), attempt, test_day());
  }
  return {std::make_shared<const practice::Progress>(std::move(progress)), test_day(), message};
}

TEST(ProgressPage, IsUsedWithThePointerAlone) {
  ProgramDriver program(after(demo_model(), {kept({{"surface", "B10", false}})}), 1280, 720);
  fw::test::UiDriver& user = program.user();
  program.give(ShowPanel{SidePanel::Display});
  user.click(ids::show_progress);
  EXPECT_TRUE(user.shows_text("surface area"));
  EXPECT_TRUE(user.shows_text("0 of 1"));
  EXPECT_TRUE(user.shows_text("1 time: The number is the area of the triangles alone."));
  EXPECT_TRUE(user.shows_text("without a name"));
  user.click(ids::progress_erase);
  EXPECT_TRUE(program.model().view.progress.asks);
  EXPECT_FALSE(user.rect(ids::progress_sure).overlaps(user.rect(ids::progress_keep), 0));
  user.frames(30);  // no double click
  user.click(ids::progress_keep);
  EXPECT_FALSE(program.model().view.progress.asks);
  user.click(ids::progress_close);
  EXPECT_FALSE(program.model().view.progress.shown);
}

TEST(ProgressPage, ADoubleClickErasesNothing) {
  ProgramDriver program(after(demo_model(), {kept({{"surface", "B10", false}}), ShowProgress{true}}), 1280, 720);
  fw::test::UiDriver& user = program.user();
  const figures::Vec2 place = user.rect(ids::progress_erase).center();
  user.click_at(place);
  user.click_at(place);
  EXPECT_TRUE(program.model().view.progress.asks) << "the second click answers nothing";
  user.frames(30);
  user.click(ids::progress_sure);
  EXPECT_FALSE(program.model().view.progress.asks) << "the second press was the one that erases";
}

TEST(ProgressPage, IsClosedByEscape) {
  ProgramDriver program(after(demo_model(), {ShowProgress{true}}), 1280, 720);
  EXPECT_TRUE(program.user().shows_text("Nothing is kept yet."));
  program.user().press(Key::Escape);
  EXPECT_FALSE(program.model().view.progress.shown);
}

std::vector<practice::Attempt> all_types() {
  std::vector<practice::Attempt> attempts;
  for (const practice::TypeName& type : tasks::type_names()) {
    attempts.push_back({type.key, "B10", false});
    attempts.push_back({type.key, "", false});
  }
  attempts.push_back({"a-type-of-a-later-version-of-the-program", "", true});
  return attempts;
}

TEST(ProgressPage, HoldsItsLayout) {
  const std::string path =
      "The table is in /home/pupil/a-folder/another-folder/and-another/Documents/foldwright-practice.csv";
  const std::vector<std::pair<const char*, std::vector<Command>>> scenes{
      {"empty", {ShowProgress{true}}},
      {"all types, asked", {kept(all_types()), ShowProgress{true}, EraseProgress{false}}},
      {"exported", {ShowProgress{true}, kept(all_types(), path)}}};
  for (const figures::Vec2& size : {figures::Vec2{1024, 768}, {1280, 720}, {1920, 1080}}) {
    for (const auto& [name, commands] : scenes) {
      ProgramDriver program(after(demo_model(), commands), size.x, size.y);
      program.user().frames(2);
      for (const std::string& fault : program.user().layout_faults()) {
        ADD_FAILURE() << name << " at " << size.x << "x" << size.y << ": " << fault;
      }
      for (const ItemRecord& item : program.user().ui().items()) {
        if (!item.text.empty() && item.text_size.y > 0) {
          EXPECT_GE(item.text_size.y, 0.035 * size.y * figures::line_height - 1) << item.text;
        }
      }
    }
  }
}

}  // namespace
}  // namespace fw::panels::test::progress_page_test
