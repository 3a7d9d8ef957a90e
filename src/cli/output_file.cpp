#include "cli/output_file.hpp"

#include <CLI/CLI.hpp>

#include "platform/files.hpp"
#include "platform/paths.hpp"

namespace fw::cli {
namespace {

using platform::PathKind;

bool begins_as_png(std::string_view bytes) { return bytes.substr(0, 8) == "\x89PNG\r\n\x1a\n"; }
bool looks_like_a_lesson(std::string_view text) {
  const std::size_t first = text.find_first_not_of(" \t\r\n");
  return first != std::string_view::npos && text[first] == '{' && text.find("\"lesson\"") != std::string_view::npos;
}

bool ends_with(const std::string& text, const std::string& ending) {
  return text.size() > ending.size() && text.compare(text.size() - ending.size(), ending.size(), ending) == 0;
}

// Whether the file that is there may go: it is empty or of the same kind.
bool is_replaceable(const std::string& path, const OutputKind& kind) {
  const auto text = platform::desktop_files()->read(path);
  return text && (text->empty() || kind.is(*text));
}

}  // namespace

const OutputKind& png_picture() {
  static const OutputKind kind{"a PNG picture", ".png", begins_as_png};
  return kind;
}
const OutputKind& lesson_file() {
  static const OutputKind kind{"a lesson", ".json", looks_like_a_lesson};
  return kind;
}

void add_output_options(CLI::App& verb, OutputOptions& options, const OutputKind& kind) {
  verb.add_option("-o,--output", options.path,
                  std::string("Where to write; the name ends in ") + kind.ending + ", and - is standard output")
      ->required();
  verb.add_flag("--force", options.force,
                std::string("Replace a file that is not ") + kind.name + "; the lesson that is read is never replaced");
}

std::optional<std::string> output_refusal(const OutputOptions& options, const OutputKind& kind,
                                          const std::string& input) {
  const std::string& path = options.path;
  if (path == "-" || platform::path_kind(path) == PathKind::Stream) {
    return std::nullopt;
  }
  if (!ends_with(path, kind.ending)) {
    return "This verb writes " + std::string(kind.name) + ", so the name has to end in " + kind.ending + ": " + path +
           kind.ending + ", for example.";
  }
  if (!input.empty() && platform::same_file(path, input)) {
    return "\"" + path + "\" is the lesson that is being read. Pick another name to write to.";
  }
  const std::string folder = platform::folder_of(path);
  if (platform::path_kind(folder) != PathKind::Folder) {
    return "There is no folder \"" + folder + "\" to write " + path +
           " in. Make the folder first, or pick another one.";
  }
  if (platform::path_kind(path) == PathKind::Folder) {
    return "\"" + path + "\" is a folder. Pick another name to write to.";
  }
  if (platform::path_kind(path) == PathKind::File && !options.force && !is_replaceable(path, kind)) {
    return "\"" + path + "\" already exists and is not " + kind.name +
           ". Pick another name, or add --force to replace it.";
  }
  return std::nullopt;
}

std::optional<std::string> write_output(const OutputOptions& options, const std::string& bytes) {
  const auto error = options.path == "-" ? platform::write_standard_output(bytes)
                                         : platform::desktop_files()->write_atomically(options.path, bytes);
  return error ? std::optional<std::string>(error->message) : std::nullopt;
}

}  // namespace fw::cli
