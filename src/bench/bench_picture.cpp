#include "bench/bench_picture.hpp"

#include <algorithm>
#include <cmath>

#include "base/ensure.hpp"
#include "bench/bench_marks.hpp"
#include "bench/bench_parts.hpp"
#include "bench/face_numbers.hpp"
#include "figures/face_figure.hpp"
#include "figures/typeset.hpp"
#include "geometry/measure.hpp"
#include "solids/body/body_nets.hpp"
#include "solids/body/standing.hpp"
#include "tasks/decide/claim.hpp"
#include "tasks/face_lengths.hpp"

namespace fw::bench {

using namespace state;

namespace {

using figures::Rect;
using geometry::Vec2;
using geometry::Vec3;

// Left free on each side of the figure, in label sizes: a usual label and its gaps, or hardly anything.
constexpr Vec2 label_room{3.1, 1.5};
constexpr Vec2 bare_room{0.8, 0.8};
constexpr double closed_pitch_rad = 0.42;  // as textbooks show a solid
constexpr double round_pitch_rad = 0.6;    // a disk is seen so wide that the label of its radius has room on it
// A flat net is seen from straight above, so that it is true to shape; the slider leads the eye there.
constexpr double open_pitch_rad = render::Camera::steepest_pitch_rad;
constexpr double quarter_turn_rad = 1.5707963267948966;
constexpr double worth_a_turn = 1.15;  // a net is turned if it comes out this much larger
constexpr int label_places = 2;        // of a length that was found
constexpr double least_facing = 0.4;   // cosine of the angle at which a face that is asked about is seen at most

/// What stands on the bench in this mode.
struct Stand {
  const solids::Body* body;
  const nets::HingeTree* net;
  double turn_rad = 0;  ///< the whole turned on the table
};

Stand stand_of(const Model& model, const Derived& derived) {
  if (derived.question) {
    return {&derived.question->body, &derived.question->net, derived.question->turn_rad};
  }
  const Desk& desk = model.state.desk();
  return {&desk.solid.body(), &desk.net, 0};
}

solids::Standing standing_there(const Model& model, const Derived& derived) {
  const Stand stand = stand_of(model, derived);
  solids::Standing standing = solids::standing(*stand.body, *stand.net, model.view.fold, model.view.order);
  if (derived.question) {
    solids::lay_on_table(standing, *stand.body, stand.net->root(), stand.turn_rad);
  }
  return standing;
}

/// A net or card that is asked about.
bool lies_on_table(const Derived& derived) { return derived.cutouts || (derived.item && is_flat(derived.item->form)); }

/// Card that does not fold into a solid stays open, so it is always seen from above.
bool stays_open(const Derived& derived) {
  return derived.cutouts && derived.cutouts->lying.size() == 1 && !derived.cutouts->lying.front().test.is_net();
}

/// Which way round the flat net fills the bench: as it lies, or turned by a quarter.
double flat_yaw(const Model& model, const Derived& derived, const render::Viewport& viewport) {
  const Stand stand = stand_of(model, derived);
  const solids::Standing flat = solids::standing(*stand.body, *stand.net, 1, model.view.order);
  const geometry::Box box = geometry::bounding_box(points_of(flat.corners));
  const Vec3 size = box.highest - box.lowest;
  const auto scale = [&](double width, double height) {
    return std::min(viewport.width_px / width, viewport.height_px / height);
  };
  return scale(size.y, size.x) > worth_a_turn * scale(size.x, size.y) ? quarter_turn_rad : 0;
}

/// The eye goes from the front of the closed solid to straight above the flat net, slowly at first: while it folds it
/// is seen as a solid. `turn`: by how much the bench is turned and tilted.
render::Camera turned_camera(const Model& model, const Derived& derived, const render::Viewport& viewport, Vec2 turn) {
  render::Camera camera;
  const double fold = stays_open(derived) ? 1 : model.view.fold;
  const double way = fold * fold;
  const double yaw = fold == 0 || lies_on_table(derived) ? 0 : flat_yaw(model, derived, viewport);
  camera.yaw_rad += (yaw - camera.yaw_rad) * way;
  const double closed = stand_of(model, derived).body->is_flat_faced() ? closed_pitch_rad : round_pitch_rad;
  camera.pitch_rad = closed + (open_pitch_rad - closed) * way;
  return camera.orbited(turn.x, turn.y);
}

bool belongs_to_picked(const solids::Solid& solid, std::optional<FaceId> picked, solids::MarkId id) {
  if (!picked) {
    return false;
  }
  const auto& lengths = solid.faces()[*picked].lengths;
  return std::any_of(lengths.begin(), lengths.end(),
                     [&](const solids::FaceLength& length) { return length.mark == id; });
}

bool is_counted(const Desk& desk, FaceId face) {
  return std::find(desk.counted.begin(), desk.counted.end(), face) != desk.counted.end();
}

/// What the page beside it speaks of, in whatever mode.
Lit spoken_of(const Model& model, const Derived& derived) {
  if (derived.question) {
    return {};
  }
  const bool is_worked = !derived.item || model.state.quiz.work().solution_shown;
  if (derived.worked && is_worked) {
    return lit(model, *derived.worked);
  }
  Lit told;
  if (derived.item) {
    told.faces = derived.item->faces;
    told.marks = derived.item->marks;
  }
  told.open = derived.open;
  return told;
}

bool contains(const std::vector<FaceId>& faces, FaceId face) {
  return std::find(faces.begin(), faces.end(), face) != faces.end();
}

/// Whether the face is told apart: spoken of, or in Explore counted. Its disc and its edges show it, and never a paler
/// fill: through a pale face the ones behind it show, and its color is not the one of its letter any more.
bool is_told_apart(const Model& model, const Derived& derived, const Lit& told, FaceId face) {
  if (derived.question) {
    return false;
  }
  return derived.worked || derived.item ? contains(told.faces, face) : is_counted(model.state.desk(), face);
}

render::FaceLook face_look(const Model& model, const Derived& derived, const Theme& theme, const Lit& told, FaceId face,
                           double period) {
  const Desk& desk = model.state.desk();
  const solids::Solid& solid = derived.question ? derived.question->solid : desk.solid;
  const figures::FaceStyle style = figures::face_style(solid.faces()[face].group, theme.palette());
  render::FaceLook look;
  const bool is_open = contains(told.open, face);
  look.fill = style.fill.with_opacity(is_open ? 0 : 1);
  look.is_shown = !is_open || model.view.fold > 0;  // one looks into the solid; in the net the face has its outline
  look.hatch = is_open ? Hatch::None : style.hatch;
  look.hatch_ink = style.hatch_ink;
  look.hatch_period = static_cast<float>(period);
  const bool pointed =
      model.view.hovered == face || model.view.dragged == face || (!derived.question && desk.picked == face);
  if (pointed || is_told_apart(model, derived, told, face)) {
    look.outline = stroke(theme.ink, theme.sizes.edge * (pointed ? 2.6 : 1.8));
  }
  return look;
}

/// The solid whose lengths are labelled.
const solids::Solid& solid_of(const Desk& desk, const Derived& derived, const Lit& told) {
  if (derived.claimed && told.marks.empty()) {  // marks that stand out are those of the other solid
    return *derived.claimed;
  }
  // With the measure that is asked for as its unknown.
  return derived.worked && derived.worked->solid ? *derived.worked->solid : desk.solid;
}

/// Whether the lesson claims this length of the solid, so that its own value is not shown before it is worked out.
bool is_claimed(const lessons::Problem& problem, const solids::Solid& solid, const algebra::Symbol& symbol) {
  const std::vector<solids::Measure>& all = solid.statement().measures;
  const auto* claim = practice::task_as<tasks::Claim>(problem);
  return claim != nullptr && std::any_of(all.begin(), all.end(), [&](const solids::Measure& measure) {
           return measure.symbol == symbol && !problem.solid.is_given(symbol) &&
                  claim->label() == (measure.in_base ? "base." + measure.key : measure.key);
         });
}

/// The lengths with their labels: as the lesson writes them, and while it is worked out a number only once it is found.
MarkWords mark_words(const lessons::Problem& problem, const Derived& derived, const Desk& desk,
                     const solids::Solid& solid, const Lit& told) {
  MarkWords words;
  const Work& work = desk.work;
  const bool is_out = derived.item && !derived.item->answer.empty();
  const bool answered =
      derived.worked && derived.worked->count > 0 && (is_out || work.reached == derived.worked->count);
  for (std::size_t i = 0; i < solid.marks().size(); ++i) {
    const solids::MarkId id = solids::MarkId::at(i);
    const algebra::Symbol& symbol = solid.marks()[id].symbol;
    std::string label = solid.label(id);
    const auto value = solid.values().find(symbol.name);
    words.later.emplace_back();
    if (derived.worked && !solid.is_given(symbol) && value != solid.values().end()) {
      const bool is_asked = derived.worked->letter == symbol.letter;
      const std::string found = units::text(units::Length::of(value->second, solid.unit()), label_places);
      const std::string unknown = symbol.letter + (is_asked ? " = ?" : "");
      label = answered ? found : unknown;
      words.later.back() = {found, unknown};
    }
    if (!answered && is_claimed(problem, solid, symbol)) {
      label = practice::task_as<tasks::Claim>(problem)->value().text + "?";
    }
    words.labels.push_back(std::move(label));
    const bool speaks = std::find(told.marks.begin(), told.marks.end(), id) != told.marks.end();
    words.emphasized.push_back(speaks || belongs_to_picked(solid, desk.picked, id));
  }
  return words;
}

/// How squarely a face is seen, 1 straight on; 0 where it is not seen.
double facing(const BenchPicture& picture, const solids::Body& body, FaceId face) {
  const Vec3 point = solids::PlacedFace(body, picture.look.faces, face).label_point();
  const render::Projected seen = picture.camera.project(point, picture.viewport);
  if (seen.depth <= 0 || face_behind(picture, seen.pixel) != face) {
    return 0;
  }
  for (std::size_t i = 0; i < picture.faces.size(); ++i) {
    if (picture.faces[i] == face) {
      const std::vector<Vec3>& corners = picture.look.faces[i];
      const Vec3 normal = glm::normalize(glm::cross(corners[1] - corners[0], corners.back() - corners[0]));
      return std::abs(glm::dot(normal, picture.camera.forward()));
    }
  }
  return 0;
}

/// The face that the problem in view asks about, if it is one.
std::optional<FaceId> asked_face(const Model& model) {
  const auto* lengths = practice::task_as<tasks::FaceLengths>(model.state.current());
  const bool is_there = lengths != nullptr && model.state.desk().solid == model.state.current().solid;
  return is_there && model.state.mode != Mode::Explore ? std::optional(lengths->face()) : std::nullopt;
}

/// How far the bench has to be turned and tilted, no farther than needed, for the face to be seen well.
Vec2 turn_to_see(FaceId face, BenchPicture picture, const Model& model, const Derived& derived, Vec2 margin) {
  constexpr double step = 0.2617993877991494;  // 15 degrees
  constexpr int most_steps = 12;
  constexpr double from_below = -2 * closed_pitch_rad - 0.3;
  const solids::Body& body = model.state.desk().solid.body();
  Vec2 best{};
  double best_facing = 0;
  for (const double tilt : {0.0, 0.5, from_below}) {
    for (int i = 0; i <= 2 * most_steps && best_facing < least_facing; ++i) {
      const double turn = step * (i % 2 == 0 ? -i / 2 : (i + 1) / 2);
      picture.camera = camera_for(model, derived, picture.look.faces, picture.viewport, margin, {turn, tilt});
      const double seen = facing(picture, body, face);
      if (seen > best_facing) {
        best_facing = seen;
        best = {turn, tilt};
      }
    }
  }
  return best;
}

std::vector<FaceNumber> face_numbers(const Desk& desk, const Lit& told, bool works) {
  std::vector<FaceNumber> numbers;
  for (const solids::Face& face : desk.solid.faces()) {
    if (contains(told.open, face.id) && !is_counted(desk, face.id)) {
      continue;  // its number would stand on the wall behind it
    }
    numbers.push_back({face.id,
                       {},
                       0,
                       figures::face_number(face.id),
                       works ? contains(told.faces, face.id) : is_counted(desk, face.id)});
  }
  return numbers;
}

figures::Vec2 label_size(const figures::Canvas& canvas, const std::string& text, const figures::TextStyle& style) {
  constexpr double ink = 0.84;  // of a line's height
  const figures::Vec2 size = figures::typeset_size(canvas, text, style);
  return {size.x, size.y * ink};
}

}  // namespace

MeasureText label_measure(const figures::Canvas& canvas, const Theme& theme) {
  return [&canvas, style = figures::TextStyle{theme.sizes.label, theme.ink}](const std::string& text) {
    return label_size(canvas, text, style);
  };
}

std::vector<Vec3> points_of(const nets::Pose& pose) {
  std::vector<Vec3> points;
  for (const auto& face : pose) {
    points.insert(points.end(), face.begin(), face.end());
  }
  return points;
}

render::Camera camera_for(const Model& model, const Derived& derived, const nets::Pose& pose,
                          const render::Viewport& viewport, Vec2 margin, Vec2 turn) {
  const auto room_left = [](double length, double free) {
    return length - std::clamp(2 * free, 0.1 * length, 0.48 * length);
  };
  const Vec2 room{room_left(viewport.width_px, margin.x), room_left(viewport.height_px, margin.y)};
  const render::Camera fitted = turned_camera(model, derived, viewport, turn)
                                    .fitted(points_of(pose), room.x / room.y, 1 - room.y / viewport.height_px);
  return fitted.zoomed(model.view.nearness);
}

render::Stroke stroke(const Color& ink, double width, double dash) {
  return {ink, static_cast<float>(width), static_cast<float>(dash), static_cast<float>(dash * 0.8)};
}

BenchPicture bench_picture(const Model& model, const Derived& derived, const Theme& theme, const Rect& rect,
                           const MeasureText& measure) {
  if (derived.cutouts) {
    return cutout_picture(model, derived, theme, rect, measure);
  }
  BenchPicture picture;
  picture.rect = rect;
  picture.viewport = {std::max(1.0, rect.w), std::max(1.0, rect.h)};
  solids::Standing standing = standing_there(model, derived);
  picture.look.faces = std::move(standing.corners);
  picture.look.flat_faces = std::move(standing.outlines);
  picture.look.smooth = std::move(standing.smooth);
  picture.faces = std::move(standing.faces);
  const Vec2 margin = (derived.question ? bare_room : label_room) * theme.sizes.label;
  const std::optional<FaceId> face = asked_face(model);
  const Vec2 laid = face && model.view.fold == 0 ? turn_to_see(*face, picture, model, derived, margin) : Vec2{};
  picture.camera = camera_for(model, derived, picture.look.faces, picture.viewport, margin,
                              laid + Vec2{model.view.turn, model.view.tilt});
  if (!picture.look.smooth.empty()) {
    picture.drawn_sides = render::drawn_sides(picture.look, picture.camera);
  }
  const Lit told = spoken_of(model, derived);
  const double size = geometry::bounding_box(points_of(picture.look.faces)).diagonal();
  for (const FaceId one : picture.faces) {
    picture.look.looks.push_back(face_look(model, derived, theme, told, one, size / 26.0));
  }
  picture.look.edge = stroke(theme.ink, theme.sizes.edge);
  picture.look.hidden_edge = stroke(theme.ink, theme.sizes.edge * 0.6, theme.sizes.edge * 2.5);
  if (!derived.question) {
    const Desk& desk = model.state.desk();
    const solids::Solid& solid = solid_of(desk, derived, told);
    // How many faces there are is not given away, but a question about one of them needs their numbers.
    const bool is_about_one = practice::task_as<tasks::FaceLengths>(model.state.current()) != nullptr;
    if (!model.state.is_asking() || is_about_one) {
      add_face_numbers(picture, desk.solid.body(), face_numbers(desk, told, derived.worked || derived.item),
                       model.view.hidden_numbers && !model.state.is_asking(), theme);
    }
    add_marks(picture, {solid, desk.net}, model.view.fold,
              mark_words(model.state.current(), derived, desk, solid, told), theme, measure);
    lead_face_numbers(picture, measure, theme);
  }
  return picture;
}

std::optional<FaceId> face_at(const BenchPicture& picture, figures::Vec2 pixel) {
  if (!picture.rect.contains(pixel)) {
    return std::nullopt;
  }
  for (const FaceNumber& number : picture.numbers) {
    if (glm::length(number.center - pixel) <= number.radius) {
      return number.face;
    }
  }
  return face_behind(picture, pixel - Vec2{picture.rect.x, picture.rect.y});
}

std::optional<std::size_t> option_at(const BenchPicture& picture, figures::Vec2 pixel) {
  for (const BenchSpot& spot : picture.spots) {
    if (spot.option && glm::length(spot.center - pixel) <= picture.spot_radius) {
      return spot.option;
    }
  }
  return std::nullopt;
}

namespace {

void draw_face_numbers(figures::Canvas& canvas, const BenchPicture& picture, const figures::Palette& palette) {
  for (const FaceNumber& number : picture.numbers) {
    if (number.leader) {
      canvas.line(number.leader->from, number.leader->to, {palette.ink, palette.line_width * 0.6, 0});
      canvas.circle(number.leader->to, palette.line_width * 1.2, palette.ink, std::nullopt);
    }
  }
  for (const FaceNumber& number : picture.numbers) {
    figures::Palette colors = palette;
    if (number.counted) {
      std::swap(colors.ink, colors.ground);
    }
    figures::draw_number_circle(canvas, number.center, number.radius, number.text, colors);
    if (number.is_behind) {
      const figures::Stroke dashes{palette.ground, palette.line_width * 1.2, number.radius * 0.35};
      canvas.circle(number.center, number.radius, std::nullopt, dashes);
    }
  }
}

}  // namespace

void draw_bench_texts(figures::Canvas& canvas, const BenchPicture& picture, const Theme& theme) {
  canvas.push_clip(picture.rect);
  const figures::Palette palette = theme.palette();
  for (const BenchLabel& label : picture.labels) {
    if (label.on_face) {  // a label over a hatch needs a ground of its own
      const figures::Vec2 size = label_size(canvas, label.text, {theme.sizes.label, theme.ink, label.emphasized});
      const Rect box{label.center.x - size.x / 2, label.center.y - size.y / 2, size.x, size.y};
      canvas.rounded(box.inset(-theme.sizes.space * 0.4, 0), theme.sizes.radius * 0.5, theme.ground, std::nullopt);
    }
  }
  for (const BenchSpot& spot : picture.spots) {
    figures::Palette colors = palette;
    if (spot.look != BenchSpot::Look::Plain) {  // filled, so that it is not told by its color alone
      colors.ink = theme.ground;
      colors.ground = spot.look == BenchSpot::Look::Right ? theme.good : theme.bad;
    }
    figures::draw_number_circle(canvas, spot.center, picture.spot_radius, spot.text, colors);
  }
  draw_face_numbers(canvas, picture, palette);
  for (const BenchLabel& label : picture.labels) {
    if (label.leader) {
      canvas.line(label.leader->from, label.leader->to, {theme.ink, theme.sizes.rule * 1.5, 0});
      canvas.circle(label.leader->to, theme.sizes.edge * 1.2, theme.ink,
                    std::nullopt);  // it ends here, at no other line
    }
    const figures::TextStyle style{theme.sizes.label, theme.ink, label.emphasized};
    figures::typeset(canvas, label.center, figures::HAlign::Center, figures::VAlign::Middle, label.text, style);
  }
  canvas.pop_clip();
}

}  // namespace fw::bench
