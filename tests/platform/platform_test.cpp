#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "platform/assets.hpp"
#include "platform/clock.hpp"
#include "platform/environment.hpp"
#include "platform/files.hpp"
#include "platform/paths.hpp"

namespace fw::platform::platform_test {
namespace {

namespace fs = std::filesystem;
using ::testing::HasSubstr;

/// A folder that goes with all that is in it.
class TemporaryFolder {
 public:
  TemporaryFolder() {
    std::string name = ::testing::TempDir() + "foldwright.XXXXXX";
    path_ = ::mkdtemp(name.data());
  }
  TemporaryFolder(const TemporaryFolder&) = delete;
  TemporaryFolder& operator=(const TemporaryFolder&) = delete;
  ~TemporaryFolder() {
    std::error_code error;
    fs::remove_all(path_, error);
  }
  [[nodiscard]] std::string at(const std::string& name) const { return path_ + "/" + name; }
  [[nodiscard]] std::size_t entries() const {
    return static_cast<std::size_t>(std::distance(fs::directory_iterator(path_), fs::directory_iterator()));
  }

 private:
  std::string path_;
};

/// What every implementation owes, on the disk and in memory.
class FilesContract : public ::testing::TestWithParam<bool> {
 protected:
  FilesContract() {
    if (GetParam()) {
      files_ = desktop_files();
    } else {
      files_ = std::make_unique<MemoryFiles>();
    }
  }
  TemporaryFolder folder_;
  std::unique_ptr<Files> files_;
};
INSTANTIATE_TEST_SUITE_P(Both, FilesContract, ::testing::Values(true, false),
                         [](const auto& which) { return which.param ? "Desktop" : "Memory"; });

TEST_P(FilesContract, WhatIsWrittenIsRead) {
  const std::string path = folder_.at("lesson.json");
  const std::string text("a line\n\0 after a zero byte \xC3\xA9\r\n", 28);
  EXPECT_FALSE(files_->exists(path));
  ASSERT_EQ(files_->write_atomically(path, text), std::nullopt);
  EXPECT_TRUE(files_->exists(path));
  EXPECT_EQ(files_->read(path).value(), text);
  ASSERT_EQ(files_->write_atomically(path, "shorter"), std::nullopt);
  EXPECT_EQ(files_->read(path).value(), "shorter");
  ASSERT_EQ(files_->write_atomically(path, ""), std::nullopt);
  EXPECT_EQ(files_->read(path).value(), "");
}

TEST_P(FilesContract, MissingFileIsAnErrorThatNamesIt) {
  const auto read = files_->read(folder_.at("none.json"));
  ASSERT_FALSE(read.has_value());
  EXPECT_EQ(read.error().fault, FileFault::NotFound);
  EXPECT_EQ(read.error().message, "There is no file \"" + folder_.at("none.json") + "\".");
  EXPECT_EQ(files_->move_aside(folder_.at("none.json")).error().fault, FileFault::NotFound);
}

TEST_P(FilesContract, LimitIsTheLargestSizeThatIsRead) {
  const std::string path = folder_.at("ten");
  ASSERT_EQ(files_->write_atomically(path, "0123456789"), std::nullopt);
  EXPECT_EQ(files_->read(path, 10).value(), "0123456789");
  const auto read = files_->read(path, 9);
  ASSERT_FALSE(read.has_value());
  EXPECT_EQ(read.error().fault, FileFault::TooLarge);
  EXPECT_THAT(read.error().message, HasSubstr("larger than 9 bytes"));
}

TEST_P(FilesContract, DamagedFilesAreAllKept) {
  const std::string path = folder_.at("settings.json");
  for (const std::string text : {"first", "second", "third"}) {
    ASSERT_EQ(files_->write_atomically(path, text), std::nullopt);
    ASSERT_TRUE(files_->move_aside(path).has_value());
    EXPECT_FALSE(files_->exists(path));
  }
  EXPECT_EQ(files_->read(path + ".damaged").value(), "first");
  EXPECT_EQ(files_->read(path + ".damaged-2").value(), "second");
  EXPECT_EQ(files_->read(path + ".damaged-3").value(), "third");
}

TEST_P(FilesContract, ErasingTakesWhatWasSetAsideToo) {
  const std::string path = folder_.at("progress.json");
  EXPECT_EQ(files_->erase(path), std::nullopt) << "nothing is there yet";
  for (const std::string text : {"first", "second", "third"}) {
    ASSERT_EQ(files_->write_atomically(path, text), std::nullopt);
    ASSERT_TRUE(files_->move_aside(path).has_value());
  }
  ASSERT_EQ(files_->write_atomically(path, "fourth"), std::nullopt);
  ASSERT_EQ(files_->write_atomically(folder_.at("progress.json5"), "another"), std::nullopt);
  EXPECT_EQ(files_->erase(path), std::nullopt);
  for (const char* end : {"", ".damaged", ".damaged-2", ".damaged-3"}) {
    EXPECT_FALSE(files_->exists(path + end)) << end;
  }
  EXPECT_EQ(files_->read(folder_.at("progress.json5")).value(), "another");
}

TEST(DesktopFiles, ErasingTakesWhatAnInterruptedWritingLeft) {
  const TemporaryFolder folder;
  ASSERT_EQ(desktop_files()->write_atomically(folder.at("real"), "text"), std::nullopt);
  fs::create_symlink("real", folder.at("link"));
  std::ofstream(folder.at("real.part-a1B2c3")) << "half a te";
  EXPECT_EQ(desktop_files()->erase(folder.at("link")), std::nullopt);
  EXPECT_TRUE(fs::is_symlink(folder.at("link")));
  EXPECT_EQ(folder.entries(), 1U);
}

TEST(DesktopFiles, WhatCannotBeErasedIsSaid) {
  const TemporaryFolder folder;
  fs::create_directories(folder.at("progress.json/full"));  // a folder with something in it stands in its place
  const auto error = desktop_files()->erase(folder.at("progress.json"));
  ASSERT_TRUE(error.has_value());
  EXPECT_EQ(error->fault, FileFault::NotWritable);
  EXPECT_THAT(error->message, HasSubstr("progress.json\" cannot be erased: "));
}

TEST(DesktopFiles, WritingRemovesOldRemainsAndLeavesThoseOfAnotherWriter) {
  const TemporaryFolder folder;
  std::ofstream(folder.at("place.json.part-old111")) << "half";
  std::ofstream(folder.at("place.json.part-new222")) << "half";
  std::ofstream(folder.at("other.json.part-old333")) << "half";
  for (const char* name : {"place.json.part-old111", "other.json.part-old333"}) {
    fs::last_write_time(folder.at(name), fs::file_time_type::clock::now() - std::chrono::minutes(11));
  }
  ASSERT_EQ(desktop_files()->write_atomically(folder.at("place.json"), "text"), std::nullopt);
  EXPECT_FALSE(fs::exists(folder.at("place.json.part-old111")));
  EXPECT_TRUE(fs::exists(folder.at("place.json.part-new222")));
  EXPECT_TRUE(fs::exists(folder.at("other.json.part-old333")));
}

TEST(DesktopFiles, HugeFileIsRefusedUnread) {
  const TemporaryFolder folder;
  std::ofstream(folder.at("huge")).put('x');
  fs::resize_file(folder.at("huge"), std::uintmax_t{4} << 30U);  // sparse: takes no room on the disk
  EXPECT_EQ(desktop_files()->read(folder.at("huge")).error().fault, FileFault::TooLarge);
}

TEST(DesktopFiles, EndlessDeviceIsRefused) {
  EXPECT_EQ(desktop_files()->read("/dev/zero", 100000).error().fault, FileFault::TooLarge);
}

TEST(DesktopFiles, FolderIsNoFile) {
  const TemporaryFolder folder;
  const auto read = desktop_files()->read(folder.at(""));
  ASSERT_FALSE(read.has_value());
  EXPECT_EQ(read.error().fault, FileFault::NotReadable);
  EXPECT_THAT(read.error().message, HasSubstr("cannot be read: "));
  EXPECT_EQ(desktop_files()->write_atomically(folder.at("."), "text")->fault, FileFault::NotWritable);
}

TEST(DesktopFiles, MissingFoldersAreMadeAndNothingElseIsLeft) {
  const TemporaryFolder folder;
  ASSERT_EQ(desktop_files()->write_atomically(folder.at("a/b/lesson.json"), "text"), std::nullopt);
  ASSERT_EQ(desktop_files()->write_atomically(folder.at("a/b/lesson.json"), "text 2"), std::nullopt);
  EXPECT_EQ(std::distance(fs::directory_iterator(folder.at("a/b")), fs::directory_iterator()), 1);
}

TEST(DesktopFiles, FailedWritingLeavesTheOldTextAndNoRemains) {
  const TemporaryFolder folder;
  std::ofstream(folder.at("plain")) << "old";
  // A file where a folder would have to be.
  const auto error = desktop_files()->write_atomically(folder.at("plain/lesson.json"), "new");
  ASSERT_TRUE(error.has_value());
  EXPECT_EQ(error->fault, FileFault::NotWritable);
  EXPECT_THAT(error->message, HasSubstr("lesson.json\" cannot be written: "));
  EXPECT_EQ(desktop_files()->read(folder.at("plain")).value(), "old");
  EXPECT_EQ(folder.entries(), 1U);
}

TEST(DesktopFiles, LinkStaysALinkAndRightsStayAsTheyWere) {
  const TemporaryFolder folder;
  std::ofstream(folder.at("real")) << "old";
  ASSERT_EQ(::chmod(folder.at("real").c_str(), 0640), 0);
  fs::create_symlink("real", folder.at("link"));
  ASSERT_EQ(desktop_files()->write_atomically(folder.at("link"), "new"), std::nullopt);
  EXPECT_TRUE(fs::is_symlink(folder.at("link")));
  EXPECT_EQ(desktop_files()->read(folder.at("real")).value(), "new");
  EXPECT_EQ(fs::status(folder.at("real")).permissions(), fs::perms{0640});
}

TEST(DesktopFiles, NewFileHasTheUsualRights) {
  const TemporaryFolder folder;
  const mode_t before = ::umask(022);
  const auto error = desktop_files()->write_atomically(folder.at("new"), "text");
  ::umask(before);
  ASSERT_EQ(error, std::nullopt);
  EXPECT_EQ(fs::status(folder.at("new")).permissions(), fs::perms{0644});
}

// Source of the expectations: XDG Base Directory Specification 0.8.
TEST(DesktopFiles, ConfigFolderFollowsTheSpecification) {
  const auto files = desktop_files();
  ::setenv("HOME", "/home/pupil", 1);
  ::setenv("XDG_CONFIG_HOME", "/elsewhere/config", 1);
  EXPECT_EQ(files->config_folder().value(), "/elsewhere/config/foldwright");
  ::setenv("XDG_CONFIG_HOME", "", 1);
  EXPECT_EQ(files->config_folder().value(), "/home/pupil/.config/foldwright");
  ::setenv("XDG_CONFIG_HOME", "relative/paths/are/invalid", 1);
  EXPECT_EQ(files->config_folder().value(), "/home/pupil/.config/foldwright");
  ::unsetenv("HOME");
  EXPECT_THAT(files->config_folder().error().message, HasSubstr("no place for settings"));
}

// Source of the expectations: XDG Base Directory Specification 0.8.
TEST(DesktopFiles, DataFolderFollowsTheSpecification) {
  const auto files = desktop_files();
  ::setenv("HOME", "/home/pupil", 1);
  ::setenv("XDG_DATA_HOME", "/elsewhere/data", 1);
  EXPECT_EQ(files->data_folder().value(), "/elsewhere/data/foldwright");
  ::setenv("XDG_DATA_HOME", "", 1);
  EXPECT_EQ(files->data_folder().value(), "/home/pupil/.local/share/foldwright");
  ::setenv("XDG_DATA_HOME", "relative/paths/are/invalid", 1);
  EXPECT_EQ(files->data_folder().value(), "/home/pupil/.local/share/foldwright");
  ::unsetenv("HOME");
  EXPECT_EQ(files->data_folder().error().message,
            "There is no place for what is kept of practice: neither XDG_DATA_HOME nor HOME names a folder.");
}

TEST(MemoryFiles, CanRefuseToWrite) {
  MemoryFiles files(std::map<std::string, std::string>{{"settings.json", "{}"}});
  files.refuse_writing();
  EXPECT_EQ(files.write_atomically("settings.json", "new")->fault, FileFault::NotWritable);
  EXPECT_EQ(files.move_aside("settings.json").error().fault, FileFault::NotWritable);
  EXPECT_EQ(files.erase("settings.json")->fault, FileFault::NotWritable);
  EXPECT_EQ(files.texts().at("settings.json"), "{}");
}

std::string text_of_file(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

TEST(Assets, EveryShaderAndLessonIsThereByteForByte) {
  int compared = 0;
  for (const std::string folder : {"shaders", "demo_scenes"}) {
    for (const auto& entry : fs::directory_iterator(std::string(FOLDWRIGHT_SOURCE_DIR "/") + folder)) {
      const std::string extension = entry.path().extension().string();
      if (extension != ".vert" && extension != ".frag" && extension != ".json") continue;
      const std::string name = entry.path().filename().string();
      ASSERT_TRUE(has_asset(name)) << name;
      EXPECT_EQ(asset(name), text_of_file(entry.path().string())) << name;
      ++compared;
    }
  }
  EXPECT_GE(compared, 6);
}

// Source: OpenType specification 1.9, table directory: sfnt version 0x00010000, then the number of tables.
TEST(Assets, TypeIsTrueType) {
  for (const char* name : {"Andika-Regular.ttf", "Andika-Bold.ttf"}) {
    const std::string_view font = asset(name);
    ASSERT_GT(font.size(), 100000U);
    EXPECT_EQ(font.substr(0, 4), std::string_view("\0\1\0\0", 4)) << name;
    EXPECT_NE(font.substr(0, 500).find("glyf"), std::string_view::npos) << name;
  }
}

TEST(Assets, NamesAreInOrderAndUnknownOnesAreNoAssets) {
  const auto names = asset_names();
  EXPECT_TRUE(std::is_sorted(names.begin(), names.end()));
  EXPECT_THAT(names, ::testing::Contains("bench_face.vert"));
  EXPECT_FALSE(has_asset("bench_face"));
  EXPECT_FALSE(has_asset(""));
  EXPECT_DEATH(static_cast<void>(asset("unheard-of.png")), "no asset .unheard-of.png");
}

TEST(Clock, NeverRunsBackward) {
  const double start = monotonic_seconds();
  double before = start;
  for (int i = 0; i < 1000; ++i) {
    const double now = monotonic_seconds();
    ASSERT_GE(now, before);
    before = now;
  }
  ::usleep(20000);
  EXPECT_GE(monotonic_seconds() - start, 0.019);
}

// Source: the second 1,000,000,000 is 2001-09-09T01:46:40Z and the second 0 is 1970-01-01T00:00:00Z (POSIX.1-2017,
// section 4.16, seconds since the Epoch); the form of TZ is that of section 8.3.
TEST(Clock, DayIsThatOfTheZone) {
  const char* before = std::getenv("TZ");
  const std::string zone = before == nullptr ? "" : before;
  ::setenv("TZ", "UTC0", 1);
  EXPECT_EQ(local_day_at(0), 0);
  EXPECT_EQ(local_day_at(-1), -1);
  EXPECT_EQ(date_text(local_day_at(1'000'000'000)), "2001-09-09");
  ::setenv("TZ", "WEST2", 1);  // two hours behind
  EXPECT_EQ(local_day_at(0), -1);
  EXPECT_EQ(date_text(local_day_at(1'000'000'000)), "2001-09-08");
  ::setenv("TZ", "EAST-14", 1);
  EXPECT_EQ(date_text(local_day_at(1'000'000'000)), "2001-09-09");
  EXPECT_EQ(date_text(local_day_at(1'000'000'000 + 9 * 3600)), "2001-09-10");
  if (before == nullptr) {
    ::unsetenv("TZ");
  } else {
    ::setenv("TZ", zone.c_str(), 1);
  }
  EXPECT_GT(local_day(), 20000);
}

// Source of the leap days: ISO 8601, the Gregorian calendar.
TEST(Clock, DatesHaveLeapDays) {
  EXPECT_EQ(date_text(0), "1970-01-01");
  EXPECT_EQ(date_text(-1), "1969-12-31");
  EXPECT_EQ(date_text(365 + 365 + 31 + 28), "1972-02-29");
  EXPECT_EQ(date_text(10957), "2000-01-01");  // 30 years with 7 leap days
  EXPECT_EQ(date_text(10957 + 59), "2000-02-29");
}

// As the standard library has it, but that there is always a folder.
TEST(Paths, AFolderIsWhatStandsBeforeTheLastName) {
  for (const std::string path : {"a", "a/b", "/a", "/a/b", "a//b", "a/", "a/b/", "../a", "/", "", "//a", "./a.b"}) {
    const std::string folder = fs::path(path).parent_path().string();
    EXPECT_EQ(folder_of(path), folder.empty() ? "." : folder == "//" ? "/" : folder) << path;
  }
}

TEST(Environment, EmptyIsAsGoodAsNotSet) {
  ::setenv("FOLDWRIGHT_TEST", "value", 1);
  EXPECT_EQ(environment_variable("FOLDWRIGHT_TEST"), "value");
  ::setenv("FOLDWRIGHT_TEST", "", 1);
  EXPECT_EQ(environment_variable("FOLDWRIGHT_TEST"), std::nullopt);
  ::unsetenv("FOLDWRIGHT_TEST");
  EXPECT_EQ(environment_variable("FOLDWRIGHT_TEST"), std::nullopt);
}

// Source: POSIX.1-2017, section 8.2: LC_ALL goes before LC_MESSAGES, and that before LANG.
TEST(Environment, LanguageIsTheFirstThatIsSet) {
  ::unsetenv("LC_ALL");
  ::unsetenv("LC_MESSAGES");
  ::setenv("LANG", "de_DE.UTF-8", 1);
  EXPECT_EQ(environment_language(), "de_DE");
  ::setenv("LC_MESSAGES", "en_US@euro", 1);
  EXPECT_EQ(environment_language(), "en_US");
  ::setenv("LC_ALL", "C.UTF-8", 1);
  EXPECT_EQ(environment_language(), std::nullopt);
}

}  // namespace
}  // namespace fw::platform::platform_test
