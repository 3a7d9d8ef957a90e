#include "state/sharing.hpp"

#include "lessons/lesson_page.hpp"
#include "lessons/write_lesson.hpp"
#include "platform/paths.hpp"

namespace fw::state {
namespace {

using platform::PathKind;
using words::message;

/// Why the page can't go there; nothing when it can.
std::optional<std::string> refusal(const platform::Files& files, const std::string& path) {
  const PathKind there = files.kind(path);
  const bool is_ours = there == PathKind::File && [&] {
    const auto text = files.read(path, page_byte_limit);
    return text && lessons::page_with(text.value(), "").has_value();
  }();
  if (there == PathKind::Nothing || is_ours) {
    return std::nullopt;
  }
  return said(message("\"{path}\" already exists, and it isn't a page with a lesson. Move it, or save somewhere else.",
                      {{"path", path}}));
}

}  // namespace

TakeSaved saved_as_page(platform::Files& files, const Model& model, const std::string& page_file) {
  const PrintPage& page = model.view.print;
  const lessons::Lesson& lesson = *model.state.lesson;
  const auto empty = files.read(page_file, page_byte_limit);
  if (!empty) {
    return {empty.error().message, true, page.folder};
  }
  const auto whole = lessons::page_with(empty.value(), lessons::write_lesson(lesson));
  if (!whole) {
    return {said(message("\"{path}\" isn't Foldwright's page: it has no place for a lesson.", {{"path", page_file}})),
            true, page.folder};
  }
  const std::string path = page_path(page, lesson);
  if (auto reason = refusal(files, path)) {
    return {std::move(*reason), true, page.folder};
  }
  if (auto error = files.write_atomically(path, *whole)) {
    return {std::move(error->message), true, page.folder};
  }
  const std::string folder = platform::folder_of(path);
  return {said(message("Saved {name} in {folder}. Students open it with a double-click, in any browser.",
                       {{"name", path.substr(path.rfind('/') + 1)}, {"folder", folder}})),
          false, folder};
}

}  // namespace fw::state
