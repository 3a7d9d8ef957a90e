#include "paper/svg_file.hpp"

#include <map>

#include "base/overload.hpp"
#include "paper/decimal.hpp"

namespace fw::paper {
namespace {

constexpr int places = 3;
std::string number(double value) { return decimal(value, places); }

std::string escaped(const std::string& text) {
  std::string out;
  for (const char c : text) {
    out += c == '&' ? "&amp;" : c == '<' ? "&lt;" : c == '>' ? "&gt;" : c == '"' ? "&quot;" : std::string(1, c);
  }
  return out;
}

std::string color_text(const Color& color) {
  const auto part = [](float share) { return std::to_string(std::lround(share * 255)); };
  return "rgb(" + part(color.r) + "," + part(color.g) + "," + part(color.b) + ")";
}

std::string look_of(const std::optional<Color>& fill, const std::optional<Pen>& pen) {
  std::string look = " fill=\"" + (fill ? color_text(*fill) : "none") + "\"";
  if (!pen) {
    return look;
  }
  look += " stroke=\"black\" stroke-width=\"" + number(pen->width) + "\"";
  if (!pen->pattern.empty()) {
    std::string lengths;
    for (const double length : pen->pattern) {
      lengths += (lengths.empty() ? "" : " ") + number(length);
    }
    look += " stroke-dasharray=\"" + lengths + "\"";
  }
  return look;
}

class Writer {
 public:
  void add(const Item& item) {
    std::visit(Overload{[&](const PathItem& path) { add_path(path); },
                        [&](const CircleItem& circle) {
                          out_ += "<circle cx=\"" + number(circle.center.x) + "\" cy=\"" + number(circle.center.y) +
                                  "\" r=\"" + number(circle.radius) + "\"" + look_of(circle.fill, circle.pen) + "/>\n";
                        },
                        [&](const TextItem& text) { add_text(text); },
                        [&](const PartItem& part) { out_ += "<g id=\"" + own_id(part.name) + "\">\n"; },
                        [&](const ClipItem& clip) { add_clip(clip); }, [&](const EndItem&) { out_ += "</g>\n"; }},
               item);
  }
  [[nodiscard]] std::string take() && { return std::move(out_); }

 private:
  void add_path(const PathItem& path) {
    out_ += "<path d=\"";
    for (std::size_t i = 0; i < path.points.size(); ++i) {
      out_ += (i == 0 ? "M" : " L") + number(path.points[i].x) + " " + number(path.points[i].y);
    }
    out_ += std::string(path.closed ? " Z" : "") + "\"" + look_of(path.fill, path.pen) + "/>\n";
  }
  void add_text(const TextItem& text) {
    out_ += "<text x=\"" + number(text.at.x) + "\" y=\"" + number(text.at.y) + "\" font-size=\"" + number(text.size) +
            "\"" + (text.bold ? " font-weight=\"bold\"" : "") + " textLength=\"" + number(text.width) +
            "\" lengthAdjust=\"spacingAndGlyphs\" xml:space=\"preserve\">" + escaped(text.text) + "</text>\n";
  }
  void add_clip(const ClipItem& clip) {
    const std::string id = own_id("window");
    out_ += "<clipPath id=\"" + id + "\"><rect x=\"" + number(clip.rect.x) + "\" y=\"" + number(clip.rect.y) +
            "\" width=\"" + number(clip.rect.w) + "\" height=\"" + number(clip.rect.h) +
            "\"/></clipPath>\n<g clip-path=\"url(#" + id + ")\">\n";
  }
  // "cut", then "cut-2": an id stands once in a file.
  std::string own_id(const std::string& name) {
    const std::size_t count = ++ids_[name];
    return count == 1 ? name : name + "-" + std::to_string(count);
  }

  std::string out_;
  std::map<std::string, std::size_t> ids_;
};

}  // namespace

std::string svg_file(const Page& page, const std::string& title) {
  Writer writer;
  for (const Item& item : page.items) {
    writer.add(item);
  }
  const std::string width = number(page.width);
  const std::string height = number(page.height);
  return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" "
         "width=\"" +
         width + "mm\" height=\"" + height + "mm\" viewBox=\"0 0 " + width + " " + height +
         "\" font-family=\"Andika, sans-serif\" stroke-linejoin=\"round\">\n<title>" + escaped(printable_text(title)) +
         "</title>\n" + (page.summary.empty() ? "" : "<desc>" + escaped(page.summary) + "</desc>\n") +
         std::move(writer).take() + "</svg>\n";
}

}  // namespace fw::paper
