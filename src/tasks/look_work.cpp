#include <algorithm>
#include <array>
#include <map>

#include "base/ensure.hpp"
#include "lessons/asked_value.hpp"
#include "reasoning/phrases.hpp"
#include "reasoning/task_sheet.hpp"
#include "tasks/look.hpp"

// What is counted on a solid, or told by looking at it.
namespace fw::tasks {

using algebra::Notation;
using geometry::FaceId;
using reasoning::Outcome;
using reasoning::sign;
using reasoning::Source;
using reasoning::StepKind;
using reasoning::SupplyNumber;
using reasoning::SupplySteps;
using reasoning::TaskSheet;
using reasoning::TaskWork;
using solids::FaceRole;
using solids::Solid;
using words::message;
using words::Noun;

namespace {

/// The lines of a count, each from plain numbers.
class CountSheet {
 public:
  explicit CountSheet(const Solid& solid) : solid_(&solid), sheet_(0) {}

  [[nodiscard]] const Solid& solid() const { return *solid_; }
  [[nodiscard]] SupplySteps& steps() { return sheet_.steps(); }
  [[nodiscard]] SupplyNumber number(std::size_t value, const words::Message& sentence) {
    return sheet_.number(exact::Number::whole(static_cast<long long>(value)), std::nullopt, Source::Kind::Known,
                         sentence);
  }
  [[nodiscard]] Notation written(const SupplyNumber& number) { return steps().notation(number); }

  /// "left = work = result", or "left = result" where the work is a single number.
  SupplyNumber line(StepKind kind, const words::Message& reason, const words::Message& left, std::vector<Notation> work,
                    std::size_t result) {
    std::vector<Notation> parts{algebra::leaf(Notation::Kind::Words, said(left))};
    if (work.size() > 1) {
      parts.push_back(algebra::leaf(Notation::Kind::Sign, "="));
      parts.insert(parts.end(), work.begin(), work.end());
    }
    return steps().state(kind, reason, algebra::row(std::move(parts)), true,
                         {exact::Number::whole(static_cast<long long>(result)), {}, {}, ""});
  }
  /// The last line speaks of these.
  void light(std::vector<FaceId> faces) { steps().work().steps.back().faces = std::move(faces); }
  [[nodiscard]] TaskWork finished(TaskWork task, const words::Message& sentence) && {
    return std::move(sheet_).finished(std::move(task), sentence);
  }

