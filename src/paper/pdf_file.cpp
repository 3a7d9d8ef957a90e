#include "paper/pdf_file.hpp"

#include <map>
#include <set>

#include "base/overload.hpp"
#include "paper/decimal.hpp"

namespace fw::paper {
namespace {

constexpr double points_per_mm = 72 / 25.4;
constexpr char hex_digits[] = "0123456789ABCDEF";

std::string hex(std::uint32_t number, int digits) {
  std::string text;
  for (int i = digits - 1; i >= 0; --i) {
    text += hex_digits[number >> (4 * static_cast<unsigned>(i)) & 0xFU];
  }
  return text;
}

// UTF-16, as the specification wants texts that are no part of a page.
std::string utf16_hex(std::u32string_view text) {
  std::string out;
  for (const char32_t c : text) {
    const auto number = static_cast<std::uint32_t>(c);
    if (number < 0x10000U) {
      out += hex(number, 4);
    } else {
      out += hex(0xD800U + ((number - 0x10000U) >> 10U), 4) + hex(0xDC00U + ((number - 0x10000U) & 0x3FFU), 4);
    }
  }
  return out;
}
std::string text_string(std::string_view text) { return "<FEFF" + utf16_hex(characters(text)) + ">"; }

std::string point(Vec2 p) { return decimal(p.x) + " " + decimal(p.y); }

// One weight of the type as the file uses it.
struct UsedFont {
  const Font* font = nullptr;
  std::map<Glyph, char32_t> glyphs;  // with the character that each stands for

  std::string shown(const std::string& text) {
    std::string codes;
    for (const char32_t character : characters(text)) {
      const Glyph glyph = font->glyph(character).value_or(0);
      glyphs.emplace(glyph, glyph == 0 ? U'\uFFFD' : character);
      codes += hex(glyph, 4);
    }
    return "<" + codes + ">";
  }
};

// The numbered objects of a file.
class Objects {
 public:
  /// Returns its number.
  std::size_t reserve() {
    bodies_.emplace_back();
    return bodies_.size();
  }
  std::size_t add(std::string body) {
    bodies_.push_back(std::move(body));
    return bodies_.size();
  }
  std::size_t add_stream(const std::string& bytes, const std::string& more = "") {
    return add("<< /Length " + std::to_string(bytes.size()) + more + " >>\nstream\n" + bytes + "\nendstream");
  }
  void set(std::size_t number, std::string body) { bodies_[number - 1] = std::move(body); }

  [[nodiscard]] std::string file(std::size_t root, std::size_t info) const {
    std::string out = "%PDF-1.7\n%\xE2\xE3\xCF\xD3\n";
    std::string table = "xref\n0 " + std::to_string(bodies_.size() + 1) + "\n0000000000 65535 f \n";
    for (std::size_t i = 0; i < bodies_.size(); ++i) {
      const std::string offset = std::to_string(out.size());
      table += std::string(10 - offset.size(), '0') + offset + " 00000 n \n";
      out += std::to_string(i + 1) + " 0 obj\n" + bodies_[i] + "\nendobj\n";
    }
    const std::string place = std::to_string(out.size());
    return out + table + "trailer\n<< /Size " + std::to_string(bodies_.size() + 1) + " /Root " + std::to_string(root) +
           " 0 R /Info " + std::to_string(info) + " 0 R >>\nstartxref\n" + place + "\n%%EOF\n";
  }

 private:
  std::vector<std::string> bodies_;
};
std::string reference(std::size_t number) { return std::to_string(number) + " 0 R"; }

// What is drawn on a page, in its own millimeters.
class Content {
 public:
  Content(UsedFont& regular, UsedFont& bold) : regular_(regular), bold_(bold) {}

