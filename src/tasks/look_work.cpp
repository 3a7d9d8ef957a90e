#include <algorithm>
#include <array>
#include <map>

#include "base/ensure.hpp"
#include "base/listing.hpp"
#include "lessons/asked_value.hpp"
#include "reasoning/nouns.hpp"
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

std::string sized(std::size_t count) { return std::to_string(count); }

/// The lines of a count, each from plain numbers.
class CountSheet {
 public:
  explicit CountSheet(const Solid& solid) : solid_(&solid), sheet_(0) {}

  [[nodiscard]] const Solid& solid() const { return *solid_; }
  [[nodiscard]] SupplySteps& steps() { return sheet_.steps(); }
  [[nodiscard]] SupplyNumber number(std::size_t value, const std::string& sentence) {
    return sheet_.number(exact::Number::whole(static_cast<long long>(value)), std::nullopt, Source::Kind::Known,
                         sentence);
  }
  [[nodiscard]] Notation written(const SupplyNumber& number) { return steps().notation(number); }

  /// "left = work = result", or "left = result" where the work is a single number.
  SupplyNumber line(StepKind kind, const std::string& reason, const std::string& left, std::vector<Notation> work,
                    std::size_t result) {
    std::vector<Notation> parts{algebra::leaf(Notation::Kind::Words, left)};
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
    sheet.line(StepKind::Count, "Touch each flat part once, and number it as you go.", "faces", {}, all);
    return;
  }
  const std::size_t bases = faces_of_role(solid, FaceRole::Base).size();
  const std::size_t sides = faces_of_role(solid, FaceRole::Lateral).size();
  sheet.steps().say(StepKind::Name, reasoning::counted(sized(bases), "base") + " to begin with.");
  sheet.light(faces_of_role(solid, FaceRole::Base));
  const SupplyNumber ends = sheet.number(bases, "the bases");
  const SupplyNumber around = sheet.number(sides, "the lateral faces, one on each side of a base");
  sheet.line(StepKind::Count,
             "On each side of a base stands one lateral face, and a base has " + sized(sides) + " sides.", "faces",
             {sheet.written(ends), sign("+"), sheet.written(around)}, all);
  sheet.light(faces_of_role(solid, FaceRole::Lateral));
}

/// "2 × 3 + 3 × 4 = 18": every side of every face.
SupplyNumber count_corners(CountSheet& sheet, const std::string& what) {
  std::map<std::size_t, std::size_t> faces_with;
  std::size_t all = 0;
  for (const solids::Face& face : sheet.solid().faces()) {
    const std::size_t sides = sheet.solid().body().side_count(face.id);
    ++faces_with[sides];
    all += sides;
  }
  std::vector<Notation> work;
  std::vector<std::string> kinds;
  for (const auto& [size, faces] : faces_with) {
    if (!work.empty()) {
      work.push_back(sign("+"));
    }
    const SupplyNumber of_faces = sheet.number(faces, "the faces with " + sized(size) + " " + what);
    const SupplyNumber each = sheet.number(size, "the " + what + " of one of these faces");
    work.insert(work.end(), {sheet.written(of_faces), sign("×"), sheet.written(each)});
    kinds.push_back(reasoning::counted(sized(faces), "face") + " with " + sized(size));
  }
  return sheet.line(StepKind::Count, "Count the " + what + " of each face: " + joined_with_and(kinds) + ".",
                    what + " of all faces", std::move(work), all);
}

void check_counts(CountSheet& sheet) {
  const solids::Body& body = sheet.solid().body();
  const SupplyNumber faces = sheet.number(body.face_count(), "the faces");
  const SupplyNumber vertices = sheet.number(body.vertex_count(), "the vertices");
  const SupplyNumber edges = sheet.number(body.edge_count(), "the edges");
  sheet.line(StepKind::Check, "Check: faces and vertices together are two more than the edges.",
             "faces + vertices − edges",
             {sheet.written(faces), sign("+"), sheet.written(vertices), sign("−"), sheet.written(edges)},
             body.face_count() + body.vertex_count() - body.edge_count());
}

