#include "paper/font.hpp"

#include <algorithm>

namespace fw::paper {
namespace {

std::uint32_t number_at(std::string_view bytes, std::size_t at, std::size_t size) {
  std::uint32_t number = 0;
  for (std::size_t i = 0; i < size; ++i) {
    number = number << 8U | (at + i < bytes.size() ? static_cast<unsigned char>(bytes[at + i]) : 0U);
  }
  return number;
}
std::uint32_t u16(std::string_view bytes, std::size_t at) { return number_at(bytes, at, 2); }
std::uint32_t u32(std::string_view bytes, std::size_t at) { return number_at(bytes, at, 4); }
int i16(std::string_view bytes, std::size_t at) { return static_cast<std::int16_t>(u16(bytes, at)); }

void put(std::string& out, std::uint32_t number, std::size_t size) {
  for (std::size_t i = size; i > 0; --i) {
    out += static_cast<char>(number >> (8 * (i - 1)) & 0xFFU);
  }
}

std::uint32_t checksum(std::string_view bytes) {
  std::uint32_t sum = 0;
  for (std::size_t at = 0; at < bytes.size(); at += 4) {
    sum += u32(bytes, at);
  }
  return sum;
}

// The tables behind a directory of them, each at a multiple of four bytes.
std::string font_file(const std::map<std::string, std::string>& tables) {
  std::uint32_t power = 0;
  while ((2U << power) <= tables.size()) {
    ++power;
  }
  std::string out("\0\1\0\0", 4);
  put(out, static_cast<std::uint32_t>(tables.size()), 2);
  put(out, 16U << power, 2);
  put(out, power, 2);
  put(out, static_cast<std::uint32_t>(tables.size()) * 16 - (16U << power), 2);
  std::string content;
  for (const auto& [tag, bytes] : tables) {
    out += tag;
    put(out, tag == "head" ? checksum(bytes) - u32(bytes, 8) : checksum(bytes), 4);  // without the sum of the file
    put(out, static_cast<std::uint32_t>(12 + 16 * tables.size() + content.size()), 4);
    put(out, static_cast<std::uint32_t>(bytes.size()), 4);
    content += bytes;
    content.append((4 - content.size() % 4) % 4, '\0');
  }
  return out + content;
}

}  // namespace

Result<Font, words::Message> Font::read(std::string_view bytes) {
  Font font;
  const std::size_t count = u16(bytes, 4);
  for (std::size_t i = 0; i < count && bytes.size() >= 12 + 16 * (i + 1); ++i) {
    const std::size_t row = 12 + 16 * i;
    const std::size_t at = u32(bytes, row + 8);
    const std::size_t size = u32(bytes, row + 12);
    if (at <= bytes.size() && size <= bytes.size() - at) {
      font.tables_.emplace(bytes.substr(row, 4), bytes.substr(at, size));
    }
  }
  if (!font.read_tables() || !font.read_characters()) {
    return failure(words::message("The type for pages is not a TrueType font that Foldwright can read."));
  }
  return font;
}

bool Font::read_tables() {
  for (const char* tag : {"head", "hhea", "maxp", "hmtx", "loca", "glyf", "cmap"}) {
    if (table(tag).empty()) {
      return false;
    }
  }
  const std::string_view head = table("head");
  units_per_em_ = static_cast<int>(u16(head, 18));
  has_long_offsets_ = u16(head, 50) == 1;
  glyph_count_ = u16(table("maxp"), 4);
  advance_count_ = u16(table("hhea"), 34);
  if (units_per_em_ == 0 || advance_count_ == 0) {
    return false;
  }
  for (std::size_t i = 0; i < 4; ++i) {
    box_[i] = i16(head, 36 + 2 * i) * 1000 / units_per_em_;
  }
  ascent_ = i16(table("hhea"), 4) * 1000 / units_per_em_;
  descent_ = i16(table("hhea"), 6) * 1000 / units_per_em_;
  return true;
}

bool Font::read_characters() {
  const std::string_view cmap = table("cmap");
  for (std::size_t i = 0; i < u16(cmap, 2); ++i) {
    const std::size_t at = u32(cmap, 4 + 8 * i + 4);
    if (at >= cmap.size() || u16(cmap, at) != 12) {
      continue;
    }
    for (std::size_t group = 0; group < u32(cmap, at + 12) && at + 16 + 12 * (group + 1) <= cmap.size(); ++group) {
      const std::size_t row = at + 16 + 12 * group;
      ranges_.push_back({u32(cmap, row), u32(cmap, row + 4), u32(cmap, row + 8)});
    }
    return !ranges_.empty();
  }
  return false;
}

std::string_view Font::table(const std::string& tag) const {
  const auto found = tables_.find(tag);
  return found == tables_.end() ? std::string_view() : found->second;
}

std::optional<Glyph> Font::glyph(char32_t character) const {
  const auto after = std::upper_bound(ranges_.begin(), ranges_.end(), static_cast<std::uint32_t>(character),
                                      [](std::uint32_t c, const Range& range) { return c < range.first; });
  if (after == ranges_.begin()) {
    return std::nullopt;
  }
  const Range& range = *std::prev(after);
  const std::uint32_t number = range.glyph + (static_cast<std::uint32_t>(character) - range.first);
  return character > range.last || number == 0 || number >= glyph_count_ ? std::nullopt
                                                                         : std::optional(static_cast<Glyph>(number));
}

double Font::advance(Glyph glyph) const {
  const std::size_t row = std::min<std::size_t>(glyph, advance_count_ - 1);
  return static_cast<double>(u16(table("hmtx"), 4 * row)) / units_per_em_;
}

std::string_view Font::outline(Glyph glyph) const {
  const std::string_view loca = table("loca");
  const auto offset = [&](std::size_t i) { return has_long_offsets_ ? u32(loca, 4 * i) : 2 * u16(loca, 2 * i); };
  const std::uint32_t from = offset(glyph);
  const std::uint32_t to = offset(glyph + std::size_t{1});
  return from < to && to <= table("glyf").size() ? table("glyf").substr(from, to - from) : std::string_view();
}

// A composite glyph is drawn from others, which have to be there too.
void Font::add_parts(Glyph glyph, std::set<Glyph>& used) const {
  const std::string_view bytes = outline(glyph);
  if (bytes.size() < 10 || i16(bytes, 0) >= 0) {
    return;
  }
  constexpr std::uint32_t words = 0x1;
  constexpr std::uint32_t scale = 0x8;
  constexpr std::uint32_t more = 0x20;
  constexpr std::uint32_t two_scales = 0x40;
  constexpr std::uint32_t matrix = 0x80;
  std::uint32_t flags = more;
  for (std::size_t at = 10; (flags & more) != 0 && at + 4 <= bytes.size();) {
    flags = u16(bytes, at);
    const auto part = static_cast<Glyph>(u16(bytes, at + 2));
    at += 4 + ((flags & words) != 0 ? 4U : 2U) +
          ((flags & scale) != 0        ? 2U
           : (flags & two_scales) != 0 ? 4U
           : (flags & matrix) != 0     ? 8U
                                       : 0U);
    if (used.insert(part).second) {
      add_parts(part, used);
    }
  }
}

std::string Font::subset(const std::set<Glyph>& used) const {
  std::set<Glyph> kept = used;
  kept.insert(0);
  const std::vector<Glyph> whole(kept.begin(), kept.end());
  for (const Glyph glyph : whole) {
    add_parts(glyph, kept);
  }
  const std::size_t count = std::size_t{*kept.rbegin()} + 1;
  std::string glyphs;
  std::string offsets;
  std::string advances;
  for (std::size_t i = 0; i < count; ++i) {
    const auto glyph = static_cast<Glyph>(i);
    put(offsets, static_cast<std::uint32_t>(glyphs.size()), 4);
    if (kept.count(glyph) != 0) {
      glyphs += outline(glyph);
      glyphs.append((4 - glyphs.size() % 4) % 4, '\0');
    }
    put(advances, u16(table("hmtx"), 4 * std::min(i, advance_count_ - 1)), 2);
    const bool has_own_row = i < advance_count_;
    put(advances, u16(table("hmtx"), has_own_row ? 4 * i + 2 : 4 * advance_count_ + 2 * (i - advance_count_)), 2);
  }
  put(offsets, static_cast<std::uint32_t>(glyphs.size()), 4);
  std::map<std::string, std::string> tables{{"glyf", glyphs}, {"loca", offsets}, {"hmtx", advances}};
  for (const char* tag : {"head", "hhea", "maxp", "cvt ", "fpgm", "prep"}) {
    if (!table(tag).empty()) {
      tables[tag] = std::string(table(tag));
    }
  }
  const auto set_short = [](std::string& bytes, std::size_t at, std::size_t number) {
    bytes[at] = static_cast<char>(number >> 8U & 0xFFU);
    bytes[at + 1] = static_cast<char>(number & 0xFFU);
  };
  set_short(tables["maxp"], 4, count);
  set_short(tables["hhea"], 34, count);
  std::string& head = tables["head"];
  set_short(head, 50, 1);
  std::fill(head.begin() + 8, head.begin() + 12, '\0');
  std::string adjustment;
  put(adjustment, 0xB1B0AFBAU - checksum(font_file(tables)), 4);
  std::copy(adjustment.begin(), adjustment.end(), head.begin() + 8);
  return font_file(tables);
}

std::u32string characters(std::string_view utf8) {
  constexpr char32_t unreadable = 0xFFFD;
  std::u32string text;
  for (std::size_t i = 0; i < utf8.size();) {
    const auto lead = static_cast<unsigned char>(utf8[i]);
    const std::size_t size = lead < 0x80U          ? 1U
                             : lead >> 5U == 0x6U  ? 2U
                             : lead >> 4U == 0xEU  ? 3U
                             : lead >> 3U == 0x1EU ? 4U
                                                   : 0U;
    char32_t character = size == 1 ? lead : lead & (0xFFU >> (size + 1));
    bool is_whole = size > 0 && i + size <= utf8.size();
    for (std::size_t k = 1; is_whole && k < size; ++k) {
      const auto next = static_cast<unsigned char>(utf8[i + k]);
      is_whole = next >> 6U == 0x2U;
      character = character << 6U | (next & 0x3FU);
    }
    text += is_whole ? character : unreadable;
    i += is_whole ? size : 1;
  }
  return text;
}

std::string utf8(char32_t character) {
  const auto c = static_cast<std::uint32_t>(character);
  const auto tail = [c](unsigned shift) { return static_cast<char>(0x80U | (c >> shift & 0x3FU)); };
  if (c < 0x80U) {
    return {static_cast<char>(c)};
  }
  if (c < 0x800U) {
    return {static_cast<char>(0xC0U | c >> 6U), tail(0)};
  }
  if (c < 0x10000U) {
    return {static_cast<char>(0xE0U | c >> 12U), tail(6), tail(0)};
  }
  return {static_cast<char>(0xF0U | c >> 18U), tail(12), tail(6), tail(0)};
}

}  // namespace fw::paper
