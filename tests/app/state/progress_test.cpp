#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <csignal>
#include <cstdlib>
#include <filesystem>

#include "practice/progress_text.hpp"
#include "state/progress_keeper.hpp"
#include "support/random.hpp"
#include "support/sanitized.hpp"

namespace fw::state::test::progress_test {
namespace {

namespace fs = std::filesystem;
using practice::Attempt;
using practice::Progress;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

constexpr int today = 20782;

std::uint32_t answers_in(const Progress& progress) {
  std::uint32_t count = 0;
  for (const auto& [skill, record] : progress.skills) {
    count += record.seen;
  }
  return count;
}

TEST(ProgressKeeper, KeepsEveryAnswerAtOnce) {
  platform::MemoryFiles files;
  ProgressKeeper keeper(files);
  keeper.record({{"surface", "B10", false}, {"volume", "", true}}, today);
  EXPECT_EQ(ProgressKeeper(files).progress(), keeper.progress());
  EXPECT_EQ(keeper.progress().skills.size(), 2U);
  keeper.record({}, today);
  EXPECT_THAT(keeper.take_messages(), IsEmpty());
}

TEST(ProgressKeeper, SetsADamagedFileAsideAndGoesOn) {
  platform::MemoryFiles files(std::map<std::string, std::string>{{"data/foldwright/progress.json", "{broken"}});
  ProgressKeeper keeper(files);
  EXPECT_THAT(keeper.take_messages(),
              ElementsAre("Your practice file is damaged: it should be a JSON object with \"progress\" and \"skills\". "
                          "It was set aside as data/foldwright/progress.json.damaged."));
  EXPECT_THAT(keeper.take_messages(), IsEmpty()) << "said once";
  keeper.record({{"volume", "", true}}, today);
  EXPECT_EQ(files.texts().at("data/foldwright/progress.json.damaged"), "{broken");
  EXPECT_EQ(ProgressKeeper(files).progress().skills.count("volume"), 1U);
}

TEST(ProgressKeeper, WritesNothingOverADamagedFileThatStays) {
  platform::MemoryFiles files(std::map<std::string, std::string>{{"data/foldwright/progress.json", "{broken"}});
  files.refuse_writing();
  ProgressKeeper keeper(files);
  const auto messages = keeper.take_messages();
  ASSERT_EQ(messages.size(), 1U);
  EXPECT_THAT(messages[0], HasSubstr("cannot be renamed. Answers from this session are not saved."));
  keeper.record({{"volume", "", true}}, today);
  EXPECT_THAT(keeper.take_messages(), IsEmpty());
  EXPECT_EQ(files.texts().at("data/foldwright/progress.json"), "{broken");
  EXPECT_EQ(keeper.progress().skills.at("volume").seen, 1U) << "the run itself goes on";
}

TEST(ProgressKeeper, SaysOnceThatWritingIsRefused) {
  platform::MemoryFiles files;
  files.refuse_writing();
  ProgressKeeper keeper(files);
  keeper.record({{"volume", "", true}}, today);
  keeper.record({{"volume", "", true}}, today);
  const auto messages = keeper.take_messages();
  ASSERT_EQ(messages.size(), 1U);
  EXPECT_THAT(messages[0], HasSubstr("\"data/foldwright/progress.json\" cannot be written: no space is left."));
  EXPECT_EQ(keeper.trouble(), messages[0]) << "stays as long as it is so";
  EXPECT_EQ(keeper.progress().skills.at("volume").seen, 2U);
  EXPECT_EQ(keeper.export_table(),
            "The file \"home/Documents/foldwright-practice.csv\" cannot be written: no space is left.");
}

TEST(ProgressKeeper, ExportsAndErasesAll) {
  platform::MemoryFiles files(std::map<std::string, std::string>{{"data/foldwright/progress.json", "{broken"},
                                                                 {"config/foldwright/settings.json", "{}"}});
  ProgressKeeper keeper(files);
  keeper.record({{"volume", "A2", false}}, today);
  EXPECT_EQ(keeper.export_table(), "The table is in home/Documents/foldwright-practice.csv");
  // Day 20,782 is 2026-11-25: GNU date prints it for "@1795564800" (20,782 days of 86,400 seconds) in UTC.
  EXPECT_EQ(files.texts().at("home/Documents/foldwright-practice.csv"),
            "skill,seen,right,with a hint,cause,count,comes back\r\nvolume,1,0,0,A2,1,2026-11-25\r\n");
  EXPECT_EQ(files.texts().size(), 4U);
  EXPECT_EQ(keeper.erase(), "Everything is erased.");
  EXPECT_EQ(files.texts().size(), 1U) << "only the settings are left";
  EXPECT_EQ(keeper.progress(), Progress{});
  files.refuse_writing();
  EXPECT_EQ(keeper.erase(), "Everything is erased.") << "there is nothing to erase";
}

TEST(ProgressKeeper, SaysWhatCannotBeErasedAndKeepsIt) {
  platform::MemoryFiles files;
  ProgressKeeper keeper(files);
  keeper.record({{"volume", "A2", false}}, today);
  files.refuse_writing();
  EXPECT_EQ(keeper.erase(), "The file \"data/foldwright/progress.json\" cannot be erased.");
  EXPECT_EQ(keeper.progress().skills.size(), 1U);
}

TEST(ProgressKeeper, AddsToWhatAnotherWindowKept) {
  platform::MemoryFiles files;
  ProgressKeeper one(files);
  ProgressKeeper other(files);
  one.record({{"volume", "A2", false}}, today);
  other.record({{"volume", "", true}}, today);
  one.record({{"surface", "", true}}, today);
  EXPECT_EQ(answers_in(ProgressKeeper(files).progress()), 3U);
  EXPECT_EQ(one.progress(), ProgressKeeper(files).progress());
  EXPECT_EQ(other.erase(), "Everything is erased.");
  one.record({{"surface", "", true}}, today);
  EXPECT_EQ(answers_in(ProgressKeeper(files).progress()), 1U) << "what was erased does not come back";
}

TEST(ProgressKeeper, SurvivesDamageWhileItRuns) {
  platform::MemoryFiles files;
  ProgressKeeper keeper(files);
  keeper.record({{"volume", "A2", false}}, today);
  ASSERT_EQ(files.write_atomically("data/foldwright/progress.json", "{bro"), std::nullopt);
  keeper.record({{"volume", "", true}}, today);
  EXPECT_EQ(answers_in(ProgressKeeper(files).progress()), 2U);
  EXPECT_EQ(files.texts().at("data/foldwright/progress.json.damaged"), "{bro");
}

TEST(ProgressKeeper, KeepsWhatWaitedOnceThereIsRoomAgain) {
  platform::MemoryFiles files;
  ProgressKeeper keeper(files);
  files.refuse_writing();
  keeper.record({{"volume", "", true}}, today);
  keeper.record({{"volume", "", true}}, today);
  EXPECT_NE(keeper.trouble(), "");
  files.refuse_writing(false);
  keeper.record({{"volume", "", true}}, today);
  EXPECT_EQ(keeper.trouble(), "");
  EXPECT_EQ(answers_in(ProgressKeeper(files).progress()), 3U);
}

// --- killed at any moment -------------------------------------------------------------------------------------------

constexpr std::size_t kills = fw::test::cases(200, 40);

/// A process that answers as fast as it can, and says so of each answer once it is kept.
pid_t start_answering(const std::array<int, 2>& pipe) {
  const pid_t child = ::fork();
  if (child != 0) {
    return child;
  }
  ::close(pipe[0]);  // so that it ends with the test, should that be ended
  const auto files = platform::desktop_files();
  ProgressKeeper keeper(*files);
  std::string letters;  // of answers that are not said to be saved yet: a window can wait for the lock
  for (int i = 0;; ++i) {
    keeper.record({{i % 3 == 0 ? "surface" : "volume", "A1", i % 2 == 0}}, today + i % 50);
    letters += 'k';
    if (!keeper.trouble().empty()) {
      continue;
    }
    if (::write(pipe[1], letters.data(), letters.size()) != static_cast<ssize_t>(letters.size())) {
      ::_exit(1);
    }
    letters.clear();
  }
}

/// How many letters are left in a pipe whose writers are gone.
std::uint32_t letters_in(int pipe) {
  std::array<char, 4096> block{};
  std::uint32_t letters = 0;
  for (ssize_t count = 1; count > 0; letters += static_cast<std::uint32_t>(std::max<ssize_t>(0, count))) {
    count = ::read(pipe, block.data(), block.size());
  }
  ::close(pipe);
  return letters;
}

/// Kills it after a while and returns how many answers it had acknowledged.
std::uint32_t answers_until_killed(fw::test::Dice& dice, bool under_way) {
  std::array<int, 2> pipe{};
  EXPECT_EQ(::pipe(pipe.data()), 0);
  const pid_t child = start_answering(pipe);
  ::close(pipe[1]);
  std::array<char, 4096> block{};
  std::uint32_t answers = 0;
  if (under_way) {
    answers += static_cast<std::uint32_t>(std::max<ssize_t>(0, ::read(pipe[0], block.data(), 1)));
  }
  ::usleep(static_cast<unsigned>(dice.below(5000)));
  ::kill(child, SIGKILL);
  int status = 0;
  ::waitpid(child, &status, 0);
  EXPECT_TRUE(WIFSIGNALED(status));
  return answers + letters_in(pipe[0]);
}

TEST(ProgressKeeper, LosesAtMostTheLastAnswerHoweverItIsKilled) {
  std::string folder = ::testing::TempDir() + "foldwright.XXXXXX";
  ASSERT_NE(::mkdtemp(folder.data()), nullptr);
  ::setenv("XDG_DATA_HOME", folder.c_str(), 1);
  const auto files = platform::desktop_files();
  const auto count = [&] {
    std::error_code none_yet;
    return std::distance(fs::directory_iterator(folder + "/foldwright", none_yet), fs::directory_iterator());
  };
  fw::test::Dice dice(20261125);
  std::uint32_t kept = 0;
  // Goes on until a writing was hit while it was under way, which leaves its file behind.
  for (std::size_t round = 0; round < kills || (count() == 1 && round < 100 * kills); ++round) {
    const std::uint32_t answers = answers_until_killed(dice, round % 2 == 0);
    ProgressKeeper after(*files);
    ASSERT_THAT(after.take_messages(), IsEmpty()) << "round " << round;
    const std::uint32_t found = answers_in(after.progress()) - kept;
    // One more can be on the disk whose acknowledgment did not get out.
    ASSERT_TRUE(found == answers || found == answers + 1) << found << " of " << answers << " in round " << round;
    kept += found;
  }
  EXPECT_GE(kept, kills / 2);
  EXPECT_GT(count(), 1) << "no writing was hit while it was under way";
  EXPECT_EQ(ProgressKeeper(*files).erase(), "Everything is erased.");
  EXPECT_EQ(count(), 0);
  fs::remove_all(folder);
}

/// Two or three windows answer at once and are killed one after another: all that any of them saw confirmed is there.
void kill_windows(int rounds) {
  std::string folder = ::testing::TempDir() + "foldwright.XXXXXX";
  ASSERT_NE(::mkdtemp(folder.data()), nullptr);
  ::setenv("XDG_DATA_HOME", folder.c_str(), 1);
  const auto files = platform::desktop_files();
  fw::test::Dice dice(20261129);
  std::uint32_t kept = 0;
  for (int round = 0; round < rounds; ++round) {
    std::array<int, 2> pipe{};
    ASSERT_EQ(::pipe(pipe.data()), 0);
    std::vector<pid_t> windows;
    const std::size_t count = 2 + dice.below(2);
    for (std::size_t i = 0; i < count; ++i) {
      windows.push_back(start_answering(pipe));
    }
    ::close(pipe[1]);
    char letter = 0;  // in every other round one of them is under way
    std::uint32_t confirmed = round % 2 == 0 ? static_cast<std::uint32_t>(::read(pipe[0], &letter, 1)) : 0;
    for (const pid_t window : windows) {
      ::usleep(static_cast<unsigned>(dice.below(6000)));
      ::kill(window, SIGKILL);
      int status = 0;
      ::waitpid(window, &status, 0);
      ASSERT_TRUE(WIFSIGNALED(status));
    }
    confirmed += letters_in(pipe[0]);
    ProgressKeeper after(*files);
    ASSERT_THAT(after.take_messages(), IsEmpty()) << "round " << round;
    const std::uint32_t found = answers_in(after.progress()) - kept;
    ASSERT_TRUE(found >= confirmed && found <= confirmed + count)
        << found << " of " << confirmed << ", round " << round;
    kept += found;
  }
  EXPECT_GE(kept, static_cast<std::uint32_t>(rounds) / 2);
  fs::remove_all(folder);
}

TEST(ProgressKeeper, LosesNothingOfTwoWindows) { kill_windows(fw::test::cases(60, 12)); }
TEST(ProgressKeeper, LosesNothingOfTwoWindowsInAThousandKillsSlow) { kill_windows(1000); }

}  // namespace
}  // namespace fw::state::test::progress_test