 private:
  const Solid* solid_;
  TaskSheet sheet_;
};

std::vector<FaceId> faces_of_role(const Solid& solid, FaceRole role) {
  std::vector<FaceId> faces;
  for (const solids::Face& face : solid.faces()) {
    if (face.role == role) {
      faces.push_back(face.id);
    }
  }
  return faces;
}

std::size_t flat_faces(const Solid& solid) {
  const auto& faces = solid.faces();
  return static_cast<std::size_t>(std::count_if(
      faces.begin(), faces.end(), [&](const solids::Face& face) { return !solid.body().bends(face.id); }));
}

/// How many faces meet at each vertex, if at all of them as many do.
std::optional<std::size_t> faces_at_each_vertex(const Solid& solid) {
  const std::vector<std::size_t> meeting = solid.body().faces_at_vertices();
  const bool same = std::all_of(meeting.begin(), meeting.end(), [&](std::size_t n) { return n == meeting.front(); });
  return same ? std::optional(meeting.front()) : std::nullopt;
}

// ---- the three counts ----

void count_faces(CountSheet& sheet) {
  const Solid& solid = sheet.solid();
  const std::size_t all = solid.faces().size();
  if (!solid.traits().has_base) {
    sheet.line(StepKind::Count, message("Touch each face once, and number it as you go."), message("faces"), {}, all);
    return;
  }
  const std::size_t bases = faces_of_role(solid, FaceRole::Base).size();
  const std::size_t sides = faces_of_role(solid, FaceRole::Lateral).size();
  sheet.steps().say(StepKind::Name, message("Start with {count} {count:base|bases}.", {{"count", bases}}));
  sheet.light(faces_of_role(solid, FaceRole::Base));
  const SupplyNumber ends = sheet.number(bases, message("the bases"));
  const SupplyNumber around = sheet.number(sides, message("the lateral faces, one on each side of a base"));
  sheet.line(StepKind::Count,
             message("Each side of a base has one lateral face, and a base has {sides} sides.", {{"sides", sides}}),
             message("faces"), {sheet.written(ends), sign("+"), sheet.written(around)}, all);
  sheet.light(faces_of_role(solid, FaceRole::Lateral));
}

/// "2 × 3 + 3 × 4 = 18": every side of every face.
SupplyNumber count_corners(CountSheet& sheet, const words::Message& what) {
  std::map<std::size_t, std::size_t> faces_with;
  std::size_t all = 0;
  for (const solids::Face& face : sheet.solid().faces()) {
    const std::size_t sides = sheet.solid().body().side_count(face.id);
    ++faces_with[sides];
    all += sides;
  }
  std::vector<Notation> work;
  std::vector<words::Message> kinds;
  for (const auto& [size, faces] : faces_with) {
    if (!work.empty()) {
      work.push_back(sign("+"));
    }
    const SupplyNumber of_faces =
        sheet.number(faces, message("the faces with {size} {parts}", {{"size", size}, {"parts", what}}));
    const SupplyNumber each = sheet.number(size, message("the {parts} of one of these faces", {{"parts", what}}));
    work.insert(work.end(), {sheet.written(of_faces), sign("×"), sheet.written(each)});
    kinds.push_back(message("{faces} {faces:face|faces} with {size}", {{"faces", faces}, {"size", size}}));
  }
  return sheet.line(StepKind::Count,
                    message("Count the {parts} of each face: {kinds:and}.", {{"parts", what}, {"kinds", kinds}}),
                    message("{parts} of all faces", {{"parts", what}}), std::move(work), all);
}

void check_counts(CountSheet& sheet) {
  const solids::Body& body = sheet.solid().body();
  const SupplyNumber faces = sheet.number(body.face_count(), message("the faces"));
  const SupplyNumber vertices = sheet.number(body.vertex_count(), message("the vertices"));
  const SupplyNumber edges = sheet.number(body.edge_count(), message("the edges"));
  sheet.line(StepKind::Check, message("Check: faces plus vertices is two more than edges."),
             message("faces + vertices − edges"),
             {sheet.written(faces), sign("+"), sheet.written(vertices), sign("−"), sheet.written(edges)},
             body.face_count() + body.vertex_count() - body.edge_count());
}

void count_edges(CountSheet& sheet) {
  const SupplyNumber sides = count_corners(sheet, message("sides"));
  const SupplyNumber two = sheet.number(2, message("two faces meet at each edge"));
  sheet.line(StepKind::Count, message("Two sides meet at each edge, so each edge was counted twice."), message("edges"),
             {sheet.written(sides), sign("÷"), sheet.written(two)}, sheet.solid().body().edge_count());
  check_counts(sheet);
}

void count_vertices(CountSheet& sheet) {
  const std::size_t all = sheet.solid().body().vertex_count();
  if (const auto meeting = faces_at_each_vertex(sheet.solid())) {
    const SupplyNumber corners = count_corners(sheet, message("corners"));
    const SupplyNumber times = sheet.number(*meeting, message("the faces that meet at each vertex"));
    sheet.line(
        StepKind::Count,
        message("{faces} faces meet at each vertex, so each vertex was counted {faces} times.", {{"faces", *meeting}}),
        message("vertices"), {sheet.written(corners), sign("÷"), sheet.written(times)}, all);
  } else {
    const std::size_t base = sheet.solid().body().side_count(FaceId::at(0));
    const SupplyNumber round = sheet.number(base, message("the corners of the base"));
    const SupplyNumber rest = sheet.number(all - base, message("the apex"));
    sheet.line(StepKind::Count, message("The corners of the base, and the apex in which the lateral faces meet."),
               message("vertices"), {sheet.written(round), sign("+"), sheet.written(rest)}, all);
    sheet.light({FaceId::at(0)});
  }
  check_counts(sheet);
}

/// Of a solid with a curved side: books count it in two ways, and we take both.
void count_round(CountSheet& sheet, const std::string& find, std::size_t all) {
  const Solid& solid = sheet.solid();
  const std::size_t flat = flat_faces(solid);
  if (find == "faces") {
    const SupplyNumber level = sheet.number(flat, message("the flat faces"));
    const SupplyNumber curved = sheet.number(all - flat, message("the curved surface"));
    sheet.line(StepKind::Count,
               message("There {flat:is|are} {flat} flat {flat:face|faces} and {curved} curved surface.",
                       {{"flat", flat}, {"curved", all - flat}}),
               message("faces"), {sheet.written(level), sign("+"), sheet.written(curved)}, all);
    sheet.steps().say(StepKind::Check,
                      message("Some books only call a flat surface a face, and count {flat}. Both counts are right "
                              "here. Go by your book.",
                              {{"flat", flat}}));
  } else if (find == "edges") {
    sheet.line(StepKind::Count, message("Run your finger around: each circle is an edge where two surfaces meet."),
               message("edges"), {}, all);
    sheet.steps().say(StepKind::Check, message("Some books only call a straight line an edge, and count 0. Both counts "
                                               "are right here. Go by your book."));
  } else if (all == 0) {
    sheet.line(StepKind::Count, message("A circle doesn't have corners, so the count is 0."), message("vertices"), {},
               all);
  } else {
    sheet.line(StepKind::Count, message("There is one point, at the tip."), message("vertices"), {}, all);
    sheet.steps().say(StepKind::Check, message("Some books only call a corner where edges meet a vertex, and count 0. "
                                               "Both counts are right here. Go by your book."));
  }
}

void tell_round(CountSheet& sheet) {
  sheet.steps().say(StepKind::Name, message("It has {flat} flat {flat:circle|circles} and one curved surface.",
                                            {{"flat", flat_faces(sheet.solid())}}));
  sheet.steps().say(StepKind::Name, sheet.solid().traits().has_apex
                                        ? message("The curved surface comes to a point across from the circle.")
                                        : message("The circles are congruent and parallel."));
}

void tell_shapes(CountSheet& sheet) {
  if (!sheet.solid().body().is_flat_faced()) {
    return tell_round(sheet);
  }
  std::map<std::string, std::size_t> shapes;
  for (const solids::Face& face : sheet.solid().faces()) {
    ++shapes[face.shape];
  }
  std::vector<words::Message> parts;
  parts.reserve(shapes.size());
  for (const auto& [shape, count] : shapes) {
    parts.push_back(message("{count} {shape#count}", {{"count", count}, {"shape", Noun{shape}}}));
  }
  sheet.steps().say(StepKind::Name, message("Its faces are {parts:and}.", {{"parts", parts}}));
  const auto& faces = sheet.solid().faces();
  if (std::all_of(faces.begin(), faces.end(),
                  [&](const solids::Face& face) { return face.group == faces[FaceId::at(0)].group; })) {
    return;  // the faces alone name it
  }
  if (sheet.solid().traits().has_apex) {
    sheet.steps().say(StepKind::Name, message("The lateral faces meet at one point above the base. The shape of the "
                                              "base gives the first word of the name."));
  } else if (sheet.solid().traits().bases_match) {
    sheet.steps().say(StepKind::Name, message("Two faces are congruent and parallel. They are the bases, and their "
                                              "shape gives the first word of the name."));
  }
}

struct Counted {
  const char* find;
  void (*tell)(CountSheet& sheet);
};
constexpr std::array<Counted, 3> counted{{
    {"faces", count_faces},
    {"edges", count_edges},
    {"vertices", count_vertices},
}};

}  // namespace

std::optional<std::size_t> other_count(const Solid& solid, const std::string& find) {
  const std::size_t count = lessons::count_of(solid, find);
  const std::size_t other = find == "faces" ? flat_faces(solid) : 0;
  return solid.body().is_flat_faced() || other == count ? std::nullopt : std::optional(other);
}

TaskWork looking_work(const Solid& solid, const std::string& find) {
  const Noun name{solid.name()};
  CountSheet sheet(solid);
  if (find == "name") {
    sheet.steps().say(StepKind::Ask, message("Name the solid."));
    tell_shapes(sheet);
    return std::move(sheet).finished(
        {find, "", {}, message("name"), {}, {}, std::nullopt, 0, message("{solid}", {{"solid", name}})},
        message("The solid is {solid:a}.", {{"solid", name}}));
  }
  const auto* row = std::find_if(counted.begin(), counted.end(), [&](const Counted& one) { return one.find == find; });
  ensure(row != counted.end(), "a count was asked for that a solid does not have");
  const Noun part{practice::part_counted(parts_asked(find))};
  sheet.steps().say(StepKind::Ask,
                    message("Find how many {parts:s} the solid has. A count has no unit.", {{"parts", part}}));
  const std::size_t count = lessons::count_of(solid, find);
  if (solid.body().is_flat_faced()) {
    row->tell(sheet);
  } else {
    count_round(sheet, find, count);
  }
  const words::Message answer = message("{count} {parts#count}", {{"count", count}, {"parts", part}});
  const Outcome outcome{exact::Number::whole(static_cast<long long>(count)), std::nullopt};
  return std::move(sheet).finished(
      {find, "", {}, message("number of {parts:s}", {{"parts", part}}), {}, {}, outcome, 0, answer},
      message("{solid:A} has {answer}.", {{"solid", name}, {"answer", answer}}));
}

}  // namespace fw::tasks
