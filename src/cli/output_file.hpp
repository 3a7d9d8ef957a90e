#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace CLI {  // NOLINT(readability-identifier-naming): the library's own
class App;
}

namespace fw::cli {

/// What a verb makes: how its files end and begin, so that nothing else is replaced by mistake.
struct OutputKind {
  const char* name;              ///< "a PNG picture"
  const char* ending;            ///< ".png"
  bool (*is)(std::string_view);  ///< whether a text is one
};
[[nodiscard]] const OutputKind& png_picture();
[[nodiscard]] const OutputKind& lesson_file();
[[nodiscard]] const OutputKind& pdf_document();
[[nodiscard]] const OutputKind& svg_drawing();
[[nodiscard]] const OutputKind& page_file();

/// Where a verb writes to, as its options say.
struct OutputOptions {
  std::string path;
  bool force = false;
};
/// Adds -o and --force, with the rule below in their help.
void add_output_options(CLI::App& verb, OutputOptions& options, const OutputKind& kind);

/// "set.json" for one file; "set-1.json", "set-2.json" for several, "set-01.json" from ten on,
/// "set-1.foldwright.json". `index` counts from 0.
[[nodiscard]] std::string numbered_path(const std::string& path, std::size_t index, std::size_t count);
/// Whether a path has an ending, such as ".svg".
[[nodiscard]] bool has_ending(const std::string& path, const std::string& ending);

/// Why nothing may be written there; nothing where it may. `input`: the lesson that is read, or empty.
///   a name with another ending, a missing folder, and the input itself are refused
///   a file that is there is replaced only if it is of the same kind or empty, or with --force
///   "-" is standard output; devices and pipes are written into
[[nodiscard]] std::optional<std::string> output_refusal(const OutputOptions& options, const OutputKind& kind,
                                                        const std::string& input = "");
/// Writes it whole or not at all. Returns what went wrong.
[[nodiscard]] std::optional<std::string> write_output(const OutputOptions& options, const std::string& bytes);

/// Tells what went wrong on standard error. Returns whether something did.
bool is_told(const std::optional<std::string>& fault);

}  // namespace fw::cli
