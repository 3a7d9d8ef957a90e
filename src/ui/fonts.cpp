#include "ui/fonts.hpp"

#include <imgui.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

#include "base/ensure.hpp"
#include "platform/assets.hpp"

namespace fw::ui {
namespace {

unsigned byte_at(std::string_view bytes, std::size_t offset) {
  ensure(offset < bytes.size(), "the embedded type ends too early");
  return static_cast<unsigned char>(bytes[offset]);
}
unsigned word_at(std::string_view bytes, std::size_t offset) {
  return (byte_at(bytes, offset) << 8U) | byte_at(bytes, offset + 1);
}
int signed_word_at(std::string_view bytes, std::size_t offset) {
  const int value = static_cast<int>(word_at(bytes, offset));
  return value < 0x8000 ? value : value - 0x10000;
}

std::size_t table_offset(std::string_view type, std::string_view tag) {
  const unsigned tables = word_at(type, 4);
  for (std::size_t i = 0; i < tables; ++i) {
    const std::size_t entry = 12 + 16 * i;
    if (type.substr(entry, 4) == tag) return (std::size_t{word_at(type, entry + 8)} << 16U) | word_at(type, entry + 10);
  }
  broken_invariant("the embedded type has no such table", __FILE__, __LINE__);
}

/// The toolkit measures type by ascent less descent, we by the em.
/// Source: the tables hhea and head of the OpenType specification.
double height_per_em(std::string_view type) {
  const std::size_t hhea = table_offset(type, "hhea");
  const std::size_t head = table_offset(type, "head");
  const double height = signed_word_at(type, hhea + 4) - signed_word_at(type, hhea + 6);
  return height / word_at(type, head + 18);
}

const ImWchar* glyph_ranges() {
  static const std::vector<ImWchar> ranges = [] {
    std::vector<ImWchar> all;
    for (const auto& [first, last] : shown_characters()) {
      all.push_back(static_cast<ImWchar>(first));
      all.push_back(static_cast<ImWchar>(last));
    }
    all.push_back(0);
    return all;
  }();
  return ranges.data();
}

ImFont* add_font(ImFontAtlas& atlas, std::string_view type, double size) {
  ImFontConfig config;
  config.FontDataOwnedByAtlas = false;
  config.OversampleH = size < 60 ? 2 : 1;
  config.EllipsisChar = 0x2026;
  // The atlas reads the embedded type and never writes or frees it.
  void* data = const_cast<char*>(type.data());
  return atlas.AddFontFromMemoryTTF(data, static_cast<int>(type.size()), static_cast<float>(size), &config,
                                    glyph_ranges());
}

}  // namespace

const std::vector<std::pair<std::uint32_t, std::uint32_t>>& shown_characters() {
  static const std::vector<std::pair<std::uint32_t, std::uint32_t>> ranges{
      {0x20, 0x7E},                                          // ASCII
      {0xA0, 0xFF},                                          // Latin-1: × ÷ ² ³ ½ ¼ ¾ ° ·
      {0x3C0, 0x3C0},                                        // π
      {0x2002, 0x200A},                                      // spaces, the figure space among them
      {0x2010, 0x2015},                                      // hyphens and dashes
      {0x2018, 0x201D},                                      // quotation marks
      {0x2022, 0x2022},                                      // •
      {0x2026, 0x2026},                                      // …
      {0x2032, 0x2033},                                      // feet and inches
      {0x2039, 0x203A},                                      // ‹ ›
      {0x2070, 0x2071}, {0x2074, 0x207F}, {0x2080, 0x208E},  // powers and indices
      {0x2113, 0x2113},                                      // ℓ
      {0x2150, 0x215E},                                      // fractions
      {0x2190, 0x2193},                                      // arrows
      {0x2212, 0x2212},                                      // −
      {0x221A, 0x221A}, {0x2248, 0x2248}, {0x2260, 0x2260}, {0x2264, 0x2265}};
  return ranges;
}

bool can_show(std::string_view text) {
  const auto is_shown = [](std::uint32_t character) {
    return std::any_of(shown_characters().begin(), shown_characters().end(), [character](const auto& range) {
      return character >= range.first && character <= range.second;
    });
  };
  for (std::size_t i = 0; i < text.size();) {
    const auto lead = static_cast<unsigned char>(text[i]);
    const std::size_t length = lead < 0x80 ? 1 : lead < 0xE0 ? 2 : lead < 0xF0 ? 3 : 4;
    if (i + length > text.size()) return false;
    std::uint32_t character = length == 1 ? lead : lead & (0xFFU >> (length + 1));
    for (std::size_t k = 1; k < length; ++k)
      character = (character << 6U) | (static_cast<unsigned char>(text[i + k]) & 0x3FU);
    if (!is_shown(character)) return false;
    i += length;
  }
  return true;
}

bool Fonts::prepare(ImFontAtlas& atlas, double window_height, double pixel_ratio) {
  constexpr double tolerated_change = 0.02;
  const bool has_height = std::abs(window_height - height_) <= tolerated_change * height_;
  if (is_ready() && has_height && std::abs(pixel_ratio - pixel_ratio_) <= tolerated_change) return false;
  height_ = window_height;
  pixel_ratio_ = pixel_ratio;
  const std::string_view regular = platform::asset("Andika-Regular.ttf");
  const std::string_view bold = platform::asset("Andika-Bold.ttf");
  struct Wanted {
    double share;
    bool bold;
  };
  constexpr std::array<Wanted, 4> wanted{{{0.045, false}, {0.035, false}, {0.045, true}, {0.06, true}}};
  atlas.Clear();
  atlas.Flags |= ImFontAtlasFlags_NoMouseCursors;
  built_.clear();
  for (const Wanted& w : wanted) {
    const std::string_view type = w.bold ? bold : regular;
    const double per_em = height_per_em(type);
    const double em = std::round(w.share * window_height);
    built_.push_back({add_font(atlas, type, em * per_em * pixel_ratio), em, per_em, w.bold});
  }
  ensure(atlas.Build(), "the type could not be drawn");
  return true;
}

const Fonts::Built& Fonts::nearest(double em, bool bold) const {
  ensure(is_ready(), "the type is used before it is prepared");
  const Built* best = nullptr;
  for (const Built& built : built_) {
    if (built.bold != bold) continue;
    if (best == nullptr || std::abs(built.em - em) < std::abs(best->em - em)) best = &built;
  }
  ensure(best != nullptr, "the type was built without this weight");
  return *best;
}

}  // namespace fw::ui
