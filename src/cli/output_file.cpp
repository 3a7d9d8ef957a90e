#include "cli/output_file.hpp"

#include <CLI/CLI.hpp>
#include <iostream>

#include "cli/arguments.hpp"
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

bool begins_as_pdf(std::string_view bytes) { return bytes.substr(0, 5) == "%PDF-"; }
bool looks_like_svg(std::string_view text) { return text.substr(0, 400).find("<svg") != std::string_view::npos; }
bool begins_as_page(std::string_view text) { return text.substr(0, 15) == "<!doctype html>"; }

/// The ending by which a desktop knows a lesson; it stays whole.
const std::string named_lesson = ".foldwright.json";

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

const OutputKind& pdf_document() {
  static const OutputKind kind{"a PDF document", ".pdf", begins_as_pdf};
  return kind;
}
const OutputKind& svg_drawing() {
  static const OutputKind kind{"an SVG drawing", ".svg", looks_like_svg};
  return kind;
}

std::string numbered_path(const std::string& path, std::size_t index, std::size_t count) {
  if (count == 1) {
    return path;
  }
  const std::size_t slash = path.find_last_of('/');
  const std::size_t dot = path.find_last_of('.');
  const bool is_ended = dot != std::string::npos && (slash == std::string::npos || dot > slash + 1) && dot > 0;
  const bool opens_by_name = has_ending(path, named_lesson);
  const std::size_t at = opens_by_name ? path.size() - named_lesson.size() : is_ended ? dot : path.size();
  const std::string number = std::to_string(index + 1);
  const std::string zeros(std::to_string(count).size() - number.size(), '0');  // so that names sort as they count
  return path.substr(0, at) + "-" + zeros + number + path.substr(at);
}

bool has_ending(const std::string& path, const std::string& ending) {
  return path.size() > ending.size() && path.compare(path.size() - ending.size(), ending.size(), ending) == 0;
}

const OutputKind& page_file() {
  static const OutputKind kind{"a page", ".html", begins_as_page};
  return kind;
}

void add_output_options(CLI::App& verb, OutputOptions& options, const OutputKind& kind) {
  verb.add_option("-o,--output", options.path,
                  std::string("Where to write; the name ends in ") + kind.ending + ", and - is standard output")
      ->type_name(file_type)
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
  if (!has_ending(path, kind.ending)) {
    const std::size_t dot = path.find('.', path.rfind('/') == std::string::npos ? 0 : path.rfind('/'));
    return "This verb writes " + std::string(kind.name) + ", so the name has to end in " + kind.ending + ": " +
           path.substr(0, dot) + kind.ending + ", for example.";
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

bool is_told(const std::optional<std::string>& fault) {
  if (fault) {
    std::cerr << "foldwright: " << *fault << '\n';
  }
  return fault.has_value();
}

}  // namespace fw::cli