  void add(const Item& item) {
    std::visit(
        Overload{[&](const PathItem& path) { add_path(path); }, [&](const CircleItem& circle) { add_circle(circle); },
                 [&](const TextItem& text) { add_text(text); }, [&](const PartItem&) { out_ += "q\n"; },
                 [&](const ClipItem& clip) {
                   out_ += "q " + point({clip.rect.x, clip.rect.y}) + " " + decimal(clip.rect.w) + " " +
                           decimal(clip.rect.h) + " re W n\n";
                 },
                 [&](const EndItem&) { out_ += "Q\n"; }},
        item);
  }
  [[nodiscard]] std::string take() && { return std::move(out_); }

 private:
  void set_fill(const Color& color) {
    const bool is_gray = color.r == color.g && color.g == color.b;
    out_ += is_gray ? decimal(color.r) + " g "
                    : decimal(color.r) + " " + decimal(color.g) + " " + decimal(color.b) + " rg ";
  }
  void set_pen(const Pen& pen) {
    out_ += decimal(pen.width) + " w [";
    for (const double length : pen.pattern) {
      out_ += decimal(length) + " ";
    }
    out_ += "] 0 d ";
  }
  void paint(const std::optional<Color>& fill, const std::optional<Pen>& pen) {
    out_ += fill && pen ? "B\n" : fill ? "f\n" : pen ? "S\n" : "n\n";
  }
  void add_path(const PathItem& path) {
    if (path.points.empty()) {
      return;
    }
    if (path.fill) {
      set_fill(*path.fill);
    }
    if (path.pen) {
      set_pen(*path.pen);
    }
    for (std::size_t i = 0; i < path.points.size(); ++i) {
      out_ += point(path.points[i]) + (i == 0 ? " m " : " l ");
    }
    out_ += path.closed ? "h " : "";
    paint(path.fill, path.pen);
  }
  void add_circle(const CircleItem& circle) {
    if (circle.fill) {
      set_fill(*circle.fill);
    }
    if (circle.pen) {
      set_pen(*circle.pen);
    }
    constexpr double handle = 0.5522847498;  // of a quarter of a circle by a cubic curve
    const double r = circle.radius;
    const double k = handle * r;
    const Vec2 c = circle.center;
    out_ += point({c.x + r, c.y}) + " m ";
    const Vec2 quarters[4][3] = {{{r, k}, {k, r}, {0, r}},
                                 {{-k, r}, {-r, k}, {-r, 0}},
                                 {{-r, -k}, {-k, -r}, {0, -r}},
                                 {{k, -r}, {r, -k}, {r, 0}}};
    for (const auto& bend : quarters) {
      out_ += point(c + bend[0]) + " " + point(c + bend[1]) + " " + point(c + bend[2]) + " c ";
    }
    out_ += "h ";
    paint(circle.fill, circle.pen);
  }
  void add_text(const TextItem& text) {
    out_ += std::string("BT 0 g /") + (text.bold ? "B " : "R ") + decimal(text.size) + " Tf 1 0 0 -1 " +
            point(text.at) + " Tm " + (text.bold ? bold_ : regular_).shown(text.text) + " Tj ET\n";
  }

