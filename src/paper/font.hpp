#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.hpp"
#include "words/message.hpp"

namespace fw::paper {

using Glyph = std::uint16_t;

/// A TrueType font, as far as a page needs it: which glyph stands for a character, how wide it is, and the font cut
/// down to the glyphs that a file uses. Each character is one glyph, in the order of the text, without kerning.
/// Source: the OpenType specification, tables cmap (format 12), head, hhea, hmtx, loca, glyf.
class Font {
 public:
  /// Errors: a sentence, for bytes that are no such font. `bytes` must outlive the font.
  [[nodiscard]] static Result<Font, words::Message> read(std::string_view bytes);

  /// Nothing for a character that the font does not have. Glyph 0 is the box for such characters.
  [[nodiscard]] std::optional<Glyph> glyph(char32_t character) const;
  /// Of the glyph, in ems.
  [[nodiscard]] double advance(Glyph glyph) const;
  /// The corners of the box round all glyphs, in thousandths of an em: left, bottom, right, top.
  [[nodiscard]] std::array<int, 4> box() const { return box_; }
  [[nodiscard]] int ascent() const { return ascent_; }    ///< in thousandths of an em
  [[nodiscard]] int descent() const { return descent_; }  ///< the same, below zero

  /// A font file in which only these glyphs have an outline; each keeps its number.
  [[nodiscard]] std::string subset(const std::set<Glyph>& used) const;

 private:
  struct Range {
    std::uint32_t first = 0, last = 0, glyph = 0;
  };
  [[nodiscard]] bool read_tables();
  [[nodiscard]] bool read_characters();
  [[nodiscard]] std::string_view table(const std::string& tag) const;
  [[nodiscard]] std::string_view outline(Glyph glyph) const;
  void add_parts(Glyph glyph, std::set<Glyph>& used) const;

  std::map<std::string, std::string_view> tables_;
  std::vector<Range> ranges_;  // by character
  std::size_t glyph_count_ = 0, advance_count_ = 0;
  int units_per_em_ = 0, ascent_ = 0, descent_ = 0;
  bool has_long_offsets_ = false;
  std::array<int, 4> box_{};
};

/// The two weights that pages are set in.
struct Fonts {
  Font regular, bold;
};

/// The characters of a text in UTF-8; what is no UTF-8 gives U+FFFD.
[[nodiscard]] std::u32string characters(std::string_view utf8);
/// One character in UTF-8.
[[nodiscard]] std::string utf8(char32_t character);

}  // namespace fw::paper
