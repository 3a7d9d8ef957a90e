#include <algorithm>

#include "paper/sheets/problem_text.hpp"
#include "paper/sheets/sheets.hpp"

namespace fw::paper {
namespace {

using figures::HAlign;
using figures::TextStyle;
using figures::VAlign;
using words::message;

/// "1 square", "4 triangles": the flat faces by their shapes.
std::vector<words::Message> flat_shapes(const solids::Solid& solid) {
  std::vector<std::pair<std::string, std::size_t>> shapes;
  for (const solids::Face& face : solid.faces()) {
    if (solid.body().bends(face.id)) continue;
    const auto known =
        std::find_if(shapes.begin(), shapes.end(), [&](const auto& one) { return one.first == face.shape; });
    if (known == shapes.end()) {
      shapes.emplace_back(face.shape, 1);
    } else {
      ++known->second;
    }
  }
  std::vector<words::Message> told;
  told.reserve(shapes.size());
  for (const auto& [shape, count] : shapes) {
    told.push_back(message("{count} {shape#count}", {{"count", count}, {"shape", words::Noun{shape}}}));
  }
  return told;
}

/// "A square pyramid has 5 faces (1 square and 4 triangles), 8 edges and 5 vertices." Textbooks disagree whether a
/// curved surface is a face and a rim an edge, so of a round solid only what none denies is told.
words::Message about_solid(const solids::Solid& solid) {
  const solids::Body& body = solid.body();
  std::vector<words::Message> unrolled;
  for (const solids::Face& face : solid.faces()) {
    if (body.bends(face.id)) {
      unrolled.push_back(message("Unrolled, the curved surface is {shape:a}.", {{"shape", words::Noun{face.shape}}}));
    }
  }
  if (!unrolled.empty()) {
    const std::size_t flat = body.face_count() - unrolled.size();
    std::vector<words::Message> told{
        message("{solid:A} has {flat} flat {flat:face|faces} ({shapes:and}) and {curved} curved "
                "{curved:surface|surfaces}.",
                {{"solid", words::Noun{solid.name()}},
                 {"flat", flat},
                 {"shapes", flat_shapes(solid)},
                 {"curved", unrolled.size()}})};
    told.insert(told.end(), unrolled.begin(), unrolled.end());
    return words::one_after_another(told);
  }
  return message("{solid:A} has {faces} faces ({shapes:and}), {edges} edges and {vertices} vertices.",
                 {{"solid", words::Noun{solid.name()}},
                  {"faces", body.face_count()},
                  {"shapes", flat_shapes(solid)},
                  {"edges", body.edge_count()},
                  {"vertices", body.vertex_count()}});
}

Printed solid_words_printed(const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options) {
  const PageStyle style = options.style;
  const std::string title = said(message("Words: {title}", {{"title", lesson.title}}));
  Packet packet(fonts, style, {title, options.version, lesson_code(lesson), options.has_name_line});
  std::vector<std::string> told;
  for (const lessons::Problem& problem : lesson.problems) {
    const solids::Solid solid = problem.solid;
    if (std::find(told.begin(), told.end(), solid.name()) != told.end()) {
      continue;
    }
    told.push_back(solid.name());
    const Vec2 picture{style.is_large ? 60.0 : 45.0, style.is_large ? 48.0 : 34.0};
    const double left = picture.x + 8;
    const TextStyle name{style.em(), black, true};
    const TextStyle text{style.em(), black};
    const std::vector<std::string> lines =
        lines_of(packet.measure(), said(about_solid(solid)), text, packet.width() - left);
    const double text_height = style.leading() * static_cast<double>(lines.size() + 1);
    const double height = std::max(picture.y, text_height + 14);
    packet.add(
        {{height, false, false},
         [=](PageCanvas& canvas, const Rect& rect) {
           const std::vector<std::optional<std::string>> labels(solid.marks().size());
           canvas.begin_part("figure");
           figures::draw_solid_figure(canvas, solid, labels, {rect.x, rect.y, picture.x, picture.y},
                                      style.figure_look());
           canvas.end_part();
           const Rect beside{rect.x + left, rect.y, rect.w - left, rect.h};
           draw_lines(canvas, {solid.name()}, beside, name, style.leading());
           draw_lines(canvas, lines, {beside.x, beside.y + style.leading(), beside.w, beside.h}, text, style.leading());
           const std::string label = said(message("In my language"));
           const double y = rect.y + text_height + 8;
           canvas.text({beside.x, y}, HAlign::Left, VAlign::Baseline, label, text);
           const double begin = beside.x + canvas.text_size(label, text).x + 2;
           draw_rule(canvas, begin, y + 1, beside.right() - begin);
         },
         problem.id});
  }
  return packet.printed();
}

}  // namespace

void solid_words(SheetWork& work, const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options) {
  work.add([=, &fonts, &lesson](SheetWork& done) { done.printed.add(solid_words_printed(fonts, lesson, options)); });
}

}  // namespace fw::paper
