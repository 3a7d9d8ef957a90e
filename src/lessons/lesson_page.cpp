#include "lessons/lesson_page.hpp"

#include <string_view>

namespace fw::lessons {
namespace {

constexpr std::string_view lesson_begins = "<script id=\"lesson\" type=\"application/json\">";
constexpr std::string_view lesson_ends = "</script>";

/// A lesson's text as it may stand in a page: nothing in it ends the block that it stands in. The JSON is the same.
std::string text_in_page(const std::string& lesson) {
  std::string text;
  for (std::size_t i = 0; i < lesson.size(); ++i) {
    const std::string_view rest = std::string_view(lesson).substr(i);
    if (rest.substr(0, 2) == "</") {
      text += "<\\/";
      ++i;
    } else if (rest.substr(0, 2) == "<!") {
      text += "\\u003c";
    } else {
      text += lesson[i];
    }
  }
  return text;
}

}  // namespace

std::optional<std::string> page_with(const std::string& page, const std::string& lesson) {
  const std::size_t begin = page.find(lesson_begins);
  const std::size_t end = begin == std::string::npos ? begin : page.find(lesson_ends, begin);
  if (end == std::string::npos) {
    return std::nullopt;
  }
  return page.substr(0, begin + lesson_begins.size()) + text_in_page(lesson) + page.substr(end);
}

}  // namespace fw::lessons