  UsedFont& regular_;
  UsedFont& bold_;
  std::string out_;
};

// Which character each glyph stands for, so that texts can be copied out of the file.
std::string character_map(const UsedFont& used) {
  std::string map =
      "/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n/CIDSystemInfo << /Registry (Adobe) "
      "/Ordering (UCS) /Supplement 0 >> def\n/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n"
      "1 begincodespacerange\n<0000> <FFFF>\nendcodespacerange\n";
  constexpr std::size_t most_rows = 100;  // in one block, by the specification
  std::size_t row = 0;
  for (const auto& [glyph, character] : used.glyphs) {
    if (row % most_rows == 0) {
      map += std::to_string(std::min(most_rows, used.glyphs.size() - row)) + " beginbfchar\n";
    }
    map += "<" + hex(glyph, 4) + "> <" + utf16_hex(std::u32string(1, character)) + ">\n";
    ++row;
    if (row % most_rows == 0 || row == used.glyphs.size()) {
      map += "endbfchar\n";
    }
  }
  return map + "endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend";
}

std::size_t add_font(Objects& objects, const UsedFont& used, const std::string& name) {
  std::set<Glyph> glyphs;
  std::string widths;
  for (const auto& [glyph, character] : used.glyphs) {
    glyphs.insert(glyph);
    widths += std::to_string(glyph) + " [" + decimal(used.font->advance(glyph) * 1000, 2) + "] ";
  }
  const std::string bytes = used.font->subset(glyphs);
  const std::size_t file = objects.add_stream(bytes, " /Length1 " + std::to_string(bytes.size()));
  std::string box;
  for (const int side : used.font->box()) {
    box += std::to_string(side) + " ";
  }
  constexpr const char* cap_height = "700";
  const std::size_t descriptor = objects.add("<< /Type /FontDescriptor /FontName /" + name + " /Flags 4 /FontBBox [" +
                                             box + "] /ItalicAngle 0 /Ascent " + std::to_string(used.font->ascent()) +
                                             " /Descent " + std::to_string(used.font->descent()) + " /CapHeight " +
                                             cap_height + " /StemV 80 /FontFile2 " + reference(file) + " >>");
  const std::size_t glyph_font = objects.add("<< /Type /Font /Subtype /CIDFontType2 /BaseFont /" + name +
                                             " /CIDSystemInfo << /Registry (Adobe) /Ordering (Identity) /Supplement 0 "
                                             ">> /CIDToGIDMap /Identity /DW 1000 /W [" +
                                             widths + "] /FontDescriptor " + reference(descriptor) + " >>");
  const std::size_t map = objects.add_stream(character_map(used));
  return objects.add("<< /Type /Font /Subtype /Type0 /BaseFont /" + name + " /Encoding /Identity-H /DescendantFonts [" +
                     reference(glyph_font) + "] /ToUnicode " + reference(map) + " >>");
}

}  // namespace

std::string pdf_file(const std::vector<Page>& pages, const Fonts& fonts, const std::string& title) {
  UsedFont regular{&fonts.regular, {}};
  UsedFont bold{&fonts.bold, {}};
  regular.glyphs.emplace(Glyph{0}, U'\uFFFD');
  bold.glyphs.emplace(Glyph{0}, U'\uFFFD');
  Objects objects;
  const std::size_t catalog = objects.reserve();
  const std::size_t tree = objects.reserve();
  const std::size_t resources = objects.reserve();
  std::string kids;
  for (const Page& page : pages) {
    Content content(regular, bold);
    for (const Item& item : page.items) {
      content.add(item);
    }
    const std::string scale = decimal(points_per_mm, 9);
    const std::size_t stream =
        objects.add_stream(scale + " 0 0 -" + scale + " 0 " + decimal(page.height * points_per_mm, 6) +
                           " cm 0 G 0 g 0 J 1 j\n" + std::move(content).take());
    const std::size_t number =
        objects.add("<< /Type /Page /Parent " + reference(tree) + " /MediaBox [0 0 " +
                    decimal(page.width * points_per_mm, 3) + " " + decimal(page.height * points_per_mm, 3) +
                    "] /Resources " + reference(resources) + " /Contents " + reference(stream) + " >>");
    kids += reference(number) + " ";
  }
  const std::size_t regular_font = add_font(objects, regular, "FWAAAA+Andika");
  const std::size_t bold_font = add_font(objects, bold, "FWAAAA+Andika-Bold");
  objects.set(resources, "<< /Font << /R " + reference(regular_font) + " /B " + reference(bold_font) + " >> >>");
  objects.set(tree, "<< /Type /Pages /Kids [" + kids + "] /Count " + std::to_string(pages.size()) + " >>");
  objects.set(catalog, "<< /Type /Catalog /Pages " + reference(tree) +
                           " /Lang (en-US) /ViewerPreferences << /PrintScaling /None /DisplayDocTitle true >> >>");
  const std::size_t info =
      objects.add("<< /Title " + text_string(printable_text(title)) + " /Producer (Foldwright) >>");
  return objects.file(catalog, info);
}

}  // namespace fw::paper