void count_edges(CountSheet& sheet) {
  const SupplyNumber sides = count_corners(sheet, "sides");
  const SupplyNumber two = sheet.number(2, "two faces meet at each edge");
  sheet.line(StepKind::Count, "Two sides meet at each edge, so each edge was counted twice.", "edges",
             {sheet.written(sides), sign("÷"), sheet.written(two)}, sheet.solid().body().edge_count());
  check_counts(sheet);
}

void count_vertices(CountSheet& sheet) {
  const std::size_t all = sheet.solid().body().vertex_count();
  if (const auto meeting = faces_at_each_vertex(sheet.solid())) {
    const SupplyNumber corners = count_corners(sheet, "corners");
    const SupplyNumber times = sheet.number(*meeting, "the faces that meet at each vertex");
    sheet.line(
        StepKind::Count,
        sized(*meeting) + " faces meet at each vertex, so each vertex was counted " + sized(*meeting) + " times.",
        "vertices", {sheet.written(corners), sign("÷"), sheet.written(times)}, all);
  } else {
    const std::size_t base = sheet.solid().body().side_count(FaceId::at(0));
    const SupplyNumber round = sheet.number(base, "the corners of the base");
    const SupplyNumber rest = sheet.number(all - base, "the apex");
    sheet.line(StepKind::Count, "The corners of the base, and the apex in which the lateral faces meet.", "vertices",
               {sheet.written(round), sign("+"), sheet.written(rest)}, all);
    sheet.light({FaceId::at(0)});
  }
  check_counts(sheet);
}

void tell_shapes(CountSheet& sheet) {
  std::map<std::string, std::size_t> shapes;
  for (const solids::Face& face : sheet.solid().faces()) {
    ++shapes[face.shape];
  }
  std::vector<std::string> parts;
  for (const auto& [shape, count] : shapes) {
    parts.push_back(reasoning::counted(sized(count), shape));
  }
  sheet.steps().say(StepKind::Name, "Its faces are " + joined_with_and(parts) + ".");
  if (sheet.solid().traits().has_apex) {
    sheet.steps().say(StepKind::Name,
                      "The lateral faces meet in one point over the base, which gives the first word of the name.");
  } else if (sheet.solid().traits().bases_match) {
    sheet.steps().say(StepKind::Name, "Two faces are alike and parallel: these bases give the first word of the name.");
  }
}

struct Looked {
  const char* find;
  const char* ask;
  void (*tell)(CountSheet& sheet);
};
constexpr std::array<Looked, 4> looked_at{{
    {"name", "Asked is the name of the solid.", tell_shapes},
    {"faces", "Asked is a count: how many faces the solid has. A count has no unit.", count_faces},
    {"edges", "Asked is a count: how many edges the solid has. A count has no unit.", count_edges},
    {"vertices", "Asked is a count: how many vertices the solid has. A count has no unit.", count_vertices},
}};

}  // namespace

TaskWork looking_work(const Solid& solid, const std::string& find) {
  const auto* row =
      std::find_if(looked_at.begin(), looked_at.end(), [&](const Looked& one) { return one.find == find; });
  ensure(row != looked_at.end(), "a count was asked for that a solid does not have");
  CountSheet sheet(solid);
  sheet.steps().say(StepKind::Ask, row->ask);
  row->tell(sheet);
  if (find == "name") {
    return std::move(sheet).finished({find, "", "", "name", {}, {}, std::nullopt, 0, solid.name()},
                                     message("The solid is {solid:a}.", {{"solid", Noun{solid.name()}}}));
  }
  const std::size_t count = lessons::count_of(solid, find);
  const std::string answer = sized(count) + " " + find;
  const Outcome outcome{exact::Number::whole(static_cast<long long>(count)), std::nullopt};
  return std::move(sheet).finished(
      {find, "", "", "number of " + find, {}, {}, outcome, 0, answer},
      message("{solid:A} has {answer}.", {{"solid", Noun{solid.name()}}, {"answer", answer}}));
}

}  // namespace fw::tasks
