#pragma once

#include <sys/wait.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "paper/page.hpp"
#include "paper/pdf_file.hpp"
#include "platform/assets.hpp"
#include "tasks/catalog.hpp"

// What tests of printed pages share.
namespace fw::paper {

inline const Fonts& test_fonts() {
  static const Fonts fonts{Font::read(platform::asset("Andika-Regular.ttf")).value(),
                           Font::read(platform::asset("Andika-Bold.ttf")).value()};
  return fonts;
}

inline std::vector<std::string> demo_lessons() {
  return {"lantern_fair.json", "lantern_market.json", "candle_boxes.json", "lantern_nets.json"};
}
inline lessons::Lesson demo_lesson(const std::string& name) {
  return tasks::read_lesson(platform::asset(name)).value();
}

/// What a command writes to standard output, and its exit status.
struct Ran {
  int status = -1;
  std::string out;
};
inline Ran ran(const std::string& command) {
  Ran result;
  FILE* pipe = popen((command + " 2>&1").c_str(), "r");
  if (pipe == nullptr) {
    return result;
  }
  char buffer[4096];
  for (std::size_t size = 0; (size = fread(buffer, 1, sizeof buffer, pipe)) > 0;) {
    result.out.append(buffer, size);
  }
  const int ended = pclose(pipe);
  result.status = WIFEXITED(ended) ? WEXITSTATUS(ended) : -1;
  return result;
}

/// A file of a test's own; gone when the object is.
class PrintedFile {
 public:
  explicit PrintedFile(const std::string& bytes, const std::string& ending = ".pdf") {
    std::string pattern = (std::filesystem::temp_directory_path() / "foldwright-page-XXXXXX").string();
    folder_ = mkdtemp(pattern.data());
    path_ = folder_ + "/page" + ending;
    std::ofstream(path_, std::ios::binary) << bytes;
  }
  ~PrintedFile() { std::filesystem::remove_all(folder_); }
  PrintedFile(const PrintedFile&) = delete;
  PrintedFile& operator=(const PrintedFile&) = delete;
  [[nodiscard]] const std::string& path() const { return path_; }
  [[nodiscard]] const std::string& folder() const { return folder_; }

 private:
  std::string folder_, path_;
};

/// All texts of a page, in the order in which they are drawn, a space between them.
inline std::string text_of(const Page& page) {
  std::string text;
  for (const Item& item : page.items) {
    if (const auto* one = std::get_if<TextItem>(&item)) {
      text += (text.empty() ? "" : " ") + one->text;
    }
  }
  return text;
}
inline std::string text_of(const std::vector<Page>& pages) {
  std::string text;
  for (const Page& page : pages) {
    text += text_of(page) + " ";
  }
  return text;
}

/// The rectangle round everything that is drawn on a page, its texts from the ascent to the descent.
inline Rect inked(const Page& page) {
  std::vector<Vec2> points;
  for (const Item& item : page.items) {
    if (const auto* path = std::get_if<PathItem>(&item)) {
      points.insert(points.end(), path->points.begin(), path->points.end());
    } else if (const auto* circle = std::get_if<CircleItem>(&item)) {
      points.push_back(circle->center - Vec2{circle->radius, circle->radius});
      points.push_back(circle->center + Vec2{circle->radius, circle->radius});
    } else if (const auto* text = std::get_if<TextItem>(&item)) {
      points.push_back(text->at + Vec2{0, -0.8 * text->size});
      points.push_back(text->at + Vec2{text->width, 0.25 * text->size});
    }
  }
  return figures::bounding_rect(points);
}

}  // namespace fw::paper
