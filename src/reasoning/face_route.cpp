#include "reasoning/face_route.hpp"

#include <algorithm>
#include <map>

#include "reasoning/link_steps.hpp"
#include "reasoning/phrases.hpp"

namespace fw::reasoning {
namespace {

using algebra::Equation;
using algebra::Expression;
using algebra::Symbol;
using exact::Number;

// "Face 2 is a triangle. Its base edge is 6 cm, its slant height 9 cm."
Message lengths_sentence(const solids::Solid& solid, const solids::Face& face, Worksheet& sheet) {
  std::vector<Message> lengths;
  std::vector<Symbol> told;
  for (const solids::FaceLength& length : face.lengths) {
    if (std::find(told.begin(), told.end(), length.symbol) != told.end()) {
      continue;
    }
    told.push_back(length.symbol);
    const Symbol numeral = sheet.numeral_of(length.symbol);
    const Message told_length =
        message("{length} {amount}", {{"length", Noun{length.title}}, {"amount", sheet.amount(numeral)}});
    lengths.push_back(length.origin == solids::LengthOrigin::EqualEdge && length.mark
                          ? message("{length} (the same as the labeled {mark})",
                                    {{"length", told_length}, {"mark", Noun{solid.marks()[*length.mark].title}}})
                          : told_length);
  }
  const Message found = lengths.empty() ? message("Find its area from its corners.")
                                        : message("Its lengths: {lengths:,}.", {{"lengths", lengths}});
  return solid.body().bends(face.id)
             ? message("{part:up} {number} unrolls to {shape:a}. {lengths}", {{"part", Noun{solid.part()}},
                                                                              {"number", face.id.index() + 1},
                                                                              {"shape", Noun{face.shape}},
                                                                              {"lengths", found}})
             : message("{part:up} {number} is {shape:a}. {lengths}", {{"part", Noun{solid.part()}},
                                                                      {"number", face.id.index() + 1},
                                                                      {"shape", Noun{face.shape}},
                                                                      {"lengths", found}});
}

// The area of one face of a group, and of all of them.
Symbol write_group(Worksheet& sheet, const std::vector<FaceId>& faces, std::size_t group) {
  const solids::Solid& solid = sheet.solid();
  const solids::Face& face = solid.faces()[faces.front()];
  const std::string number = std::to_string(face.id.index() + 1);
  const Symbol one{"face_area." + number,
                   said(message("{part} {number}", {{"part", Noun{solid.part()}}, {"number", number}})), 2};
  Expression work = face.work;
  for (const Symbol& letter : algebra::symbols_of(work)) {
    work = algebra::replaced(work, letter, sheet.numeral_of(letter));
  }
  sheet.color_terms({group});
  Step& step =
      sheet.write(StepKind::Relation, lengths_sentence(solid, face, sheet), {one, work}, {Change::Kind::Start});
  step.faces = {face.id};
  step.marks = sheet.marks_of(algebra::symbols_of(face.work));
  const std::optional<Symbol> area = write_isolation(sheet, one, face.area.amount());
  if (faces.size() == 1) {
    return *area;
  }
  const Symbol all{
      "face_areas." + number,
      said(message("{part:s} {numbers:and}", {{"part", Noun{solid.part()}}, {"numbers", face_numbers(faces)}})), 2};
  const Expression times = Expression(static_cast<int>(faces.size())) * *area;
  sheet.color_terms({group});
  sheet
      .write(StepKind::Relation,
             message("{parts:up} {numbers:and} are congruent, so multiply by {count}.",
                     {{"parts", message("{part:s}", {{"part", Noun{solid.part()}}})},
                      {"numbers", face_numbers(faces)},
                      {"count", faces.size()}}),
             {all, times}, {Change::Kind::Start})
      .faces = faces;
  const Number total = face.area.amount() * Number::whole(static_cast<long long>(faces.size()));
  return *write_isolation(sheet, all, total);
}

}  // namespace

FaceSum faces_added_up(const solids::Solid& solid, const Symbol& asked, const std::vector<FaceId>& open) {
  namespace whole = solids::symbols;
  FaceSum sum{asked, {}};
  for (const solids::Face& face : solid.faces()) {
    const bool first_base = asked == whole::base_area() && face.role == solids::FaceRole::Base && sum.faces.empty();
    const bool belongs = asked == whole::surface_area() || first_base ||
                         (asked == whole::lateral_area() && face.role == solids::FaceRole::Lateral);
    const bool is_open = std::find(open.begin(), open.end(), face.id) != open.end();
    if (belongs && !is_open) {
      sum.faces.push_back(face.id);
    } else if (belongs) {
      sum.asked = counted_area();
    }
  }
  return sum;
}

std::vector<WrittenFaces> write_faces(Worksheet& sheet, const FaceSum& of) {
  const solids::Solid& solid = sheet.solid();
  std::map<std::size_t, std::vector<FaceId>> groups;
  Number expected;
  for (const FaceId face : of.faces) {
    groups[solid.faces()[face].group.index()].push_back(face);
    expected = expected + solid.faces()[face].area.amount();
  }
  std::vector<Expression> addends;
  std::vector<std::optional<std::size_t>> colors;
  std::vector<WrittenFaces> written;
  for (const auto& [group, faces] : groups) {
    const std::size_t first = sheet.steps().size();
    addends.emplace_back(write_group(sheet, faces, group));
    written.push_back({faces, first, sheet.steps().size()});
    colors.emplace_back(group);
  }
  const Equation sum{of.asked, addends.size() == 1 ? addends.front() : algebra::sum_of(addends)};
  sheet.color_terms(colors);
  const bool all = of.faces.size() == solid.faces().size();
  sheet
      .write(StepKind::Relation,
             all ? message("Add the areas of all the {part:s}.", {{"part", Noun{solid.part()}}})
                 : message("Add the areas of the {part:s} that count.", {{"part", Noun{solid.part()}}}),
             sum, {Change::Kind::Start})
      .faces = of.faces;
  sheet.set_numeral(of.asked, *write_isolation(sheet, of.asked, expected));
  return written;
}

}  // namespace fw::reasoning
