#include "reasoning/board/face_board.hpp"

#include "reasoning/phrases.hpp"

namespace fw::reasoning {
namespace {

using algebra::Expression;
using Line = BoardLine::Kind;

Message faces_sentence(const solids::Solid& solid, const WrittenFaces& written) {
  const solids::Face& face = solid.faces()[written.faces.front()];
  const Noun shape{face.shape};
  const Noun part{solid.part()};
  const std::size_t count = written.faces.size();
  if (solid.body().bends(face.id)) {
    return message("{part:up} {number} unrolls to {shape:a}.",
                   {{"part", part}, {"number", face.id.index() + 1}, {"shape", shape}});
  }
  if (count == 1) {
    return face.lengths.empty() ? message("{part:up} {number} is {shape:a}. Its area follows from its corners.",
                                          {{"part", part}, {"number", face.id.index() + 1}, {"shape", shape}})
                                : message("{part:up} {number} is {shape:a}.",
                                          {{"part", part}, {"number", face.id.index() + 1}, {"shape", shape}});
  }
  return message("{parts:up} {numbers:and} are congruent {shape:s}, so multiply by {count}.",
                 {{"parts", message("{part:s}", {{"part", part}})},
                  {"numbers", face_numbers(written.faces)},
                  {"shape", shape},
                  {"count", count}});
}

// {"faces 4 and 7", 2 × (5 × 4), 40}: one face's own equation, times their number, and what comes out.
EqualParts equal_parts(const std::vector<Step>& steps, const WrittenFaces& written) {
  const algebra::Equation& one = *steps[written.first].equation;
  const algebra::Equation& all = *steps[written.end - 1].equation;
  const bool is_one = written.faces.size() == 1;
  const Expression work = is_one ? one.right : Expression(static_cast<int>(written.faces.size())) * one.right;
  return work.operands().empty() ? EqualParts{all.left, all.right} : EqualParts{all.left, work, all.right};
}

}  // namespace

void write_board_faces(BoardPage& page, const std::vector<WrittenFaces>& written, std::size_t end) {
  const Worksheet& sheet = page.sheet();
  const std::vector<Step>& steps = page.sheet().steps();
  for (const WrittenFaces& one : written) {
    page.color_terms({sheet.solid().faces()[one.faces.front()].group.index()});
    const std::size_t row = page.write(Line::Part, faces_sentence(sheet.solid(), one), {equal_parts(steps, one)});
    for (std::size_t step = one.first; step < one.end; ++step) {
      page.cover(row, step);
    }
  }
  const std::size_t first = written.back().end;
  const algebra::Equation& sum = *steps[first].equation;
  const algebra::Equation& total = *steps[end - 1].equation;
  std::size_t count = 0;
  std::vector<std::optional<std::size_t>> groups;
  for (const WrittenFaces& one : written) {
    count += one.faces.size();
    groups.emplace_back(sheet.solid().faces()[one.faces.front()].group.index());
  }
  page.color_terms(std::move(groups));
  const bool all = count == sheet.solid().faces().size();
  const Noun part{sheet.solid().part()};
  const std::size_t row =
      page.write(Line::Solve,
                 all ? message("Add the areas of all {count} {part:s}.", {{"count", count}, {"part", part}})
                     : message("Add the areas of the {count} {part#count} that {count:counts|count}.",
                               {{"count", count}, {"part", part}}),
                 {sum.right.operands().empty() ? EqualParts{sum.left, total.right}
                                               : EqualParts{sum.left, sum.right, total.right}});
  for (std::size_t step = first; step < end; ++step) {
    page.cover(row, step);
  }
}

}  // namespace fw::reasoning
